import { LATELY, type Trend } from "../history/trend.ts";
import { metronomeOf, type Notation, shown } from "../history/trend-words.ts";
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
  /** One after another without a gap, as `weeksOf` gives them; the last one stands at the right edge. */
  readonly weeks: readonly Week[];
  readonly attempts: readonly TempoAttempt[];
  /** Fitted on the weeks shown: `trendOf(weeks, { lastWeeks: span })`. */
  readonly trend: Trend;
  readonly aim?: TempoAim;
  /** How many weeks are shown, the latest ones; 26 unless said. Fewer leave the left side empty, so that a week is as wide in every chart. */
  readonly span?: number;
}

export interface TempoAttempt {
  /** Days since the Monday of the first of `weeks`. */
  readonly day: number;
  readonly rate: number;
  readonly reached: boolean;
}

export interface TempoAim {
  readonly rate: number;
  /** Days since the Monday of the first of `weeks`; may lie beyond the last. */
  readonly day: number;
  /** As it is said: `2026-04-30`. */
  readonly date: string;
}

/** What of a chart's data can be drawn: the weeks of the span, and what falls into them. */
export interface TempoFrame {
  readonly span: number;
  readonly weeks: readonly Week[];
  /** The place of the first of `weeks` among the weeks of the span. */
  readonly column: number;
  /** Their days are counted from the first of `weeks`, as is the aim's. */
  readonly attempts: readonly TempoAttempt[];
  readonly aim?: TempoAim;
}

const DAYS_OF_WEEK = 7;

/** Beyond these nobody plays; a rate that lies there, or is no number, is as good as none. */
const SLOWEST = 1;
const FASTEST = 100_000;

/** Whether a rate can stand on a ratio scale. */
export function isRate(rate: number | null): rate is number {
  return rate !== null && rate >= SLOWEST && rate <= FASTEST;
}

/** The part of the data that the span holds. */
export function frameOf({ weeks, attempts, aim, span = LATELY }: TempoChart): TempoFrame {
  const columns = Number.isFinite(span) && span >= 1 ? Math.round(span) : LATELY;
  const visible = weeks.slice(-columns);
  const before = (weeks.length - visible.length) * DAYS_OF_WEEK;
  const moved = <T extends { readonly day: number }>(each: T): T => ({ ...each, day: Math.floor(each.day) - before });
  const days = visible.length * DAYS_OF_WEEK;
  return {
    span: columns,
    weeks: visible,
    column: columns - visible.length,
    attempts: attempts
      .filter(({ rate }) => isRate(rate))
      .map(moved)
      .filter(({ day }) => day >= 0 && day < days),
    aim: aim && isRate(aim.rate) && aim.day >= before ? moved(aim) : undefined,
  };
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
