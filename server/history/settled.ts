import { median } from "simple-statistics";
import { LAST_WEEKS_SETTLED, TRIES_TO_SETTLE, WEEKS_TO_SETTLE } from "./thresholds.ts";
import { LATELY, testedOf, trendOf } from "./trend.ts";
import { weeksIn, weeksUpTo } from "./week-span.ts";
import type { ReachedWeek, Week } from "./weeks.ts";

/** A tempo that a strand has stayed at. */
export interface Settled {
  /** The week in which it was first reached, and after which nothing was faster: its running number. */
  readonly index: number;
  /** The same, ISO 8601: `2026-W11`. */
  readonly since: string;
  /** The best of the last six tested weeks, in notes a minute, for titles beats a minute. */
  readonly best: number;
  /** Of those weeks on, how many are tested; and the tries in them of which it is said how they went. */
  readonly testedWeeks: number;
  readonly tries: number;
}

/**
 * The tempo that a strand has settled at: of at least ten tested weeks in the last 26, the last six have none that is
 * faster than all before, and are by their median no faster than the six before. A strand that falls has not settled.
 *
 * @param weeks those that are looked at, oldest first
 * @param now the running number of the week that it is asked in
 */
export function settledIn(weeks: readonly Week[], now: number): Settled | null {
  const lately = weeksIn(weeks, weeksUpTo(now, LATELY));
  const tested = testedOf(lately);
  if (tested.length < WEEKS_TO_SETTLE) return null;
  const last = tested.slice(-LAST_WEEKS_SETTLED);
  const earlier = tested.slice(0, -LAST_WEEKS_SETTLED);
  const best = bestOf(last);
  if (isAbove(best, bestOf(earlier)) || triesIn(last) < TRIES_TO_SETTLE) return null;
  if (isAbove(middleOf(last), middleOf(earlier.slice(-LAST_WEEKS_SETTLED)))) return null;
  if (trendOf(lately).verdict === "falling") return null;
  const since = stayOf(tested, best);
  const first = since[0]!;
  return { index: first.index, since: first.week, best, testedWeeks: since.length, tries: triesIn(since) };
}

/** The weeks from the one on that reached the best first, after the last that went above it. */
function stayOf(tested: readonly ReachedWeek[], best: number): readonly ReachedWeek[] {
  const stay = tested.slice(tested.findLastIndex(({ bestClean }) => isAbove(bestClean, best)) + 1);
  return stay.slice(stay.findIndex(({ bestClean }) => !isAbove(best, bestClean)));
}

function bestOf(weeks: readonly ReachedWeek[]): number {
  return Math.max(...weeks.map(({ bestClean }) => bestClean));
}

function middleOf(weeks: readonly ReachedWeek[]): number {
  return median(weeks.map(({ usual }) => usual));
}

function triesIn(weeks: readonly Week[]): number {
  return weeks.reduce((sum, { tries }) => sum + tries, 0);
}

/** By more than a double can hold of a tempo. */
function isAbove(rate: number, other: number): boolean {
  return rate > other * (1 + 1e-9);
}
