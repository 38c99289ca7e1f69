import type { DayNumber } from "../journal/calendar.ts";
import type { NoteValue, Tonguing } from "../journal/model.ts";
import type { Direction } from "../music/patterns/reach.ts";
import type { Block } from "../syntax/document/document.ts";

/** Up to 9 semitones is `short`, to 14 `octave`, to 20 `twelfth`, above that `wide`. */
export type ReachClass = "short" | "octave" | "twelfth" | "wide";

export type Evenness = "even" | "uneven";

/** What was played, and in which way: all that tells one strand from another, and how its tempos are written. */
export interface Manner {
  /** Null where the journal names none. */
  readonly instrument: string | null;
  /** Canonical, as shown; for a title the title without quotes. */
  readonly subject: string;
  /** What makes two subjects the same. */
  readonly subjectKey: string;
  /** `thirds`, `thirds alternating`, `straight`, `broken chord`; null for titles. */
  readonly pattern: string | null;
  /** Titles only. */
  readonly movement: string | null;
  /** Titles only: the place, as typed. */
  readonly where: string | null;
  /** Null where there is no way to tell, and for titles. */
  readonly reach: ReachClass | null;
  readonly tonguing: Tonguing;
  readonly evenness: Evenness;
  /** The uneven rhythm, by its first name in the tables; missing where it is even. */
  readonly rhythm?: string;
  readonly direction?: Direction;
  readonly byHeart?: boolean;
  /** What `rate` counts a minute: notes, or for a title beats. */
  readonly unit: "notes" | "beats";
  /** The note value and the beat that the player counted in, where there were any. */
  readonly noteValue?: NoteValue;
  readonly beat?: NoteValue;
  /** Two attempts are ones at the same exercise, or of the same strand, when these are equal (`strand-key.ts`). */
  readonly exerciseKey: string;
  readonly strandKey: string;
}

/**
 * One attempt as everything downstream reads it: no text to parse, no name to resolve. An entry with neither a tempo
 * nor an outcome may stand as one record with a count of 0: it was practised, and its minutes belong somewhere.
 */
export interface AttemptRecord extends Manner {
  readonly day: DayNumber;
  /** Its place among the attempts of the day, from the first on. */
  readonly order: number;
  /** Notes a minute, or beats a minute for a title. Null without a metronome. */
  readonly rate: number | null;
  /** Said to be reached and not denied, in at least half of its tries; null where nothing was said of how it went. */
  readonly reached: boolean | null;
  /** How many attempts this stands for: 5 for `4 of 5`. */
  readonly count: number;
  /** In how many of them it was reached: 4 for `4 of 5`, none where it was uneven or nothing was said. */
  readonly got: number;
  /** Its share of the practice time. */
  readonly minutes: number;
  /** The minutes were shared out, not written. */
  readonly about: boolean;
  /** The phase that it stands in, by its id; missing where it stands in none. */
  readonly phase?: string | undefined;
  readonly uri: string;
  /** The day that it stands in, and the line there: so that it stays the same when the day moves (`placeOf`). */
  readonly block: Block;
  readonly line: number;
  /** Which attempt of its line it is, from 0 on. */
  readonly attempt: number;
  /** Where its tempo stands on the line: UTF-16 columns, the end excluded; without a tempo the whole entry. */
  readonly start: number;
  readonly end: number;
}

/**
 * Oldest first. Attempts that agree in day and order, as those of one day in two places may, stand by line and then by
 * what they say, so that sorting gives one result however they came and wherever the day stands.
 */
export function inTimeOrder(a: AttemptRecord, b: AttemptRecord): number {
  return (
    a.day - b.day ||
    a.order - b.order ||
    a.line - b.line ||
    a.attempt - b.attempt ||
    compareText(a.strandKey, b.strandKey) ||
    (a.rate ?? 0) - (b.rate ?? 0) ||
    Number(a.reached) - Number(b.reached) ||
    a.minutes - b.minutes ||
    compareText(a.subject, b.subject) ||
    compareText(a.where ?? "", b.where ?? "") ||
    compareText(JSON.stringify([a.noteValue, a.beat]), JSON.stringify([b.noteValue, b.beat])) ||
    compareText(a.uri, b.uri)
  );
}

/** By code units: the same on every machine, whatever its language. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
