import { expect, test } from "vitest";
import { journalSymbols, MOST_SYMBOLS } from "../../../server/features/navigation/journal-symbols.ts";
import { isoDate } from "../../../server/journal/calendar.ts";
import { atOnce, bracketed, FIRST_DAY, marked } from "./marked.ts";

// Invented journals.

const HEAD = `piece "Courante in F" as Courante: F major
pattern "zigzag": 1 3 2 4
phase "dance band"
aim D minor, thirds, 8ths at 96 by 2026-12-31
`;
const WEEK = `2026-03-02 Mon
The Sleepy Frog, bars 1-8, at 60 clean
Frog 2 times good

2026-03-02
The Sleepy Toad, at 60

2026-03-04
  set "clap line 4"
`;

/** What is found: kind, name, the file where it is another than the first, and the line with the place. */
function found(query: string): string {
  const { journal, texts } = marked(WEEK, { "journal.practice": HEAD });
  return atOnce(journalSymbols([journal], query))
    .map(
      ({ kind, name, uri, range, container }) => `${kind} ${name} (${container}) ${bracketed(texts.get(uri)!, range)}`,
    )
    .join("\n");
}

test("titles, declarations, aims and days, the latest day first", () => {
  expect(found("")).toBe(`title Courante in F (journal.practice) piece "[Courante in F]" as Courante: F major
title The Sleepy Frog (week.practice) [The Sleepy Frog, bars 1-8, at 60 clean]
title The Sleepy Toad (week.practice) [The Sleepy Toad, at 60]
declaration clap line 4 (week.practice)   set "[clap line 4]"
declaration dance band (journal.practice) phase "[dance band]"
declaration zigzag (journal.practice) pattern "[zigzag]": 1 3 2 4
aim D minor, thirds, 8ths at 96 by 2026-12-31 (journal.practice) [aim D minor, thirds, 8ths at 96 by 2026-12-31]
day 2026-03-04 (week.practice) [2026-03-04]
day 2026-03-02 (week.practice) [2026-03-02] Mon
day 2026-03-02 (week.practice) [2026-03-02]`);
});

test("by letters in their order, the closest first", () => {
  expect(found("toad")).toBe("title The Sleepy Toad (week.practice) [The Sleepy Toad, at 60]");
  expect(found("SLfr")).toBe("title The Sleepy Frog (week.practice) [The Sleepy Frog, bars 1-8, at 60 clean]");
  expect(found("d").split("\n")[0]).toContain("dance band");
  expect(found("2026-03-04")).toMatch(/^day 2026-03-04.*/);
  expect(found("0302").split("\n")).toHaveLength(2);
  expect(found("qqq")).toBe("");
});

test("of many days the latest, no more than a list holds", () => {
  const days = Array.from({ length: 400 }, (_, i) => `${isoDate(FIRST_DAY + i)}\nC major, slow\n`);
  const { journal } = marked(days.join("\n"));
  const all = atOnce(journalSymbols([journal], ""));
  expect(all).toHaveLength(MOST_SYMBOLS);
  expect(all[0]!.name).toBe(isoDate(FIRST_DAY + 399));
  expect(atOnce(journalSymbols([journal], isoDate(FIRST_DAY))).map(({ name }) => name)).toEqual([isoDate(FIRST_DAY)]);
});

test("signs that are not seen are left out of names", () => {
  const { journal } = marked('piece "Left\u202E Hand": C major\n');
  expect(atOnce(journalSymbols([journal], "")).map(({ name }) => name)).toEqual(["Left Hand"]);
});
