import fc from "fast-check";
import { expect, test } from "vitest";
import { type AnswerOptions, answers, DoneEntries } from "../../server/history/aim-met.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { readEntry } from "../../server/journal/read-entry.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

const HEAD = 'piece "Ground in G minor" as Ground: G minor, 96 bars, goal quarter=84\n';

/** Whether the entry, written below a day, does what `set` asks for. */
function done(set: string, entry: string, options?: AnswerOptions): boolean {
  const document = createDocument(`${HEAD}set ${set}\n2026-03-02\n  ${entry}\n`);
  const uri = "file:///j/a.practice";
  const journal = new Journal("file:///j", new Map([[uri, document]]));
  const { declared } = journal.model(document.blocks[0]!).declarations[1]!.declaration;
  const [played] = journal.model(document.blocks[1]!).entries;
  if (declared?.type !== "set" || !played) throw new Error(`“${set}” or “${entry}” cannot be read.`);
  const conventions = journal.conventions(uri);
  if (declared.words !== undefined)
    return new DoneEntries([{ entry: played, day: 1, conventions }]).daysAnsweringWords(declared.words, 1, 1).size > 0;
  return answers(played, readEntry(declared.entry!, 0, journal.vocabulary), conventions, options);
}

test("the subject and the pattern are the same", () => {
  expect(done("D minor, thirds", "D minor, thirds, slow")).toBe(true);
  expect(done("D minor, thirds", "D natural minor, thirds, at 60 slips")).toBe(true);
  expect(done("D minor, thirds", "D minor, slow")).toBe(false);
  expect(done("D minor", "D minor, thirds, slow")).toBe(false);
  expect(done("D minor", "D major, slow")).toBe(false);
});

test("every stated term is there", () => {
  expect(done("D minor, slurred, 8ths", "D minor, slurred, 8ths at 60 clean, focus ease")).toBe(true);
  expect(done("D minor, slurred, 8ths", "D minor, tongued, 8ths at 60 clean")).toBe(false);
  expect(done("D minor, slurred, 8ths", "D minor, slurred, 16ths at 60 clean")).toBe(false);
  expect(done("D minor, 2 octaves", "D minor, 2 octaves, slow")).toBe(true);
  expect(done("D minor, 2 octaves", "D minor, slow")).toBe(false);
  expect(done("D minor, by heart", "D minor, by heart, slow")).toBe(true);
  expect(done("D minor, by heart", "D minor, slow")).toBe(false);
  expect(done("D minor, on tenor recorder", "D minor, slow")).toBe(false);
});

test("a tempo, tries and minutes are met by more as well", () => {
  expect(done("D minor, 8ths at 60", "D minor, 8ths at 60 slips")).toBe(true);
  expect(done("D minor, 8ths at 60", "D minor, 8ths at 66 clean")).toBe(true);
  expect(done("D minor, 8ths at 60", "D minor, 8ths at 58 clean")).toBe(false);
  expect(done("D minor, 8ths at 60 clean 3 in a row", "D minor, 8ths at 60 clean 5 in a row")).toBe(true);
  expect(done("D minor, 8ths at 60 clean 3 in a row", "D minor, 8ths at 60 clean")).toBe(false);
  expect(done("D minor, 8ths at 60 clean 5 in a row", "D minor, 8ths at 60 clean 5 of 9")).toBe(false);
  expect(done("D minor, 8ths at 60 clean 4 of 5", "D minor, 8ths at 60 clean 8 of 10")).toBe(true);
  expect(done("D minor, slow, 10 min", "D minor, slow, 5 min")).toBe(false);
});

test("one attempt has all of them together", () => {
  expect(done("D minor, slurred, 8ths at 60 clean", "D minor, slurred, 8ths at 60 slips, tongued, 66 clean")).toBe(
    false,
  );
});

test("by rate alone, the note value may be another", () => {
  expect(done("D minor, 8ths at 60", "D minor, 16ths at 30 clean")).toBe(false);
  expect(done("D minor, 8ths at 60", "D minor, 16ths at 30 clean", { byRate: true })).toBe(true);
  expect(done("D minor, 8ths at 60", "D minor, 16ths at 29 clean", { byRate: true })).toBe(false);
});

test("of a piece, the place too", () => {
  expect(done("Ground, bars 17-32, slow", "Ground, bars 17-32, slow, 5 min")).toBe(true);
  expect(done("Ground, bars 17-32, slow", "Ground, bars 17-24, slow")).toBe(false);
  expect(done("Ground", "Ground, bars 17-24, slow")).toBe(true);
  expect(done("Ground, from the top", "Ground, start to finish, slow")).toBe(true);
  expect(done("Ground, from the top", "Ground, the beginning, slow")).toBe(false);
});

test("free words are done by the same words", () => {
  expect(done('"clap line 4, then say it"', 'done "Clap line 4, then  say it"')).toBe(true);
  expect(done('"clap line 4, then say it"', 'done "clap line 4"')).toBe(false);
});

test("of several subjects each counts by itself, also where minutes are asked for", () => {
  expect(done("C major, at 60", "F major, C major, at 60 clean")).toBe(true);
  expect(done("C major, F major, at 60", "F major, C major, G major, at 60 clean")).toBe(true);
  expect(done("C major, D major, at 60", "F major, C major, G major, at 60 clean")).toBe(false);
  expect(done("F major, at 100", "C108 F96")).toBe(false);
  expect(done("C major, at 100", "C108 F96")).toBe(true);
  expect(done("C major, 5 min", "C major, F major, 10 min")).toBe(true);
  expect(done("C major, 6 min", "C major, F major, 10 min")).toBe(false);
  expect(done("all major scales", "C major, F major")).toBe(false);
});

test("what is set in a row may be done in lines of their own on one day", () => {
  const document = createDocument(
    "set C major, F major, at 60\n2026-03-02\n  C major, at 60 clean\n2026-03-03\n  F major, at 63 clean\n  C major, at 60\n",
  );
  const uri = "file:///j/a.practice";
  const journal = new Journal("file:///j", new Map([[uri, document]]));
  const { declared } = journal.model(document.blocks[0]!).declarations[0]!.declaration;
  if (declared?.type !== "set" || !declared.entry) throw new Error("What is set cannot be read.");
  const entries = document.blocks.slice(1).flatMap((block) => {
    const { day, entries } = journal.model(block);
    return entries.map((entry) => ({ entry, day: day!.date!, conventions: journal.conventions(uri) }));
  });
  const [first, last] = ["2026-03-02", "2026-03-03"].map((day) => parseIsoDate(day)!);
  const asked = readEntry(declared.entry, 0, journal.vocabulary);
  expect([...new DoneEntries(entries).daysAnswering(asked, first!, last!)]).toEqual([last]);
});

const TERMS = ["slurred", "tongued", "thirds", "2 octaves", "8ths at 60", "8ths at 72 clean", "at 80 slips", "5 min"];
const line = fc
  .tuple(fc.constantFrom("D minor", "D natural minor", "G major", "Ground", '"to the end"'), fc.subarray(TERMS))
  .map((parts) => parts.flat().join(", "));

test("the days that answer what was set are those of a look at every entry", () => {
  const day = fc.tuple(fc.integer({ min: 1, max: 9 }), line, fc.boolean());
  fc.assert(
    fc.property(line, fc.array(day, { maxLength: 8 }), fc.integer({ min: 1, max: 9 }), (set, days, from) => {
      const lines = days.map(([date, entry, planned]) => `2026-03-0${date}${planned ? " plan" : ""}\n  ${entry}`);
      const document = createDocument([`${HEAD}set ${set}`, ...lines].join("\n"));
      const uri = "file:///j/a.practice";
      const journal = new Journal("file:///j", new Map([[uri, document]]));
      const conventions = journal.conventions(uri);
      const { declared } = journal.model(document.blocks[0]!).declarations[1]!.declaration;
      if (declared?.type !== "set" || !declared.entry) return;
      const asked = readEntry(declared.entry, 0, journal.vocabulary);
      const entries = document.blocks.slice(1).flatMap((block) => {
        const { day, entries } = journal.model(block);
        return entries.map((entry) => ({ entry, day: day!.date!, conventions }));
      });
      const start = parseIsoDate(`2026-03-0${from}`)!;
      const answering = entries.filter(({ entry, day }) => day >= start && answers(entry, asked, conventions));
      expect(new DoneEntries(entries).daysAnswering(asked, start, start + 20)).toEqual(
        new Set(answering.map(({ day }) => day)),
      );
    }),
    { seed: 31 },
  );
});

test("two thousand things set and done are looked at once each", () => {
  const numbers = Array.from({ length: 2000 }, (_, i) => i);
  const sets = numbers.map(
    (i) => `set D minor, thirds, at ${20 + i / 10}\npiece "Piece ${i}"\nset "Piece ${i}", bars 1-8`,
  );
  const done = numbers.map((i) => `  D minor, thirds, at ${20 + i / 10} clean\n  "Piece ${i}", bars 1-8, at 60`);
  const document = createDocument(`${sets.join("\n")}\n2026-03-02\n${done.join("\n")}\n`);
  const journal = new Journal("file:///j", new Map([["file:///j/a.practice", document]]));
  const conventions = journal.conventions("file:///j/a.practice");
  let looked = 0;
  const counted = journal.model(document.blocks[1]!).entries.map((entry) => ({
    entry: new Proxy(entry, {
      get(target, name) {
        if (name === "focus" || name === "instrument") looked++;
        return Reflect.get(target, name);
      },
    }),
    day: 20_514,
    conventions,
  }));
  const index = new DoneEntries(counted);
  const answered = journal.model(document.blocks[0]!).declarations.filter(({ declaration: { declared } }) => {
    if (declared?.type !== "set" || !declared.entry) return false;
    return index.daysAnswering(readEntry(declared.entry, 0, journal.vocabulary), 20_514, 20_514).size > 0;
  });
  expect(answered).toHaveLength(4000);
  expect(looked).toBeLessThan(10 * 4000);
});
