import { describe, expect, test } from "vitest";
import type { Journal } from "../../server/journal/journal.ts";
import { type LineRead, readLine } from "../../server/plan/read-line.ts";
import { createDocument } from "../../server/syntax/document/document.ts";
import { day, journalOf } from "./written.ts";

// What becomes of a line that a plan would propose. Our own rules; the titles are invented.

const URI = "file:///j/a.practice";

function read(journal: Journal, text: string, date = "2026-03-10"): LineRead | undefined {
  return readLine({ journal, conventions: journal.conventions(URI), day: day(date) }, text);
}

describe("a line of a plan is read as it would be in the journal", () => {
  const journal = journalOf("2026-03-02\n  D minor, 8ths at 60 clean");

  test("with what is played in it", () => {
    const line = read(journal, "D minor, 8ths at 63, 66");
    expect(line?.attempts.map(({ rate }) => rate)).toEqual([126, 132]);
    expect(line?.exerciseKeys).toHaveLength(1);
    expect(read(journal, "D minor, 8ths at 63, 66", "2026-03-11")).toEqual(line);
  });

  test("where a check has something to say it is none", () => {
    expect(read(journal, "F# major: F# G# A# B C# D# F F#")).toBeUndefined();
  });
});

test("a title is one once it was written, by the day that it was written on", () => {
  const before = journalOf("2026-03-02\n  D minor, 8ths at 60 clean");
  expect(read(before, "Lantern dance")).toBeUndefined();
  const text = '2026-03-02\n  D minor, 8ths at 60 clean\n2026-03-05\n  "Lantern dance", at 60 clean';
  const after = before.with(URI, createDocument(text));
  expect(read(after, "Lantern dance")?.place).toBeDefined();
  expect(read(after, "Lantern dance", "2026-03-04")).toBeUndefined();
});

test("what is declared meanwhile is known", () => {
  const before = journalOf("2026-03-02\n  D minor, 8ths at 60 clean");
  expect(read(before, 'D minor, "zigzags"')).toBeUndefined();
  const after = before.with(URI, createDocument('pattern "zigzags": 1 3 2 4\n2026-03-02\n  D minor, 8ths at 60 clean'));
  expect(read(after, 'D minor, "zigzags"')).toBeDefined();
});
