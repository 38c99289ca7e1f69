import { isLeap, withoutLeaps } from "../history/leaps.ts";
import type { AttemptRecord } from "../history/record.ts";
import { type Standing, standingOf } from "../history/start-tempo.ts";
import { REACHED_WITHIN } from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import type { PlanBasis } from "./plan-basis.ts";

/**
 * The standing of a strand with what it reached lately as what it reached last: a plan asks for less than was reached,
 * and one that went by the last day alone would ask for less each time. It goes by the best of the last four weeks, and
 * of those since something hurt; by the last day where the latest attempt was not reached. What is far above the last
 * day counts where two days have it: one alone may be a slip of the pen.
 *
 * @param records oldest first
 */
export function lately(
  { day, hurt }: Pick<PlanBasis, "day" | "hurt">,
  records: readonly AttemptRecord[],
  standing: Standing = standingOf(records, day),
): Standing {
  const told = withoutLeaps(records, day);
  const noted = told.findLast((record) => record.day < day && record.reached !== null);
  if (standing.reached === null || noted?.reached !== true) return standing;
  const since = Math.max(day - REACHED_WITHIN, (hurt.last ?? Number.NEGATIVE_INFINITY) + 1);
  const bests = new Map<DayNumber, number>();
  for (const { day: on, rate, reached } of told)
    if (on >= since && on < day && reached === true && rate !== null) bests.set(on, Math.max(rate, bests.get(on) ?? 0));
  const last = standing.reached;
  const fastestFirst = [...bests.values()].sort((a, b) => b - a);
  const agreed = fastestFirst.filter((rate, i) => i > 0 || !isLeap(rate, last));
  return { ...standing, reached: Math.max(last, ...agreed) };
}
