import { modulo, type Note, transposed } from "./note.ts";

/**
 * One note of a scale or a chord: letters and semitones above the tonic or root. Both stay below the octave (7 letters,
 * 12 semitones).
 */
export interface Degree {
  readonly step: number;
  readonly semitones: number;
  /**
   * Cents above the tonic, where a declared scale does not keep to the twelve keys; `semitones` is then the nearest.
   */
  readonly cents?: number;
}

/** Whether letters and accidentals say these notes only roughly. */
export function areInCents(degrees: readonly Degree[]): boolean {
  return degrees.some(({ cents }) => cents !== undefined);
}

/**
 * The note on a degree, counted from 1, the tonic or root. Any integer is welcome, as degrees come again in each
 * octave: 0 is the one below 1, and one more than there are degrees is the octave.
 */
export function noteOnDegree(tonic: Note, degrees: readonly Degree[], degree: number): Note {
  const octaves = Math.floor((degree - 1) / degrees.length);
  const { step, semitones } = degrees[modulo(degree - 1, degrees.length)]!;
  return transposed(tonic, { steps: step + 7 * octaves, semitones: semitones + 12 * octaves });
}
