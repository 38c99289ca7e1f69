import { chordById } from "../../music/chords/chord.ts";
import type { Instrument } from "../../music/instruments/instrument.ts";
import type { Degree } from "../../music/notes/degree.ts";
import type { Note } from "../../music/notes/note.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import type { ChordToPlay, ScaleToPlay } from "../../music/patterns/notes-to-play.ts";
import { type Cell, patternById, type Variant } from "../../music/patterns/pattern.ts";
import type { Direction, Reach } from "../../music/patterns/reach.ts";
import { kindById } from "../../music/scales/kinds.ts";
import { degreesOf } from "../../music/scales/scale.ts";
import { noteTexts } from "./note-texts.ts";

/** The exercise that a note list stands beside. */
export interface ClaimedExercise {
  readonly subject: ScaleToPlay | ChordToPlay;
  /** As it is shown: `F# major`. */
  readonly subjectText: string;
  /** An id of `PATTERNS`, or a declared cell. */
  readonly pattern?: string | Cell;
  /** As it is shown: `thirds`. */
  readonly patternText?: string;
  readonly variant?: Variant;
  /** Only where one is stated. */
  readonly direction?: Direction;
  /** Only where one is stated. */
  readonly reach?: Reach;
  readonly instrument?: Pick<Instrument, "low" | "high" | "sounding">;
  /** How notes are called in messages and in what a fix writes. */
  readonly names: NoteNames;
}

export interface ExpectedNote {
  readonly note: Note;
  /** 1 is the tonic or root. */
  readonly degree: number;
  readonly falling: boolean;
  /** From 0, within the rising or falling form. */
  readonly figure: number;
  /** The tonic of its key, on which a dominant seventh resolves: no note of the chord. */
  readonly resolves?: true;
}

/** One way in which a list may be meant. */
export interface Reading {
  /** The subject as this way takes it: an octatonic scale may be either one. */
  readonly subject: ScaleToPlay | ChordToPlay;
  readonly notes: readonly ExpectedNote[];
  /** Whether it is the pattern that is named, rather than the scale or chord itself. */
  readonly patterned: boolean;
  /** Whether its last note is a closing tonic, which may be left out. */
  readonly closes: boolean;
  /** Whether typed octave numbers are those of these notes, rather than counted from any octave. */
  readonly placed: boolean;
  /** Whether only each note by itself can be told: the order is nobody's to know (`leaps`). */
  readonly unordered?: true;
}

/** The degrees of one octave of a scale or chord, low to high. */
export function rungsIn(subject: ScaleToPlay | ChordToPlay, falling: boolean): readonly Degree[] {
  if (subject.type === "scale") return degreesOf(subject.kind, falling ? "down" : "up", subject.tonic);
  return chordById(subject.chord)!.degrees;
}

/** `broken` chords go in threes unless a pattern is named. */
export function patternNamed({ subject, pattern }: ClaimedExercise): string | Cell | undefined {
  const named = pattern ?? (subject.type === "chord" && subject.broken ? "threes" : undefined);
  return named === "straight" ? undefined : named;
}

/** `octatonic` may be either of two scales. */
export function kindsMeant(claimed: ClaimedExercise): ClaimedExercise[] {
  const { subject } = claimed;
  if (subject.type !== "scale" || subject.kind.id !== "octatonic") return [claimed];
  return ["half-whole", "whole-half"].map((id) => ({ ...claimed, subject: { ...subject, kind: kindById(id)! } }));
}

/** How a pattern is called in a message. */
export function patternName({ pattern, patternText, subject }: ClaimedExercise): string {
  if (patternText) return patternText;
  if (typeof pattern === "string") return patternById(pattern)?.names[0] ?? pattern;
  return subject.type === "chord" && subject.broken ? noteTexts.broken : noteTexts.thePattern;
}
