import { cellTexts } from "./cell-texts.ts";

/** A figure in degrees, moved up by `step` degrees at a time. */
export interface Cell {
  readonly degrees: readonly number[];
  readonly step: number;
}

export type CellReading =
  | { readonly ok: true; readonly cell: Cell }
  /** `at` is the word that is to blame, from 0, or the step; none where the whole is. */
  | { readonly ok: false; readonly reason: string; readonly at?: number | "step" };

/** The degrees that a cell may have: an octave below the first note and three above it. */
const LOWEST = -7;
const HIGHEST = 22;
const MOST = 64;
const MOST_STEP = 14;

/** Reads a declared pattern, `1 3 2 4`: degrees from -7 to 22 (0 is the step below 1), at most 64 of them. */
export function parseCell(text: string, step = 1): CellReading {
  const words = text.split(/[\s,]+/u).filter((word) => word !== "");
  if (words.length === 0) return { ok: false, reason: cellTexts.empty };
  if (words.length > MOST) return { ok: false, reason: cellTexts.tooLong(MOST), at: MOST };
  if (!Number.isInteger(step) || step < 1 || step > MOST_STEP) {
    return { ok: false, reason: cellTexts.step(MOST_STEP), at: "step" };
  }
  const degrees: number[] = [];
  for (const [at, word] of words.entries()) {
    const degree = /^-?[0-9]{1,9}$/u.test(word) ? Number(word) : Number.NaN;
    const shown = `\`${word.slice(0, 40)}\``;
    if (Number.isNaN(degree)) {
      return { ok: false, reason: cellTexts.noDegree(shown), at };
    }
    if (degree < LOWEST || degree > HIGHEST) {
      return { ok: false, reason: cellTexts.outOfReach(shown, LOWEST, HIGHEST), at };
    }
    degrees.push(degree);
  }
  return { ok: true, cell: { degrees, step } };
}
