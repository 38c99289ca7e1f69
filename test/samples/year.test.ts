import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { formatEdits } from "../../server/features/layout/formatting.ts";
import { attemptsOfJournal } from "../../server/history/attempts.ts";
import { type HistoryOfExercise, historyOf } from "../../server/history/history.ts";
import type { Verdict } from "../../server/history/trend.ts";
import { parseIsoDate, parseWeekLabel, weekIndex, weekLabel, weekLabels } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document/document.ts";
import { temporaryFolder } from "../support/temporary-folder.ts";

// The year of an invented player is what its generator writes, and shows what it is there to show.

const ROOT = join(import.meta.dirname, "../..");
const YEAR = join(ROOT, "samples/year");
const FIRST = parseIsoDate("2025-11-24")!;
const LAST = parseIsoDate("2026-11-22")!;

function textsIn(folder: string): ReadonlyMap<string, string> {
  const names = readdirSync(folder).filter((name) => name.endsWith(".practice"));
  return new Map(names.sort().map((name) => [name, readFileSync(join(folder, name), "utf8")]));
}

const texts = textsIn(YEAR);
const journal = new Journal(
  "file:///year",
  new Map([...texts].map(([name, text]) => [`file:///year/${name}`, createDocument(text)])),
);
const models = journal.addresses.flatMap((uri) =>
  journal.files.get(uri)!.blocks.map((block) => ({ uri, ...journal.model(block) })),
);
const exercises = historyOf(attemptsOfJournal(journal)).exercises;

test("it is what the generator writes, byte for byte", () => {
  const folder = temporaryFolder();
  execFileSync(process.execPath, [join(ROOT, "samples/generate-year.mjs"), folder]);
  expect(textsIn(folder)).toEqual(texts);
});

test("nothing is found in it: no error, no warning, no advice, no line taken for prose", () => {
  const found = journal.addresses.flatMap((uri) =>
    diagnosticsOf(journal, uri, LAST).map(({ code, range }) => `${uri}:${range.start.line + 1} ${code}`),
  );
  expect(found).toEqual([]);
  const types = new Set(models.flatMap(({ lines }) => lines.map(({ type }) => type)));
  expect(types).toContain("entry");
  expect(types).not.toContain("prose");
});

test("it is in the usual layout", () => {
  for (const uri of journal.addresses) expect(formatEdits(journal, uri)).toEqual([]);
});

test("every file says that it is invented", () => {
  expect(texts.size).toBeGreaterThan(12);
  for (const text of texts.values()) expect(text.split("\n")[0]).toMatch(/^-- .*invented/i);
});

test("it has days in each of 52 weeks, and no others", () => {
  const weeks = models.flatMap(({ day }) => (day?.date === undefined ? [] : [weekLabel(day.date)]));
  expect([...new Set(weeks)].sort()).toEqual(weekLabels(weekIndex(FIRST), weekIndex(LAST)));
  expect(new Set(weeks).size).toBe(52);
});

test("it has from 500 to 700 entries, on two instruments", () => {
  const entries = models.flatMap((model) => model.entries);
  expect(entries.length).toBeGreaterThanOrEqual(500);
  expect(entries.length).toBeLessThanOrEqual(700);
  expect(new Set(exercises.map(({ instrument }) => instrument))).toEqual(new Set(["alto recorder", "tenor recorder"]));
});

test("no remark stands there more than twice", () => {
  const counts = new Map<string, number>();
  for (const text of texts.values())
    for (const [, remark] of text
      .split("\n")
      .slice(1)
      .join("\n")
      .matchAll(/^ *(?:--|ask:|said:) (.*)$/gm))
      counts.set(remark!, (counts.get(remark!) ?? 0) + 1);
  expect(counts.size).toBeGreaterThan(120);
  expect([...counts].filter(([, count]) => count > 2)).toEqual([]);
});

describe("what its history shows", () => {
  function named(subject: string, pattern: string, instrument = "alto recorder"): HistoryOfExercise {
    return exercises.find(
      (each) => each.subject === subject && each.pattern === pattern && each.instrument === instrument,
    )!;
  }

  /** The exercise of that name goes so, over the whole year. */
  function check(verdict: Verdict, ...[subject, pattern, instrument]: Parameters<typeof named>): void {
    expect(named(subject, pattern, instrument).trend.verdict).toBe(verdict);
  }

  test("rising: the scale that is practised all year", () => check("rising", "D melodic minor", "thirds"));
  test("level: the tenor's first scale", () => check("level", "C major", "straight", "tenor recorder"));
  test("falling: where the tongue learnt to be softer", () => check("falling", "G major", "straight"));
  test("too early: what was begun three weeks ago", () => check("too early", "F whole-tone", "straight"));

  test("falling in autumn: the arpeggio that is learnt again with another thumb", () =>
    check("falling", "F major arpeggio", "straight"));

  test("a scale comes back after six weeks without it, slower", () => {
    const weeks = named("A harmonic minor", "straight").weeks;
    const at = weeks.findIndex(({ week }) => week === "2026-W44");
    const [before, after] = [weeks[at - 1]!, weeks[at]!];
    const [last, first] = [before, after].map(({ week }) => weekIndex(parseWeekLabel(week)!));
    expect(first! - last! - 1).toBe(6);
    expect(after.bestClean!).toBeLessThan(before.bestClean!);
  });

  test("an arpeggio comes back after eight weeks and more without it", () => {
    const weeks = named("G minor arpeggio", "straight").weeks.map(({ week }) => weekIndex(parseWeekLabel(week)!));
    expect(Math.max(...weeks.slice(1).map((week, i) => week - weeks[i]!))).toBeGreaterThan(8);
  });

  test("a quiet week is worked below best", () => {
    const weeks = named("D melodic minor", "thirds").weeks;
    expect(weeks.find(({ week }) => week === "2026-W32")).toMatchObject({
      tested: false,
      bestClean: expect.any(Number),
    });
  });
});
