import type { Degree } from "../notes/degree.ts";
import type { ScaleKind } from "./kind.ts";
import { degreesOf } from "./scale.ts";

/** How steps are written: tone and semitone, whole and half, or plain semitones. */
export type StepStyle = "TS" | "WH" | "digits";

/** The distances between neighbours, in semitones, from the first note to the octave: all of them add up to 12. */
export function stepsBetween(degrees: readonly Degree[]): number[] {
  return degrees.map(({ semitones }, index) => (degrees[index + 1]?.semitones ?? 12) - semitones);
}

/** The steps of a scale in semitones, the last one reaching the octave; of the falling form too, read upward. */
export function stepsOf(kind: ScaleKind, direction: "up" | "down" = "up"): number[] {
  return stepsBetween(degreesOf(kind, direction));
}

const LETTERS_TO_STEPS: Readonly<Record<StepStyle, Readonly<Record<string, number>>>> = {
  TS: { T: 2, S: 1, A: 3, "3": 3 },
  WH: { W: 2, H: 1, A: 3, "3": 3 },
  digits: { "1": 1, "2": 2, "3": 3, "4": 4, "5": 5, "6": 6, "7": 7, "8": 8, "9": 9 },
};

/**
 * Reads `T T S T T T S`, `TTSTTTS`, `W-W-H-W-W-W-H` or `2 2 1 2 2 2 1`, in semitones; three are `A` (augmented second)
 * or `3`. Either case; spaces, commas, hyphens and bars part them. Mixed ways of writing, or anything else, is
 * undefined.
 */
export function parseSteps(words: string): number[] | undefined {
  const marks = [...words.toUpperCase().replace(/[\s,|-]+/gu, "")];
  if (marks.length === 0) return undefined;
  const table = Object.values(LETTERS_TO_STEPS).find((steps) => marks.every((mark) => mark in steps));
  return table && marks.map((mark) => table[mark]!);
}

/** The steps as words, with spaces. A step that a style has no letter for stays a number. */
export function printSteps(steps: readonly number[], style: StepStyle): string {
  const letters = { TS: ["S", "T", "A"], WH: ["H", "W", "A"], digits: [] as string[] }[style];
  return steps.map((step) => letters[step - 1] ?? String(step)).join(" ");
}
