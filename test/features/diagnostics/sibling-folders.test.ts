import { describe, expect, test } from "vitest";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";

const TODAY = parseIsoDate("2026-12-31")!;

/** Some days of March, invented. */
const days = (...dates: number[]) =>
  dates.map((date) => `2026-03-${String(date).padStart(2, "0")}\n  D minor, slow\n`).join("");

type Files = Readonly<Record<string, string>>;

function journalOf(files: Files): Journal {
  return new Journal(
    "file:///j",
    new Map(
      Object.entries(files).map(([name, text]) => [`file:///j/${encodeURI(name)}.practice`, createDocument(text)]),
    ),
  );
}

/** The messages on the days of a journal's files, each with its file and line. */
function messages(journal: Journal): string[] {
  return journal.addresses.flatMap((uri) =>
    diagnosticsOf(journal, uri, TODAY)
      .filter(({ code }) => code === "duplicate-day" || code === "day-order")
      .map(({ range, message }) => `${decodeURI(uri.slice("file:///j/".length))}:${range.start.line + 1} ${message}`),
  );
}

const check = (files: Files, expected: string[]) => expect(messages(journalOf(files))).toEqual(expected);

const REMEDY =
  "have the same days, as those of several players do. Put an empty file named `journal.practice` into each: then each is a journal of its own.";

describe("folders that repeat the same days", () => {
  test("are named once, in place of all the days", () =>
    check({ "anna/march": days(2, 3, 4, 5), "ben b/march": days(2, 3, 4, 6), "cleo/march": days(3, 4, 5, 6) }, [
      `ben b/march.practice:1 The folders anna, ben b and cleo ${REMEDY}`,
    ]));

  test("at any depth, and of many the first are named", () => {
    const names = ["a", "b", "c", "d", "e", "f"];
    check(Object.fromEntries(names.map((name) => [`class/${name}/2026/march`, days(2, 3, 4)])), [
      `class/b/2026/march.practice:1 The folders class/a, class/b, class/c and 3 more ${REMEDY}`,
    ]);
  });

  test("a day that comes twice within one of them is still found", () =>
    check({ "anna/march": days(2, 3, 4), "anna/more": days(4, 9), "ben/march": days(2, 3, 4, 4) }, [
      "anna/more.practice:1 2026-03-04 is already in anna/march.practice, line 5. For a second sitting, write `session` under that day.",
      `ben/march.practice:1 The folders anna and ben ${REMEDY}`,
      "ben/march.practice:7 2026-03-04 is already above, in line 5. For a second sitting, write `session` under that day.",
    ]));

  test("few days in common, or few of many, are slips in one player's folders", () => {
    check({ "2025/a": days(2, 3), "2026/b": days(3, 4, 5) }, [
      "2026/b.practice:1 2026-03-03 is already in 2025/a.practice, line 3. For a second sitting, write `session` under that day.",
    ]);
    const many = Array.from({ length: 31 }, (_, i) => i + 1);
    const april = many
      .slice(0, 30)
      .map((day) => `2026-04-${String(day).padStart(2, "0")}\n  D minor, slow\n`)
      .join("");
    expect(messages(journalOf({ "one/a": days(...many), "two/b": days(29, 30, 31) + april }))).toHaveLength(3);
  });

  test("files of one folder are one player's, whatever they repeat", () =>
    expect(messages(journalOf({ a: days(2, 3, 4), b: days(2, 3, 4) }))).toHaveLength(3));
});

test("where the other day is stays true when lines come in above it", () => {
  const before = journalOf({ a: days(2, 3), "x/b": days(3) });
  expect(messages(before)[0]).toContain("is already in a.practice, line 3.");
  const after = before.with("file:///j/a.practice", createDocument(`player Noor\n${days(2, 3)}`));
  expect(messages(after)[0]).toContain("is already in a.practice, line 4.");
  const gone = after.with("file:///j/a.practice", createDocument(days(2)));
  expect(messages(gone)).toEqual([]);
});

test("a line above it in the same file, too", () => {
  const before = journalOf({ a: days(2, 3, 3) });
  expect(messages(before)[0]).toContain("is already above, in line 3.");
  const after = before.with("file:///j/a.practice", createDocument(`\n\n${days(2, 3, 3)}`));
  expect(messages(after)[0]).toContain("is already above, in line 5.");
});
