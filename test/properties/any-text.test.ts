import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import type { Diagnostic } from "../../server/features/types.ts";
import { attemptsOfJournal } from "../../server/history/attempts.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument, lineAt, textOf } from "../../server/syntax/document/document.ts";
import { LONGEST_LINE } from "../../server/syntax/line/line-reader.ts";
import type { Item } from "../../server/syntax/words/meaning.ts";
import { inTurns } from "../support/random-runs.ts";
import { CHORD_SUBJECTS, SCALE_SUBJECTS, TERMS, WHOLE_LINES } from "./lines.ts";

// Any text is read: parsing never fails, and every place that is told of lies in the text.

const URI = "file:///journal/journal.practice";
const TODAY = parseIsoDate("2026-06-01")!;

function journalOf(text: string): Journal {
  return new Journal("file:///journal", new Map([[URI, createDocument(text)]]));
}

/** Reads a text all the way, and holds the columns of everything found in it against its lines. */
function check(text: string): readonly Diagnostic[] {
  const journal = journalOf(text);
  const document = journal.files.get(URI)!;
  expect(textOf(document) === text).toBe(true);
  const found = diagnosticsOf(journal, URI, TODAY);
  for (const { range, fixes, message } of found) {
    expect(range.start.line).toBeLessThan(document.lineCount);
    expect(range.start.character).toBeLessThanOrEqual(range.end.character);
    expect(range.end.character).toBeLessThanOrEqual(lineAt(document, range.end.line).length);
    expect(message.length).toBeLessThan(600);
    for (const { edits } of fixes)
      for (const { range: place } of edits) expect(place.start.line).toBeLessThanOrEqual(document.lineCount);
  }
  for (const block of document.blocks)
    for (const [i, line] of journal.model(block).lines.entries())
      if ("items" in line) placesWithin(line.items, block.lines[i]!.length);
  attemptsOfJournal(journal);
  return found;
}

/** Items stand in the line, none within another, in the order of the line. */
function placesWithin(items: readonly Item[], length: number): void {
  let from = 0;
  for (const { start, end } of items) {
    expect(start).toBeGreaterThanOrEqual(from);
    expect(end).toBeGreaterThan(start);
    expect(end).toBeLessThanOrEqual(length);
    from = end;
  }
}

const codesOf = (found: readonly Diagnostic[]): string[] => [...new Set(found.map(({ code }) => code))].sort();

test("arbitrary Unicode, also below a day and behind a subject", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary", maxLength: 80 }), (text) => {
      check(text);
      check(`2026-03-02\n${text}`);
      check(`2026-03-02\nD minor, ${text}`);
      check(`2026-03-02\nD minor: ${text}`);
      check(`piece "${text}" as ${text}: ${text}\n2026-03-02 ${text}\n"${text}", bars 1`);
    }),
    { seed: 41 },
  );
});

test("words of the language in any order, with any signs between them", () => {
  const word = fc.constantFrom(
    ...[...SCALE_SUBJECTS, ...CHORD_SUBJECTS, ...TERMS, ...WHOLE_LINES].filter((each) => each.length < 100),
    ..."aim set piece pattern scale movement concert names pitch player instrument goal by as on to of in and".split(
      " ",
    ),
    ...'"“„», : > → | = - -- – — \n \r \t # b ♭ 𝄪 . / + \u0000 \uD800 \uDC00 \u202E \u2028'.split(" "),
    "2026-03-02",
    "\n",
  );
  fc.assert(
    fc.property(fc.array(fc.tuple(word, fc.constantFrom(" ", "", ", ", "\n")), { maxLength: 25 }), (words) => {
      check(words.flat().join(""));
    }),
    { seed: 42 },
  );
});

const NAMES = ["__proto__", "constructor", "toString", "hasOwnProperty", "valueOf", "then", "prototype", "length"];

describe.each(NAMES)("%s", (name) => {
  test("as a word is one unknown term", () => {
    expect(codesOf(check(`2026-03-02\nD minor, ${name}`))).toEqual(["unknown-term"]);
    expect(codesOf(check(`2026-03-02\nD minor, at 60 ${name}`))).toEqual(["unknown-term"]);
    expect(codesOf(check(`2026-03-02\n${name}`))).toEqual(["prose"]);
    expect(codesOf(check(`${name} x`))).toEqual(["prose"]);
    expect(codesOf(check(`2026-03-02 ${name}`))).toEqual(["unknown-term"]);
  });

  test("as a title, a pattern, a scale, a phase, an activity, an instrument is one like another", () => {
    const declared = [
      `piece "${name}"`,
      `pattern "${name}": 1 2 3`,
      `scale "${name}": 1 2 3 4 5 6 7`,
      `phase "${name} phase"`,
      `activity "${name} activity"`,
      `instrument "${name} flute": C4 to C6`,
    ].join("\n");
    const used = `"${name}", slow\nD major, "${name}"\n"${name}" on D\n${name} phase\n${name} activity\nD minor, on ${name} flute`;
    expect(check(`${declared}\n2026-03-02\n${used}`)).toEqual([]);
    const undeclared = check(`2026-03-02\n"${name}", slow\nD major, "${name}"\n"${name}" on D`);
    expect(undeclared.map(({ code }) => code)).toEqual(["unknown-title", "unknown-pattern", "unknown-declaration"]);
  });

  test("as other things that are declared", () => {
    expect(codesOf(check(`names ${name}`))).toEqual(["bad-declaration"]);
    expect(codesOf(check(`pitch A=440, ${name}`))).toEqual(["bad-declaration"]);
    expect(codesOf(check(`instrument ${name}`))).toEqual(["bad-declaration"]);
    expect(codesOf(check(`note value ${name}`))).toEqual(["bad-declaration"]);
    expect(codesOf(check(`usual articulation ${name}`))).toEqual(["bad-declaration"]);
  });
});

test("a line of a million characters is one error, and nothing of it is read", () => {
  for (const word of ["D minor, ", "x", '"', "  ", "E ", "-", "("]) {
    const line = word.repeat(Math.ceil(1_000_000 / word.length));
    const found = check(`2026-03-02\n${line}\nD minor, slow`);
    expect(found.map(({ code, range }) => [code, range.start.line])).toEqual([["line-too-long", 1]]);
  }
});

// The limit is stated in UTF-16 units.
test("the longest line that is read has 4,096 units", () => {
  const line = `D minor, ${"slow ".repeat(2000)}`;
  const codes = (length: number): string[] => codesOf(check(`2026-03-02\n${line.slice(0, length)}`));
  expect(LONGEST_LINE).toBe(4096);
  expect(codes(4096)).not.toContain("line-too-long");
  expect(codes(4097)).toEqual(["line-too-long"]);
  expect(codesOf(check(`2026-03-02\n-- ${"𝄪".repeat(2046)}`))).toEqual([]);
  expect(codesOf(check(`2026-03-02\n-- ${"𝄪".repeat(2047)}`))).toEqual(["line-too-long"]);
});

const WORDS = ['"', '"a', "a ", "- ", ",", "E-F ", "at 1 ", "bars 1, ", "B double ", "\u00AD", "steps T "];
const OPENINGS = ["", "D minor: ", "notes ", "aim "];

test.each(OPENINGS.map((opening, turn) => [opening, turn] as const))(
  "lines as long as may be, of one sign or word again and again behind “%s”, are read in time",
  (opening, turn) => {
    for (const word of inTurns(WORDS, turn, OPENINGS.length)) {
      const line = opening + word.repeat(Math.floor(4000 / word.length));
      check(`${line}\n2026-03-02\n${line}`);
    }
  },
);

test("two hundred thousand lines", () => {
  const days = Array.from({ length: 2000 }, (_, i) => {
    const entries = Array.from(
      { length: 99 },
      (_, k) => `  D minor, thirds, 8ths at ${40 + ((i + k) % 90)} clean, focus sound`,
    );
    return [`2026-03-02`, ...entries].join("\n");
  });
  const journal = journalOf(days.join("\n"));
  expect(journal.files.get(URI)!.lineCount).toBe(200_000);
  const found = diagnosticsOf(journal, URI, TODAY);
  expect(found.length).toBe(1000);
  expect(codesOf(found)).toEqual(["duplicate-day"]);
});

test("two hundred thousand findings in one day", () => {
  const text = Array.from({ length: 200_000 }, (_, i) => `word ${i % 50}`).join("\n");
  expect(diagnosticsOf(journalOf(`2026-03-02\n${text}`), URI, TODAY).length).toBe(1000);
});
