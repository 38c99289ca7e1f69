import { describe, expect, test } from "vitest";
import { fingerChange } from "../../../server/features/commands/finger-change.ts";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import { fingersUnderCursor } from "../../../server/features/preview/fingers.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import type { PreviewFingers } from "../../../shared/preview.ts";
import { edited, journalOf, URI } from "../journal-text.ts";

// The fingerings are those of test/reference/recorder-fingerings.json. Invented journals.

const ALTO = "instrument alto recorder\n";

/** A journal whose last line is the entry, and that line. */
function journalWith(entry: string, head: string) {
  const text = `${head}2026-03-09\n${entry}`;
  return { text, journal: journalOf(text), line: text.split("\n").length - 1 };
}

/** What is told of the entry. */
function fingers(entry: string, head = ALTO): PreviewFingers | null {
  const { journal, line } = journalWith(entry, head);
  return fingersUnderCursor(journal, URI, line);
}

/** `E5 to F5: 2 fingers, in contrary motion`, a line for each. */
function check(entry: string, expected: readonly string[], head?: string): void {
  expect(fingers(entry, head)!.steps.map(({ name, movement }) => `${name}: ${movement}`)).toEqual(expected);
}

test("three steps of the line, the hardest first; fewer where it has no more", () => {
  check("F major, five notes", [
    "A4 to Bb4: 3 fingers, in contrary motion",
    "Bb4 to C5: 3 fingers",
    "F4 to G4: 1 finger",
  ]);
  check("F# major, full range", [
    "E#6 to F#6: 3 fingers and the bell, in contrary motion",
    "G#4 to A#4: 3 fingers, in contrary motion, with a half hole",
    "F#5 to G#5: 5 fingers, in contrary motion",
  ]);
  check("notes G5 A5, back and forth", ["G5 to A5: 4 fingers and the thumb, into the other register"]);
});

test("on the instrument that the line names", () =>
  check("C major, on tenor recorder, 3 notes", ["C4 to D4: 1 finger", "D4 to E4: 1 finger"]));

test("both fingerings, as charts write them and in words", () => {
  const { fingerings } = fingers("F# major, full range")!.steps[0]!;
  expect(fingerings).toEqual([
    { note: "E#6", chart: "Ø 1-- 45--", words: "thumb pinched, 1, 4 and 5" },
    { note: "F#6", chart: "Ø 1-3 4-6- bell", words: "thumb pinched, 1, 3, 4, 6 and the bell" },
  ]);
  expect(fingers("notes F#4 G5")!.steps[0]!.fingerings.map(({ words }) => words)).toEqual([
    "thumb, 1, 2, 3, 4, 5, 6 and half of 7",
    "thumb off and 2",
  ]);
});

test("where charts do not agree, a sentence says so", () => {
  expect(fingers("notes D6 D#6")!.steps[0]!.doubts).toEqual(["D#6 has other fingerings too."]);
  expect(fingers("F major, five notes")!.steps.flatMap(({ doubts }) => doubts)).toEqual([]);
});

test("with German fingering it says that nothing is known", () =>
  expect(fingers("C major", "instrument soprano recorder, german fingering\n")).toMatchObject({
    steps: [],
    sentence: "Hardest finger changes: not available for German fingering yet.",
    canIsolate: false,
  }));

test("nothing of other instruments, of what has no step, of a line without an entry", () => {
  for (const head of ["", "instrument oboe\n", 'instrument "my flute": D4 to B5\n'])
    expect(fingers("F major", head)).toBeNull();
  for (const line of ["F major, 1 notes", "long tones on F4", '"Gigue"', "-- a remark", ""])
    expect(fingers(line)).toBeNull();
});

describe("from the same function as", () => {
  const entries = ["F major, thirds, twelfth", "Bb melodic minor, full range", "G minor arpeggio, 2 octaves"];

  test.each(entries)("the hover: %s", (entry) => {
    const { journal, line } = journalWith(entry, ALTO);
    const hover = hoverAt(
      journal,
      URI,
      { line, character: 0 },
      { today: parseIsoDate("2026-03-09")!, explain: "none" },
    );
    const [hardest] = fingersUnderCursor(journal, URI, line)!.steps;
    expect(hover!.markdown).toContain(
      `Hardest finger change: ${hardest!.name}, \`${hardest!.fingerings[0]!.chart}\` to `,
    );
  });

  test.each(entries)("the command, which puts each of them into the journal by itself: %s", (entry) => {
    const { text, journal, line } = journalWith(entry, ALTO);
    const told = fingersUnderCursor(journal, URI, line)!;
    expect([told.canIsolate, told.place]).toEqual([true, { uri: URI, line }]);
    const put = told.steps.map((_, rank) => {
      const answer = fingerChange(journal, URI, { line, character: 0 }, { today: parseIsoDate("2026-03-09")!, rank });
      return answer.ok ? edited(text, answer.edits).split("\n").at(-1) : answer.reason;
    });
    const names = told.steps.map(({ name }) => name.replace(" to ", " "));
    expect(put).toEqual(names.map((name) => `notes ${name}, back and forth, slurred`));
  });
});

test("a step of a figure is told, and cannot be taken out of it", () =>
  expect(fingers("notes E5 F5, back and forth")).toMatchObject({ canIsolate: false }));
