import { expect, test } from "vitest";
import { type AnswerOptions, answers, answersWords } from "../../server/history/aim-met.ts";
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
  if (declared.words !== undefined) return answersWords(played, declared.words);
  return answers(played, readEntry(declared.entry!, 0, journal.vocabulary), journal.conventions(uri), options);
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
});

test("free words are done by the same words", () => {
  expect(done('"clap line 4, then say it"', 'done "Clap line 4, then  say it"')).toBe(true);
  expect(done('"clap line 4, then say it"', 'done "clap line 4"')).toBe(false);
});
