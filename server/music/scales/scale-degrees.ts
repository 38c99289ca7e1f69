import { modulo, type Note, transposed } from "../notes/note.ts";
import type { Degree } from "./kind.ts";

/**
 * A scale or chord climbs like a ladder that repeats at each octave. The note on rung `degree` counts from 1, the tonic
 * or root; any integer is welcome: 0 is the rung below 1, and one more than the ladder's length is the octave.
 */
export function degreeOnLadder(tonic: Note, degrees: readonly Degree[], degree: number): Note {
  const octaves = Math.floor((degree - 1) / degrees.length);
  const { step, semitones } = degrees[modulo(degree - 1, degrees.length)]!;
  return transposed(tonic, { steps: step + 7 * octaves, semitones: semitones + 12 * octaves });
}
