import { describe, expect, test } from "vitest";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";

// What days bear on each other, within a file and across files.

const TODAY = parseIsoDate("2026-06-01")!;

/** A journal as one text, each file under its name. */
function journalOf(files: Readonly<Record<string, string>>): Journal {
  const documents = Object.entries(files).map(
    ([name, text]) => [`file:///j/${name}.practice`, createDocument(text)] as const,
  );
  return new Journal("file:///j", new Map(documents));
}

/** Each finding as `file: the words that it stands on | code`. */
function check(files: Readonly<Record<string, string>>, today = TODAY): string[] {
  const journal = journalOf(files);
  return Object.entries(files).flatMap(([name, text]) =>
    diagnosticsOf(journal, `file:///j/${name}.practice`, today).map(({ code, range: { start, end } }) => {
      const line = text.split("\n")[start.line]!;
      return `${name}: ${line.slice(start.character, end.character)} | ${code}`;
    }),
  );
}

function messages(text: string): string[] {
  return diagnosticsOf(journalOf({ a: text }), "file:///j/a.practice", TODAY).map(({ message }) => message);
}

describe("a tempo that leaps", () => {
  const days = (...lines: readonly string[]) =>
    lines.map((line, i) => `2026-05-${String(4 + i).padStart(2, "0")}\n  ${line}`).join("\n");

  test("stands on the tempo itself, and says what it was held against", () => {
    const text = days("D minor, slurred, 8ths at 60 clean", "D minor, slurred, 8ths at 63 nearly, 100 clean");
    expect(check({ a: text })).toEqual(["a: 100 | tempo-leap"]);
    expect(messages(text)).toEqual([
      "100 is over one and a half times your best before, 60 on 2026-05-04. If that is right, leave it. Otherwise check the digits, beat and note value.",
    ]);
  });

  test.each([
    ["exactly one and a half times is none", days("D minor, at 60 clean", "D minor, at 90 clean")],
    [
      "one that was not reached is none",
      days("D minor, at 60 clean", "D minor, at 100 tense", "D minor, at 100 nearly"),
    ],
    ["what was not reached is no best", days("D minor, at 90 nearly", "D minor, at 60 clean")],
    ["the first of a strand is none", days("D minor, slurred, at 60 clean", "D minor, tongued, at 100 clean")],
    ["another note value may make up for it", days("D minor, 16ths at 60 clean", "D minor, 8ths at 110 clean")],
    ["what is planned counts for nothing", `${days("D minor, at 60 clean")}\n2026-06-02 plan\n  D minor, at 100`],
  ])("%s", (_, text) => {
    expect(check({ a: text })).toEqual([]);
  });

  test("without anything reached before, it is held against the fastest that was tried", () => {
    const text = days("D minor, at 56 nearly", "D minor, at 58 nearly", "D minor, at 160 clean");
    expect(check({ a: text })).toEqual(["a: at 160 | tempo-leap"]);
    expect(messages(text)).toEqual([
      "160 is over one and a half times the fastest you tried before, 58 on 2026-05-05. If that is right, leave it. Otherwise check the digits, beat and note value.",
    ]);
  });

  test("the same line may leap, and what was reached becomes the best", () => {
    expect(check({ a: days("D minor, at 60 clean, 100 clean", "D minor, at 120 clean") })).toEqual([
      "a: 100 | tempo-leap",
    ]);
  });

  test("an attempt at several subjects leaps once, held against the first that it leaps for", () => {
    const text = days("C major, at 50 clean", "G major, at 60 clean", "G major, C major, at 100 clean");
    expect(check({ a: text })).toEqual(["a: at 100 | tempo-leap"]);
    expect(messages(text)[0]).toContain("your best before, 60 on 2026-05-05.");
    expect(check({ a: days("C major, at 50 clean", "G major, C major, at 100 clean") })).toEqual([
      "a: at 100 | tempo-leap",
    ]);
  });

  test("days count by their dates, in whichever file and order they stand", () => {
    expect(
      check({ b: "2026-05-04\n  D minor, at 60 clean", a: "2026-05-05\n  long tones\n  D minor, at 100 clean" }),
    ).toEqual(["a: at 100 | tempo-leap"]);
  });

  test("activities and planned entries of the day are passed over in finding its place", () => {
    const day =
      "2026-05-05\n  long tones on F4 C5, slow\n  stretching\n  G major, at 60 clean\n  D minor, at 60 nearly, 100 clean";
    expect(check({ a: `2026-05-04\n  D minor, at 60 clean\nactivity "stretching"\n${day}` })).toEqual([
      "a: 100 | tempo-leap",
    ]);
  });
});

describe("an aim that the trend does not lead to", () => {
  /** A week apart, each tempo reached and four above it tried. */
  const weeks = (...tempos: readonly number[]) =>
    tempos
      .map(
        (bpm, i) =>
          `2026-${i < 4 ? "04" : "05"}-${String(i < 4 ? 6 + 7 * i : 4 + 7 * (i - 4)).padStart(2, "0")}\n  D minor, at ${bpm} clean, ${bpm + 4} nearly`,
      )
      .join("\n");
  const aim = (tempo: string, by: string) => `aim D minor, at ${tempo} by ${by}\n`;

  test("says where the pace would lead", () => {
    const text = aim("120", "2026-06-29") + weeks(60, 61, 62, 63, 64, 65, 66, 67);
    expect(check({ a: text })).toEqual(["a: aim D minor, at 120 by 2026-06-29 | aim-far"]);
    expect(messages(text)).toEqual([
      "At the recent pace this would be near 72 by 2026-06-29. A later date or a nearer aim leaves room to play with ease.",
    ]);
  });

  test.each([
    ["one that the pace leads to", aim("72", "2026-06-29") + weeks(60, 61, 62, 63, 64, 65, 66, 67)],
    ["one that was reached", aim("63", "2026-06-29") + weeks(60, 61, 62, 63, 62, 62, 62, 62)],
    ["too early for a trend", aim("120", "2026-06-29") + weeks(60, 61, 62)],
    ["never practised", aim("120", "2026-06-29")],
    ["without a day", `aim D minor, at 120\n${weeks(60, 61, 62, 63, 64)}`],
  ])("nothing is said of %s", (_, text) => {
    expect(check({ a: text })).toEqual([]);
  });
});

test("after a break that cost something an aim is held against the pace since", () => {
  // Eight weeks at 75, six off, then 65 to 70 in six weeks: over all of them the trend goes down.
  const text = (between: string) =>
    [
      "aim D minor, at 76 by 2026-07-06",
      ...["01-05", "01-12", "01-19", "01-26", "02-02", "02-09", "02-16", "02-23"].map(
        (day) => `2026-${day}\n  D minor, at 75 clean, 79 nearly`,
      ),
      between,
      ...["04-13", "04-20", "04-27", "05-04", "05-11", "05-18"].map(
        (day, i) => `2026-${day}\n  D minor, at ${65 + i} clean, ${69 + i} nearly`,
      ),
    ].join("\n");
  expect(check({ a: text("") })).toEqual([]);
  const practised = text("2026-03-09\n  G major, slow\n2026-03-30\n  G major, slow");
  expect(check({ a: practised })).toEqual(["a: aim D minor, at 76 by 2026-07-06 | aim-far"]);
});

describe("days in several files", () => {
  test("a day that an earlier file has is reported in the later one, by name", () => {
    const files = { b: "2026-03-02\n  D minor, slow", a: "2026-03-02\n  G major, slow", journal: "player Noor" };
    expect(check(files)).toEqual(["b: 2026-03-02 | duplicate-day"]);
    expect(diagnosticsOf(journalOf(files), "file:///j/b.practice", TODAY)[0]!.message).toBe(
      "2026-03-02 is already in a.practice, line 1. For a second sitting, write `session` under that day.",
    );
  });

  const day = (date: string) => `${date}\n  D minor, slow\n`;
  const months = {
    "2026-01": day("2026-01-05") + day("2026-01-06"),
    "2026-02": day("2026-02-02") + day("2026-02-03"),
    "2026-03": day("2026-03-02") + day("2026-03-03"),
    "2026-04": day("2026-04-06") + day("2026-04-07"),
  };

  test("files that follow each other raise nothing", () => expect(check(months)).toEqual([]));

  test("the one day that reaches into the file before, or after, is out of order", () => {
    expect(check({ ...months, "2026-03": day("2026-01-02") + day("2026-03-02") + day("2026-03-03") })).toEqual([
      "2026-03: 2026-01-02 | day-order",
    ]);
    expect(check({ ...months, "2026-02": day("2026-02-02") + day("2026-02-03") + day("2026-05-03") })).toEqual([
      "2026-02: 2026-05-03 | day-order",
    ]);
  });

  test("files that overlap by more than a day, or that are too few to show an order, raise nothing", () => {
    const early = day("2026-01-02") + day("2026-01-04") + day("2026-03-02") + day("2026-03-03");
    expect(check({ ...months, "2026-03": early })).toEqual([]);
    expect(
      check({ alto: day("2026-01-05") + day("2026-03-02"), tenor: day("2026-02-03") + day("2026-04-02") }),
    ).toEqual([]);
  });
});
