import { describe, expect, test } from "vitest";
import { type LineRow, lineRows } from "../../../server/features/explain/line-rows.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { ENGLISH_NAMES } from "../../../server/music/notes/note-names.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";

const URI = "file:///j/a.practice";

function rowsOf(text: string, names?: typeof ENGLISH_NAMES): readonly LineRow[] {
  return lineRows(new Journal("file:///j", new Map([[URI, createDocument(text)]])), URI, names);
}

/** What is told of a line below a day, without what is null or empty. */
function check(line: string, expected: Partial<LineRow>) {
  const row = rowsOf(`2026-03-02\n${line}\n`)[1]!;
  const told = Object.entries(row).filter(([, value]) => value !== null && (!Array.isArray(value) || value.length > 0));
  expect(Object.fromEntries(told)).toEqual({ line: 1, ...expected });
}

describe("the kind of a line", () => {
  test("a scale", () => check("D minor", { kind: "exercise", subject: "D natural minor" }));
  test("a title", () => check('"Gigue"', { kind: "piece", subject: "Gigue" }));
  test("an activity", () => check("sight-reading", { kind: "activity", subject: "sight-reading" }));
  test("a phase", () => check("warm-up, 5 min", { kind: "heading", subject: "warm-up", minutes: 5 }));
  test("a break", () => check("break", { kind: "heading", subject: "break" }));
  test("a rest day", () => check("rest", { kind: "rest" }));
  test("a remark", () => check("-- the thumb is late", { kind: "remark" }));
  test("a question", () => check("ask: which trill", { kind: "question" }));
  test("the teacher's words", () => check("said: more air", { kind: "teacher" }));
  test("a sentence", () => check("It went well today and I liked it.", { kind: "remark" }));
  test("a declaration", () => check('piece "Gigue": D minor', { kind: "declaration", subject: "piece" }));
  test("set work", () => check('set "Gigue" until 2026-03-09', { kind: "set" }));
  test("a conflict marker", () => check("<<<<<<< ours", { kind: "fault" }));
  test("what is planned is set, too", () =>
    expect(rowsOf("2026-03-02\nplan\n  D minor\n").map(({ kind }) => kind)).toEqual(["date", "heading", "set"]));
});

test("a pattern, with its inversion and direction; straight is none", () => {
  check("D minor, straight", { kind: "exercise", subject: "D natural minor" });
  check("D minor arpeggio, 1st inversion, up", {
    kind: "exercise",
    subject: "D minor arpeggio",
    pattern: "1st inversion, up",
  });
});

test("how far it goes stands with the places, as typed", () =>
  check("D minor, 2 octaves, swing", {
    kind: "exercise",
    subject: "D natural minor",
    place: "2 octaves",
    articulation: "swung",
  }));

test("an outcome for each tempo, as typed, and what nothing was made of", () =>
  check("D minor, blorb, at 60, 66 clean, 72", {
    kind: "exercise",
    subject: "D natural minor",
    tempos: ["60", "66", "72"],
    outcomes: ["", "clean", ""],
    wordsLeft: ["blorb"],
  }));

test("subjects in names that are asked for", () => {
  const text = "names german\n2026-03-02\n  b-Moll\n";
  expect(rowsOf(text)[2]!.subject).toBe("b-Moll natürlich");
  expect(rowsOf(text, ENGLISH_NAMES)[2]!.subject).toBe("Bb natural minor");
});
