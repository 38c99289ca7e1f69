import type { NoteName } from "../notes/note.ts";
import { type Collection, diminishedSeventh } from "../scales/collection.ts";
import { chordNames } from "./chord.ts";
import type { ChordKind } from "./chord-kinds.ts";

/** Which of the three diminished sevenths a chord is; null for any other. */
export function collectionOfChord(root: NoteName, chord: ChordKind): Collection | null {
  return chord.id === "diminished seventh" ? diminishedSeventh(chordNames(root, chord)) : null;
}
