import { isoDate } from "../journal/calendar.ts";
import type { Tonguing } from "../journal/model.ts";
import type { AttemptRecord, Evenness, ReachClass } from "./record.ts";
import { type Choice, type Exercise, exercisesOf, type Strand, strandName } from "./strands.ts";
import { type Trend, trendOf } from "./trend.ts";
import { everyWeek, type Week, weeksOf } from "./weeks.ts";

/** What `history --json` prints. Rates are notes a minute (titles: beats a minute), slopes for a week. */
export interface History {
  /** The latest practised first, then by subject. */
  readonly exercises: readonly HistoryOfExercise[];
}

export interface HistoryOfExercise {
  readonly subject: string;
  readonly pattern: string | null;
  readonly instrument: string | null;
  /** Those of the strand shown. */
  readonly weeks: readonly HistoryWeek[];
  readonly trend: Trend;
  /** ISO 8601: `2026-03-06`. */
  readonly lastPractised: string;
  /** The name of the strand shown: `octave, single, even`; for a title its movement and place. */
  readonly strand: string;
  /** All of them, the one shown first. */
  readonly strands: readonly HistoryOfStrand[];
}

export interface HistoryOfStrand {
  /** No other strand of the exercise has it. */
  readonly name: string;
  /** Null for a title, as are tonguing and evenness. */
  readonly reach: ReachClass | null;
  readonly tonguing: Tonguing | null;
  readonly evenness: Evenness | null;
  /** Titles only. */
  readonly movement?: string | null;
  /** Titles only: where in the piece, as typed. */
  readonly place?: string | null;
  /** Those with a record, oldest first; with `blankWeeks` those between as well. */
  readonly weeks: readonly HistoryWeek[];
  readonly trend: Trend;
}

/** A script tells how far apart weeks are by their ISO dates. */
export type HistoryWeek = Omit<Week, "index">;

export interface HistoryChoice extends Choice {
  /** Whether to list weeks without a record as well, from the first with one to the last. */
  readonly blankWeeks?: boolean;
}

/**
 * The history of every exercise, whatever order the records come in. With `since`, of those practised on that day or
 * later, by whole weeks from the one that holds it on.
 */
export function historyOf(records: readonly AttemptRecord[], choice: HistoryChoice = {}): History {
  return { exercises: exercisesOf(records, choice).map((exercise) => historyOfExercise(exercise, choice)) };
}

function historyOfExercise(exercise: Exercise, choice: HistoryChoice): HistoryOfExercise {
  const strands = exercise.strands.map((strand) => historyOfStrand(strand, choice));
  const shown = strands[0]!;
  return {
    subject: exercise.subject,
    pattern: exercise.pattern,
    instrument: exercise.instrument,
    weeks: shown.weeks,
    trend: shown.trend,
    lastPractised: isoDate(exercise.lastDay),
    strand: shown.name,
    strands,
  };
}

function historyOfStrand(strand: Strand, { since, blankWeeks = false }: HistoryChoice): HistoryOfStrand {
  const weeks = weeksOf(strand.records, since);
  return {
    name: strandName(strand),
    reach: strand.reach,
    tonguing: strand.tonguing,
    evenness: strand.evenness,
    ...(strand.title && { movement: strand.movement, place: strand.where }),
    weeks: (blankWeeks ? withBlankWeeks(weeks) : weeks).map(listed),
    trend: trendOf(weeks),
  };
}

/** At least one week is given. */
function withBlankWeeks(weeks: readonly Week[]): readonly Week[] {
  return everyWeek(weeks, { first: weeks[0]!.index, last: weeks.at(-1)!.index });
}

function listed({ week, bestClean, tested, attempts, minutes, about }: Week): HistoryWeek {
  return { week, bestClean, tested, attempts, minutes, about };
}
