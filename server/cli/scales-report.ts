import { chordName, scaleName } from "../checks/subject-name.ts";
import { chordNames } from "../music/chord.ts";
import { type ChordReading, chordsOf } from "../music/chords-of-notes.ts";
import { KINDS, type ScaleKind } from "../music/kind.ts";
import { type NoteName, printName } from "../music/note.ts";
import { distinctNames, type Respelled } from "../music/note-set.ts";
import { scaleNames } from "../music/scale.ts";
import { type NearMiss, nearMisses, type ScaleReading, scalesHolding } from "../music/scales-holding.ts";
import { usualKey } from "../music/signature.ts";

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
  /** The one given note that it does not have, and what it has there; null where all its own were given and this one besides. */
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
export function scalesReport(notes: readonly NoteName[], declared: readonly ScaleKind[]): ScalesReport {
  const kinds = [...KINDS, ...declared];
  const scales = scalesHolding(notes, kinds);
  const misses = scales.length > 0 ? [] : nearMisses(notes, kinds).slice(0, MOST_MISSES);
  return {
    notes: distinctNames(notes).map(printName),
    chords: chordsOf(notes).map(namedChord),
    scales: scales.map(namedScale),
    nearMisses: misses.map(namedMiss),
  };
}

function namedScale({ tonic, kind, alsoCalled, notGiven, respelled, theoretical }: ScaleReading): NamedScale {
  return {
    name: scaleName({ kind }, tonic),
    tonic: printName(tonic),
    kind: kind.id,
    alsoCalled: alsoCalled.map(({ id }) => id),
    notes: scaleNames(tonic, kind, "up").map(printName),
    notGiven: notGiven.map(printName),
    respelled: respelled.map(namedPair),
    usual: theoretical ? scaleName({ kind }, usualKey(tonic, kind)) : null,
  };
}

function namedMiss(miss: NearMiss): NamedMiss {
  const { given, instead } = miss.differs;
  return { ...namedScale(miss), differs: { given: printName(given), instead: instead && printName(instead) } };
}

function namedChord({ root, chord, inversion, respelled }: ChordReading): NamedChord {
  return {
    name: chordName({ chord: chord.id, broken: false }, root),
    root: printName(root),
    kind: chord.id,
    inversion,
    notes: chordNames(root, chord).map(printName),
    respelled: respelled.map(namedPair),
  };
}

function namedPair({ given, written }: Respelled): { readonly given: string; readonly written: string } {
  return { given: printName(given), written: printName(written) };
}
