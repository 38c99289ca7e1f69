import { describe, expect, test } from "vitest";
import { type LineRow, lineRows } from "../../../server/features/explain/line-rows.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { hasMinutes, hasOutcomes, hasPlace, hasTempos, isAsMeant, isCertain } from "./as-meant.ts";
import { FIGURES, type Figure, linesOf, personsOf, shareOf, sharesText } from "./shares.ts";
import { type Meant, TABLES, writtenLines } from "./written-lines.ts";

// How much of what invented players wrote is read as it was meant; see test/reference/README.md. What is missed is told by
//   node test/reference-journals/misses.mjs

/**
 * What was reached, a line for each group of players: raise these with the reader. `false` and `underlined` are the most
 * there may be, the others the least. Of `false` that is 4 in a hundred, as a reader that takes nothing for practice has
 * none.
 */
const REACHED: Readonly<Record<string, Readonly<Record<Figure, number>>>> = {
  a: { read: 202, false: 5, underlined: 0, tempos: 149, outcomes: 101, places: 46, minutes: 72 },
  b: { read: 171, false: 4, underlined: 0, tempos: 111, outcomes: 99, places: 71, minutes: 71 },
  all: { read: 373, false: 10, underlined: 0, tempos: 260, outcomes: 200, places: 117, minutes: 143 },
  new: { read: 37, false: 2, underlined: 0, tempos: 27, outcomes: 31, places: 9, minutes: 19 },
  more: { read: 181, false: 4, underlined: 0, tempos: 129, outcomes: 144, places: 50, minutes: 67 },
  kept: { read: 146, false: 3, underlined: 0, tempos: 121, outcomes: 136, places: 41, minutes: 61 },
  further: { read: 103, false: 3, underlined: 0, tempos: 85, outcomes: 43, places: 22, minutes: 29 },
  unseen: { read: 98, false: 3, underlined: 0, tempos: 79, outcomes: 76, places: 28, minutes: 28 },
  ordinary: { read: 96, false: 4, underlined: 0, tempos: 56, outcomes: 41, places: 21, minutes: 44 },
  various: { read: 87, false: 4, underlined: 0, tempos: 70, outcomes: 54, places: 26, minutes: 47 },
  /** Five in a hundred are counted that are no practice. */
  mixed: { read: 69, false: 5, underlined: 0, tempos: 47, outcomes: 34, places: 13, minutes: 35 },
  late: { read: 90, false: 3, underlined: 0, tempos: 65, outcomes: 42, places: 20, minutes: 44 },
  later: { read: 118, false: 2, underlined: 0, tempos: 82, outcomes: 103, places: 54, minutes: 51 },
  latest: { read: 103, false: 3, underlined: 0, tempos: 85, outcomes: 96, places: 40, minutes: 58 },
};

const LINES = TABLES.flatMap((table) => writtenLines(table));

test("the tables have the lines of twenty players, and of a hundred and one more", () => {
  expect(personsOf(LINES)).toHaveLength(121);
  const groups = [
    "all",
    "new",
    "more",
    "kept",
    "further",
    "unseen",
    "ordinary",
    "various",
    "mixed",
    "late",
    "later",
    "latest",
  ];
  expect(groups.map((group) => linesOf(group, LINES).length)).toEqual([
    900, 108, 310, 278, 232, 236, 253, 253, 235, 243, 226, 235,
  ]);
});

describe.each(Object.keys(REACHED))("of the lines of %s", (group) => {
  test.each(FIGURES)("no less is right than was: %s", (figure) => {
    const { count } = shareOf(figure, linesOf(group, LINES));
    const reached = REACHED[group]![figure];
    const told = `\n${sharesText([...personsOf(LINES), ...Object.keys(REACHED)], LINES)}\n`;
    if (figure === "false" || figure === "underlined") expect(count, told).toBeLessThanOrEqual(reached);
    else expect(count, told).toBeGreaterThanOrEqual(reached);
  });
});

/** What was meant, by some columns, and how a line below a day is read. */
function both(meant: Partial<Meant>, line: string): [Meant, LineRow] {
  const uri = "file:///j/a.practice";
  const journal = new Journal("file:///j", new Map([[uri, createDocument(`2026-03-02\n${line}\n`)]]));
  const blank = { person: "", day: "", kind: "exercise", subject: "", pattern: "", articulation: "", place: "" };
  return [
    { ...blank, note_value: "", tempos: "", outcomes: "", minutes: "", comment: "", line, ...meant },
    lineRows(journal, uri)[1]!,
  ];
}

describe("a subject is held against what was meant", () => {
  function check(kind: string, subject: string, line: string, expected: boolean, pattern = "") {
    const [meant, read] = both({ kind, subject, pattern }, line);
    expect(isAsMeant({ meant, read, underlined: false })).toBe(expected);
  }

  test("in any order of its words", () => check("exercise", "D minor harmonic", "D harmonic minor", true));
  test("minor alone is natural", () => check("exercise", "D minor", "D natural minor", true));
  test("another minor is another scale", () => check("exercise", "D minor", "D harmonic minor", false));
  test("another tonic is another scale", () => check("exercise", "Eb major", "E major", false));
  test("a sharp is none of its letter", () => check("exercise", "F# major", "F major", false));
  test("an arpeggio is no scale", () => check("exercise", "D major", "D major arpeggio", false));
  test("sevenths in figures", () => check("exercise", "B diminished 7th arpeggio", "B diminished seventh", true));
  test("several in any order", () => check("exercise", "F major;C major", "C major > F major", true));
  test("not some of several", () => check("exercise", "F major;C major;G major", "C major > F major", false));
  test("broken chords as a pattern", () => check("exercise", "D major", "D major broken chord", true, "broken chords"));
  test("long tones on some notes", () => check("exercise", "long tones", "long tones on C5 D5", true));
  test("a title by its letters", () => check("piece", "Giga, no. 2", '"giga no 2"', true));
  test("another title", () => check("piece", "Giga, no. 2", '"giga no 3"', false));
  test("of another kind", () => check("piece", "D major", "D major", false));
  test("in a line that is none", () => check("exercise", "D major", "I liked it", false));
});

test("each tempo counts, a range as two", () => {
  expect(hasTempos(...both({ tempos: "60;66;72" }, "D minor, at 60, 66-72"))).toBe(true);
  expect(hasTempos(...both({ tempos: "60;66" }, "D minor, at 60"))).toBe(false);
});

test("each outcome at its tempo, as typed", () => {
  expect(hasOutcomes(...both({ outcomes: ";broke down" }, "D minor, at 60, 66 broke down"))).toBe(true);
  expect(hasOutcomes(...both({ outcomes: "broke down;" }, "D minor, at 60, 66 broke down"))).toBe(false);
  expect(hasOutcomes(...both({ outcomes: "clean" }, "D minor, at 60"))).toBe(false);
});

test("what may be an outcome or nothing is either", () => {
  const comment = "info: a tempo word; accept as outcome or nothing";
  expect(hasOutcomes(...both({ outcomes: "slow", comment }, "D minor, slow"))).toBe(true);
});

test("a place as typed", () => {
  expect(hasPlace(...both({ place: "Bars 1-8" }, '"Giga", bars 1-8'))).toBe(true);
  expect(hasPlace(...both({ place: "bars 1-9" }, '"Giga", bars 1-8'))).toBe(false);
});

test("amounts are added up", () => {
  expect(hasMinutes(...both({ minutes: "10;5" }, "D minor, 15 min"))).toBe(true);
  expect(hasMinutes(...both({ minutes: "10" }, "D minor, 15 min"))).toBe(false);
});

test("what an annotator was unsure of does not count", () => {
  const certain = ["", "info: by heart", "hard: which minor", "info: x; unsure: a title"].map((comment) =>
    isCertain(both({ comment }, "D minor")[0]),
  );
  expect(certain).toEqual([true, true, true, false]);
});
