import { expect, test } from "vitest";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { sharedMinutes } from "../../server/history/minutes.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { createDocument } from "../../server/syntax/document/document.ts";

// The minutes of a day: what entries without their own share, and what is said where they do not add up.

const URI = "file:///j/journal.practice";
const TODAY = parseIsoDate("2026-06-01")!;

function journalOf(day: readonly string[]): Journal {
  return new Journal("file:///j", new Map([[URI, createDocument(day.join("\n"))]]));
}

/** Each entry's minutes, with `about` where they are shared. */
function check(day: readonly string[], expected: readonly string[]): void {
  const journal = journalOf(day);
  const shares = sharedMinutes(journal.model(journal.files.get(URI)!.blocks[0]!));
  expect(shares.map(({ minutes, about }) => `${about ? "about " : ""}${minutes}`)).toEqual(expected);
}

/** `line code`, lines from 1. */
function checkFindings(day: readonly string[], expected: readonly string[]): void {
  const found = diagnosticsOf(journalOf(day), URI, TODAY);
  expect(found.map(({ code, range }) => `${range.start.line + 1} ${code}`)).toEqual(expected);
}

test("entries without minutes share what is left of their phase", () => {
  check(["2026-03-02", "pieces, 15 min", "D minor, 5 min", "G minor", "F major"], ["5", "about 5", "about 5"]);
  check(["2026-03-02", "pieces, 5 min", "D minor, 5 min", "G minor"], ["5", "0"]);
  check(["2026-03-02", "pieces, 15 min", "D minor, 5 min", "plan", "G minor", "F major"], ["5", "0", "0"]);
});

test("parts that exceed the whole: entries in a phase, phases in a sitting, sittings in a day", () => {
  checkFindings(["2026-03-02", "pieces, 10 min", "D minor, 6 min", "G minor, 5 min"], ["2 minutes-sum"]);
  checkFindings(["2026-03-02", "pieces, 11 min", "D minor, 6 min", "G minor, 5 min"], []);
  checkFindings(["2026-03-02, 20 min", "pieces, 10 min", "fluency, 11 min"], ["1 minutes-sum"]);
  checkFindings(["2026-03-02, 50 min", "session, 30 min", "break", "session, 30 min"], ["1 minutes-sum"]);
  checkFindings(["2026-03-02, 60 min", "session, 30 min", "session, 30 min"], []);
  checkFindings(["2026-03-02", "session, 10 min", "pieces, 6 min", "fluency, 6 min"], ["2 minutes-sum"]);
});

test("what is planned counts for nothing", () => {
  checkFindings(["2026-03-02", "pieces, 10 min", "D minor, 6 min", "plan", "G minor, 50 min"], []);
  checkFindings(["2026-03-02 plan", "D minor, 90 min"], []);
});

test("nor does a planned phase in which nothing was played; what was played in one does", () => {
  const played = ["2026-03-02, 20 min", "fluency, 10 min", "D minor, 10 min, 60 clean"];
  checkFindings([...played, "pieces, 20 min, plan", "G minor, 20 min"], []);
  checkFindings([...played, "pieces, 20 min, plan"], []);
  checkFindings([...played, "plan", "pieces, 20 min", "G minor, at 50"], []);
  checkFindings([...played, "pieces, 20 min, plan", "G minor, 20 min, 50 clean"], ["1 minutes-sum"]);
  checkFindings(["2026-03-02, 70 min", "lesson, 30 min, plan", "D minor", "pieces", "E minor"], ["1 long-stretch"]);
});

test("over an hour in one sitting with no break, but not with others or in a lesson, nor on a day of rest", () => {
  checkFindings(["2026-03-02, 61 min"], ["1 long-stretch"]);
  checkFindings(["2026-03-02, 60 min"], []);
  checkFindings(["2026-03-02, 90 min", "pieces", "break"], []);
  checkFindings(["2026-03-02", "session, 61 min", "session, 20 min"], ["2 long-stretch"]);
  checkFindings(["2026-03-02, 2 h", "session, 60 min", "session, 60 min"], []);
  checkFindings(["2026-03-02", "pieces, 40 min", "fluency, 30 min"], ["1 long-stretch"]);
  checkFindings(["2026-03-02, 2 h", "together, 90 min"], []);
  checkFindings(["2026-03-02, 2 h", "lesson"], []);
  checkFindings(["2026-03-02, 3 h", "together, 90 min"], ["1 long-stretch"]);
  checkFindings(["2026-03-02, rest", "away, 90 min"], []);
});

test("what a line says that a week came to is none of its day; an amount in front of a pain is the day's total", () => {
  check(["2026-03-02", "D minor", "week 5h20"], ["0"]);
  check(["2026-03-02", "D minor", "20 min"], ["about 20"]);
  check(["2026-03-02", "D minor", "20 min. thumb sore"], ["about 20"]);
  const { sore } = journalOf(["2026-03-02", "D minor", "20 min. thumb sore"]).model(
    createDocument("2026-03-02\nD minor\n20 min. thumb sore").blocks[0]!,
  );
  expect(sore.map(({ words }) => words)).toEqual(["20 min. thumb sore"]);
});

test("minutes that cannot be", () => {
  checkFindings(
    ["2026-03-02, 0 min", "pieces, 1441 min", "D minor, 1 h 75"],
    ["1 bad-minutes", "2 bad-minutes", "3 bad-minutes"],
  );
});

test("a day line knows weekdays in any language, short or in capitals", () => {
  // 2026-03-06 is a Friday.
  for (const word of ["FRI", "fr", "FR", "Fr.", "Freitag", "FREITAG, 30 min", "vendredi", "vr", "venerdì", "viernes"])
    checkFindings([`2026-03-06 ${word}`, "D minor"], []);
  checkFindings(["2026-03-06 Samstag", "D minor"], ["1 wrong-weekday"]);
  checkFindings(["2026-03-06 so tired", "D minor"], ["1 unknown-term"]);
});
