import { type Interval, midi, type Note, transposed } from "../notes/note.ts";
import { BRASS } from "./brass.ts";
import { KEYBOARDS } from "./keyboards.ts";
import { RECORDERS } from "./recorders.ts";
import { STRINGS } from "./strings.ts";
import { VOICES } from "./voices.ts";
import { WOODWINDS } from "./woodwinds.ts";

export interface Instrument {
  readonly id: string;
  /** All ways to say it; the first is the one to show. */
  readonly names: readonly string[];
  readonly family: "recorder" | "woodwind" | "brass" | "string" | "keyboard" | "voice" | "declared";
  /** The lowest and the highest note, as written for the instrument. */
  readonly low: Note;
  readonly high: Note;
  /** From a written note to the one that sounds: a soprano recorder sounds an octave higher, {7, 12}. */
  readonly sounding: Interval;
  /** Why an end of the range is not to be taken as firm. */
  readonly soft?: string;
  /** Of a recorder; baroque where nothing is said. */
  readonly fingering?: FingeringSystem;
  /** Written notes that want a half hole, where the player declared them. */
  readonly halfHoles?: readonly Note[];
}

/** The two in which recorders are sold. Baroque is also called English. */
export type FingeringSystem = "baroque" | "german";

/** The part of an instrument that its range is. */
export type Range = Pick<Instrument, "low" | "high">;

/** The instruments that need no declaration, a table for each family; recorders are offered first. */
export const INSTRUMENTS: readonly Instrument[] = [
  ...RECORDERS,
  ...WOODWINDS,
  ...STRINGS,
  ...BRASS,
  ...KEYBOARDS,
  ...VOICES,
];

export function instrumentById(id: string): Instrument | undefined {
  return INSTRUMENTS.find((instrument) => instrument.id === id);
}

/** Whether a written note lies between the lowest and the highest one of the instrument. */
export function isInRange(range: Range, note: Note): boolean {
  return midi(range.low) <= midi(note) && midi(note) <= midi(range.high);
}

/** The note that sounds when `written` is played. */
export function soundingNote({ sounding }: Pick<Instrument, "sounding">, written: Note): Note {
  return transposed(written, sounding);
}

/** Words that several instruments share, beside those that are part of their names. */
const SHARED: Readonly<Record<string, readonly string[]>> = {
  contrabass: ["contrabass recorder", "double bass"],
  keyboard: ["piano", "harpsichord", "organ"],
};

/** A word so short may be a key, as in `C trumpet`, and says nothing by itself. */
const SHORTEST = 3;

/**
 * The names that a word may be short for, one for each instrument: of `alto` they are `alto recorder`, `alto flute`, `alto
 * saxophone`, `alto voice` and others. None where the word is a name itself, or begins or ends no name.
 *
 * @param word in lower case
 */
export function namesShortenedTo(word: string): readonly string[] {
  const names = INSTRUMENTS.map((instrument) => instrument.names.map((name) => [name, name.toLowerCase()] as const));
  if (word.length < SHORTEST || names.flat().some(([, key]) => key === word)) return [];
  if (Object.hasOwn(SHARED, word)) return SHARED[word]!;
  return names.flatMap(
    (own) => own.find(([, key]) => key.startsWith(`${word} `) || key.endsWith(` ${word}`))?.[0] ?? [],
  );
}
