import { FORECAST_LATEST_WEEKS, LATELY, WEEKS_FOR_A_FORECAST, WEEKS_TESTED_WITHIN } from "../history/thresholds.ts";
import { testedOf, trendOf, type Verdict } from "../history/trend.ts";
import { weeksIn, weeksUpTo } from "../history/week-span.ts";
import type { ReachedWeek, Week } from "../history/weeks.ts";
import { type DayNumber, weekIndex } from "../journal/calendar.ts";

/** From when a strand is looked at. Weeks are running numbers (`weekIndex`). */
export interface ForecastAsked {
  /** The week of the day that is asked about: nothing later counts. */
  readonly present: number;
  /** The first week that counts, after a break that cost much, where half a year would go farther back. */
  readonly since?: number;
}

/** When a tempo may be reached, or why that cannot be said. `testedWeeks` are those that it rests on. */
export type Forecast = { readonly testedWeeks: number } & (
  | {
      readonly type: "range";
      /** Weeks from now, at least one. */
      readonly earliest: number;
      /** The same; null where the slower end of the trend does not lead there, or not within a year. */
      readonly latest: number | null;
    }
  /** Even the faster end of the trend takes more than a year. */
  | { readonly type: "over a year" }
  | { readonly type: "too early" }
  | { readonly type: "no clear change" }
  | { readonly type: "falling" }
  /** `last` is the running number of the latest tested week. */
  | { readonly type: "not tested lately"; readonly last: number }
  /** Nothing faster is in question on days on which the ceiling is low (`ceilingOn`). */
  | { readonly type: "something hurt"; readonly on: DayNumber }
  | { readonly type: "back after a break" }
);

/** How a strand goes lately, as forecasts have it. Rates are the strand's own. */
interface Pace {
  readonly verdict: Verdict;
  /** Gained in a week; null under two tested weeks. */
  readonly slope: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly testedWeeks: number;
  /** Of the usual rates of the last three tested weeks; undefined where there are fewer. */
  readonly now?: {
    /** The week of the middle one. */
    readonly week: number;
    readonly lowest: number;
    readonly middle: number;
    readonly highest: number;
  };
}

/**
 * When a strand may come to a rate, if it goes on as its tested weeks did. A range that reckons with the highest of the
 * last three weeks and the upper end of the trend's interval, and with the lowest and the lower end: of players who
 * climb it holds the true week in nine of ten (test/plan/simulation), and it is no promise.
 *
 * @param weeks all of the strand, oldest first
 * @param wanted a rate that was not reached yet, in the strand's unit
 */
export function forecastOf(weeks: readonly Week[], wanted: number, asked: ForecastAsked): Forecast {
  const { present } = asked;
  const last = testedOf(weeks).findLast(({ index }) => index <= present)?.index;
  const { verdict, low, high, now, testedWeeks } = paceOf(weeks, asked);
  if (last !== undefined && last < present - WEEKS_TESTED_WITHIN)
    return { type: "not tested lately", testedWeeks, last };
  if (testedWeeks < WEEKS_FOR_A_FORECAST || !now || low === null || high === null)
    return { type: "too early", testedWeeks };
  if (verdict !== "rising") return { type: verdict === "falling" ? "falling" : "no clear change", testedWeeks };
  const earliest = Math.max(1, wholeBelow(now.week + (wanted - now.highest) / high - present));
  if (earliest > FORECAST_LATEST_WEEKS) return { type: "over a year", testedWeeks };
  const latest = low > 0 ? Math.max(1, wholeAbove(now.week + (wanted - now.lowest) / low - present)) : null;
  return {
    type: "range",
    earliest,
    latest: latest === null || latest > FORECAST_LATEST_WEEKS ? null : latest,
    testedWeeks,
  };
}

/**
 * The rate near which a strand would be in a week ahead, where even the faster end of its trend comes to the rate that
 * is wanted later than that; undefined where it does not, and while it is too early to say.
 *
 * @param by the running number of that week
 */
export function shortOf(weeks: readonly Week[], wanted: number, by: number, asked: ForecastAsked): number | undefined {
  const { verdict, slope, high, now } = paceOf(weeks, asked);
  if (verdict === "too early" || slope === null || high === null || !now) return undefined;
  const earliest = high > 0 ? wholeBelow(now.week + (wanted - now.highest) / high) : Number.POSITIVE_INFINITY;
  if (now.highest >= wanted || earliest <= by) return undefined;
  return now.middle + Math.max(slope, 0) * (by - now.week);
}

/**
 * Whether an aim may be missed as things go: its day lies ahead, and no forecast says that it is reached by then at the
 * latest.
 */
export function isOutOfSight(forecast: Forecast, by: DayNumber | undefined, today: DayNumber): boolean {
  if (by === undefined || by < today) return false;
  if (forecast.type !== "range" || forecast.latest === null) return true;
  return forecast.latest > weekIndex(by) - weekIndex(today);
}

function paceOf(weeks: readonly Week[], { present, since = Number.NEGATIVE_INFINITY }: ForecastAsked): Pace {
  const lately = weeksIn(weeks, weeksUpTo(present, LATELY)).filter(({ index }) => index >= since);
  const { verdict, slope, low, high } = trendOf(lately);
  const tested = testedOf(lately);
  const now = lastThree(tested);
  return { verdict, slope, low, high, testedWeeks: tested.length, ...(now && { now }) };
}

function lastThree(tested: readonly ReachedWeek[]): Pace["now"] {
  if (tested.length < 3) return undefined;
  const three = tested.slice(-3);
  const [lowest, middle, highest] = three.map(({ usual }) => usual).sort((a, b) => a - b);
  return { week: three[1]!.index, lowest: lowest!, middle: middle!, highest: highest! };
}

/** What a double adds to or takes from a whole number of weeks is none. */
const NOTHING = 1e-9;

function wholeBelow(weeks: number): number {
  return Math.floor(weeks + NOTHING);
}

function wholeAbove(weeks: number): number {
  return Math.ceil(weeks - NOTHING);
}
