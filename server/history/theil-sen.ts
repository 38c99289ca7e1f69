import { median, quickselect } from "simple-statistics";
import { kendallVariance } from "./kendall.ts";
import { normalQuantile } from "./normal-quantile.ts";

/** A fitted slope in units of y for one unit of x. Null where the points give none. */
export interface Fit {
  readonly slope: number | null;
  /** The ends of the confidence interval. */
  readonly low: number | null;
  readonly high: number | null;
  /** How many points were fitted. */
  readonly count: number;
}

/**
 * The Theil–Sen slope: the median of the slopes between all pairs of points that differ in x, with Sen's confidence
 * interval by the normal approximation, its variance corrected for ties in x and in y.
 *
 * With fewer than two different x there is no slope. Where ties leave the variance negative (in x and y together)
 * there is a slope and no interval.
 *
 * Sen, P. K. (1968), "Estimates of the regression coefficient based on Kendall's tau", JASA 63, 1379–1389; ranks and
 * rounding as in SciPy's `theilslopes`.
 */
export function theilSen(xs: readonly number[], ys: readonly number[], confidence = 0.95): Fit {
  const count = Math.min(xs.length, ys.length);
  const slopes = slopesOfPairs(xs, ys, count);
  if (slopes.length === 0) return { slope: null, low: null, high: null, count };
  const ranks = intervalRanks(slopes.length, kendallVariance(xs.slice(0, count), ys.slice(0, count)), confidence);
  if (!ranks) return { slope: median(slopes), low: null, high: null, count };
  const low = select(slopes, ranks.low, 0);
  const high = select(slopes, ranks.high, ranks.low);
  // What is below `low` now stands before its place, and what is above `high` after its own. As many go off either
  // end, so the median stays, and there is far less to search.
  const cut = Math.min(ranks.low, slopes.length - 1 - ranks.high);
  return { slope: median(slopes.slice(cut, slopes.length - cut)), low, high, count };
}

function slopesOfPairs(xs: readonly number[], ys: readonly number[], count: number): number[] {
  const slopes = new Array<number>((count * (count - 1)) / 2);
  let found = 0;
  for (let i = 0; i < count; i++) {
    const x = xs[i]!;
    const y = ys[i]!;
    for (let j = i + 1; j < count; j++) {
      const run = xs[j]! - x;
      if (run !== 0) slopes[found++] = (ys[j]! - y) / run;
    }
  }
  slopes.length = found;
  return slopes;
}

function intervalRanks(
  slopes: number,
  variance: number,
  confidence: number,
): { low: number; high: number } | undefined {
  if (variance < 0) return undefined;
  const spread = normalQuantile((1 + confidence) / 2) * Math.sqrt(variance);
  return {
    low: Math.max(roundHalfToEven((slopes - spread) / 2) - 1, 0),
    high: Math.min(roundHalfToEven((slopes + spread) / 2), slopes - 1),
  };
}

function roundHalfToEven(value: number): number {
  const below = Math.floor(value);
  const rest = value - below;
  if (rest !== 0.5) return Math.round(value);
  return below % 2 === 0 ? below : below + 1;
}

/** The value that would stand at `rank`, from 0, were the values sorted from `left` on. Rearranges those. */
function select(values: number[], rank: number, left: number): number {
  quickselect(values, rank, left);
  return values[rank]!;
}
