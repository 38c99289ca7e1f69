import type { NoteName } from "../music/note.ts";
import type { Direction, Reach } from "../music/reach.ts";
import type { NoteValue } from "../music/value.ts";

export type { Direction, NoteValue, Reach };

/** A stretch of one line of a block: the line within the block, and UTF-16 columns, the end excluded. */
export interface Place {
  readonly line: number;
  readonly start: number;
  readonly end: number;
}

/** Days since 1970-01-01 in the proleptic Gregorian calendar. A calendar day has no zone. */
export type DayNumber = number;

/** A scale. `kind` is the id of a kind in `music/kind.ts`, or the declared name in quotes' text with `declared`. */
export interface ScaleSubject {
  readonly type: "scale";
  readonly tonic: NoteName;
  /** Where the player named one: `chromatic from G4`. */
  readonly octave?: number;
  readonly kind: string;
  readonly declared: boolean;
}

/** A chord or arpeggio. `chord` is the id of a chord in `music/chord.ts`. */
export interface ChordSubject {
  readonly type: "chord";
  readonly root: NoteName;
  readonly chord: string;
  /** 0 is root position. */
  readonly inversion: number;
  /** Played in groups of three: `1 3 5, 3 5 8`. */
  readonly broken: boolean;
  /** `dominant seventh in D`: the major key whose signature the chord carries. */
  readonly key?: NoteName;
}

export type Subject =
  | ScaleSubject
  | ChordSubject
  /** The declared title where it is known, else what stands in the quotes. */
  | { readonly type: "title"; readonly title: string; readonly declared: boolean }
  | { readonly type: "chain"; readonly scales: readonly ScaleSubject[] }
  | {
      readonly type: "figure";
      readonly figure: "notes" | "long tones" | "trill";
      readonly notes: readonly (NoteName & { readonly octave?: number })[];
      readonly scale?: ScaleSubject;
    }
  | { readonly type: "activity"; readonly name: string; readonly scale?: ScaleSubject }
  /** `done "clap line 4"`: set work in free words. */
  | { readonly type: "free"; readonly words: string };

/** The ids of `music/pattern.ts`; a declared pattern carries its name and cell. */
export type PatternRef =
  | {
      readonly type: "known";
      readonly id: string;
      readonly variant?: "alternating" | "returning" | "linked" | "broken";
    }
  | { readonly type: "declared"; readonly name: string };

export type Tonguing = "slurred" | "single" | "mixed" | "multiple";
export type Outcome = "easy" | "clean" | "nearly" | "uneven" | "rushed" | "slips" | "tense" | "broke down";

/** Beats a minute of `beat`; for `60-72` the top, with `low` the bottom. No beat: whatever the journal's beat is. */
export interface Tempo {
  readonly bpm: number;
  readonly low?: number;
  readonly beat?: NoteValue;
}

/** Everything that one attempt was played under. Unstated is undefined. */
export interface Conditions {
  /** `half` where it was said for one half only. */
  readonly articulation?: { readonly text: string; readonly tonguing: Tonguing; readonly half?: "up" | "down" };
  readonly rhythm?: { readonly text: string; readonly even: boolean };
  readonly noteValue?: NoteValue;
  readonly reach?: Reach;
  readonly direction?: Direction;
  readonly manner: readonly string[];
  /** `slow`, `free`, `no click`. */
  readonly withoutClick?: string;
}

export interface Attempt {
  readonly tempo?: Tempo;
  readonly outcomes: readonly Outcome[];
  /** `4 of 5` is { got: 4, count: 5 }; `5 in a row` and `5x` are { got: 5, count: 5 }; unstated is 1 of 1. */
  readonly tries: { readonly got: number; readonly count: number };
  /** Easy or clean, not tense, in at least half of the tries. */
  readonly reached: boolean;
  readonly conditions: Conditions;
  readonly place: Place;
}

/** Where in a piece, as typed apart from case and spacing, and its movement. */
export interface PiecePlace {
  readonly movement?: string;
  readonly text: string;
}

export interface Entry {
  readonly type: "entry";
  readonly place: Place;
  readonly subject: Subject;
  readonly subjectPlace: Place;
  readonly pattern?: PatternRef;
  readonly where?: PiecePlace;
  readonly instrument?: string;
  readonly focus?: string;
  readonly sore?: string;
  /** As stated on the line, in minutes. */
  readonly minutes?: number;
  readonly attempts: readonly Attempt[];
  readonly remarks: readonly string[];
  /** Below `plan`, with neither an outcome nor `done`: counts for nothing. */
  readonly planned: boolean;
  readonly phase?: string;
}
