import { MAJOR_SEMITONES } from "../notes/degree.ts";
import { type Interval, modulo } from "../notes/note.ts";
import { instrumentTexts } from "./instrument-texts.ts";

/** From the written note to the one that sounds, for the instruments that are written at another pitch. */
export const AT_PITCH: Interval = { steps: 0, semitones: 0 };
export const OCTAVE_HIGHER: Interval = { steps: 7, semitones: 12 };
export const TWO_OCTAVES_HIGHER: Interval = { steps: 14, semitones: 24 };
export const OCTAVE_LOWER: Interval = { steps: -7, semitones: -12 };
/** In B flat. */
export const MAJOR_SECOND_LOWER: Interval = { steps: -1, semitones: -2 };
/** In B flat, an octave further down. */
export const MAJOR_NINTH_LOWER: Interval = { steps: -8, semitones: -14 };
/** In D. */
export const MAJOR_SECOND_HIGHER: Interval = { steps: 1, semitones: 2 };
/** In B flat, upward. */
export const MINOR_SEVENTH_HIGHER: Interval = { steps: 6, semitones: 10 };
/** In A, upward. */
export const MAJOR_SIXTH_HIGHER: Interval = { steps: 5, semitones: 9 };
/** In A. */
export const MINOR_THIRD_LOWER: Interval = { steps: -2, semitones: -3 };
/** In E flat, upward. */
export const MINOR_THIRD_HIGHER: Interval = { steps: 2, semitones: 3 };
/** In E flat. */
export const MAJOR_SIXTH_LOWER: Interval = { steps: -5, semitones: -9 };
/** In E flat, an octave further down. */
export const MAJOR_THIRTEENTH_LOWER: Interval = { steps: -12, semitones: -21 };
/** In F. */
export const FIFTH_LOWER: Interval = { steps: -4, semitones: -7 };
/** In G. */
export const FOURTH_LOWER: Interval = { steps: -3, semitones: -5 };

const PERFECT: readonly number[] = [0, 3, 4];

/**
 * `an octave higher`, `a major second lower`, `an octave and a major sixth lower`; undefined for what sounds as
 * written.
 */
export function transpositionWords({ steps, semitones }: Interval): string | undefined {
  if (semitones === 0) return undefined;
  const way = semitones > 0 ? "higher" : "lower";
  const octaves = Math.floor(Math.abs(steps) / 7);
  const rest = { steps: modulo(Math.abs(steps), 7), semitones: Math.abs(semitones) - 12 * octaves };
  const within = rest.semitones === 0 ? undefined : { quality: qualityOf(rest), steps: rest.steps };
  return instrumentTexts.sounding(octaves, within, way);
}

/** Perfect, major or minor: no instrument is written at any other distance. */
function qualityOf({ steps, semitones }: Interval): "perfect" | "major" | "minor" {
  if (PERFECT.includes(steps)) return "perfect";
  return semitones === MAJOR_SEMITONES[steps] ? "major" : "minor";
}
