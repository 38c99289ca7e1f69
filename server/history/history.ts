import { isoDate } from "../journal/calendar.ts";
import type { Tonguing } from "../journal/model.ts";
import type { AttemptRecord, Evenness, ReachClass } from "./record.ts";
import { type Choice, type Exercise, exercisesOf, type Strand, strandName } from "./strands.ts";
import { type Trend, trendOf } from "./trend.ts";
import { BlankWeeks, type Week, weeksOf } from "./weeks.ts";

/** What `history --json` prints. Rates are notes a minute (titles: beats a minute), slopes for a week. */
export interface History {
  /** The latest practised first, then by subject. */
  readonly exercises: readonly HistoryOfExercise[];
}

export interface HistoryOfExercise {
  readonly subject: string;
  readonly pattern: string | null;
  readonly instrument: string | null;
  /** Those of the strand shown, which is the first of `strands`. */
  readonly weeks: readonly Week[];
  readonly trend: Trend;
  /** ISO 8601: `2026-03-06`. */
  readonly lastPractised: string;
  /** `octave, single, even`; for a title its movement and place. */
  readonly strand: string;
  readonly strands: readonly HistoryOfStrand[];
}

export interface HistoryOfStrand {
  /** Null for a title, as are tonguing and evenness. */
  readonly reach: ReachClass | null;
  readonly tonguing: Tonguing | null;
  readonly evenness: Evenness | null;
  /** Titles only. */
  readonly movement?: string | null;
  /** Titles only: where in the piece, as typed. */
  readonly place?: string | null;
  readonly weeks: readonly Week[];
  readonly trend: Trend;
}

/**
 * The history of every exercise, whatever order the records come in. With `since`, of those practised on that day or
 * later, by whole weeks from the one that holds it on.
 */
export function historyOf(records: readonly AttemptRecord[], choice: Choice = {}): History {
  const blanks = new BlankWeeks();
  return { exercises: exercisesOf(records, choice).map((exercise) => historyOfExercise(exercise, choice, blanks)) };
}

function historyOfExercise(exercise: Exercise, choice: Choice, blanks: BlankWeeks): HistoryOfExercise {
  const strands = exercise.strands.map((strand) => historyOfStrand(strand, choice, blanks));
  const shown = strands[0]!;
  return {
    subject: exercise.subject,
    pattern: exercise.pattern,
    instrument: exercise.instrument,
    weeks: shown.weeks,
    trend: shown.trend,
    lastPractised: isoDate(exercise.lastDay),
    strand: strandName(exercise.strands[0]!),
    strands,
  };
}

function historyOfStrand(strand: Strand, { since }: Choice, blanks: BlankWeeks): HistoryOfStrand {
  const weeks = weeksOf(strand.records, since, blanks);
  return {
    reach: strand.reach,
    tonguing: strand.tonguing,
    evenness: strand.evenness,
    ...(strand.title && { movement: strand.movement, place: strand.where }),
    weeks,
    trend: trendOf(weeks),
  };
}
