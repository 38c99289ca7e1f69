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

/** Reads a declared pattern, `1 3 2 4`: degrees from -7 to 22 (0 is the step below 1), at most 64 of them. */
export function parseCell(text: string, step = 1): CellReading {
  const words = text.split(/[\s,]+/u).filter((word) => word !== "");
  if (words.length === 0) return { ok: false, reason: "a pattern needs at least one degree, as in `1 3 2 4`" };
  if (words.length > 64) return { ok: false, reason: "a pattern can have at most 64 degrees", at: 64 };
  if (!Number.isInteger(step) || step < 1 || step > 14) {
    return { ok: false, reason: "the step is a whole number of degrees from 1 to 14", at: "step" };
  }
  const degrees: number[] = [];
  for (const [at, word] of words.entries()) {
    const degree = /^-?[0-9]{1,9}$/u.test(word) ? Number(word) : Number.NaN;
    const shown = `\`${word.slice(0, 40)}\``;
    if (Number.isNaN(degree)) {
      const reason = `${shown} is not a degree: degrees are whole numbers, 1 the first note, 8 the octave, 0 the note below the first`;
      return { ok: false, reason, at };
    }
    if (degree < LOWEST || degree > HIGHEST) {
      return { ok: false, reason: `${shown} is out of reach: degrees go from ${LOWEST} to ${HIGHEST}`, at };
    }
    degrees.push(degree);
  }
  return { ok: true, cell: { degrees, step } };
}
