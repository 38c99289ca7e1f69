import type { AttemptRecord } from "../history/record.ts";
import type { Trend } from "../history/trend.ts";
import { metronomeOf, type Notation, shown } from "../history/trend-words.ts";
import { firstDay, holdsDay, toldSpan, type WeekSpan, weeksIn } from "../history/week-span.ts";
import type { Week } from "../history/weeks.ts";
import type { DayNumber } from "../journal/calendar.ts";
import type { TimeAxis } from "./time-axis.ts";

/**
 * The tempos of one strand over a span of ISO weeks. Rates are notes a minute (titles: beats a minute); with a notation
 * they are shown as the player counts.
 */
export interface TempoChart {
  /** What is practised, as the player writes it: `D melodic minor, thirds`. */
  readonly title: string;
  /** What stands above the tempos: `tempo, 8ths`. May be empty. */
  readonly axis: string;
  readonly notation?: Notation;
  /** Those with a record, as `weeksOf` gives them. What lies outside the span is not drawn. */
  readonly weeks: readonly Week[];
  /** The strand's records. What has no tempo, or lies outside the span, is not drawn. */
  readonly attempts: readonly TempoAttempt[];
  /** Fitted on the weeks of the span; left out where none is told. */
  readonly trend?: Trend;
  readonly aim?: TempoAim;
  /** How wide it is. What comes before the first of `weeks` stays empty, so that a week is as wide in every chart. */
  readonly span: TimeAxis;
}

export type TempoAttempt = Pick<AttemptRecord, "day" | "rate" | "reached">;

export interface TempoAim {
  readonly rate: number;
  /** It may lie beyond the span; left out where none is said. */
  readonly day?: DayNumber;
}

/** What of a chart's data can be drawn. */
export interface TempoFrame {
  readonly span: TimeAxis;
  /** The Monday that the span begins on. */
  readonly firstDay: DayNumber;
  /** Of the span, what there is to tell of: from the first week with a record on. */
  readonly told: WeekSpan;
  readonly weeks: readonly Week[];
  readonly attempts: readonly TimedAttempt[];
  readonly aim?: TempoAim;
}

export interface TimedAttempt extends TempoAttempt {
  readonly rate: number;
}

/** Beyond these nobody plays; a rate that lies there, or is no number, is as good as none. */
const SLOWEST = 1;
const FASTEST = 100_000;

/** Whether a rate can stand on a ratio scale. */
export function isRate(rate: number | null): rate is number {
  return rate !== null && rate >= SLOWEST && rate <= FASTEST;
}

/** The part of the data that the span holds. */
export function frameOf({ weeks, attempts, aim, span }: TempoChart): TempoFrame {
  const told = toldSpan(weeks, span);
  return {
    span,
    firstDay: firstDay(span),
    told,
    weeks: weeksIn(weeks, told),
    attempts: attempts.filter(isTimed).filter(({ day }) => holdsDay(told, day)),
    aim: aim && isRate(aim.rate) && (aim.day ?? firstDay(told)) >= firstDay(told) ? aim : undefined,
  };
}

function isTimed(attempt: TempoAttempt): attempt is TimedAttempt {
  return isRate(attempt.rate);
}

/** The number alone, in beats a minute as the player counts, to one decimal. */
export function shownRate(rate: number, { noteValue, beat }: Notation = {}): string {
  return shown(rate, noteValue ?? null, beat);
}

/** A rate as the metronome has it, unrounded. */
export function counted(rate: number, notation: Notation = {}): number {
  return metronomeOf(rate, notation);
}
