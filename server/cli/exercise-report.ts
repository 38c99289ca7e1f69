import { collectionOf, relatedNames } from "../features/related-words.ts";
import { subjectText } from "../journal/subject-text.ts";
import { type Exercise, exercise } from "../music/exercise.ts";
import type { ScaleKind } from "../music/kind.ts";
import { midi, modulo, type Note, printName, printNote } from "../music/note.ts";
import { otherSignature } from "../music/related-keys.ts";
import type { KeySignature } from "../music/signature.ts";
import type { ExerciseRead } from "./read-exercise.ts";

/** What `notes --json` prints. Notes are as written for the instrument, with scientific octaves (C4 is middle C). */
export interface ExerciseReport {
  readonly subject: string;
  /** Of a chord, its root. */
  readonly tonic: string;
  readonly kind: string;
  readonly signature: KeySignature | null;
  /** For a mode, the signature of the key on its tonic, in which it is written as well; else null. */
  readonly parallelSignature: KeySignature | null;
  /** The key of the same notes or signature on another tonic, and the other key on this one; null for no key and chords. */
  readonly relative: string | null;
  readonly parallel: string | null;
  /** Of a symmetrical scale or chord, which of the few sets of notes it has; else null. */
  readonly collection: CollectionReport | null;
  /** Semitones, rising form. */
  readonly steps: readonly number[];
  readonly up: readonly string[];
  readonly down: readonly string[];
  /** As played, in order. */
  readonly notes: readonly string[];
  readonly sounding: readonly string[];
  /** Of the scale or the chord, 1 being the tonic or root. */
  readonly degrees: readonly number[];
  /** Null where nothing is left to play. */
  readonly range: { readonly low: string; readonly high: string } | null;
  readonly outOfRange: readonly string[];
  /** Always empty: fingerings are not used yet, as is `halfHoles`. */
  readonly needsBell: readonly string[];
  readonly halfHoles: readonly string[];
  /** Hertz, one for each of `sounding`, to four decimals. */
  readonly frequencies: readonly number[];
  /** From equal temperament, one for each of `sounding`. */
  readonly cents: readonly number[];
}

/** One of the two whole-tone collections, the three octatonic ones or the three diminished sevenths. */
export interface CollectionReport {
  readonly name: string;
  /** From 1, the one with C first; `of` so many. */
  readonly number: number;
  readonly of: number;
  /** 0 is C, 11 is B. */
  readonly pitchClasses: readonly number[];
  /** The other tonics with the same notes. */
  readonly sameFrom: readonly string[];
}

/** MIDI 1.0: A4. */
const A4 = 69;

export function exerciseReport({ subject, input, pitch }: ExerciseRead): ExerciseReport {
  const tonic = input.subject.type === "scale" ? input.subject.tonic : input.subject.root;
  const played = exercise(input);
  const cents = centsOf(played, input.subject.type === "scale" ? input.subject.kind : undefined);
  return {
    subject: subjectText(subject),
    tonic: printName(tonic),
    kind: kindText(subject),
    signature: played.signature,
    parallelSignature: input.subject.type === "scale" ? otherSignature(input.subject.tonic, input.subject.kind) : null,
    ...relatedNames(input.subject),
    collection: collectionReport(input.subject),
    steps: played.steps,
    up: played.up.map(printNote),
    down: played.down.map(printNote),
    notes: played.notes.map(printNote),
    sounding: played.sounding.map(printNote),
    degrees: played.degrees,
    range: played.range && { low: printNote(played.range.low), high: printNote(played.range.high) },
    outOfRange: played.outOfRange.map(printNote),
    needsBell: [],
    halfHoles: [],
    frequencies: played.sounding.map((note, i) => frequency(note, cents[i]!, pitch)),
    cents,
  };
}

function collectionReport(subject: ExerciseRead["input"]["subject"]): CollectionReport | null {
  const found = collectionOf(subject);
  if (!found) return null;
  const { name, number, of, pitchClasses, sameFrom } = found;
  return { name, number, of, pitchClasses, sameFrom: sameFrom.map(printName) };
}

/** `natural minor`, a declared scale's name, `minor arpeggio`, `dominant seventh`. */
function kindText(subject: ExerciseRead["subject"]): string {
  if (subject.type === "scale") return subject.kind;
  return subjectText(subject).slice(subjectText(subject).indexOf(" ") + 1);
}

/** A declared scale may lie between the twelve keys: the cents of each degree from the key that it is written as. */
function centsOf({ degrees }: Exercise, kind: ScaleKind | undefined): number[] {
  return degrees.map((degree) => {
    const own = kind?.degrees[modulo(degree - 1, kind.degrees.length)];
    return own?.cents === undefined ? 0 : own.cents - 100 * own.semitones;
  });
}

/** Twelve equal semitones to the octave (ISO 16 for A4 = 440 Hz), moved by cents. */
function frequency(note: Note, cents: number, pitch: number): number {
  return Math.round(pitch * 2 ** ((midi(note) - A4 + cents / 100) / 12) * 1e4) / 1e4;
}
