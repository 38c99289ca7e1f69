import { collectionOf, relatedNames } from "../../features/explain/related-words.ts";
import { chordWords, subjectText } from "../../journal/subject-text.ts";
import { areInCents } from "../../music/notes/degree.ts";
import { type Note, type NoteName, pitchClass, transposed } from "../../music/notes/note.ts";
import { type NoteNames, noteText } from "../../music/notes/note-names.ts";
import { type NotesToPlay, notesToPlay } from "../../music/patterns/notes-to-play.ts";
import { otherSignature } from "../../music/scales/related-keys.ts";
import type { KeySignature } from "../../music/scales/signature.ts";
import { centsOf as stepsInCents } from "../../music/scales/steps.ts";
import { centsFromEqual, hertz, temperamentText } from "../../music/tuning/temperament.ts";
import { type FingerReport, fingerReport } from "./finger-report.ts";
import type { ExerciseRead } from "./read-exercise.ts";

/**
 * What `notes --json` prints, in the names that were asked for. Notes are as written for the instrument, with
 * scientific octaves (C4 is middle C).
 */
export interface NotesReport extends FingerReport {
  readonly subject: string;
  /** Of a chord, its root. */
  readonly tonic: string;
  readonly kind: string;
  readonly signature: SignatureReport | null;
  /** For a mode, the signature of the key on its tonic, in which it is written as well; else null. */
  readonly parallelSignature: SignatureReport | null;
  /**
   * The key of the same notes or signature on another tonic, and the other key on this one; null for no key and chords.
   */
  readonly relative: string | null;
  readonly parallel: string | null;
  /** Of a symmetrical scale or chord, which of the few sets of notes it has; else null. */
  readonly collection: CollectionReport | null;
  /** Semitones, rising form; of a scale in cents to the nearest. */
  readonly steps: readonly number[];
  /** Only of a scale that is declared in cents: its steps in cents. */
  readonly stepsInCents?: readonly number[];
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
  /** Hertz, one for each of `sounding`, to four decimals. */
  readonly frequencies: readonly number[];
  /** From equal temperament at the same A, one for each of `sounding`, to four decimals. */
  readonly cents: readonly number[];
  /** Hertz of A4. */
  readonly pitch: number;
  /** `equal`, `Vallotti`, `just on D`. */
  readonly temperament: string;
}

/** A key signature with its accidentals by name, in the order in which they are written. */
export interface SignatureReport {
  readonly fifths: number;
  readonly accidentals: readonly string[];
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

export function notesReport(read: ExerciseRead): NotesReport {
  const { subject, input, tuning, names } = read;
  const text = (note: Note): string => noteText(note, names);
  const tonic = input.subject.type === "scale" ? input.subject.tonic : input.subject.root;
  const played = notesToPlay(input);
  const cents = centsOf(played, read);
  return {
    subject: subjectText(subject, names),
    tonic: names.name(tonic),
    kind: kindText(subject),
    signature: signatureReport(played.signature, names),
    parallelSignature: signatureReport(otherOf(input.subject), names),
    ...relatedNames(input.subject, names),
    collection: collectionReport(input.subject, names),
    steps: played.steps,
    ...inCents(input.subject),
    up: played.up.map(text),
    down: played.down.map(text),
    notes: played.notes.map(text),
    sounding: played.sounding.map(text),
    degrees: played.degrees,
    range: played.range && { low: text(played.range.low), high: text(played.range.high) },
    outOfRange: played.outOfRange.map(text),
    ...fingerReport(played, read.instrument, names),
    frequencies: played.sounding.map((note, i) => toFourDecimals(hertz(note, cents[i]!, tuning.a))),
    cents: cents.map(toFourDecimals),
    pitch: tuning.a,
    temperament: temperamentText(tuning.temperament, names.name),
  };
}

function inCents(subject: ExerciseRead["input"]["subject"]): Pick<NotesReport, "stepsInCents"> {
  if (subject.type !== "scale" || !areInCents(subject.kind.degrees)) return {};
  return { stepsInCents: stepsInCents(subject.kind) };
}

function otherOf(subject: ExerciseRead["input"]["subject"]): KeySignature | null {
  return subject.type === "scale" ? otherSignature(subject.tonic, subject.kind) : null;
}

function signatureReport(signature: KeySignature | null, names: NoteNames): SignatureReport | null {
  return signature && { ...signature, accidentals: signature.accidentals.map((each) => names.name(each)) };
}

function collectionReport(subject: ExerciseRead["input"]["subject"], names: NoteNames): CollectionReport | null {
  const found = collectionOf(subject);
  if (!found) return null;
  const { name, number, of, pitchClasses, sameFrom } = found;
  return { name, number, of, pitchClasses, sameFrom: sameFrom.map((each) => names.name(each)) };
}

/** `natural minor`, a declared scale's name, `minor arpeggio`, `dominant seventh`. */
function kindText(subject: ExerciseRead["subject"]): string {
  return subject.type === "scale" ? subject.kind : chordWords(subject);
}

/**
 * How far each sounding note lies from equal temperament. A declared scale in cents keeps its own distances from its
 * tonic, and the tonic is tempered.
 */
function centsOf({ sounding }: NotesToPlay, { input: { subject, instrument }, tuning }: ExerciseRead): number[] {
  const keys = centsFromEqual(tuning.temperament);
  const onKey = (name: NoteName): number => keys[pitchClass(name)]!;
  if (subject.type === "chord") return sounding.map(onKey);
  const { tonic, kind } = subject;
  if (!areInCents(kind.degrees)) return sounding.map(onKey);
  const tempered = onKey(instrument ? transposed(tonic, instrument.sounding) : tonic);
  return sounding.map(({ off = 0 }) => tempered + off);
}

/** Zero is never negative. */
function toFourDecimals(figure: number): number {
  return Math.round(figure * 1e4) / 1e4 + 0;
}
