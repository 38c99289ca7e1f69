import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { recordsOfBlock } from "../../server/history/attempts.ts";
import { playedEntry } from "../../server/history/played.ts";
import { Journal } from "../../server/journal/journal.ts";
import { readBlock, withTitles } from "../../server/journal/read-block.ts";
import { createDocument } from "../../server/syntax/document/document.ts";
import { LineReader } from "../../server/syntax/line/line-reader.ts";
import { DAYS } from "../support/random-runs.ts";
import { CHORD_SUBJECTS, ROWS, SCALE_SUBJECTS, TERMS, TOLD_TOGETHER } from "./lines.ts";

// How something was played is found out once for each set of pieces that tell it. Here it is held against reading every line
// by itself, with nothing kept.

const URI = "file:///journal/journal.practice";
const HEAD = [
  "instrument alto recorder",
  'instrument "wooden flute": D4 to B5',
  'piece "Ground in G minor" as Ground: G minor, 96 bars, goal half=48',
  'study "Daily study" as Set: D minor',
  'pattern "zigzag": 1 3 2 4',
  'scale "double harmonic": 1 b2 3 4 5 b6 7',
  'phase "market band"',
  'activity "stretching"',
].join("\n");
const HEADS = [
  ["usual names", HEAD],
  ["a note value and an articulation of the journal's", `${HEAD}\nnote value 8ths\nusual articulation slurred`],
  ["numbers in names", `${HEAD}\npiece "Study 60" as Sixty 60: G minor\nphase "round 60"\nactivity "duo 12"`],
  ["German names", `names german\n${HEAD}`],
] as const;

/** The records of a day as they are kept, and as each line tells them by itself. */
function check(journal: Journal, lines: readonly string[]): void {
  const block = createDocument(["2026-03-02, 50 min", ...lines].join("\n")).blocks.at(-1)!;
  const conventions = journal.conventions(URI);
  const { vocabulary } = journal;
  const context = { vocabulary, memo: new LineReader(vocabulary) };
  const model = readBlock(block, context);
  const titles = journal.titlesOf(block);
  const { entries } = titles ? withTitles({ block, model }, titles, context) : model;
  const apart = entries
    .filter(({ planned }) => !planned)
    .flatMap((entry) =>
      playedEntry(entry, conventions).attempts.map(({ manner, rate, reached, count, got, attempt }) => {
        const { line, start, end } = entry.attempts[attempt]!.place;
        return { ...manner, rate, reached, count, got, line, attempt, start, end };
      }),
    );
  const kept = recordsOfBlock(journal, URI, block).map((record) => ({
    instrument: record.instrument,
    subject: record.subject,
    subjectKey: record.subjectKey,
    pattern: record.pattern,
    movement: record.movement,
    where: record.where,
    reach: record.reach,
    tonguing: record.tonguing,
    evenness: record.evenness,
    rhythm: record.rhythm,
    direction: record.direction,
    byHeart: record.byHeart,
    unit: record.unit,
    noteValue: record.noteValue,
    beat: record.beat,
    exerciseKey: record.exerciseKey,
    strandKey: record.strandKey,
    rate: record.rate,
    reached: record.reached,
    count: record.count,
    got: record.got,
    line: record.line,
    attempt: record.attempt,
    start: record.start,
    end: record.end,
  }));
  expect(kept).toEqual(apart);
}

const journalWith = (head: string) => new Journal("file:///journal", new Map([[URI, createDocument(head)]]));

const subject = fc.constantFrom(
  ...SCALE_SUBJECTS,
  ...CHORD_SUBJECTS,
  ...ROWS,
  "all majors",
  "circle of fifths",
  "Ground",
  "Set",
  '"Evening air"',
  "stretching",
);
const said = fc.constantFrom("", "", " clean", " nearly", " clean 4 of 5", " easy 5 in a row", " slips tense", " done");
const number = fc.integer({ min: 18, max: 405 });
const tempo = fc.oneof(
  { weight: 6, arbitrary: number.map(String) },
  { weight: 1, arbitrary: fc.tuple(number, number).map(([a, b]) => `${a} to ${b}`) },
  { weight: 1, arbitrary: fc.tuple(number, number).map(([a, b]) => `${a}-${b}`) },
  { weight: 1, arbitrary: fc.tuple(number, number).map(([a, b]) => `${a} – ${b}`) },
);
const opening = fc.constantFrom("8ths at ", "at ", "at half=", "16ths at quarter = ", "dotted quarter = ", "", "@ ");
const trial = fc.tuple(opening, tempo, said).map((parts) => parts.join(""));
const place = fc.tuple(fc.constantFrom("bars ", "page ", "mvt ", ""), fc.constantFrom("1-8", "17-32", "4", "33-40"));
const term = fc.oneof(
  { weight: 4, arbitrary: trial },
  { weight: 3, arbitrary: fc.constantFrom(...TERMS) },
  { weight: 1, arbitrary: fc.constantFrom(...TOLD_TOGETHER) },
  { weight: 1, arbitrary: place.map((parts) => parts.join("")) },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 90 }).map((minutes) => `${minutes} min`) },
);
const separator = fc.oneof(
  { weight: 6, arbitrary: fc.constant(", ") },
  { weight: 2, arbitrary: fc.constant(" ") },
  { weight: 1, arbitrary: fc.constantFrom(",", ": ", " > ", " ,  ") },
);
const line = fc
  .tuple(
    subject,
    fc.array(fc.tuple(separator, term), { maxLength: 6 }),
    fc.constantFrom("", "", " -- at 60 clean", ","),
  )
  .map(([first, terms, tail]) => `  ${first}${terms.map((each) => each.join("")).join("")}${tail}`);

test.each(HEADS)("what is kept of how something was played is what each line tells by itself: %s", (_, head) => {
  const journal = journalWith(head);
  fc.assert(
    fc.property(fc.array(line, { maxLength: 12 }), (lines) => check(journal, lines)),
    { seed: 21, numRuns: DAYS },
  );
});

describe("tempos in a range are one attempt at the top", () => {
  const rates = (text: string) => {
    const journal = journalWith("note value 8ths");
    const block = createDocument(`2026-03-02\n${text}`).blocks.at(-1)!;
    return recordsOfBlock(journal, URI, block).map(({ rate, reached }) => [rate! / 2, reached]);
  };
  test("in words", () => expect(rates("D minor, 8ths at 60 to 72 clean")).toEqual([[72, true]]));
  test("with a hyphen", () => expect(rates("D minor, 8ths at 60-72 clean")).toEqual([[72, true]]));
  test("and the next goes on", () =>
    expect(rates("D minor, 8ths at 60 to 72 clean, 76-80, 84 slips")).toEqual([
      [72, true],
      [80, null],
      [84, false],
    ]));
});

test("a number that counts else goes on with no tempo", () =>
  check(journalWith(HEAD), ["  D minor 8ths at 20, 20 bars 17-32", "  D minor, at 72 clean, 40 bars 1-8"]));
