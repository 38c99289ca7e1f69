import { expect, test } from "vitest";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { journalOf, URI } from "../journal-text.ts";

// One line on the hardest step, with fingerings of test/reference/recorder-fingerings.json. Invented journals.

const TODAY = parseIsoDate("2026-04-06")!;
const ALTO = "instrument alto recorder\n";

/** The paragraphs of the hover at the mark `‸`. */
function paragraphs(marked: string, head = ALTO, explain: "none" | "both" = "none"): readonly string[] {
  const lines = (head + marked.split("‸")[0]!).split("\n");
  const position = { line: lines.length - 1, character: lines.at(-1)!.length };
  const found = hoverAt(journalOf(head + marked.replace("‸", "")), URI, position, { today: TODAY, explain });
  return found!.markdown.split("\n\n");
}

/** What is said of the hardest step, if anything is. */
function hardest(entry: string, head?: string): string | undefined {
  const lines = paragraphs(`2026-04-06\n${entry}`, head).filter((each) => each.startsWith("Hardest finger change"));
  expect(lines.length).toBeLessThanOrEqual(1);
  return lines[0];
}

test("it comes after the notes, before the weeks", () => {
  const text = `2026-04-05\n  F major, slurred, at 60 clean\n2026-04-06\n  F ma‸jor, slurred\n`;
  expect(paragraphs(text, ALTO, "both").slice(4, 7)).toEqual([
    "F G A Bb C D E F; one flat.",
    "Hardest finger change: A4 to Bb4, `0 123 45--` to `0 123 4-67`: 3 fingers, in contrary motion.",
    expect.stringContaining("| Week of |"),
  ]);
});

test("what was not practised yet, or lies ahead, has it too", () => {
  expect(paragraphs("2026-04-06 plan\nF ma‸jor, five notes").slice(1)).toEqual([
    "Not practised yet.",
    hardest("F ma‸jor, five notes"),
  ]);
  expect(paragraphs("2026-05-01\nF ma‸jor, five notes, at 60 clean").slice(1)).toEqual([
    expect.stringContaining("days in the future are not counted"),
    hardest("F ma‸jor, five notes"),
  ]);
});

test("further theory comes below it", () => {
  const told = paragraphs("2026-04-06 plan\nF ma‸jor, five notes", ALTO, "both");
  expect(told[3]).toMatch(/^Hardest finger change/);
  expect(told[4]).toMatch(/^Relative: D natural minor/);
});

test("it is that of the pattern, over the span and on the instrument that the entry names", () => {
  expect(hardest("F ma‸jor, thirds, five notes")).toContain("Bb4 to A4, `0 123 4-67` to `0 123 45--`:");
  expect(hardest("F ma‸jor, fourths, five notes")).toContain("Bb4 to G4, `0 123 4-67` to `0 123 456-`:");
  expect(hardest("C ma‸jor, five notes, on tenor recorder")).toBe(
    "Hardest finger change: E4 to F4, `0 123 45--` to `0 123 4-67`: 3 fingers, in contrary motion.",
  );
  expect(hardest("G minor arpe‸ggio")).toMatch(/^Hardest finger change: G4 to Bb4, /);
  expect(hardest("notes E5‸ F5, back and forth")).toContain("E5 to F5, `0 1-- ----` to `0 -2- ----`: 2 fingers");
  expect(hardest("trill G5‸ with A5, slow")).toContain("into the other register");
});

test("where charts do not agree, that is said", () => {
  expect(hardest("notes D6‸ D#6")).toBe(
    "Hardest finger change: D6 to D#6, `Ø 12- ----` to `Ø 12- -56-`: 2 fingers, over the edge of the third register; D#6 has other fingerings too.",
  );
});

// The charts: test/reference/recorder-fingerings.json.
test("an easier fingering of a chart is offered with the charts that have it", () => {
  expect(hardest("notes E5‸ F5, back and forth")).toBe(
    "Hardest finger change: E5 to F5, `0 1-- ----` to `0 -2- ----`: 2 fingers, in contrary motion; easier with `0 -23 ----` for E5: 1 finger (from the Recorder Home Page and a blog's chart).",
  );
  expect(hardest("notes G5‸ G#5, back and forth")).toBe(
    "Hardest finger change: G5 to G#5, `- -2- ----` to `- -23 456-`: 4 fingers; easier with `- 123 4567` for G5: 2 fingers (from the Recorder Home Page and a blog's chart).",
  );
  expect(hardest("notes F#4‸ G#4, back and forth")).toContain(": 2 fingers, with 2 half holes.");
});

test("with German fingering it says once that nothing is known", () => {
  expect(hardest("C ma‸jor", "instrument soprano recorder, german fingering\n")).toBe(
    "Hardest finger change: not available for German fingering yet.",
  );
});

test("nothing is said of other instruments, of none, nor of what has no step", () => {
  expect(hardest("F ma‸jor", "")).toBeUndefined();
  expect(hardest("F ma‸jor", "instrument bassoon\n")).toBeUndefined();
  expect(hardest("F ma‸jor, on oboe")).toBeUndefined();
  expect(hardest("F ma‸jor", 'instrument "my flute": D4 to B5\n')).toBeUndefined();
  for (const entry of [
    "notes E5‸ F",
    "notes E5‸",
    "long tones‸ on F4 C5",
    "sight-read‸ing",
    '"Gig‸ue"',
    "C major‸ > F major",
  ]) {
    expect([entry, hardest(entry)]).toEqual([entry, undefined]);
    const german = hardest(entry, "instrument alto recorder, german fingering\n");
    expect([entry, german]).toEqual([entry, undefined]);
  }
});
