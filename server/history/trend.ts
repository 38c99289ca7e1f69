import { type DayNumber, weekLabel } from "../journal/calendar.ts";
import { theilSen } from "./theil-sen.ts";
import type { Week } from "./weeks.ts";

export type Verdict = "rising" | "falling" | "level" | "too early";

/** How a strand's weekly best moves. */
export interface Trend {
  /**
   * Notes a minute (titles: beats a minute) gained in a week. Null under two tested weeks; when it is too early the
   * figures stand where two or three weeks give them, and say nothing yet.
   */
  readonly slope: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** The confidence of the interval from `low` to `high`. */
  readonly level: 0.95;
  readonly verdict: Verdict;
  /** How many tested weeks were fitted. */
  readonly weeks: number;
}

/** Which weeks to fit; all unless said. Both together narrow. */
export interface Span {
  /** The last so many of the weeks given, empty ones counted. */
  readonly lastWeeks?: number;
  /** From the week that holds this day on. */
  readonly since?: DayNumber;
}

/** How far back one looks for how it goes lately, in ISO weeks: half a year. */
export const LATELY = 26;

export const WEEKS_FOR_A_TREND = 4;
const LEVEL = 0.95;

/**
 * The Theil–Sen slope over (weeks since the first, best reached rate) of the tested weeks. It rises or falls only when
 * the confidence interval leaves zero out; under four tested weeks it is too early. The weeks are those of `weeksOf`,
 * one after the other without a gap.
 *
 * Leaving out weeks worked below best has a price: in simulation, a level player whose weekly best swings by some ten per
 * cent, and who never notes a failure, is called rising in 6 % of runs of 26 weeks; one who swings by five, in under 1 %.
 */
export function trendOf(weeks: readonly Week[], span: Span = {}): Trend {
  const xs: number[] = [];
  const ys: number[] = [];
  weeksWithin(weeks, span).forEach(({ tested, bestClean }, weeksSinceFirst) => {
    if (!tested || bestClean === null) return;
    xs.push(weeksSinceFirst);
    ys.push(bestClean);
  });
  const { slope, low, high, count } = theilSen(xs, ys, LEVEL);
  return { slope, low, high, level: LEVEL, verdict: verdictOf(count, low, high), weeks: count };
}

/** The weeks of the span, oldest first. */
export function weeksWithin(weeks: readonly Week[], { lastWeeks, since }: Span): readonly Week[] {
  const last = lastWeeks === undefined ? weeks : weeks.slice(Math.max(0, weeks.length - lastWeeks));
  if (since === undefined) return last;
  const from = weekLabel(since);
  return last.filter(({ week }) => week >= from);
}

function verdictOf(weeks: number, low: number | null, high: number | null): Verdict {
  if (weeks < WEEKS_FOR_A_TREND) return "too early";
  if (low !== null && low > 0) return "rising";
  if (high !== null && high < 0) return "falling";
  return "level";
}
