import { afterEach, expect, test, vi } from "vitest";
import { weekSentence } from "../../../server/features/preview/weeks.ts";
import { isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import { Block } from "../../../server/syntax/document/document.ts";
import { journalOf } from "../journal-text.ts";
import { lineAtPlace, previewOf } from "./preview-asked.ts";

// 2026-03-09 is a Monday, of week 11 (ISO 8601).
const LAST_WEEK = "2026-03-02 Mon, 50 min\nwarm-up, 5 min\n2026-03-05 Thu, 30 min\npieces, 30 min\n";
const THIS_WEEK =
  "2026-03-09 Mon, 40 min\nwarm-up, 5 min\n  C major, slow\npieces\n  D minor, slow\n2026-03-10 Tue, rest, sore thumb\n2026-03-11 Wed\npieces, 20 min\n";
const TODAY = { today: "2026-03-12" };

/** The table, a line for each week. */
function table(text: string, today = TODAY.today): string[] {
  const { chart } = previewOf(text, { today }).weeks!;
  return [chart.table.headings, ...chart.table.rows.map(({ cells }) => cells)].map((cells) => cells.join(" | "));
}

afterEach(() => vi.restoreAllMocks());

test("this week in one line, without a comparison", () => {
  expect(previewOf(LAST_WEEK + THIS_WEEK, TODAY).week).toBe("This week: 60 minutes.");
  expect(previewOf(LAST_WEEK, TODAY).week).toBe("This week: no minutes yet.");
});

test("a week of lines without minutes has its days", () => {
  const line = (day: string) => `${day}\n  C major, slurred, 8ths at 60 clean\n`;
  const of = (text: string) => previewOf(text, TODAY).week;
  expect(of(line("2026-03-12"))).toBe("This week: 1 day, no minutes written.");
  expect(of(line("2026-03-09") + line("2026-03-11"))).toBe("This week: 2 days, no minutes written.");
  expect(of(`${line("2026-03-11")}session\n  D minor, slow\n2026-03-12 plan\n  C major\n`)).toBe(
    "This week: 1 day, no minutes written.",
  );
  expect(of(`${line("2026-03-11")}2026-03-12, 1 min\n`)).toBe("This week: 1 minute.");
});

test("the minutes of each week by phase, the latest week first; what is under none is not divided", () => {
  expect(table(LAST_WEEK + THIS_WEEK)).toEqual([
    "week of | pieces | warm-up | not divided | all",
    "9 Mar | 55 | 5 |  | 60",
    "2 Mar | 30 | 5 | 45 | 80",
  ]);
  expect(previewOf(LAST_WEEK + THIS_WEEK, TODAY).weeks!.tones.map(({ name, tone }) => `${tone} ${name}`)).toEqual([
    "0 pieces",
    "1 warm-up",
    "4 not divided",
  ]);
});

test("days ahead count for nothing, a day in two places counts in both", () => {
  expect(table(THIS_WEEK, "2026-03-10").at(-1)).toBe("9 Mar | 35 | 5 | 40");
  expect(previewOf("2026-03-09, 10 min\n2026-03-09, 15 min\n", TODAY).week).toBe("This week: 25 minutes.");
});

test("each week leads to its last day", () => {
  const text = LAST_WEEK + THIS_WEEK;
  const rows = previewOf(text, TODAY).weeks!.chart.table.rows;
  expect(rows.map(({ place }) => lineAtPlace(text, place!))).toEqual(["2026-03-11 Wed", "2026-03-05 Thu, 30 min"]);
});

test("without minutes there is no such part", () => {
  expect(previewOf("2026-02-01\n  C major\n2026-03-01\n  C major\n", TODAY).weeks).toBeNull();
});

test("for the line on this week only its days are read", () => {
  const from = parseIsoDate("2025-06-01")!;
  const days = Array.from({ length: 320 }, (_, at) => `${isoDate(from + at)}, 20 min\npieces, 20 min\n`);
  const journal = journalOf(days.join(""));
  const read = new Set<string>();
  const lines = Object.getOwnPropertyDescriptor(Block.prototype, "lines")!.get!;
  vi.spyOn(Block.prototype, "lines", "get").mockImplementation(function (this: Block) {
    if (this.day) read.add(this.text.slice(0, 10));
    return lines.call(this) as readonly string[];
  });
  expect(weekSentence(journal, parseIsoDate("2026-03-12")!)).toBe("This week: 80 minutes.");
  expect([...read].sort()).toEqual(["2026-03-09", "2026-03-10", "2026-03-11", "2026-03-12"]);
});
