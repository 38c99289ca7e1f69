import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { midi } from "../../../server/music/notes/note.ts";
import { notesToPlay } from "../../../server/music/patterns/notes-to-play.ts";
import { isDrawn, PATTERNS, parseCell, type Variant, variantsOf } from "../../../server/music/patterns/pattern.ts";
import {
  lengthFormula,
  mirrored,
  patternDegrees,
  playedDegrees,
  turnedForms,
} from "../../../server/music/patterns/pattern-forms.ts";
import { kindById } from "../../../server/music/scales/kinds.ts";
import reference from "../../reference/patterns.json" with { type: "json" };
import { MANY } from "../../support/random-runs.ts";

const words = (degrees: readonly number[]) => degrees.join(" ");

/** One form of a pattern over one octave of a seven-note scale: rising, unless told otherwise. */
function check(id: string, variant: Variant | undefined, expected: string, rising = true, T = 8): void {
  expect(words(patternDegrees(id, variant, T, rising)), `${id} ${variant ?? ""}`).toBe(expected);
}

const C = { letter: "C", alter: 0 } as const;
const arpeggio = { type: "chord", root: C, chord: "major", inversion: 0, broken: false } as const;

/** The degrees of C major that the notes of its arpeggio are. */
function scaleDegrees(played: readonly number[]): number[] {
  return played.map((place) => [1, 3, 5][(place - 1) % 3]! + 7 * Math.floor((place - 1) / 3));
}

/** How each line of the reference is said in our terms: the pattern and variant, or what else gives it. */
const LINES: Readonly<Record<string, readonly [id: string, variant?: Variant] | (() => readonly number[])>> = {
  straight_up: ["straight"],
  straight: () => playedDegrees("straight", undefined, 8, "up and down"),
  top_down: () => playedDegrees("straight", undefined, 8, "down and up"),
  five_note: () => playedDegrees("straight", undefined, 5, "up and down"),
  five_note_on_each: ["five notes on each"],
  "intervals:2": ["thirds"],
  "intervals:3": ["fourths"],
  "intervals:4": ["fifths"],
  "intervals:5": ["sixths"],
  "intervals:6": ["sevenths"],
  "intervals:7": ["octaves"],
  "intervals:9": ["tenths"],
  "intervals_alternating:2": ["thirds", "alternating"],
  "groups:3": ["threes"],
  "groups:4": ["fours"],
  "groups:5": ["fives"],
  "groups_linked_down:4": ["fours", "linked"],
  growing: ["growing"],
  growing_return: ["growing", "returning"],
  pedal: ["pedal"],
  pedal_top: () => patternDegrees("pedal", undefined, 8, false),
  triads: ["triads"],
  triads_alternating: ["triads", "alternating"],
  triads_broken: ["triads", "broken"],
  sevenths: ["seventh chords"],
  sevenths_alternating: ["seventh chords", "alternating"],
  arpeggio: () => scaleDegrees(notesToPlay({ subject: arpeggio }).degrees),
  "broken_chord:3": () =>
    scaleDegrees(notesToPlay({ subject: { ...arpeggio, broken: true }, direction: "up" }).degrees),
  "broken_chord:4": () => scaleDegrees(notesToPlay({ subject: arpeggio, pattern: "fours", direction: "up" }).degrees),
  upper_neighbour: ["upper neighbours"],
  lower_neighbour: ["lower neighbours"],
  turn: ["turns"],
  inverted_turn: ["inverted turns"],
  "skip:2": ["skips"],
};

describe("every line of test/reference/patterns.json, rising and mirrored", () => {
  const lines = reference.patterns.filter(({ id }) => id !== "chromatic_threes");
  test.each(lines)("$id", ({ id, T8, T8_descending_mirror: mirror }) => {
    const said = LINES[id]!;
    const isNamed = typeof said !== "function";
    expect(isNamed ? patternDegrees(said[0], said[1], 8, true) : said()).toEqual(T8);
    expect(isNamed ? patternDegrees(said[0], said[1], 8, false) : mirrored(said(), 8)).toEqual(mirror);
  });
  test("chromatic_threes, in semitones from the tonic", () => {
    const line = reference.patterns.find(({ id }) => id === "chromatic_threes")!;
    const subject = { type: "scale", tonic: C, kind: kindById("chromatic")! } as const;
    const { notes } = notesToPlay({ subject, pattern: "threes", direction: "up" });
    expect(notes.map((note) => midi(note) - 60)).toEqual(line.T8);
  });
  test("all 35 lines are there", () => expect(Object.keys(LINES)).toHaveLength(reference.patterns.length - 1));
});

test("the examples of the format page", () => {
  check("thirds", undefined, "8 6 7 5 6 4 5 3 4 2 3 1", false);
  check("octaves", undefined, "1 8 2 9 3 10 4 11 5 12 6 13 7 14 8 15", true, 15);
  check("tenths", undefined, "1 10 2 11 3 12 4 13 5 14 6 15", true, 15);
});

test("straight turns on one note, other patterns play both forms whole", () => {
  expect(words(playedDegrees("straight", undefined, 5, "up and down"))).toBe("1 2 3 4 5 4 3 2 1");
  expect(words(playedDegrees("straight", undefined, 5, "down and up"))).toBe("5 4 3 2 1 2 3 4 5");
  expect(words(playedDegrees("straight", undefined, 5, "up"))).toBe("1 2 3 4 5");
  expect(words(playedDegrees("straight", undefined, 5, "down"))).toBe("5 4 3 2 1");
  expect(words(playedDegrees("thirds", undefined, 5, "up and down"))).toBe("1 3 2 4 3 5 5 3 4 2 3 1");
  expect(words(playedDegrees("thirds", undefined, 5, "down and up"))).toBe("5 3 4 2 3 1 1 3 2 4 3 5");
  expect(words(playedDegrees("straight", undefined, 5, "back and forth"))).toBe("1 2 3 4 5 4 3 2 1");
});

test("a turn through the neighbours closes on the tonic", () => {
  const turned = (direction: "up and down" | "down and up") =>
    words(turnedForms("thirds", undefined, 8, direction)!.flatMap(({ degrees }) => [...degrees]));
  expect(turned("up and down")).toBe("1 3 2 4 3 5 4 6 5 7 6 8 7 9 8 6 7 5 6 4 5 3 4 2 3 1 2 0 1");
  expect(turned("down and up")).toBe("8 6 7 5 6 4 5 3 4 2 3 1 2 0 1 3 2 4 3 5 4 6 5 7 6 8 7 9 8");
  expect(turnedForms("thirds", undefined, 8, "up")).toBeUndefined();
  expect(turnedForms("straight", undefined, 8, "up and down")).toBeUndefined();
});

test("octaves and tenths go by the letter in scales of other sizes", () => {
  const pentatonic = { octave: 5, third: 2 };
  expect(words(patternDegrees("octaves", undefined, 11, true, pentatonic))).toBe("1 6 2 7 3 8 4 9 5 10 6 11");
  expect(words(patternDegrees("tenths", undefined, 11, true, pentatonic))).toBe("1 8 2 9 3 10 4 11");
});

test("a declared cell moves by its step, and drops what leaves the span", () => {
  const cell = (text: string, step?: number) => {
    const reading = parseCell(text, step);
    if (!reading.ok) throw new Error(reading.reason);
    return reading.cell;
  };
  expect(words(patternDegrees(cell("1 3 2 4"), undefined, 6, true))).toBe("1 3 2 4 2 4 3 5 3 5 4 6");
  expect(words(patternDegrees(cell("1 3 2 4", 2), undefined, 6, true))).toBe("1 3 2 4 3 5 4 6");
  expect(words(patternDegrees(cell("1, 0 1"), undefined, 4, true))).toBe("2 1 2 3 2 3 4 3 4");
  expect(words(patternDegrees(cell("1 8 10"), undefined, 11, false))).toBe("11 4 2 10 3 1");
  expect(words(patternDegrees(cell("1 9"), undefined, 8, true))).toBe("");
});

test("a cell that cannot be read says which word is to blame", () => {
  expect(parseCell("1 3 x 4")).toMatchObject({ ok: false, at: 2 });
  expect(parseCell("1 b3")).toMatchObject({ ok: false, at: 1 });
  expect(parseCell("1 99")).toMatchObject({ ok: false, at: 1, reason: expect.stringContaining("from -7 to 22") });
  expect([parseCell("-7 22").ok, parseCell("-8 1").ok, parseCell("1 23").ok]).toEqual([true, false, false]);
  expect(parseCell("1 2.5")).toMatchObject({ ok: false, at: 1 });
  expect(parseCell("  ")).toMatchObject({ ok: false });
  expect([0, 1.5, 15, Number.NaN].map((step) => parseCell("1 2", step))).toEqual(
    Array(4).fill({ ok: false, at: "step", reason: "the step is a whole number of degrees from 1 to 14" }),
  );
  expect(parseCell("1 ".repeat(65))).toMatchObject({ ok: false, at: 64 });
});

const anyPattern = fc.constantFrom(
  ...PATTERNS.filter((pattern) => !isDrawn(pattern)).flatMap(({ id, variants }) =>
    [undefined, ...variants].map((variant) => ({ id, variant })),
  ),
);
const anyIntervals = fc.constantFrom(
  { octave: 7, third: 2 },
  { octave: 5, third: 2 },
  { octave: 3, third: 1 },
  { octave: 12, third: 4 },
);

// `leaps` have no forms: test/music/patterns/leaps.test.ts.
test("every pattern stays inside its span, falls as its own mirror, and is as long as its formula says", () => {
  fc.assert(
    fc.property(anyPattern, fc.integer({ min: 0, max: 40 }), anyIntervals, ({ id, variant }, T, intervals) => {
      const rising = patternDegrees(id, variant, T, true, intervals);
      expect(rising.every((degree) => degree >= 1 && degree <= T)).toBe(true);
      expect(patternDegrees(id, variant, T, false, intervals)).toEqual(mirrored(rising, T));
      expect(mirrored(mirrored(rising, T), T)).toEqual(rising);
      expect(lengthFormula(id, T, variant, intervals)).toBe(rising.length);
    }),
    { seed: 41, numRuns: MANY },
  );
});

test("the length formulas of test/reference/patterns.json, for every T from 1 to 30", () => {
  const length = (id: string, T: number) => patternDegrees(id, undefined, T, true).length;
  const groups: Readonly<Record<string, number>> = { threes: 3, fours: 4, fives: 5 };
  const intervals: Readonly<Record<string, number>> = {
    thirds: 2,
    fourths: 3,
    fifths: 4,
    sixths: 5,
    sevenths: 6,
    octaves: 7,
    tenths: 9,
  };
  for (let T = 1; T <= 30; T++) {
    for (const [id, k] of Object.entries(intervals)) expect(length(id, T)).toBe(Math.max(0, 2 * (T - k)));
    for (const [id, n] of Object.entries(groups)) expect(length(id, T)).toBe(Math.max(0, n * (T - n + 1)));
    expect(length("growing", T)).toBe((T * (T + 1)) / 2 - 1);
    expect(length("pedal", T)).toBe(2 * (T - 1));
    expect(length("triads", T)).toBe(Math.max(0, 3 * (T - 4)));
    expect(length("seventh chords", T)).toBe(Math.max(0, 4 * (T - 6)));
    expect(length("turns", T)).toBe(Math.max(0, 4 * (T - 2)));
  }
});

test("names lead to one pattern each, and the variants are those of the reference", () => {
  const names = PATTERNS.flatMap((pattern) => pattern.names);
  expect(new Set(names).size).toBe(names.length);
  expect(names).not.toContain("8ths");
  expect([variantsOf("thirds"), variantsOf("triads"), variantsOf("fours"), variantsOf("growing")]).toEqual([
    ["alternating"],
    ["alternating", "broken"],
    ["linked"],
    ["returning"],
  ]);
  expect([variantsOf("pedal"), variantsOf("nothing such")]).toEqual([[], []]);
});
