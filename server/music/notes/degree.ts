import { modulo, type Note, readAccidentals, transposed } from "./note.ts";

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

/** Of the major scale's degrees above its tonic, in their order. */
export const MAJOR_SEMITONES: readonly number[] = [0, 2, 4, 5, 7, 9, 11];

/** `b3`: a degree of the major scale, raised or lowered; `8` is the octave. Undefined for any other word. */
export function readDegree(word: string): Degree | undefined {
  const match = /^([^0-9]*)([1-8])$/u.exec(word);
  const alter = match && readAccidentals(match[1]!);
  if (!match || alter === null || alter === undefined) return undefined;
  const step = Number(match[2]) - 1;
  return { step, semitones: (MAJOR_SEMITONES[step] ?? 12) + alter };
}

/** The degrees of a formula, `1 2 b3 4 5 b6 b7`; a word in it that is none is a programming error. */
export function degreesIn(formula: string): readonly Degree[] {
  return formula.split(" ").map((word) => {
    const degree = readDegree(word);
    if (!degree) throw new RangeError(`${word} is not a degree`);
    return degree;
  });
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
  const { step, semitones, cents = 100 * semitones } = degrees[modulo(degree - 1, degrees.length)]!;
  const note = transposed(tonic, { steps: step + 7 * octaves, semitones: semitones + 12 * octaves });
  return cents === 100 * semitones ? note : { ...note, off: cents - 100 * semitones };
}
