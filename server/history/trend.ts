import { type DayNumber, weekIndex } from "../journal/calendar.ts";
import { mannKendall } from "./kendall.ts";
import { normalQuantile } from "./normal-quantile.ts";
import { theilSen } from "./theil-sen.ts";
import { CONFIDENCE, LEAST_CHANGE, WEEKS_FOR_A_TREND } from "./thresholds.ts";
import { weeksIn, weeksUpTo } from "./week-span.ts";
import { isReached, type ReachedWeek, type Week } from "./weeks.ts";

export type Verdict = "rising" | "falling" | "level" | "too early";

/** How the usual tempo of a strand moves from week to week. */
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
  /** The first day back after a break that cuts off what came before; missing where all of the weeks were looked at. */
  readonly since?: DayNumber;
}

export { LATELY, WEEKS_FOR_A_TREND } from "./thresholds.ts";

/**
 * How the usual tempo of the tested weeks among these moves. The slope is Theil and Sen's over (weeks since the first,
 * usual rate). It rises or falls when more pairs of weeks go one way than chance gives once in twenty (the test of Mann
 * and Kendall), and by at least a twenty-fifth of the tempo in all; under four tested weeks it is too early. Weeks
 * without a record count as time, whether or not they are among those given: each week knows its running number.
 *
 * With `since`, only the weeks from the one that holds that day on are looked at (`baselineOf`).
 *
 * What it is known to get wrong stands in the format reference, and is measured in test/history/simulation.
 */
export function trendOf(weeks: readonly Week[], since?: DayNumber): Trend {
  const looked = weeksSince(weeks, since);
  const tested = testedOf(looked);
  const { slope, low, high, count } = theilSen(
    tested.map(({ index }) => index - looked[0]!.index),
    tested.map(({ usual }) => usual),
    CONFIDENCE,
  );
  const trend = { slope, low, high, level: CONFIDENCE, verdict: verdictOf(tested, slope), weeks: count } as const;
  return since === undefined || looked.length === weeks.length ? trend : { ...trend, since };
}

/** Those of some weeks that lie in the week of a day or later; all where there is no day. */
export function weeksSince(weeks: readonly Week[], since: DayNumber | undefined): readonly Week[] {
  return since === undefined ? weeks : weeks.filter(({ index }) => index >= weekIndex(since));
}

/** The weeks that a trend is fitted on. */
export function testedOf(weeks: readonly Week[]): readonly ReachedWeek[] {
  return weeks.filter(isReached).filter(({ tested }) => tested);
}

/** Those of a strand's weeks that lie in the last so many up to its latest. */
export function weeksWithin(weeks: readonly Week[], { lastWeeks }: { readonly lastWeeks: number }): readonly Week[] {
  const latest = weeks.at(-1);
  return latest ? weeksIn(weeks, weeksUpTo(latest.index, lastWeeks)) : [];
}

function verdictOf(tested: readonly ReachedWeek[], slope: number | null): Verdict {
  if (tested.length < WEEKS_FOR_A_TREND || slope === null) return "too early";
  const { z } = mannKendall(tested.map(({ usual }) => usual));
  if (Math.abs(z) <= normalQuantile((1 + CONFIDENCE) / 2)) return "level";
  const [first, last] = [tested[0]!, tested.at(-1)!];
  const change = Math.sign(z) * slope * (last.index - first.index);
  // A share that is met to the last figure is met, whatever a double makes of it.
  if (change < LEAST_CHANGE * last.usual * (1 - 1e-9)) return "level";
  return z > 0 ? "rising" : "falling";
}
