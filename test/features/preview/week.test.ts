import { afterEach, expect, test, vi } from "vitest";
import { weekSection } from "../../../server/features/preview/week.ts";
import { isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import { Block } from "../../../server/syntax/document/document.ts";
import { journalOf } from "../journal-text.ts";
import { lineAtPlace, previewOf } from "./preview-asked.ts";

// 2026-03-09 is a Monday, of week 11 (ISO 8601).
const LAST_WEEK = "2026-03-02 Mon, 50 min\nwarm-up, 5 min\n2026-03-05 Thu, 30 min\npieces, 30 min\n";
const THIS_WEEK =
  "2026-03-09 Mon, 40 min\nwarm-up, 5 min\n  C major, slow\npieces\n  D minor, slow\n2026-03-10 Tue, rest, sore thumb\n2026-03-11 Wed\npieces, 20 min\n";

const TODAY = { today: "2026-03-12" };

/** The table, a line for each day. */
function table(text: string, today?: string): string[] {
  const { chart } = previewOf(text, today === undefined ? TODAY : { today }).week;
  return chart.ok ? [chart.table.headings, ...chart.table.rows].map((cells) => cells.join(" | ")) : [chart.reason];
}

afterEach(() => vi.restoreAllMocks());

test("minutes on each of the seven days by phase, with the same days of last week", () => {
  expect(table(LAST_WEEK + THIS_WEEK)).toEqual([
    "Day | warm-up | pieces | All | Last week",
    "Mon 2026-03-09 | 5 | 35 | 40 | 50",
    "Tue 2026-03-10 | 0 | 0 | rest | 0",
    "Wed 2026-03-11 | 0 | 20 | 20 | 0",
    "Thu 2026-03-12 | 0 | 0 | 0 | 30",
    "Fri 2026-03-13 | 0 | 0 | 0 | 0",
    "Sat 2026-03-14 | 0 | 0 | 0 | 0",
    "Sun 2026-03-15 | 0 | 0 | 0 | 0",
  ]);
});

test("the week, its dates, and the sentence", () => {
  const { title, dates, sentence } = previewOf(LAST_WEEK + THIS_WEEK, TODAY).week;
  expect([title, dates]).toEqual(["Week 11", "2026-03-09 to 2026-03-15"]);
  expect(sentence).toBe("60 minutes on 2 days; last week 80 on 2.");
});

test("minutes that were shared out are about", () => {
  const text = "2026-03-09 Mon, 40 min\nwarm-up\n  C major, slow\npieces\n  D minor, slow\n";
  expect(table(text)[1]).toBe("Mon 2026-03-09 | 20 | 20 | about 40 | 0");
  expect(previewOf(text, TODAY).week.sentence).toBe("About 40 minutes on 1 day.");
});

test("a week with nothing yet says what last week was; none at all says what to write", () => {
  expect(previewOf(LAST_WEEK, TODAY).week.sentence).toBe(
    "Nothing is written this week so far; last week 80 minutes on 2 days.",
  );
  expect(table("")[0]).toMatch(/^No minutes are written this week or last\. Write them behind a date/);
});

test("days ahead count for nothing, a day in two places counts in both", () => {
  expect(table(THIS_WEEK, "2026-03-09")[3]).toBe("Wed 2026-03-11 | 0 | 0 | 0 | 0");
  expect(table("2026-03-09, 10 min\n2026-03-09, 15 min\n")[1]).toBe("Mon 2026-03-09 | 25 | 25 | 0");
});

test("each day that is written leads to its line", () => {
  const text = LAST_WEEK + THIS_WEEK;
  const links = previewOf(text, TODAY).week.days.map((link) => `${link.text}: ${lineAtPlace(text, link.place)}`);
  expect(links).toEqual([
    "Mon: 2026-03-09 Mon, 40 min",
    "Tue: 2026-03-10 Tue, rest, sore thumb",
    "Wed: 2026-03-11 Wed",
  ]);
});

test("only the days of the two weeks are read", () => {
  const from = parseIsoDate("2025-06-01")!;
  const days = Array.from({ length: 320 }, (_, at) => `${isoDate(from + at)}, 20 min\npieces, 20 min\n`);
  const journal = journalOf(days.join(""));
  const read = new Set<string>();
  const lines = Object.getOwnPropertyDescriptor(Block.prototype, "lines")!.get!;
  vi.spyOn(Block.prototype, "lines", "get").mockImplementation(function (this: Block) {
    if (this.day) read.add(this.text.slice(0, 10));
    return lines.call(this) as readonly string[];
  });
  weekSection(journal, parseIsoDate("2026-03-12")!);
  const expected = Array.from({ length: 11 }, (_, at) => isoDate(parseIsoDate("2026-03-02")! + at));
  expect([...read].sort()).toEqual(expected);
});
