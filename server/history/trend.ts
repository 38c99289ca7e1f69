import { theilSen } from "./theil-sen.ts";
import { weeksIn, weeksUpTo } from "./week-span.ts";
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

/** How far back one looks for how it goes lately, in ISO weeks: half a year. */
export const LATELY = 26;

export const WEEKS_FOR_A_TREND = 4;
const LEVEL = 0.95;

/**
 * The Theil–Sen slope over (weeks since the first, best reached rate) of the tested weeks among these. It rises or
 * falls only when the confidence interval leaves zero out; under four tested weeks it is too early. Weeks without a
 * record count as time, whether or not they are among those given: each week knows its running number.
 *
 * Leaving out weeks worked below best has a price: in simulation, a level player whose weekly best swings by some ten
 * per cent, and who never notes a failure, is called rising in 6 % of runs of 26 weeks; one who swings by five, in
 * under 1 %.
 */
export function trendOf(weeks: readonly Week[]): Trend {
  const xs: number[] = [];
  const ys: number[] = [];
  for (const { index, tested, bestClean } of weeks) {
    if (!tested || bestClean === null) continue;
    xs.push(index - weeks[0]!.index);
    ys.push(bestClean);
  }
  const { slope, low, high, count } = theilSen(xs, ys, LEVEL);
  return { slope, low, high, level: LEVEL, verdict: verdictOf(count, low, high), weeks: count };
}

/** Those of a strand's weeks that lie in the last so many up to its latest. */
export function weeksWithin(weeks: readonly Week[], { lastWeeks }: { readonly lastWeeks: number }): readonly Week[] {
  const latest = weeks.at(-1);
  return latest ? weeksIn(weeks, weeksUpTo(latest.index, lastWeeks)) : [];
}

function verdictOf(weeks: number, low: number | null, high: number | null): Verdict {
  if (weeks < WEEKS_FOR_A_TREND) return "too early";
  if (low !== null && low > 0) return "rising";
  if (high !== null && high < 0) return "falling";
  return "level";
}
