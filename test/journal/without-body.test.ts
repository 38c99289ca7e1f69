import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { bodySaidIn } from "../../server/journal/body-said.ts";
import { Journal } from "../../server/journal/journal.ts";
import { linesWithoutBody } from "../../server/journal/without-body.ts";
import { createDocument } from "../../server/syntax/document/document.ts";
import { ROOT } from "../architecture/source.ts";
import { TABLES, writtenJournals } from "../reference-journals/natural/written-lines.ts";

type Texts = Readonly<Record<string, string>>;

function journalOf(texts: Texts): Journal {
  const files = Object.entries(texts).map(([name, text]) => [`file:///journal/${name}`, createDocument(text)] as const);
  return new Journal("file:///journal", new Map(files));
}

/** The days of a journal, without its body. */
function withoutBody(text: string, declared = ""): string {
  const journal = journalOf({ "journal.practice": declared, "a.practice": text });
  const { blocks } = journal.files.get("file:///journal/a.practice")!;
  return blocks
    .filter(({ day }) => day)
    .flatMap((block) => linesWithoutBody(journal, block))
    .join("\n");
}

function check(text: string, expected: string, declared?: string): void {
  expect(withoutBody(text, declared)).toBe(expected);
}

describe("cut out", () => {
  test("words at the end of a line and between others, with their comma", () => {
    check("2026-03-04 Wed, rest, sore left thumb", "2026-03-04 Wed, rest");
    check("2026-03-04 Wed, sore left thumb, 20 min", "2026-03-04 Wed, 20 min");
    check("2026-03-04\nrest, wrist hurts", "2026-03-04\nrest");
    check(
      "2026-03-04\n  Ground, bars 17-24, at 66 clean, sore left thumb, 69 slips",
      "2026-03-04\n  Ground, bars 17-24, at 66 clean, 69 slips",
    );
  });

  test("a remark that speaks of it, and nothing before it", () => {
    check("2026-03-04\n  D minor, at 60 clean -- my wrist hurts", "2026-03-04\n  D minor, at 60 clean");
    check("2026-03-04\n  -- the thumb aches again\n  -- better light", "2026-03-04\n  -- better light");
  });

  test("lines and sentences of it", () => {
    check(
      "2026-03-04\n  D minor, at 60 clean\nsore left thumb\nrest of the day off",
      "2026-03-04\n  D minor, at 60 clean\nrest of the day off",
    );
    check("2026-03-04\n  My wrist hurts today.\n  We played outside.", "2026-03-04\n  We played outside.");
  });

  test("what is said behind a day's total, which stays", () => {
    check("2026-03-04\n  20 min. thumb sore\n  D minor", "2026-03-04\n  20 min.\n  D minor");
    check("2026-03-04\n  20 min and lips swolen\n  D minor", "2026-03-04\n  20 min\n  D minor");
    check("2026-03-04\n  45 min, no pain", "2026-03-04\n  45 min");
  });

  test("what is tired, and what is better again", () => {
    check("2026-03-04, tired\n  thumb better\n  D minor", "2026-03-04\n  D minor");
  });

  test("what a plan says for care, and its reasons as far as they speak of it", () => {
    check(
      [
        "2026-03-05 Thu, 20 min, plan",
        "-- care: 4 March has “sore left thumb”. Rest is a full answer.",
        "  Ground, bars 1-8, slow, 5 min",
        "    -- plan: Slow, as the thumb is sore.",
        "    -- plan: Not worked in the last 14 days.",
      ].join("\n"),
      [
        "2026-03-05 Thu, 20 min, plan",
        "  Ground, bars 1-8, slow, 5 min",
        "    -- plan: Not worked in the last 14 days.",
      ].join("\n"),
    );
  });

  test("in other languages", () => {
    check("2026-03-04\n  C-Dur, bei 60, Daumen tut weh", "2026-03-04\n  C-Dur, bei 60", "names german\n");
    check("2026-03-04\n  do majeur, à 60 -- mal au poignet", "2026-03-04\n  do majeur, à 60", "names french\n");
  });
});

describe("kept as they are", () => {
  test.each([
    "2026-03-04 Wed, 20 min\n  D minor,  at 60 clean   -- E to F is what breaks",
    "2026-03-04\n  said: rest the sore thumb\n  ask: may I play when the wrist hurts?\nset rest the thumb, 3 days",
    "2026-03-04\n  D minor, focus little finger\n\n  -- plan: Set for 2026-03-21.",
  ])("%s", (text) => check(text, text));
});

// The lines are those of test/reference, which invented players wrote in many ways and languages, and the samples.
describe("nothing of the body is left in what was written", () => {
  const FOLDERS = [
    "quickstart",
    "year",
    "theory",
    ...["dutch", "french", "german", "italian", "spanish"].map((each) => `languages/${each}`),
  ];

  function textsIn(folder: string): Texts {
    const path = join(ROOT, "samples", folder);
    return Object.fromEntries(readdirSync(path).map((name) => [name, readFileSync(join(path, name), "utf8")]));
  }

  /** What is still said after it was cut out, and how many lines had something before. */
  function left(texts: Texts): { readonly before: number; readonly after: readonly string[] } {
    const journal = journalOf(texts);
    let before = 0;
    const cut = [...journal.files].map(([uri, { blocks }]) => {
      const lines = blocks.flatMap((block) => {
        if (!block.day) return block.lines;
        before += bodySaidIn(journal, block).length;
        return linesWithoutBody(journal, block);
      });
      return [uri.slice("file:///journal/".length), lines.join("\n")] as const;
    });
    const again = journalOf(Object.fromEntries(cut));
    const after = [...again.files.values()].flatMap(({ blocks }) =>
      blocks.flatMap((block) => (block.day ? bodySaidIn(again, block).map(({ line }) => block.lines[line]!) : [])),
    );
    return { before, after };
  }

  test.each(FOLDERS)("samples/%s", (folder) => expect(left(textsIn(folder)).after).toEqual([]));

  test.each(TABLES)("%s", (table) => {
    const found = writtenJournals(table).map((files) => left(files as Texts));
    expect(found.flatMap(({ after }) => after)).toEqual([]);
    expect(found.reduce((sum, { before }) => sum + before, 0)).toBeGreaterThan(0);
  });
});
