import type { Cell } from "./cell.ts";
import type { Direction } from "./reach.ts";

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
    | { readonly type: "pedal" };
  readonly variants: readonly Variant[];
  readonly sentence: string;
}

/** What the letters say about the degrees of a scale or chord: where its octave and its third lie, counted from 1. */
export interface Rungs {
  /** Degrees to the octave: 7, or 5 in a pentatonic scale, 3 in a triad. */
  readonly octave: number;
  /** Degrees to the third: 2, or 1 in a triad. */
  readonly third: number;
}

const SEVEN_NOTES: Rungs = { octave: 7, third: 2 };

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
    names: ["thirds", "3rds", "in thirds", "in 3rds", "broken thirds", "broken 3rds"],
    form: { type: "cell", cell: { degrees: [1, 3], step: 1 } },
    variants: ["alternating"],
    sentence: "Thirds: each note and the third above it, 1 3 2 4.",
  },
  {
    id: "fourths",
    names: ["fourths", "4ths", "in fourths", "in 4ths", "broken fourths", "broken 4ths"],
    form: { type: "cell", cell: { degrees: [1, 4], step: 1 } },
    variants: ["alternating"],
    sentence: "Fourths: each note and the fourth above it, 1 4 2 5.",
  },
  {
    id: "fifths",
    names: ["fifths", "5ths", "in fifths", "in 5ths", "broken fifths", "broken 5ths"],
    form: { type: "cell", cell: { degrees: [1, 5], step: 1 } },
    variants: ["alternating"],
    sentence: "Fifths: each note and the fifth above it, 1 5 2 6.",
  },
  {
    id: "sixths",
    names: ["sixths", "6ths", "in sixths", "in 6ths", "broken sixths", "broken 6ths"],
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
    names: ["octaves", "in octaves", "broken octaves"],
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
    names: ["threes", "in threes", "groups of three", "groups of 3"],
    form: { type: "cell", cell: { degrees: [1, 2, 3], step: 1 } },
    variants: ["linked"],
    sentence: "Threes: three notes in a row from each note, 1 2 3, 2 3 4.",
  },
  {
    id: "fours",
    names: ["fours", "in fours", "groups of four", "groups of 4"],
    form: { type: "cell", cell: { degrees: [1, 2, 3, 4], step: 1 } },
    variants: ["linked"],
    sentence: "Fours: four notes in a row from each note, 1 2 3 4, 2 3 4 5.",
  },
  {
    id: "fives",
    names: ["fives", "in fives", "groups of five", "groups of 5"],
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
    names: ["triads", "in triads"],
    form: { type: "cell", cell: { degrees: [1, 3, 5], step: 1 } },
    variants: ["alternating", "broken"],
    sentence: "Triads: the triad on each note, 1 3 5, 2 4 6.",
  },
  {
    id: "seventh chords",
    names: ["seventh chords", "7th chords", "in seventh chords", "in 7th chords"],
    form: { type: "cell", cell: { degrees: [1, 3, 5, 7], step: 1 } },
    variants: ["alternating"],
    sentence: "Seventh chords: the seventh chord on each note, 1 3 5 7, 2 4 6 8.",
  },
  {
    id: "upper neighbours",
    names: ["upper neighbours", "upper neighbors"],
    form: { type: "cell", cell: { degrees: [1, 2, 1], step: 1 } },
    variants: [],
    sentence: "Upper neighbours: each note, the one above it, and back, 1 2 1, 2 3 2.",
  },
  {
    id: "lower neighbours",
    names: ["lower neighbours", "lower neighbors"],
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

/** The broken form of triads. */
const BROKEN: Cell = { degrees: [1, 5, 3, 5], step: 1 };

/** The most figures that any pattern is asked for; a guard, far above what an instrument can play. */
const MOST_FIGURES = 256;

export function patternById(id: string): Pattern | undefined {
  return PATTERNS.find((pattern) => pattern.id === id);
}

/** The variants that a pattern has; none for an unknown id. */
export function variantsOf(id: string): readonly Variant[] {
  return patternById(id)?.variants ?? [];
}

/** Each degree as far below T as it was above 1. */
export function mirrored(degrees: readonly number[], T: number): number[] {
  return degrees.map((degree) => T + 1 - degree);
}

/** The cell moved up by its step, each time that it lies inside 1 to `top`. */
function movedCells({ degrees, step }: Cell, top: number): number[][] {
  const moved: number[][] = [];
  const lowest = Math.min(...degrees);
  const highest = Math.max(...degrees);
  for (let shift = 0; highest + shift <= top && moved.length < MOST_FIGURES; shift += step) {
    if (lowest + shift >= 1) moved.push(degrees.map((degree) => degree + shift));
  }
  return moved;
}

function count(from: number, to: number): number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, index) => from + index);
}

/** Each figure but the first two-note one starts where the one before it came back: 1 2 1, 2 1, 2 3 2 1, 2 3 4 3 2 1. */
function growingReturning(top: number): number[][] {
  if (top < 2) return [];
  return [[1, 2, 1], ...count(2, top).map((peak) => [...count(2, peak), ...count(1, peak - 1).reverse()])];
}

function octaveOrTenth(and: "nothing" | "third", rungs: Rungs): number {
  return rungs.octave + (and === "third" ? rungs.third : 0);
}

function formFigures(pattern: Pattern, variant: Variant | undefined, top: number, rungs: Rungs): number[][] {
  const { form } = pattern;
  switch (form.type) {
    case "growing":
      if (variant === "returning") return growingReturning(top);
      return count(2, top).map((peak) => count(1, peak));
    case "pedal":
      return count(2, top).map((degree) => [1, degree]);
    case "octave":
      return movedCells({ degrees: [1, 1 + octaveOrTenth(form.and, rungs)], step: 1 }, top);
    case "cell":
      return movedCells(variant === "broken" ? BROKEN : form.cell, top);
  }
}

/** The rising figures of a pattern from 1 up to `top`, in order. */
function risingFigures(what: Pattern | Cell, variant: Variant | undefined, top: number, rungs: Rungs): number[][] {
  if ("degrees" in what) return movedCells(what, top);
  const known = variant !== undefined && what.variants.includes(variant) ? variant : undefined;
  const figures = formFigures(what, known, top, rungs);
  if (known !== "alternating" && known !== "linked") return figures;
  return figures.map((figure, index) => (index % 2 === 0 ? figure : figure.toReversed()));
}

function resolved(pattern: string | Pattern | Cell): Pattern | Cell {
  if (typeof pattern !== "string") return pattern;
  const known = patternById(pattern);
  if (!known) throw new RangeError(`no pattern has the id ${pattern}`);
  return known;
}

/**
 * The degrees of one rising or falling form over the degrees 1 to `T`; the falling form is the mirror of the rising one.
 *
 * @param pattern a pattern, its id from `PATTERNS` (any other text is a programming error), or a declared cell
 * @param variant one that the pattern has; another is passed over
 * @param rungs where the octave and the third lie, which `octaves` and `tenths` go by; seven notes by default
 */
export function patternDegrees(
  pattern: string | Pattern | Cell,
  variant: Variant | undefined,
  T: number,
  rising: boolean,
  rungs = SEVEN_NOTES,
): number[] {
  const what = resolved(pattern);
  const figures = risingFigures(what, variant, T, rungs);
  const degrees = figures.flat();
  if ("form" in what && what.form.type === "cell" && what.form.closes && figures.length > 0) {
    degrees.push(figures.at(-1)![0]!);
  }
  return rising ? degrees : mirrored(degrees, T);
}

/** One half of an exercise. `falling` tells which notes it takes in a scale that differs going down. */
export interface PlayedForm {
  readonly degrees: readonly number[];
  readonly falling: boolean;
}

/** The forms of a pattern in the order in which they are played; `straight` does not repeat the note it turns on. */
export function playedForms(
  pattern: string | Pattern | Cell,
  variant: Variant | undefined,
  T: number,
  direction: Direction,
  rungs = SEVEN_NOTES,
): PlayedForm[] {
  const what = resolved(pattern);
  const rising = { degrees: patternDegrees(what, variant, T, true, rungs), falling: false };
  const falling = { degrees: patternDegrees(what, variant, T, false, rungs), falling: true };
  if (direction === "up") return [rising];
  if (direction === "down") return [falling];
  const [first, second] = direction === "down and up" ? [falling, rising] : [rising, falling];
  const turnsOnOneNote = "id" in what && what.id === "straight";
  return [first, turnsOnOneNote ? { ...second, degrees: second.degrees.slice(1) } : second];
}

/** The degrees of an exercise as played, over the degrees 1 to `T`. */
export function playedDegrees(
  pattern: string | Pattern | Cell,
  variant: Variant | undefined,
  T: number,
  direction: Direction,
  rungs = SEVEN_NOTES,
): number[] {
  return playedForms(pattern, variant, T, direction, rungs).flatMap(({ degrees }) => [...degrees]);
}

/**
 * Up and down (or down and up) with a turn through the neighbours: one figure more at either end, closing on the note it
 * began from. Thirds over one octave: 1 3 … 6 8 7 9 8 6 … 3 1 2 0 1. Nothing for `straight`.
 */
export function turnedForms(
  pattern: string | Pattern | Cell,
  variant: Variant | undefined,
  T: number,
  direction: Direction,
  rungs = SEVEN_NOTES,
): PlayedForm[] | undefined {
  const what = resolved(pattern);
  if (direction === "up" || direction === "down" || ("id" in what && what.id === "straight")) return undefined;
  const figures = risingFigures(what, variant, T + 1, rungs);
  if (figures.length === 0) return undefined;
  const rising = figures.flat();
  const falling = mirrored(rising, T);
  if (direction === "down and up") {
    return [
      { degrees: falling, falling: true },
      { degrees: [...rising, T], falling: false },
    ];
  }
  return [
    { degrees: rising, falling: false },
    { degrees: [...falling, 1], falling: true },
  ];
}

/**
 * How many notes one form of a pattern has over `T` degrees, worked out without playing it. The formulas stand in
 * test/reference/patterns.json; `rungs` as in `patternDegrees`.
 */
export function lengthFormula(id: string, T: number, variant?: Variant, rungs = SEVEN_NOTES): number {
  const pattern = patternById(id);
  if (!pattern) throw new RangeError(`no pattern has the id ${id}`);
  const { form } = pattern;
  switch (form.type) {
    case "growing":
      if (T < 2) return 0;
      return variant === "returning" ? 3 + T * (T - 1) : (T * (T + 1)) / 2 - 1;
    case "pedal":
      return Math.max(0, 2 * (T - 1));
    case "octave":
      return Math.max(0, 2 * (T - octaveOrTenth(form.and, rungs)));
    case "cell": {
      const cell = variant === "broken" && pattern.variants.includes("broken") ? BROKEN : form.cell;
      const room = T - Math.max(...cell.degrees);
      if (room < 0) return 0;
      return cell.degrees.length * (Math.floor(room / cell.step) + 1) + (form.closes ? 1 : 0);
    }
  }
}
