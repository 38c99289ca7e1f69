import type { AttemptRecord } from "../history/record.ts";
import type { Trend } from "../history/trend.ts";
import { metronomeOf, type Notation, shown } from "../history/trend-words.ts";
import { firstDay, holdsDay, toldSpan, type WeekSpan, weeksIn } from "../history/week-span.ts";
import type { Week } from "../history/weeks.ts";

/**
 * The tempos of one strand over a span of ISO weeks. Rates are notes a minute (titles: beats a minute); with a notation
 * they are shown as the player counts.
 */
export interface TempoChart {
  /** What is practised, as the player writes it: `D melodic minor, thirds`. */
  readonly title: string;
  /** What the player writes before a tempo: `8ths at`, `quarter=`. May be empty. */
  readonly axis: string;
  readonly notation?: Notation;
  /** Those with a record, as `weeksOf` gives them. What lies outside the span is not drawn. */
  readonly weeks: readonly Week[];
  /** The strand's records. What has no tempo, or lies outside the span, is not drawn. */
  readonly attempts: readonly TempoAttempt[];
  /** Fitted on the weeks of the span. */
  readonly trend: Trend;
  readonly aim?: TempoAim;
  /** How wide it is. What comes before the first of `weeks` stays empty, so that a week is as wide in every chart. */
  readonly span: WeekSpan;
}

export type TempoAttempt = Pick<AttemptRecord, "day" | "rate" | "reached">;

/** Its day may lie beyond the span. */
export interface TempoAim extends Pick<AttemptRecord, "day"> {
  readonly rate: number;
  /** The day as it is said: `2026-04-30`. */
  readonly date: string;
}

/** What of a chart's data can be drawn. */
export interface TempoFrame {
  readonly span: WeekSpan;
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
    told,
    weeks: weeksIn(weeks, told),
    attempts: attempts.filter(isTimed).filter(({ day }) => holdsDay(told, day)),
    aim: aim && isRate(aim.rate) && aim.day >= firstDay(told) ? aim : undefined,
  };
}

function isTimed(attempt: TempoAttempt): attempt is TimedAttempt {
  return isRate(attempt.rate);
}

/** A rate as the player writes it: `8ths at 72`, `quarter=84`, `72`. */
export function written(rate: number, { axis, notation }: Pick<TempoChart, "axis" | "notation">): string {
  const before = axis === "" || axis.endsWith("=") ? axis : `${axis} `;
  return `${before}${shownRate(rate, notation)}`;
}

/** The number alone, in beats a minute as the player counts, to one decimal. */
export function shownRate(rate: number, { noteValue, beat }: Notation = {}): string {
  return shown(rate, noteValue ?? null, beat);
}

/** A rate as the metronome has it, unrounded. */
export function counted(rate: number, notation: Notation = {}): number {
  return metronomeOf(rate, notation);
}
