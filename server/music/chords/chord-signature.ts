import { fifthsOf, type NoteName, nameAtFifths } from "../notes/note.ts";
import { isKeyTonic, type KeySignature, nearestToNone, signatureAt } from "../scales/signature.ts";
import type { ChordKind } from "./chord-kinds.ts";

/**
 * The signature of an arpeggio: that of its key. Triads and sevenths on a tonic have that key's; the dominant seventh
 * has the major key's a fifth below, diminished triads and half-diminished sevenths the major key's a semitone above.
 * Null for the chords that divide the octave evenly, unless `key` names a major key. Common practice, no source.
 */
export function chordSignature(root: NoteName, chord: ChordKind, key?: NoteName): KeySignature | null {
  if (key) return signatureAt(fifthsOf(key));
  return chord.signature === null ? null : signatureAt(fifthsOf(root) + chord.signature);
}

/** Whether an arpeggio's key would need more than seven accidentals; the even chords are judged by their root. */
export function isTheoreticalChord(root: NoteName, chord: ChordKind): boolean {
  const fifths = fifthsOf(root);
  if (chord.signature !== null) return Math.abs(fifths + chord.signature) > 7;
  return !isKeyTonic(fifths);
}

/** The root that sounds the same and whose key needs the fewest accidentals. */
export function usualRoot(root: NoteName, chord: ChordKind): NoteName {
  const offset = chord.signature ?? 0;
  return nameAtFifths(nearestToNone(fifthsOf(root) + offset) - offset);
}
