import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { LANGUAGES, textModules, translated } from "../../client/packaging/languages.mjs";
import { SPOKEN, spokenIn } from "../../shared/languages.ts";
import { importsOf, moduleOf, ROOT, textOf } from "./source.ts";

// What people read stands in modules of texts, one beside it for each language; tsc holds that they say the same things.

const TEXTS = textModules(["server", "client", "shared"]);
const IN_ALL = TEXTS.flatMap((path) => [path, ...LANGUAGES.map((language) => translated(path, language))]);

describe("modules of texts", () => {
  test("there are some, and each is there in every language", () => {
    expect(TEXTS.length).toBeGreaterThan(0);
    expect(IN_ALL.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
  });

  test("export one object each, a translated one of the type of the English one", () => {
    const exported = (path: string) => [...textOf(path).matchAll(/^export (.*?) =/gm)].map((match) => match[1]);
    for (const path of TEXTS) {
      expect(exported(path), path).toEqual([expect.stringMatching(/^const \w+$/)]);
      for (const language of LANGUAGES)
        expect(exported(translated(path, language)), path).toEqual([`${exported(path)[0]}: typeof english`]);
    }
  });

  test("import types and other texts alone: a language is a bundle of its texts", () => {
    const others = IN_ALL.flatMap((path) =>
      importsOf(moduleOf(path, textOf(path)))
        .filter(({ file, from }) => !/-texts(?:\.\w+)?\.ts$/.test(file ?? from))
        .map(({ from }) => `${path} -> ${from}`),
    );
    expect(others.filter((each) => !isOfTypes(each))).toEqual([]);
  });

  /** Whether an import `path -> from` is written `import type`. */
  function isOfTypes(each: string): boolean {
    const [path, from] = each.split(" -> ") as [string, string];
    return new RegExp(`^import type .*"${from.replaceAll(".", "\\.")}";$`, "m").test(textOf(path));
  }
});

test("the languages that are built are those that an editor can ask for", () => {
  expect(LANGUAGES).toEqual(SPOKEN);
  expect(["de", "de-AT", "DE_ch", "den", "en-GB", "", undefined].map(spokenIn)).toEqual([
    "de",
    "de",
    "de",
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
});
