import { describe, expect, test } from "vitest";
import { lineRows } from "../../server/features/explain/line-rows.ts";
import { hoverAt } from "../../server/features/hover/hover.ts";
import { attemptsOfJournal } from "../../server/history/attempts.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import { applyChanges, createDocument } from "../../server/syntax/document/document.ts";

// Lines that begin with `same`, `ditto`, `"`: what the entry above says goes on in them. Common practice, no source.

const URI = "file:///j/journal.practice";

function journalOf(text: string): Journal {
  return new Journal("file:///j", new Map([[URI, createDocument(text)]]));
}

/** The last line of a day: its subject and how it was played, or `remark`. */
function last(day: string, head = ""): string {
  const { kind, subject, pattern, articulation, place, tempos, outcomes, minutes } = lineRows(
    journalOf(`${head}2026-03-02\n${day}`),
    URI,
  ).at(-1)!;
  if (kind === "remark") return kind;
  const terms = [pattern, articulation, place, tempos.join(" "), outcomes.join(" "), minutes && `${minutes} min`];
  return [subject, ...terms].filter(Boolean).join(", ");
}

describe("the subject above", () => {
  test.each([
    ["chromatic F to F, q=46\nsame, q=42, better", "F chromatic, 42, better"],
    ["chromatic F to F, q=46\nditto 42", "F chromatic, 42"],
    ["chromatic F to F, q=46\nidem, 42 clean", "F chromatic, 42, clean"],
    ["chromatic F to F, q=46\nagain at 42, clean", "F chromatic, 42, clean"],
    ['chromatic F to F, q=46\n" 42 clean', "F chromatic, 42, clean"],
    ['chromatic F to F, q=46\n", at 42', "F chromatic, 42"],
    ["Gavotte, bars 1-8, at 60\nsame, bars 9-16", "Gavotte, bars 9-16"],
    ["D minor at 60\n\nsome words between\nsame, 66 clean", "D natural minor, 66, clean"],
    ["D minor at 60\nsame, 66\nsame, 72", "D natural minor, 72"],
    ["long tones, 5 min\nsame, 3 min", "long tones, 3 min"],
  ])("%j", (day, expected) => expect(last(day)).toBe(expected));

  test.each([
    ["Gavotte, bars 1-8, at 60\nbars 9-16, 50 then 56", "Gavotte, bars 9-16, 50 56"],
    ["Gavotte, at 60\nbars 9-16 of it, slurred, at 50 clean", "Gavotte, slurred, bars 9-16, 50, clean"],
    ["Gavotte, at 60\nbars 9-16, 50\nbar 20 clean", "Gavotte, bar 20, clean"],
    ["D minor at 60\nbars 9-16, 50", "bars 9-16, 50"],
    ["bars 9-16 of it, 50 then 56", "remark"],
  ])("a place is of the piece above: %j", (day, expected) => expect(last(day)).toBe(expected));

  test("German", () =>
    expect(last("d-Moll, 60\ndito, 66 sauber", "names german\n")).toBe("d-Moll natürlich, 66, sauber"));
});

describe("how it was played goes on, but for what the line says itself", () => {
  test.each([
    ["D minor, slurred, at 60\nsame, 66", "D natural minor, slurred, 66"],
    ["D minor, slurred, at 60\nsame, tongued, 66", "D natural minor, tongued, 66"],
    ["D minor, slurred, at 60, tongued at 60\nsame, 66", "D natural minor, tongued, 66"],
    ["thirds in D minor at 60\nsame, 66 clean", "D natural minor, thirds, 66, clean"],
    ["D minor, thirds, at 60\nsame, in fourths, 66", "D natural minor, fourths, 66"],
  ])("%j", (day, expected) => expect(last(day)).toBe(expected));
});

describe("the terms above, beside a subject of its own", () => {
  test.each([
    ["F major, slurred, 60\nsame in G", "G major, slurred"],
    ["F harmonic minor, thirds, 60\nsame in G, 66", "G harmonic minor, thirds, 66"],
    ["F major arpeggio, slurred, 60\nsame in G", "G major arpeggio, slurred"],
    ["F major, slurred, 60\nditto, D minor, 66 clean", "D natural minor, slurred, 66, clean"],
    ["Gavotte, bars 1-8, at 60\nsame in G", "remark"],
  ])("%j", (day, expected) => expect(last(day)).toBe(expected));

  test("`again` says that it was played before, and brings nothing", () =>
    expect(last("F major, slurred\nagain G major at 66")).toBe("G major, 66"));
});

describe("no practice", () => {
  test.each([
    ["no entry stands above", "same, 66 clean"],
    ["nothing is said of it", "D minor at 60\nsame"],
    ["a sentence", "D minor at 60\nsame problem with the slurs"],
    ["a wish", "D minor at 60\nsame, must be slurred"],
  ])("%s", (_, day) => expect(last(day)).toBe("remark"));

  test("the entry of another day is not the one above", () =>
    expect(last("D minor at 60\n2026-03-03\nsame, 66 clean")).toBe("remark"));

  test("a title that begins with the word", () =>
    expect(last("D minor at 60\nSame Old Story, bars 1-8, clean")).toBe("Same Old Story, bars 1-8, clean"));

  test("a title in quotes is no mark", () =>
    expect(last('D minor at 60\n"Gigue", at 66 clean')).toBe("Gigue, 66, clean"));
});

/** `subject rate reached` of each attempt. */
function attempts(journal: Journal): readonly string[] {
  return attemptsOfJournal(journal).map(({ subject, tonguing, rate, reached }) =>
    [subject, tonguing, rate, reached].join(" "),
  );
}

test("the history counts it as what it is", () =>
  expect(attempts(journalOf("2026-03-02\nF major, slurred, at 60 clean\nsame, 66 no\nsame in G, 60"))).toEqual([
    "F major slurred 60 true",
    "F major slurred 66 false",
    "G major slurred 60 ",
  ]));

test("the hover tells what is meant", () => {
  const journal = journalOf("2026-03-02\nF major, slurred, at 60 clean\nsame, 66");
  const found = hoverAt(
    journal,
    URI,
    { line: 2, character: 1 },
    { today: parseIsoDate("2026-03-02")!, explain: "none" },
  );
  expect(found!.markdown).toContain("F major");
  expect(found!.range).toEqual({ start: { line: 2, character: 0 }, end: { line: 2, character: 4 } });
});

/** The attempts after an edit, which are those of the same text read afresh. */
function edited(before: string, line: number, text: string): readonly string[] {
  const journal = journalOf(before);
  attempts(journal);
  const lines = before.split("\n");
  const range = { start: { line, character: 0 }, end: { line, character: lines[line]!.length } };
  const after = journal.with(URI, applyChanges(journal.files.get(URI)!, [{ range, text }]));
  const told = attempts(after);
  expect(told).toEqual(attempts(journalOf(lines.with(line, text).join("\n"))));
  return told;
}

test("an edit of the line above tells anew, also in a day of very many lines", () => {
  const day = "2026-03-02\nF major at 60\nsame, 66\n";
  expect(edited(day, 1, "G major at 60")).toEqual(["G major single 60 ", "G major single 66 "]);
  expect(edited(day, 1, "just words")).toEqual([]);
  expect(edited(day + "-- so\n".repeat(120), 1, "G major at 60")).toEqual(["G major single 60 ", "G major single 66 "]);
});
