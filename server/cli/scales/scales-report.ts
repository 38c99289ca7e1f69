import { chordName, scaleName } from "../../checks/notes/subject-name.ts";
import { chordNames } from "../../music/chords/chord.ts";
import { type ChordReading, chordsOf } from "../../music/chords/chords-of-notes.ts";
import type { NoteName } from "../../music/notes/note.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { distinctNames, type Respelled } from "../../music/notes/note-set.ts";
import type { ScaleKind } from "../../music/scales/kind.ts";
import { KINDS } from "../../music/scales/kinds.ts";
import { scaleNames } from "../../music/scales/scale.ts";
import { type NearMiss, nearMisses, type ScaleReading, scalesHolding } from "../../music/scales/scales-holding.ts";
import { usualKey } from "../../music/scales/signature.ts";

/** What `scales --json` prints; each list has the nearest first. */
export interface ScalesReport {
  /** As given, each name once. */
  readonly notes: readonly string[];
  /** The chords of exactly these notes. */
  readonly chords: readonly NamedChord[];
  /** The scales that have them all. */
  readonly scales: readonly NamedScale[];
  /** Where no scale has them all: those that have all but one. */
  readonly nearMisses: readonly NamedMiss[];
}

export interface NamedScale {
  /** As a journal has it. */
  readonly name: string;
  readonly tonic: string;
  readonly kind: string;
  /** Other kinds with the same notes on this tonic, as ionian beside major. */
  readonly alsoCalled: readonly string[];
  /** One octave, rising, without the closing tonic. */
  readonly notes: readonly string[];
  /** Which of its notes were not given; of the melodic minor also falling ones, where those are needed. */
  readonly notGiven: readonly string[];
  /** Right pitches by other letters. */
  readonly respelled: readonly { readonly given: string; readonly written: string }[];
  /** The key of the same sound that is in use, where this one is theoretical; else null. */
  readonly usual: string | null;
}

export interface NamedMiss extends NamedScale {
  /**
   * The one given note that it does not have, and what it has there; null where all its own were given and this one
   * besides.
   */
  readonly differs: { readonly given: string; readonly instead: string | null };
}

export interface NamedChord {
  readonly name: string;
  readonly root: string;
  readonly kind: string;
  /** Which of its notes was given first: 0 is the root. */
  readonly inversion: number;
  readonly notes: readonly string[];
  readonly respelled: readonly { readonly given: string; readonly written: string }[];
}

/** Near misses beyond these are so far off that they help nobody. */
const MOST_MISSES = 12;

/** What notes may be, with the scales that a journal declares. */
export function scalesReport(
  notes: readonly NoteName[],
  declared: readonly ScaleKind[],
  names: NoteNames,
): ScalesReport {
  const kinds = [...KINDS, ...declared];
  const scales = scalesHolding(notes, kinds);
  const misses = scales.length > 0 ? [] : nearMisses(notes, kinds).slice(0, MOST_MISSES);
  return {
    notes: distinctNames(notes).map((note) => names.name(note)),
    chords: chordsOf(notes).map((chord) => namedChord(chord, names)),
    scales: scales.map((scale) => namedScale(scale, names)),
    nearMisses: misses.map((miss) => namedMiss(miss, names)),
  };
}

function namedScale(
  { tonic, kind, alsoCalled, notGiven, respelled, theoretical }: ScaleReading,
  names: NoteNames,
): NamedScale {
  return {
    name: scaleName({ kind }, tonic, names),
    tonic: names.name(tonic),
    kind: kind.id,
    alsoCalled: alsoCalled.map(({ id }) => id),
    notes: scaleNames(tonic, kind, "up").map((note) => names.name(note)),
    notGiven: notGiven.map((note) => names.name(note)),
    respelled: respelled.map((pair) => namedPair(pair, names)),
    usual: theoretical ? scaleName({ kind }, usualKey(tonic, kind), names) : null,
  };
}

function namedMiss(miss: NearMiss, names: NoteNames): NamedMiss {
  const { given, instead } = miss.differs;
  return { ...namedScale(miss, names), differs: { given: names.name(given), instead: instead && names.name(instead) } };
}

function namedChord({ root, chord, inversion, respelled }: ChordReading, names: NoteNames): NamedChord {
  return {
    name: chordName({ chord: chord.id, broken: false }, root, names),
    root: names.name(root),
    kind: chord.id,
    inversion,
    notes: chordNames(root, chord).map((note) => names.name(note)),
    respelled: respelled.map((pair) => namedPair(pair, names)),
  };
}

function namedPair(
  { given, written }: Respelled,
  names: NoteNames,
): { readonly given: string; readonly written: string } {
  return { given: names.name(given), written: names.name(written) };
}
