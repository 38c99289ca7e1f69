import type { AttemptRecord } from "../history/record.ts";
import { type Standing, standingOf } from "../history/start-tempo.ts";
import { REACHED_WITHIN } from "../history/thresholds.ts";
import type { PlanBasis } from "./plan-basis.ts";

/**
 * The standing of a strand with what it reached lately as what it reached last: a plan asks for less than was reached,
 * and one that went by the last day alone would ask for less each time. It goes by the best of the last four weeks, and
 * of those since something hurt; by the last day where the latest attempt was not reached.
 *
 * @param records oldest first
 */
export function lately(
  { day, hurt }: Pick<PlanBasis, "day" | "hurt">,
  records: readonly AttemptRecord[],
  standing: Standing = standingOf(records, day),
): Standing {
  const noted = records.findLast((record) => record.day < day && record.reached !== null);
  if (standing.reached === null || noted?.reached !== true) return standing;
  const since = Math.max(day - REACHED_WITHIN, (hurt.last ?? Number.NEGATIVE_INFINITY) + 1);
  let best = standing.reached;
  for (const { day: on, rate, reached } of records)
    if (on >= since && on < day && reached === true && rate !== null) best = Math.max(best, rate);
  return { ...standing, reached: best };
}
