import { type Interval, midi, type Note, transposed } from "../notes/note.ts";

export interface Instrument {
  readonly id: string;
  /** All ways to say it; the first is the one to show. */
  readonly names: readonly string[];
  readonly family: "recorder" | "woodwind" | "brass" | "string" | "keyboard" | "percussion" | "voice" | "declared";
  /** The lowest and the highest note, as written for the instrument. */
  readonly low: Note;
  readonly high: Note;
  /** From a written note to the one that sounds: a soprano recorder sounds an octave higher, {7, 12}. */
  readonly sounding: Interval;
  /** Why an end of the range is not to be taken as firm. */
  readonly soft?: string;
  /** By how many semitones beyond an end nothing is said, where handbooks or instruments differ; `soft` tells why. */
  readonly leeway?: { readonly below?: number; readonly above?: number };
  /** Of a recorder; baroque where nothing is said. */
  readonly fingering?: FingeringSystem;
  /** Written notes that want a half hole, where the player declared them. */
  readonly halfHoles?: readonly Note[];
}

/** The two in which recorders are sold. Baroque is also called English. */
export type FingeringSystem = "baroque" | "german";

/** The part of an instrument that its range is. */
export type Range = Pick<Instrument, "low" | "high">;

/** Whether a written note lies between the lowest and the highest one of the instrument. */
export function isInRange(range: Range, note: Note): boolean {
  return midi(range.low) <= midi(note) && midi(note) <= midi(range.high);
}

/** The note that sounds when `written` is played. */
export function soundingNote({ sounding }: Pick<Instrument, "sounding">, written: Note): Note {
  return transposed(written, sounding);
}
