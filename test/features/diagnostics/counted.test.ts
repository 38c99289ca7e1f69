import { describe, expect, test } from "vitest";
import { diagnosticsOf, readAhead } from "../../../server/features/diagnostics/diagnostics.ts";
import type { Diagnostic } from "../../../server/features/types.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { applyChanges, createDocument } from "../../../server/syntax/document/document.ts";
import { faultyText } from "../../support/faulty-text.ts";

// A file that was read ahead has what will not be told only counted, and tells what it tells without.

const TODAY = parseIsoDate("2026-03-10")!;
const URI = "file:///journal/a.practice";

function journalOf(texts: Readonly<Record<string, string>>): Journal {
  const files = Object.entries(texts).map(([name, text]) => [`file:///journal/${name}`, createDocument(text)] as const);
  return new Journal("file:///journal", new Map(files));
}

function told(journal: Journal): readonly Diagnostic[] {
  return diagnosticsOf(journal, URI, TODAY);
}

function toldAhead(journal: Journal): readonly Diagnostic[] {
  for (const uri of journal.files.keys()) readAhead(journal, uri, TODAY);
  return told(journal);
}

/** Days of one line each, so many, the first on a date. */
function days(first: string, count: number, line: (i: number) => string): string {
  const at = (i: number): string => new Date(Date.parse(first) + i * 86_400_000).toISOString().slice(0, 10);
  return Array.from({ length: count }, (_, i) => `${at(i)}\n  ${line(i)}\n`).join("");
}

const WRONG = "F# major: F# G# A# B C# D# F F#";
const FREE = "quarz lomber vintel";
const FILES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "all kinds": { "a.practice": faultyText(300_000) },
  "hints first, errors last": {
    "a.practice": days("2020-01-01", 1500, () => FREE) + days("2024-03-01", 500, () => WRONG),
  },
  "hints alone": { "a.practice": days("2020-01-01", 1500, (i) => `${FREE} ${i}`) },
  "hints that a title elsewhere takes back": {
    "a.practice": days("2020-01-01", 1500, () => FREE),
    "b.practice": "2019-01-01\n  Quarz Lomber Vintel, bars 1-8, at 60 clean\n",
  },
  "hints that a title takes back from some day on": {
    "a.practice": days("2020-01-01", 2500, () => FREE),
    "b.practice": "2022-01-01\n  Quarz Lomber Vintel, bars 1-8, at 60 clean\n",
  },
  "more than is told by two kinds together": {
    "a.practice": days("2020-01-01", 1800, (i) => (i % 3 === 0 ? WRONG : FREE)),
  },
  "days twice": {
    "a.practice": days("2020-01-01", 700, () => WRONG) + days("2020-01-01", 700, () => WRONG),
  },
};

describe("a file that was read ahead", () => {
  test.each(Object.keys(FILES))("%s", (name) => {
    const plain = told(journalOf(FILES[name]!));
    expect(plain.length).toBeGreaterThan(0);
    expect(toldAhead(journalOf(FILES[name]!))).toEqual(plain);
  });

  test("tells the rest once what came first is mended", () => {
    const text = days("2020-01-01", 1200, () => WRONG);
    const journal = journalOf({ "a.practice": text });
    expect(toldAhead(journal).at(-1)!.message).toContain("more in this file");
    const start = { line: 0, character: 0 };
    const change = { range: { start, end: { line: 800, character: 0 } }, text: "" };
    const after = applyChanges(journal.files.get(URI)!, [change]);
    const mended = told(journal.with(URI, after));
    expect(mended).toEqual(told(journalOf({ "a.practice": text.split("\n").slice(800).join("\n") })));
    expect(mended.length).toBe(800);
  });
});
