import { type NoteName, pitchClass } from "../notes/note.ts";
import { bestSpelled, distinctNames, fitOf, inOrder, type Respelled, tonicsAt } from "../notes/note-set.ts";
import { chordNames } from "./chord.ts";
import { CHORDS, type ChordKind } from "./chord-kinds.ts";
import { isTheoreticalChord } from "./chord-signature.ts";

/** A chord that consists of the notes that were given. */
export interface ChordReading {
  readonly root: NoteName;
  readonly chord: ChordKind;
  /** Which of its notes was given first: 0 is the root, 1 the third. */
  readonly inversion: number;
  /** Right pitches by other letters. */
  readonly respelled: readonly Respelled[];
}

/**
 * The chords whose notes are those given, no more and no fewer, whatever their order: those in root position first,
 * then those that keep the letters, then by the order of `CHORDS`. The augmented triad and the diminished seventh have
 * a reading on each of their notes, as they divide the octave evenly.
 */
export function chordsOf(notes: readonly NoteName[]): readonly ChordReading[] {
  const given = distinctNames(notes);
  if (given.length === 0) return [];
  const first = pitchClass(given[0]!);
  const roots = [...new Set(given.map(pitchClass))];
  return CHORDS.flatMap((chord) => roots.flatMap((pitch) => readingOn(pitch, chord, given, first) ?? [])).sort(
    (one, other) => inOrder(ranks(one), ranks(other)),
  );
}

function ranks({ inversion, respelled, chord }: ChordReading): number[] {
  return [inversion, respelled.length, CHORDS.indexOf(chord)];
}

function readingOn(
  pitch: number,
  chord: ChordKind,
  given: readonly NoteName[],
  first: number,
): ChordReading | undefined {
  const spelled = tonicsAt(pitch).map((tonic) => ({
    tonic,
    theoretical: isTheoreticalChord(tonic, chord),
    fit: fitOf(given, chordNames(tonic, chord)),
  }));
  const best = bestSpelled(spelled, given);
  if (!best || best.fit.outside.length > 0 || best.fit.notGiven.length > 0) return undefined;
  const inversion = chordNames(best.tonic, chord).findIndex((name) => pitchClass(name) === first);
  return { root: best.tonic, chord, inversion, respelled: best.fit.respelled };
}
