import { fifthsOf, type NoteName, nameAtFifths } from "../notes/note.ts";
import { inUse, isKeyTonic, type KeySignature, nearestToNone, signatureAt } from "../scales/signature.ts";
import type { ChordKind } from "./chord-kinds.ts";

/**
 * The signature of an arpeggio: that of its key. Triads and sevenths on a tonic have that key's; the dominant seventh
 * has the major key's a fifth below, diminished triads and half-diminished sevenths the major key's a semitone above.
 * Null for the chords that divide the octave evenly, unless `key` names a key, major or minor. Common practice, no
 * source.
 */
export function chordSignature(
  root: NoteName,
  chord: ChordKind,
  key?: NoteName,
  mode: "major" | "minor" = "major",
): KeySignature | null {
  if (key) return signatureAt(fifthsOf(key) - (mode === "minor" ? MAJOR_TO_MINOR : 0));
  return chord.signature === null ? null : signatureAt(fifthsOf(root) + chord.signature);
}

/** From a major key to the minor one on its tonic, on the line of fifths. */
const MAJOR_TO_MINOR = 3;

/** The signature of the minor key a semitone above the root of a diminished seventh; null for every other chord. */
export function leadingSignature(root: NoteName, { leadingTo }: ChordKind): KeySignature | null {
  return leadingTo === undefined ? null : signatureAt(inUse(fifthsOf(root) + leadingTo));
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
