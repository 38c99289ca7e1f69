import { type Cell, type DegreeIntervals, type Pattern, patternById, type Variant } from "./pattern.ts";
import type { Direction } from "./reach.ts";

const SEVEN_NOTES: DegreeIntervals = { octave: 7, third: 2 };

/** The broken form of triads. */
const BROKEN: Cell = { degrees: [1, 5, 3, 5], step: 1 };

/** The most figures that any pattern is asked for; a guard, far above what an instrument can play. */
const MOST_FIGURES = 256;

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

/**
 * Each figure but the first two-note one starts where the one before it came back: 1 2 1, 2 1, 2 3 2 1, 2 3 4 3 2 1.
 */
function growingReturning(top: number): number[][] {
  if (top < 2) return [];
  return [[1, 2, 1], ...count(2, top).map((peak) => [...count(2, peak), ...count(1, peak - 1).reverse()])];
}

function octaveOrTenth(and: "nothing" | "third", intervals: DegreeIntervals): number {
  return intervals.octave + (and === "third" ? intervals.third : 0);
}

function formFigures(
  pattern: Pattern,
  variant: Variant | undefined,
  top: number,
  intervals: DegreeIntervals,
): number[][] {
  const { form } = pattern;
  switch (form.type) {
    case "growing":
      if (variant === "returning") return growingReturning(top);
      return count(2, top).map((peak) => count(1, peak));
    case "pedal":
      return count(2, top).map((degree) => [1, degree]);
    case "octave":
      return movedCells({ degrees: [1, 1 + octaveOrTenth(form.and, intervals)], step: 1 }, top);
    case "cell":
      return movedCells(variant === "broken" ? BROKEN : form.cell, top);
    case "drawn":
      return [];
  }
}

/** The rising figures of a pattern from 1 up to `top`, in order. */
function risingFigures(
  what: Pattern | Cell,
  variant: Variant | undefined,
  top: number,
  intervals: DegreeIntervals,
): number[][] {
  if ("degrees" in what) return movedCells(what, top);
  const known = variant !== undefined && what.variants.includes(variant) ? variant : undefined;
  const figures = formFigures(what, known, top, intervals);
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
 * The degrees of one rising or falling form over the degrees 1 to `T`; the falling form is the mirror of the rising
 * one. Empty for a drawn order, which is nobody's form.
 *
 * @param pattern a pattern, its id from `PATTERNS` (any other text is a programming error), or a declared cell
 * @param variant one that the pattern has; another is passed over
 * @param intervals where the octave and the third lie, which `octaves` and `tenths` go by; seven notes by default
 */
export function patternDegrees(
  pattern: string | Pattern | Cell,
  variant: Variant | undefined,
  T: number,
  rising: boolean,
  intervals = SEVEN_NOTES,
): number[] {
  const what = resolved(pattern);
  const figures = risingFigures(what, variant, T, intervals);
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
  intervals = SEVEN_NOTES,
): PlayedForm[] {
  const what = resolved(pattern);
  const rising = { degrees: patternDegrees(what, variant, T, true, intervals), falling: false };
  const falling = { degrees: patternDegrees(what, variant, T, false, intervals), falling: true };
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
  intervals = SEVEN_NOTES,
): number[] {
  return playedForms(pattern, variant, T, direction, intervals).flatMap(({ degrees }) => [...degrees]);
}

/**
 * Up and down (or down and up) with a turn through the neighbours: one figure more at either end, closing on the note
 * it began from. Thirds over one octave: 1 3 … 6 8 7 9 8 6 … 3 1 2 0 1. Nothing for `straight`.
 */
export function turnedForms(
  pattern: string | Pattern | Cell,
  variant: Variant | undefined,
  T: number,
  direction: Direction,
  intervals = SEVEN_NOTES,
): PlayedForm[] | undefined {
  const what = resolved(pattern);
  if (direction === "up" || direction === "down" || ("id" in what && what.id === "straight")) return undefined;
  const figures = risingFigures(what, variant, T + 1, intervals);
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

/** The cell that a pattern moves along the degrees; undefined where its figures come about otherwise. */
function cellOf(what: Pattern | Cell, variant: Variant | undefined, intervals: DegreeIntervals): Cell | undefined {
  if ("degrees" in what) return what;
  const { form } = what;
  if (form.type === "octave") return { degrees: [1, 1 + octaveOrTenth(form.and, intervals)], step: 1 };
  if (form.type !== "cell" || what.id === "straight") return undefined;
  return variant === "broken" && what.variants.includes(variant) ? BROKEN : form.cell;
}

/**
 * One form of a pattern whose figures go on, beyond the top note where they must, until one would start on the octave,
 * and which closes there on the tonic: thirds over one octave, 1 3 2 4 … 6 8 7 9 8. Falling it is the mirror of that.
 * Undefined for patterns that have no moving figure, and where that adds nothing to the plain form. Common practice, no
 * source.
 */
export function carriedDegrees(
  pattern: string | Pattern | Cell,
  variant: Variant | undefined,
  T: number,
  rising: boolean,
  intervals = SEVEN_NOTES,
): number[] | undefined {
  const what = resolved(pattern);
  const cell = cellOf(what, variant, intervals);
  if (!cell || T < 2) return undefined;
  const beyond = Math.max(...cell.degrees) - cell.degrees[0]!;
  const figures = risingFigures(what, variant, Math.max(T, T - 1 + beyond), intervals);
  const last = figures.at(-1);
  const startsOnTop = figures.length > 0 && cell.degrees[0]! + cell.step * (figures.length - 1) >= T;
  if (!last || (startsOnTop && last.at(-1) === T)) return undefined;
  const degrees = [...figures.flat(), T];
  return rising ? degrees : mirrored(degrees, T);
}

/**
 * How many notes one form of a pattern has over `T` degrees, worked out without playing it. The formulas stand in
 * test/reference/patterns.json; `intervals` as in `patternDegrees`.
 */
export function lengthFormula(id: string, T: number, variant?: Variant, intervals = SEVEN_NOTES): number {
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
      return Math.max(0, 2 * (T - octaveOrTenth(form.and, intervals)));
    case "drawn":
      return T < 2 ? Math.max(0, T) : T + 1;
    case "cell": {
      const cell = variant === "broken" && pattern.variants.includes("broken") ? BROKEN : form.cell;
      const room = T - Math.max(...cell.degrees);
      if (room < 0) return 0;
      return cell.degrees.length * (Math.floor(room / cell.step) + 1) + (form.closes ? 1 : 0);
    }
  }
}
