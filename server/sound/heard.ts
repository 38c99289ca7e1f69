import type { NoteValue } from "../journal/model.ts";
import { soundingNote } from "../music/instruments/instrument.ts";
import { type Degree, noteOnDegree } from "../music/notes/degree.ts";
import { midi, type Note, type NoteName, pitchClass, transposed } from "../music/notes/note.ts";
import { notesToPlay, type WhatToPlay } from "../music/patterns/notes-to-play.ts";
import { kindById } from "../music/scales/kinds.ts";
import { degreesOf } from "../music/scales/scale.ts";
import { centsFromEqual, frequencyOf, hertz, type Tuning } from "../music/tuning/temperament.ts";
import type { SoundedNote } from "./sounded-notes.ts";

/** What a line is heard by: what is practised, on which instrument, in which tuning. */
export interface HeardBy {
  /** A scale or a chord; missing for a piece and for all else. */
  readonly exercise?: WhatToPlay;
  /** Of a piece whose key is known. */
  readonly key?: { readonly tonic: NoteName; readonly minor: boolean };
  readonly instrument?: WhatToPlay["instrument"];
  readonly tuning: Tuning;
  /** The beat that a tempo counts where it names none, and how long each note is. */
  readonly beat: NoteValue;
  readonly noteValue: NoteValue;
  /** As an attempt's conditions have it: `dotted`; missing for an even one. */
  readonly rhythm?: string;
  /** Each note is held until the next. */
  readonly slurred: boolean;
}

/** The exercise note by note, as it sounds, in hertz; empty where there is none to play. */
export function exerciseHertz({ exercise, tuning }: HeardBy): readonly number[] {
  if (!exercise) return [];
  const { subject, instrument } = exercise;
  const written = subject.type === "scale" ? subject.tonic : subject.root;
  const tonic = instrument ? transposed(written, instrument.sounding) : written;
  return notesToPlay(exercise).sounding.map((note) => hertzOf(note, tonic, tuning));
}

/** Without an octave a note is the highest at or below the exercise; where there is none, it is in octave 4. */
export function noteHertz(asked: SoundedNote, by: HeardBy): number | undefined {
  const written = asked.type === "note" ? asked.note : onDegree(asked.degree, by);
  if (!written) return undefined;
  const note = written.octave === undefined ? placed(written, by) : (written as Note);
  return frequencyOf(by.instrument ? soundingNote(by.instrument, note) : note, by.tuning);
}

/** Semitones from one to the other, as they are written. */
export function semitonesBetween(lower: SoundedNote, upper: SoundedNote, by: HeardBy): number | undefined {
  const [low, high] = [lower, upper].map((asked) => (asked.type === "note" ? asked.note : onDegree(asked.degree, by)));
  if (!low || !high) return undefined;
  const note = (each: NoteName & { readonly octave?: number }): Note => ({ ...each, octave: each.octave ?? 4 });
  const distance = midi(note(high)) - midi(note(low));
  return high.octave === undefined || low.octave === undefined ? distance - 12 * Math.floor(distance / 12) : distance;
}

function onDegree(degree: number, { exercise, key }: HeardBy): (NoteName & { readonly octave?: number }) | undefined {
  const found = exercise ?? key;
  if (!found) return undefined;
  const { tonic, degrees } = scaleOf(found);
  const { letter, alter } = noteOnDegree({ ...tonic, octave: 4 }, degrees, degree);
  return { letter, alter };
}

/** What degrees are counted in: the scale, that of a chord's root with its third, or that of a key. */
export function scaleOf(of: WhatToPlay | NonNullable<HeardBy["key"]>): {
  readonly tonic: NoteName;
  readonly degrees: readonly Degree[];
} {
  if (!("subject" in of)) return { tonic: of.tonic, degrees: plain(of.minor) };
  const { subject } = of;
  if (subject.type === "scale") return { tonic: subject.tonic, degrees: degreesOf(subject.kind, "up") };
  const third = notesToPlay({ subject: { ...subject, inversion: 0 } }).steps[0];
  return { tonic: subject.root, degrees: plain(third === 3) };
}

function plain(minor: boolean): readonly Degree[] {
  return degreesOf(kindById(minor ? "natural minor" : "major")!, "up");
}

function placed(name: NoteName, { exercise }: HeardBy): Note {
  const lowest = exercise ? notesToPlay(exercise).range?.low : undefined;
  const note = { ...name, octave: 4 };
  if (!lowest) return note;
  return { ...note, octave: 4 + Math.floor((midi(lowest) - midi(note)) / 12) };
}

/** Scales that do not keep to the twelve keys stand on the key of their tonic. */
function hertzOf(note: Note, tonic: NoteName, tuning: Tuning): number {
  if (note.off === undefined) return frequencyOf(note, tuning);
  return hertz(note, note.off + centsFromEqual(tuning.temperament)[pitchClass(tonic)]!, tuning.a);
}

/** How many of a value fill another; undefined where they do not fill it evenly. */
export function countIn(whole: NoteValue, part: NoteValue): number | undefined {
  const count = (whole.numerator * part.denominator) / (whole.denominator * part.numerator);
  return Number.isInteger(count) && count >= 1 ? count : undefined;
}
