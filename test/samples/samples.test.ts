import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { CODES } from "../../server/checks/codes.ts";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import type { Diagnostic } from "../../server/features/types.ts";
import { bodySaidIn } from "../../server/journal/body-said.ts";
import { filesSharingBody } from "../../server/journal/body-shared.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { datedBlocks } from "../../server/journal/dated-blocks.ts";
import { Journal } from "../../server/journal/journal.ts";
import { isShared } from "../../server/journal/lending.ts";
import { NOTE_NAMES } from "../../server/music/notes/note-names.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

// The samples and the examples of the format reference mean what they say, on 2026-06-01.

const ROOT = join(import.meta.dirname, "../..");
const TODAY = parseIsoDate("2026-06-01")!;
const ERRORS = join(ROOT, "samples/errors");
const FORMAT = readFileSync(join(ROOT, "syntaxes/FORMAT.md"), "utf8");

function found(texts: ReadonlyMap<string, string>): readonly Diagnostic[] {
  const journal = new Journal("file:///j", new Map([...texts].map(([uri, text]) => [uri, createDocument(text)])));
  return journal.addresses.flatMap((uri) => diagnosticsOf(journal, uri, TODAY));
}

function foundIn(text: string): readonly Diagnostic[] {
  return found(new Map([["file:///j/example.practice", text]]));
}

function folder(...path: readonly string[]): ReadonlyMap<string, string> {
  const at = join(ROOT, "samples", ...path);
  const names = readdirSync(at).filter((name) => name.endsWith(".practice"));
  return new Map(names.map((name) => [`file:///j/${name}`, readFileSync(join(at, name), "utf8")]));
}

const grave = (diagnostics: readonly Diagnostic[]): readonly string[] =>
  diagnostics.filter(({ severity }) => severity === "error" || severity === "warning").map(({ code }) => code);
const codes = (diagnostics: readonly Diagnostic[]): readonly string[] => diagnostics.map(({ code }) => code);

const ALL = Object.keys(CODES);

describe("one small journal for each code", () => {
  test("the codes, the samples and the sections of the reference are the same", () => {
    expect(readdirSync(ERRORS).sort()).toEqual([...ALL].sort());
    expect([...sections().keys()].sort()).toEqual([...ALL].sort());
  });

  test.each(ALL)("%s", (code) => {
    const diagnostics = found(folder("errors", code));
    expect(codes(diagnostics)).toContain(code);
    expect(grave(diagnostics).filter((each) => each !== code)).toEqual([]);
  });
});

describe("the quickstart", () => {
  test("has the two mistakes that it tells of, and no other", () => {
    const texts = folder("quickstart");
    const week = texts.get("file:///j/week.practice")!.split("\n");
    const underlined = found(texts)
      .filter(({ severity }) => severity === "error" || severity === "warning")
      .map(
        ({ code, range: { start, end } }) =>
          `${code}: ${week[start.line]!.trim()} | ${week[start.line]!.slice(start.character, end.character)}`,
      );
    expect(underlined).toEqual([
      "scale-spelling: F# major: F# G# A# B C# D# F F# | F",
      "scale-note: G harmonic minor: G A Bb C D Eb F G | F",
    ]);
  });
});

describe("a journal for each language of note names", () => {
  const languages = NOTE_NAMES.map(({ id }) => id).filter((id) => id !== "english");

  test("there is one for each", () => {
    expect(readdirSync(join(ROOT, "samples/languages")).sort()).toEqual([...languages].sort());
  });

  test.each(languages)("%s: it declares it, and nothing is found in it", (id) => {
    const texts = folder("languages", id);
    expect(texts.get("file:///j/journal.practice")).toContain(`\nnames ${id}\n`);
    expect(found(texts)).toEqual([]);
  });
});

test("the journal of theory: nothing is found in it but advice", () => {
  expect(grave(found(folder("theory")))).toEqual([]);
  expect(folder("theory").get("file:///j/week.practice")!.split("\n").length).toBeGreaterThan(25);
});

describe("the journals of three pupils", () => {
  const PUPILS = ["ingrid", "sefa", "tobin"];
  const texts = (...path: string[]) => [...folder("pupils", ...path).values()];
  const lent = createDocument(texts()[0]!);
  const journals = new Map(
    PUPILS.map((name) => {
      const files = [...folder("pupils", name)].map(([uri, text]) => [uri, createDocument(text)] as const);
      return [name, new Journal("file:///j", new Map(files)).withLent([lent])] as const;
    }),
  );

  test("there is a folder for each, and what is lent lies above them", () => {
    expect(readdirSync(join(ROOT, "samples/pupils")).sort()).toEqual([...PUPILS, "journal.practice"].sort());
    expect(isShared(lent)).toBe(true);
  });

  test.each(PUPILS)("%s: it says that it is invented, and nothing is found in it", (name) => {
    expect(texts(name).join("\n")).toMatch(/^-- An invented journal: /m);
    const journal = journals.get(name)!;
    expect(journal.addresses.flatMap((uri) => diagnosticsOf(journal, uri, TODAY))).toEqual([]);
  });

  test("two say something of the body, and one of them shares it", () => {
    const said = [...journals].map(([name, journal]) => {
      const days = datedBlocks(journal, 0, TODAY);
      return [
        name,
        days.some(({ block }) => bodySaidIn(journal, block).length > 0),
        filesSharingBody(journal).size > 0,
      ];
    });
    expect(said).toEqual([
      ["ingrid", true, true],
      ["sefa", true, false],
      ["tobin", false, false],
    ]);
  });
});

interface Section {
  readonly examples: readonly string[];
}

/** The sections `### \`code\`` under "Diagnostics", with their examples. */
function sections(): ReadonlyMap<string, Section> {
  const [, diagnostics] = FORMAT.split("\n## Diagnostics\n");
  const parts = diagnostics!.split("\n### `").slice(1);
  return new Map(
    parts.map((part) => [
      part.slice(0, part.indexOf("`")),
      { examples: [...part.matchAll(/^```practice\n([\s\S]*?)^```$/gm)].map(([, example]) => example!) },
    ]),
  );
}

describe("the examples of the format reference", () => {
  test.each([...sections()])("%s", (code, { examples }) => {
    expect(examples.length).toBeGreaterThan(0);
    expect(codes(foundIn(examples[0]!))).toContain(code);
  });

  const [before] = FORMAT.split("\n## Diagnostics\n") as [string];
  const others = [...before.matchAll(/^```practice\n([\s\S]*?)^```$/gm)].map((match) => ({
    line: before.slice(0, match.index).split("\n").length,
    example: match[1]!,
  }));

  test.each(others)("the one on line $line has neither errors nor warnings", ({ example }) => {
    expect(readable(example)).toEqual([]);
  });

  test("there are many", () => {
    expect(others.length).toBeGreaterThan(20);
  });

  /** What is found on an example, as it stands or, where it has no day, as lines of one. */
  function readable(example: string): readonly string[] {
    const alone = grave(foundIn(example));
    return alone.includes("no-day") ? grave(foundIn(`2026-03-02\n${example}`)) : alone;
  }
});
