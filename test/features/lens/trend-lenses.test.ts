import { describe, expect, test } from "vitest";
import { trendLenses } from "../../../server/features/lens/trend-lenses.ts";
import { preview } from "../../../server/features/preview/preview.ts";
import { journalHistory } from "../../../server/history/journal-history.ts";
import { isoDate, parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { journalOf, URI } from "../journal-text.ts";

const TODAY = parseIsoDate("2026-06-01")!;
const ASKED = { today: TODAY, readsAll: false };

function read(text: string): Journal {
  const journal = journalOf(text);
  journalHistory(journal);
  return journal;
}

/** The lines below words, with these above them. */
function shown(journal: Journal, uri = URI): string[] {
  const lines = journal.files.get(uri)!.blocks.flatMap((block) => block.lines);
  return trendLenses(journal, uri, ASKED).map(({ line, title }) => `${title} / ${lines[line]!.trim()}`);
}

/** A day a week, up to today, each with these lines; `bpm` rises by two a week. */
function weeks(count: number, line: (bpm: number) => string): string {
  return Array.from({ length: count }, (_, i) => {
    const day = isoDate(TODAY - 7 * (count - 1 - i));
    return `${day}\n  ${line(60 + 2 * i)}\n`;
  }).join("");
}

test("the trend stands above the latest entry of each exercise, in the words of the preview", () => {
  const rising = weeks(12, (bpm) => `D minor, thirds, 8ths at ${bpm} clean 4 of 5`);
  const journal = read(`2026-05-01\n  G major, 8ths at 60 clean\n  long tones on F4\n${rising}`);
  const { exercises } = preview(journal, { today: TODAY });
  const trends = [...exercises!.recent, ...exercises!.earlier].map(({ shows }) => `Trend: ${shows!.trend}`);
  expect(shown(journal)).toEqual([
    "Trend: too early to say / G major, 8ths at 60 clean",
    expect.stringMatching(/^Trend: up .* in four weeks \/ D minor, thirds, 8ths at 82 clean 4 of 5$/),
  ]);
  expect(trends.sort()).toEqual(
    shown(journal)
      .map((each) => each.split(" / ")[0]!)
      .sort(),
  );
});

test("of an exercise that is played in several ways, where the one that is told of was played last", () => {
  const slurred = weeks(3, (bpm) => `D minor, slurred, 8ths at ${bpm} clean`);
  expect(shown(read(`${slurred}  D minor, tongued, 8ths at 50 clean`))).toEqual([
    "Trend: too early to say / D minor, slurred, 8ths at 64 clean",
  ]);
});

test("with their names where a line has several, three at most", () => {
  expect(shown(read("2026-05-25\n  C, G and D major, 8ths at 60 clean"))).toEqual([
    "C major: too early to say / C, G and D major, 8ths at 60 clean",
    "G major: too early to say / C, G and D major, 8ths at 60 clean",
    "D major: too early to say / C, G and D major, 8ths at 60 clean",
  ]);
  expect(shown(read("2026-05-25\n  C, G, D and A major, 8ths at 60 clean"))).toHaveLength(3);
});

describe("nothing is told", () => {
  test.each([
    ["of pieces", '2026-05-25\n  "Solo", bars 1-8, at 60 clean'],
    ["of what has no tempo", "2026-05-25\n  D minor, slow"],
    ["of what was played more than half a year ago", "2025-11-01\n  D minor, 8ths at 60 clean"],
    ["of days ahead", "2026-06-02\n  D minor, 8ths at 60 clean"],
    ["of what is planned", "2026-06-01 plan\n  D minor, 8ths at 60"],
  ])("%s", (_, text) => {
    expect(shown(read(text))).toEqual([]);
  });

  test("while the history is not at hand, and of what is no file of the journal", () => {
    const journal = journalOf("2026-05-25\n  D minor, 8ths at 60");
    expect(trendLenses(journal, URI, ASKED)).toEqual([]);
    expect(trendLenses(journal, URI, { ...ASKED, readsAll: true })).toHaveLength(1);
    expect(trendLenses(read(""), "file:///other.practice", ASKED)).toEqual([]);
  });
});

test("of several files, in the one that has the latest entry", () => {
  const other = "file:///journal/may.practice";
  const files = new Map([
    [other, createDocument("2026-05-25\n  D minor, 8ths at 60 clean")],
    [URI, createDocument("2026-06-01\n  D minor, 8ths at 62 clean\n  G major, 8ths at 60 clean")],
  ]);
  const journal = new Journal("file:///journal", files);
  journalHistory(journal);
  expect(shown(journal, other)).toEqual([]);
  expect(shown(journal)).toHaveLength(2);
});

test("the same while nothing that bears on it changes, and one line further down once a line comes in above", () => {
  const text = "2026-05-25\n  D minor, 8ths at 60 clean\n";
  const journal = read(text);
  const before = trendLenses(journal, URI, ASKED);
  expect(trendLenses(journal, URI, ASKED)).toBe(before);
  const other = journal.with("file:///journal/b.practice", createDocument("-- nothing\n"));
  expect(trendLenses(other, URI, ASKED)).toEqual(before);
  const moved = journal.with(URI, createDocument(`-- evenings\n${text}`));
  expect(trendLenses(moved, URI, ASKED)).toEqual(before.map((each) => ({ ...each, line: each.line + 1 })));
});
