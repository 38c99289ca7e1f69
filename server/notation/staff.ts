import type { Fingering } from "../music/fingering/fingering.ts";
import type { Note } from "../music/notes/note.ts";
import type { Clef } from "./clef.ts";

/** A note on a staff. */
export interface StaffNote {
  /** As written for the instrument. */
  readonly note: Note;
  /** Lines and spaces above the bottom line, which is 0; below it less than nought. */
  readonly step: number;
  /** The accidental that is shown before it, in semitones, 0 for a natural; null where none is. */
  readonly accidental: number | null;
  readonly value: StaffValue;
  /** As the writer calls notes: `Fis`. */
  readonly name: string;
  /** `third degree`. */
  readonly degree: string;
  /** Which figure of the pattern it belongs to, from 0; always 0 where the pattern has none. */
  readonly figure: number;
  /** What stands beneath a note that is not right, or that stands for one: `written F`. */
  readonly mark?: string;
  readonly fingering?: StaffFingering;
}

/** How a note is fingered on a recorder. */
export interface StaffFingering {
  readonly holes: Fingering;
  /** `0 123 45--`. */
  readonly text: string;
}

/** A note's length, as it is drawn: `base` 8 is an eighth. */
export interface StaffValue {
  readonly base: 1 | 2 | 4 | 8 | 16 | 32;
  readonly dots: 0 | 1;
  /** So many notes make a group with a figure above it: 3 for triplets. */
  readonly tuplet?: 3 | 6;
}

/** From one note to another, both counted from 0 and included. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** A sign at every note head. */
export type NoteSign = "dot" | "line" | "accent" | "wedge";

/** All that a staff shows, as plain data. */
export interface Staff {
  /** What it is: `D melodic minor, thirds`. */
  readonly title: string;
  /** The same as the drawing shows, in words. */
  readonly text: string;
  /** What stands above it where there are several: `as written`. */
  readonly label?: string;
  readonly clef: Clef;
  /** Sharps, or flats where negative, at most seven; 0 for none. */
  readonly fifths: number;
  /** What the line calls the notes, which in an even rhythm each of them has. */
  readonly value: StaffValue;
  readonly notes: readonly StaffNote[];
  /** Groups of two notes and more under one beam. */
  readonly beams: readonly Stretch[];
  readonly slurs: readonly Stretch[];
  readonly signs: readonly NoteSign[];
}
