import { noteOnDegree } from "../notes/degree.ts";
import { type Note, type NoteName, transposed } from "../notes/note.ts";
import { CHORD_SYMBOLS } from "./chord-dictionary.ts";
import type { ChordKind } from "./chord-kinds.ts";

/** One of `CHORDS`, or of the dictionary's. */
export function chordById(id: string): ChordKind | undefined {
  return BY_ID.get(id);
}

const BY_ID: ReadonlyMap<string, ChordKind> = new Map(CHORD_SYMBOLS.map(({ chord }) => [chord.id, chord]));

/** The names of a chord from its root, once each: D minor is D F A. */
export function chordNames(root: NoteName, chord: ChordKind): NoteName[] {
  return chord.degrees.map(({ step, semitones }) => transposed(root, { steps: step, semitones }));
}

/** The note of a chord by its place, 1 being the root and any integer welcome: of D4 minor, 4 is D5 and 0 is A3. */
export function chordNote(root: Note, chord: ChordKind, place: number): Note {
  return noteOnDegree(root, chord.degrees, place);
}
