import type { NoteValue } from "../music/notes/note-value.ts";
import type { Direction, Reach } from "../music/patterns/reach.ts";
import type { EntryLine, Line, LineOf } from "../syntax/line/line.ts";
import type { SubjectMeaning } from "../syntax/words/meaning.ts";
import type { DayNumber } from "./calendar.ts";
import type { Declaration } from "./declarations/declared.ts";

export type { Direction, NoteValue, Reach };
export type Subject = SubjectMeaning;

/** A stretch of one line of a block: the line within the block, and UTF-16 columns, the end excluded. */
export interface Place {
  readonly line: number;
  readonly start: number;
  readonly end: number;
}

/** The ids of `music/pattern.ts`; a declared pattern carries its name and cell. */
export type PatternRef =
  | {
      readonly type: "known";
      readonly id: string;
      readonly variant?: "alternating" | "returning" | "linked" | "broken";
    }
  | { readonly type: "declared"; readonly name: string };

export type Tonguing = "slurred" | "single" | "mixed" | "multiple";
/** How it went: a word of the format (`clean`), a phrase of the tables (`got there`) or the journal's own. */
export type Outcome = string;

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
  /** Said to be reached and not denied, in at least half of the tries; null where nothing was said of how it went. */
  readonly reached: boolean | null;
  /** In how many of the tries it was reached: none of them where it was uneven, or nothing was said. */
  readonly got: number;
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
  /** Missing where the line names none that can stand. */
  readonly subject?: Subject;
  readonly pattern?: PatternRef;
  /** Of a chord: 0 or missing is root position. */
  readonly inversion?: number;
  readonly where?: PiecePlace;
  readonly instrument?: string;
  readonly focus?: string;
  readonly sore?: string;
  /** As stated on the line, in minutes. */
  readonly minutes?: number;
  readonly attempts: readonly Attempt[];
  /** The index in `BlockModel.phases` of the stretch it stands in. */
  readonly stretch: number;
  readonly done: boolean;
  readonly remarks: readonly string[];
  /** Below `plan`, with neither an outcome nor `done` nor another sign that it was played: counts for nothing. */
  readonly planned: boolean;
  readonly phase?: string;
  /** The line as it was read, for what stands where. */
  readonly source: EntryLine;
}

/** What a day line, or the beginning of a head, opens. */
export interface DayFrame {
  /** Missing where the date does not exist. */
  readonly date?: DayNumber;
  readonly line: LineOf<"day">;
  readonly rest?: string;
  readonly planned: boolean;
}

/** A stretch of a day under one phase line, or under none. */
export interface PhaseFrame {
  readonly phase?: string;
  readonly line: number;
  readonly minutes?: number;
  readonly sitting: number;
  /** It was planned: its entries count as far as they were done, and its own minutes do not. */
  readonly planned: boolean;
  /** What the entries in it that are not planned state, in minutes. */
  readonly entryMinutes: number;
}

export interface Sitting {
  readonly line: number;
  /** As its line states: that of a session, or of the day for all of its sittings. */
  readonly minutes?: number;
  /** Its line stands below `plan`, or says so: then its minutes are those of the plan. */
  readonly planned: boolean;
  /** What a line below says that it came to; of several the greatest, which takes in the others. */
  readonly total?: number;
  readonly breaks: readonly number[];
}

/** What hurt, in the player's words: a line of its own, or the `sore` of an entry. */
export interface Soreness {
  readonly place: Place;
  readonly words: string;
}

/** One block, read in the light of the journal's declarations. Lines count from the block's first. */
export interface BlockModel {
  readonly lines: readonly Line[];
  readonly day?: DayFrame;
  readonly sittings: readonly Sitting[];
  readonly phases: readonly PhaseFrame[];
  readonly entries: readonly Entry[];
  /** In the order of the lines. */
  readonly sore: readonly Soreness[];
  readonly declarations: readonly { readonly line: number; readonly declaration: Declaration }[];
}
