import { expect, test } from "vitest";
import { factsOfStrand, factsOfStrandInWords, sinceLately, sinceOfStrand } from "../../server/history/journal-facts.ts";
import { journalHistory } from "../../server/history/journal-history.ts";
import type { StrandFacts } from "../../server/history/strand-facts.ts";
import { isoDate, parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { applyChanges, createDocument } from "../../server/syntax/document/document.ts";

const [OWN, OTHER] = ["file:///j/a.practice", "file:///j/b.practice"];
const MONDAY = parseIsoDate("2026-01-05")!;
const dateOf = (week: number) => isoDate(MONDAY + 7 * week);
const TODAY = MONDAY + 7 * 13;

const TEMPOS = [80, 80, 80, 80, 0, 0, 0, 0, 69, 69, 69, 69];
const DAYS = TEMPOS.map((tempo, week) =>
  tempo === 0 ? "" : `${dateOf(week)}\n  F major, slurred, 8ths at ${tempo} clean 5 of 5\n`,
).join("");

const journalOf = (text: string) =>
  new Journal(
    "file:///j",
    new Map([
      [OWN, createDocument(text)],
      [OTHER, createDocument("")],
    ]),
  );

/** The journal with a text in its other file. */
function typed(journal: Journal, text: string): Journal {
  const start = { line: 0, character: 0 };
  return journal.with(OTHER, applyChanges(journal.files.get(OTHER)!, [{ range: { start, end: start }, text }]));
}

function strandIn(journal: Journal) {
  const exercises = [...journalHistory(journal).exercises.values()];
  return exercises.find(({ subject }) => subject === "F major")!.strands[0]!;
}

function facts(journal: Journal, day = TODAY): StrandFacts {
  return factsOfStrand(journal, strandIn(journal), day);
}

test("they are the same objects while neither the strand, nor a break, nor the day is another", () => {
  const journal = journalOf(DAYS);
  const before = facts(journal);
  expect(facts(journal)).toBe(before);
  const elsewhere = typed(journal, `${dateOf(9)}\n  G major, 8ths at 60 clean\n\n`);
  expect(facts(elsewhere)).toBe(before);
  expect(facts(elsewhere, TODAY + 1)).not.toBe(before);
});

test("of a part of a strand they are those of the strand", () => {
  const journal = journalOf(DAYS);
  const whole = facts(journal);
  const part = { ...strandIn(journal), records: strandIn(journal).records.slice(0, 2) };
  expect(factsOfStrand(journal, part, TODAY)).toBe(whole);
});

test("practice of something else that fills a break makes them anew", () => {
  const journal = journalOf(DAYS);
  expect(facts(journal)).toMatchObject({ steady: 138, returned: { fresh: true } });
  const filled = typed(journal, `${dateOf(5)}\n  G major, 8ths at 60 clean\n\n`);
  expect(facts(filled)).toMatchObject({ steady: 160, returned: null });
  expect(sinceOfStrand(filled, strandIn(filled), TODAY)).toBeUndefined();
});

test("what is steady lately hangs on no return before all that was tried", () => {
  const journal = journalOf(DAYS);
  const back = parseIsoDate("2026-03-02")!;
  const since = (day: number) => [
    sinceOfStrand(journal, strandIn(journal), day),
    sinceLately(journal, strandIn(journal), day),
  ];
  expect(since(back + 21)).toEqual([back, back]);
  expect(since(back + 83)).toEqual([back, back]);
  expect(since(back + 84)).toEqual([back, undefined]);
  expect(since(back + 14)).toEqual([undefined, undefined]); // three weeks
});

test("before anything was played nothing is known", () => {
  const journal = journalOf(DAYS);
  expect(factsOfStrandInWords(journal, strandIn(journal), {}, MONDAY - 1)).toEqual([]);
});
