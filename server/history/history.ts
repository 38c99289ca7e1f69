import { type DayNumber, isoDate } from "../journal/calendar.ts";
import type { Tonguing } from "../journal/model.ts";
import { type PractisedDays, practisedDays } from "./break.ts";
import { type Comparison, comparisonsOf } from "./comparisons.ts";
import type { AttemptRecord, Evenness, ReachClass } from "./record.ts";
import type { Return } from "./return.ts";
import type { Settled } from "./settled.ts";
import type { CleanShare } from "./steady.ts";
import { factsToday, lastDayOf } from "./strand-facts.ts";
import { type Choice, type Exercise, exercisesOf, grouped, playedUpTo, type Strand, strandName } from "./strands.ts";
import { type Trend, testedOf, trendOf, weeksSince } from "./trend.ts";
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
  readonly trend: HistoryTrend;
  /** Of all its strands. ISO 8601: `2026-03-06`. */
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
  readonly trend: HistoryTrend;
  /** Its own. ISO 8601: `2026-03-06`. */
  readonly lastPractised: string;
  /** What is known of it today. With `today` alone, as all that follows. */
  readonly settled?: HistorySettled | null;
  /** How it goes since the last break of its instrument that bears on it. */
  readonly return?: HistoryReturn | null;
  /** The fastest rate that is steady today, or null. */
  readonly steady?: number | null;
  /** How often each rate was reached that was tried enough in the twelve weeks before today, the slowest first. */
  readonly shares?: readonly CleanShare[];
  /** Ways of playing that compare with this one, the most telling first. */
  readonly comparisons?: readonly HistoryComparison[];
}

export type HistorySettled = Omit<Settled, "index">;

export interface HistoryReturn extends Omit<Return, "since" | "testedWeeks"> {
  /** The first day back. ISO 8601: `2026-04-20`. */
  readonly since: string;
  /** That of the weeks since; null unless what came before is cut off. */
  readonly trend: HistoryTrend | null;
}

export type HistoryComparison = Omit<Comparison, "chance" | "strands">;

/** A trend, and the first and the last week that it was fitted on; null where there is none. */
export interface HistoryTrend extends Trend {
  readonly from: string | null;
  readonly to: string | null;
}

/** A script tells how far apart weeks are by their ISO dates. */
export type HistoryWeek = Omit<Week, "index" | "tries" | "reached">;

export interface HistoryChoice extends Choice {
  /** Whether to list weeks without a record as well, from the first with one to the last. */
  readonly blankWeeks?: boolean;
  /** Tells what is known on this day, or on the one after `until` where that comes before. */
  readonly today?: DayNumber;
  /** When each instrument was practised, by which breaks are known; the days of the records where it is left out. */
  readonly practised?: PractisedDays;
}

/**
 * The history of every exercise, whatever order the records come in. With `since`, of those practised on that day or
 * later, by whole weeks from the one that holds it on; with `until`, as it stood on that day.
 */
export function historyOf(records: readonly AttemptRecord[], choice: HistoryChoice = {}): History {
  const { today, practised = practisedDays(records) } = choice;
  const every = grouped(today === undefined ? [] : records, "exerciseKey");
  const exercises = exercisesOf(records, choice).map((exercise) =>
    historyOfExercise(exercise, choice, factsTold(every.get(exercise.key) ?? [], practised, choice)),
  );
  return { exercises };
}

type Facts = Pick<HistoryOfStrand, "settled" | "return" | "steady" | "shares" | "comparisons">;

function historyOfExercise(
  exercise: Exercise,
  choice: HistoryChoice,
  factsOfStrand: (strand: Strand) => Facts,
): HistoryOfExercise {
  const strands = exercise.strands.map((strand) => historyOfStrand(strand, choice, factsOfStrand(strand)));
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

function historyOfStrand(strand: Strand, { since, blankWeeks = false }: HistoryChoice, facts: Facts): HistoryOfStrand {
  const weeks = weeksOf(strand.records, since);
  return {
    name: strandName(strand),
    reach: strand.reach,
    tonguing: strand.tonguing,
    evenness: strand.evenness,
    ...(strand.title && { movement: strand.movement, place: strand.where }),
    weeks: (blankWeeks ? withBlankWeeks(weeks) : weeks).map(listed),
    trend: trendWithWeeks(weeks),
    lastPractised: isoDate(strand.records.at(-1)!.day),
    ...facts,
  };
}

/**
 * What is known of the strands of one exercise: what was played up to today, or up to `until`; of what is steady or
 * tried, only before today.
 */
function factsTold(
  ofExercise: readonly AttemptRecord[],
  practised: PractisedDays,
  { today, until }: HistoryChoice,
): (strand: Strand) => Facts {
  if (today === undefined) return () => ({});
  const asked = { today, ...(until === undefined ? {} : { until }) };
  const last = lastDayOf(asked);
  const comparisons = comparisonsOf(ofExercise, last);
  return (strand) => {
    const { settled, returned, steady, shares } = factsToday(strand, practised, asked);
    return {
      settled: settled && settledTold(settled),
      return: returned && returnTold(returned, weeksOf(playedUpTo(strand, last)!.records)),
      steady,
      shares,
      comparisons: comparisons.filter(({ strands }) => strands.includes(strand.key)).map(comparisonTold),
    };
  };
}

function settledTold({ since, best, testedWeeks, tries }: Settled): HistorySettled {
  return { since, best, testedWeeks, tries };
}

function returnTold({ since, days, before, after, fresh }: Return, weeks: readonly Week[]): HistoryReturn {
  const trend = fresh ? trendWithWeeks(weeksSince(weeks, since)) : null;
  return { since: isoDate(since), days, before, after, fresh, trend };
}

function comparisonTold({ of, with: other, weeks, lower, higher, ratio }: Comparison): HistoryComparison {
  return { of, with: other, weeks, lower, higher, ratio };
}

/** The trend of some weeks, with the first and the last that it is fitted on. */
export function trendWithWeeks(weeks: readonly Week[]): HistoryTrend {
  const tested = testedOf(weeks);
  return { ...trendOf(weeks), from: tested[0]?.week ?? null, to: tested.at(-1)?.week ?? null };
}

/** At least one week is given. */
function withBlankWeeks(weeks: readonly Week[]): readonly Week[] {
  return everyWeek(weeks, { first: weeks[0]!.index, last: weeks.at(-1)!.index });
}

function listed({ week, bestClean, usual, tested, attempts, minutes, about }: Week): HistoryWeek {
  return { week, bestClean, usual, tested, attempts, minutes, about };
}
