import type { Cell } from "./cell.ts";

export { type Cell, type CellReading, parseCell } from "./cell.ts";

export type Variant = "alternating" | "returning" | "linked" | "broken";

export interface Pattern {
  readonly id: string;
  /** All ways to say it in English; the first is the one to show. */
  readonly names: readonly string[];
  /** How its rising figures come about. */
  readonly form:
    | { readonly type: "cell"; readonly cell: Cell; readonly closes?: boolean }
    /** 1 and the same degree an octave up, or the third above that, in a scale of any size. */
    | { readonly type: "octave"; readonly and: "nothing" | "third" }
    /** 1 2, 1 2 3, 1 2 3 4 … */
    | { readonly type: "growing" }
    /** 1 2, 1 3, 1 4 … */
    | { readonly type: "pedal" }
    /** No figures: an order that is drawn for the day, see `leaps.ts`. */
    | { readonly type: "drawn" };
  readonly variants: readonly Variant[];
  readonly sentence: string;
}

/** What the letters say about the degrees of a scale or chord: where its octave and its third lie, counted from 1. */
export interface DegreeIntervals {
  /** Degrees to the octave: 7, or 5 in a pentatonic scale, 3 in a triad. */
  readonly octave: number;
  /** Degrees to the third: 2, or 1 in a triad. */
  readonly third: number;
}

/** All patterns that need no declaration. Common practice, no source; worked out in test/reference/patterns.json. */
export const PATTERNS: readonly Pattern[] = [
  {
    id: "straight",
    names: ["straight"],
    form: { type: "cell", cell: { degrees: [1], step: 1 } },
    variants: [],
    sentence: "Straight: note after note.",
  },
  {
    id: "thirds",
    names: [
      "thirds",
      "3rds",
      "in thirds",
      "in 3rds",
      "broken thirds",
      "broken 3rds",
      "diatonic thirds",
      "diatonic 3rds",
    ],
    form: { type: "cell", cell: { degrees: [1, 3], step: 1 } },
    variants: ["alternating"],
    sentence: "Thirds: each note and the third above it, 1 3 2 4.",
  },
  {
    id: "fourths",
    names: [
      "fourths",
      "4ths",
      "in fourths",
      "in 4ths",
      "broken fourths",
      "broken 4ths",
      "diatonic fourths",
      "diatonic 4ths",
    ],
    form: { type: "cell", cell: { degrees: [1, 4], step: 1 } },
    variants: ["alternating"],
    sentence: "Fourths: each note and the fourth above it, 1 4 2 5.",
  },
  {
    id: "fifths",
    names: [
      "fifths",
      "5ths",
      "in fifths",
      "in 5ths",
      "broken fifths",
      "broken 5ths",
      "diatonic fifths",
      "diatonic 5ths",
    ],
    form: { type: "cell", cell: { degrees: [1, 5], step: 1 } },
    variants: ["alternating"],
    sentence: "Fifths: each note and the fifth above it, 1 5 2 6.",
  },
  {
    id: "sixths",
    names: [
      "sixths",
      "6ths",
      "in sixths",
      "in 6ths",
      "broken sixths",
      "broken 6ths",
      "diatonic sixths",
      "diatonic 6ths",
    ],
    form: { type: "cell", cell: { degrees: [1, 6], step: 1 } },
    variants: ["alternating"],
    sentence: "Sixths: each note and the sixth above it, 1 6 2 7.",
  },
  {
    id: "sevenths",
    names: ["sevenths", "7ths", "in sevenths", "in 7ths", "broken sevenths", "broken 7ths"],
    form: { type: "cell", cell: { degrees: [1, 7], step: 1 } },
    variants: ["alternating"],
    sentence: "Sevenths: each note and the seventh above it, 1 7 2 8.",
  },
  {
    id: "octaves",
    names: ["octaves", "in octaves", "broken octaves", "octave leaps"],
    form: { type: "octave", and: "nothing" },
    variants: ["alternating"],
    sentence: "Octaves: each note and its octave, 1 8 2 9.",
  },
  {
    id: "tenths",
    names: ["tenths", "10ths", "in tenths", "in 10ths", "broken tenths", "broken 10ths"],
    form: { type: "octave", and: "third" },
    variants: ["alternating"],
    sentence: "Tenths: each note and the tenth above it, 1 10 2 11.",
  },
  {
    id: "threes",
    names: ["threes", "in threes", "in 3s", "groups of three", "groups of 3", "three-note groups"],
    form: { type: "cell", cell: { degrees: [1, 2, 3], step: 1 } },
    variants: ["linked"],
    sentence: "Threes: three notes in a row from each note, 1 2 3, 2 3 4.",
  },
  {
    id: "fours",
    names: ["fours", "in fours", "in 4s", "groups of four", "groups of 4", "four-note groups"],
    form: { type: "cell", cell: { degrees: [1, 2, 3, 4], step: 1 } },
    variants: ["linked"],
    sentence: "Fours: four notes in a row from each note, 1 2 3 4, 2 3 4 5.",
  },
  {
    id: "fives",
    names: ["fives", "in fives", "in 5s", "groups of five", "groups of 5", "five-note groups"],
    form: { type: "cell", cell: { degrees: [1, 2, 3, 4, 5], step: 1 } },
    variants: ["linked"],
    sentence: "Fives: five notes in a row from each note, 1 2 3 4 5, 2 3 4 5 6.",
  },
  {
    id: "growing",
    names: ["growing"],
    form: { type: "growing" },
    variants: ["returning"],
    sentence: "Growing: from the first note each time, one note further, 1 2, 1 2 3, 1 2 3 4.",
  },
  {
    id: "pedal",
    names: ["pedal"],
    form: { type: "pedal" },
    variants: [],
    sentence: "Pedal: the first note before each of the others, 1 2 1 3 1 4.",
  },
  {
    id: "triads",
    names: ["triads", "in triads", "diatonic triads"],
    form: { type: "cell", cell: { degrees: [1, 3, 5], step: 1 } },
    variants: ["alternating", "broken"],
    sentence: "Triads: the triad on each note, 1 3 5, 2 4 6.",
  },
  {
    id: "seventh chords",
    names: ["seventh chords", "7th chords", "in seventh chords", "in 7th chords", "diatonic seventh chords"],
    form: { type: "cell", cell: { degrees: [1, 3, 5, 7], step: 1 } },
    variants: ["alternating"],
    sentence: "Seventh chords: the seventh chord on each note, 1 3 5 7, 2 4 6 8.",
  },
  {
    id: "upper neighbours",
    names: [
      "upper neighbours",
      "upper neighbors",
      "upper neighbour notes",
      "upper neighbor notes",
      "upper auxiliaries",
    ],
    form: { type: "cell", cell: { degrees: [1, 2, 1], step: 1 } },
    variants: [],
    sentence: "Upper neighbours: each note, the one above it, and back, 1 2 1, 2 3 2.",
  },
  {
    id: "lower neighbours",
    names: [
      "lower neighbours",
      "lower neighbors",
      "lower neighbour notes",
      "lower neighbor notes",
      "lower auxiliaries",
    ],
    form: { type: "cell", cell: { degrees: [2, 1, 2], step: 1 } },
    variants: [],
    sentence: "Lower neighbours: each note, the one below it, and back, 2 1 2, 3 2 3.",
  },
  {
    id: "turns",
    names: ["turns", "in turns"],
    form: { type: "cell", cell: { degrees: [3, 2, 1, 2], step: 1 } },
    variants: [],
    sentence: "Turns: around each note from above, 3 2 1 2, 4 3 2 3.",
  },
  {
    id: "inverted turns",
    names: ["inverted turns", "in inverted turns"],
    form: { type: "cell", cell: { degrees: [1, 2, 3, 2], step: 1 } },
    variants: [],
    sentence: "Inverted turns: around each note from below, 1 2 3 2, 2 3 4 3.",
  },
  {
    id: "five notes on each",
    names: ["five notes on each", "5 notes on each"],
    form: { type: "cell", cell: { degrees: [1, 2, 3, 4, 5, 4, 3, 2], step: 1 }, closes: true },
    variants: [],
    sentence: "Five notes on each: five notes up and down from each note, 1 2 3 4 5 4 3 2, 2 3 4 5 6 5 4 3.",
  },
  {
    id: "skips",
    names: ["skips", "in skips"],
    form: { type: "cell", cell: { degrees: [1], step: 2 } },
    variants: [],
    sentence: "Skips: every second note, 1 3 5 7.",
  },
  {
    id: "leaps",
    names: ["leaps", "in leaps"],
    form: { type: "drawn" },
    variants: [],
    sentence:
      "Leaps: every note once, from the tonic and back to it, by leaps, in an order that each day draws anew; the same all day. A direction changes nothing here.",
  },
];

/** A variant and what it does to a pattern. */
export const VARIANTS: readonly {
  readonly id: Variant;
  readonly names: readonly string[];
  readonly sentence: string;
}[] = [
  { id: "alternating", names: ["alternating"], sentence: "Alternating: every second figure turned round." },
  { id: "returning", names: ["returning"], sentence: "Returning: each figure goes back to where it began." },
  {
    id: "linked",
    names: ["linked"],
    sentence: "Linked: every second figure turned round, so that each leads on by step.",
  },
  { id: "broken", names: ["broken"], sentence: "Broken: 1 5 3 5 on each note, the fifth before the third." },
];

export function patternById(id: string): Pattern | undefined {
  return PATTERNS.find((pattern) => pattern.id === id);
}

/** The variants that a pattern has; none for an unknown id. */
export function variantsOf(id: string): readonly Variant[] {
  return patternById(id)?.variants ?? [];
}

/** Whether the order of a pattern is drawn for the day, so that it has neither figures nor forms. */
export function isDrawn(pattern: string | Pattern | Cell | undefined): boolean {
  const what = typeof pattern === "string" ? patternById(pattern) : pattern;
  return what !== undefined && "form" in what && what.form.type === "drawn";
}
