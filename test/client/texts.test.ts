import { describe, expect, test } from "vitest";
import { inWords, keyIn } from "../../client/packaging/texts.mjs";
import german from "../../l10n/bundle.l10n.de.json";
import inKeys from "../../package.json";
import manifestInGerman from "../../package.nls.de.json";
import manifestInEnglish from "../../package.nls.json";
import { isNode, literal, type Module, moduleOf, modules, type Node, nameOf, nodes } from "../architecture/source.ts";
import { manifest } from "../support/manifest.ts";

// The extension's own texts in English and in German. That a text says the same in both, a person has to read.

const ENGLISH: Readonly<Record<string, string>> = manifestInEnglish;
const GERMAN: Readonly<Record<string, string>> = manifestInGerman;

/** The package's own description is npm's, too, which knows no keys. */
const { description: _, ...read } = inKeys;

/** Names, which are the same in every language. */
const NAMES = ["Daystave"];
/** Texts that German has word for word, each with the reason. None for now. */
const SAME: readonly string[] = [];

describe("package.json", () => {
  /** Where people read it: in the palette, in menus, in the settings, in the walkthrough, in a gallery. */
  const IS_READ = /^(?:category|title|shortTitle|displayName|description|markdownDescription|altText)$/;
  const ARE_READ = /^(?:aliases|enumDescriptions)$/;

  /** Every string of it, with the name of its field; of a list that of the list's. */
  function strings(value: unknown, field = ""): readonly (readonly [string, string])[] {
    if (typeof value === "string") return [[field, value]];
    if (typeof value !== "object" || value === null) return [];
    return Object.entries(value).flatMap(([name, inner]) => strings(inner, Array.isArray(value) ? field : name));
  }

  test("has a key for each text that is read, and a name where it is the same in every language", () => {
    const texts = strings(read).filter(([field]) => IS_READ.test(field) || ARE_READ.test(field));
    expect(texts.length).toBeGreaterThan(50);
    expect(texts.filter(([, text]) => keyIn(text) === undefined && !NAMES.includes(text))).toEqual([]);
  });

  test("names every key that has a text, and only those, in both languages", () => {
    const named = strings(inKeys).flatMap(([, text]) => keyIn(text) ?? []);
    expect([...new Set(named)].sort()).toEqual(Object.keys(ENGLISH).sort());
    expect(Object.keys(GERMAN)).toEqual(Object.keys(ENGLISH));
    expect(new Set(named).size).toBe(named.length);
  });

  test("in English words has no key left; a key without a text is a mistake that is said", () => {
    expect(strings(manifest).flatMap(([, text]) => keyIn(text) ?? [])).toEqual([]);
    expect(inWords({ title: "%a%", other: ["50 %", "%"] }, { a: "A" })).toEqual({ title: "A", other: ["50 %", "%"] });
    expect(() => inWords({ title: "%b%" }, { a: "A" })).toThrow("%b%");
  });

  test("has in German its own words, with the same code, the same links, and the same end", () => {
    expect(unlike(Object.keys(ENGLISH).map((key) => [ENGLISH[key]!, GERMAN[key]!]))).toEqual([]);
  });

  test("calls a command in a step as the palette does", () => {
    const titles = new Map(inKeys.contributes.commands.map(({ command, title }) => [command, keyIn(title)!]));
    const buttons = [ENGLISH, GERMAN].flatMap((texts) =>
      inKeys.contributes.walkthroughs[0]!.steps.flatMap(({ description }) => {
        const [, label, command] = /\[(.*)\]\(command:toSide:(.*)\)/.exec(texts[keyIn(description)!]!)!;
        const title = titles.get(command!);
        return title ? [[label, texts[title]]] : [];
      }),
    );
    expect(buttons).toHaveLength(8);
    for (const [label, title] of buttons) expect(label).toBe(title);
  });
});

describe("the client", () => {
  const own = modules("client").filter(({ path }) => !/^client\/(?:preview|pupils)\/page\//.test(path));
  const used = own.flatMap(textsPutIntoWords);

  test("puts nothing into words but what stands there as it is", () => {
    expect(
      textsPutIntoWords(moduleOf("a.ts", `l10n.t("One {0}", 1); l10n.t(\`A \${1}\`); l10n.t(text); t("no");`)),
    ).toEqual(["One {0}", undefined, undefined]);
    expect(used.length).toBeGreaterThan(20);
    expect(used).not.toContain(undefined);
  });

  test("has each text in German, and German has no other", () => {
    expect([...new Set(used)].sort()).toEqual(Object.keys(german).sort());
  });

  test("has in German its own words, with the same places for values", () => {
    expect(unlike(Object.entries(german))).toEqual([]);
  });

  test("gives as many values as its text has places", () => {
    const calls = own.flatMap(({ body }) => [...nodes(body)].filter(isPutIntoWords));
    for (const call of calls) {
      const [text, ...values] = call["arguments"] as readonly Node[];
      expect([literal(text), values.length]).toEqual([literal(text), new Set(placesIn(String(literal(text)))).size]);
    }
  });

  test("says no sentence that is not put into words", () => {
    const source = `window.show("Two words"); l10n.t("In words"); new Error(\`Two \${1}\`);`;
    expect(sentences(moduleOf("a.ts", source)).map(({ text }) => text)).toEqual(["Two words", "Two "]);
    expect(own.flatMap(sentences).filter(({ text }) => !text.startsWith("<!DOCTYPE"))).toEqual([]);
  });
});

describe("German that is not like its English", () => {
  test.each([
    ["the same words", "Show {0}", "Show {0}"],
    ["nothing", "Show", ""],
    ["a place is lost", "Show {0}", "Zeigen"],
    ["code is changed", "Such as `0.5`", "Etwa `0,5`"],
    ["a link is changed", "[Show](command:a)", "[Zeigen](command:b)"],
    ["a full stop is lost", "It is shown.", "Es erscheint"],
  ])("%s", (_, english, other) => expect(unlike([[english, other]])).toHaveLength(1));

  test("is found, and nothing else is", () => {
    expect(unlike([["Show `a` {0}. [B](command:b)", "`a` {0} zeigen. [Ü](command:b)"]])).toEqual([]);
  });
});

/** The pairs of which the second is no translation of the first, as far as that can be seen from outside. */
function unlike(pairs: readonly (readonly [string, string])[]): readonly (readonly [string, string])[] {
  const marks = (text: string) =>
    [...placesIn(text), ...(text.match(/`[^`]*`|\]\([^)]*\)|\n/g) ?? [])].sort().join(" ");
  const end = (text: string) => /(?:\.\.\.|[.?!:])?$/.exec(text)![0];
  return pairs.filter(
    ([english, other]) =>
      other.trim() === "" ||
      (other === english && !SAME.includes(english)) ||
      marks(other) !== marks(english) ||
      end(other) !== end(english),
  );
}

function placesIn(text: string): readonly string[] {
  return text.match(/\{\d+\}/g) ?? [];
}

/** `l10n.t(…)`, the editor's own way of putting a text into its user's words. */
function isPutIntoWords({ type, callee }: Node): boolean {
  return (
    type === "CallExpression" &&
    isNode(callee) &&
    nameOf(callee["object"]) === "l10n" &&
    nameOf(callee["property"]) === "t"
  );
}

/** The texts of a module; undefined for one that only a run can tell. */
function textsPutIntoWords({ body }: Module): readonly (string | undefined)[] {
  return [...nodes(body)].filter(isPutIntoWords).map((call) => {
    const text = literal((call["arguments"] as readonly Node[])[0]);
    return typeof text === "string" ? text : undefined;
  });
}

/** Strings of more than a word that begin as a sentence does, outside `l10n.t`. */
function sentences(module: Module): readonly { readonly at: string; readonly text: string }[] {
  const inWords = new Set([...nodes(module.body)].filter(isPutIntoWords).flatMap((call) => [...nodes(call)]));
  return [...nodes(module.body)]
    .filter((node) => !inWords.has(node))
    .flatMap((node) => {
      const text = node.type === "TemplateElement" ? (node["value"] as { cooked: string }).cooked : literal(node);
      const isSentence = typeof text === "string" && /^[A-Z<]\S* /.test(text);
      return isSentence ? [{ at: `${module.path}:${module.lineOf(node)}`, text: text as string }] : [];
    });
}
