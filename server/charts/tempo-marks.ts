import { area, curveStepAfter, line } from "d3-shape";
import { median } from "simple-statistics";
import type { Trend } from "../history/trend.ts";
import type { Week } from "../history/weeks.ts";
import { isRate, type TempoFrame, type TimedAttempt } from "./tempo-data.ts";
import type { TempoPlot } from "./tempo-plot.ts";

const DIGITS = 2;

/**
 * The weekly best as the `d` of a path: level through its week, a step to the next; a week without a figure is a gap.
 */
export function bestLine(weeks: readonly Week[], plot: TempoPlot): string {
  const corners = weeks.flatMap(({ index: week, bestClean }, at) => {
    if (!isRate(bestClean)) return [];
    const rate = bestClean;
    const next = weeks[at + 1];
    const goesOn = next?.index === week + 1 && isRate(next.bestClean);
    return goesOn
      ? [{ week, rate }]
      : [
          { week, rate },
          { week: week + 1, rate },
          { week: week + 1, rate: null },
        ];
  });
  const path = line<(typeof corners)[number]>()
    .defined(({ rate }) => rate !== null)
    .x(({ week }) => plot.x(week))
    .y(({ rate }) => plot.y(rate!))
    .curve(curveStepAfter)
    .digits(DIGITS);
  return path(corners) ?? "";
}

/** Where the weeks that were worked below best have their tick, from left to right: in the middle of the week. */
export function belowBest(weeks: readonly Week[], plot: TempoPlot): number[] {
  return weeks.flatMap(({ index, bestClean, tested }) => (isRate(bestClean) && !tested ? [plot.x(index + 0.5)] : []));
}

/**
 * Where the trend lies, as the `d` of a closed path; empty where there is none to show. It opens to both sides from the
 * median tested week and the median best of those weeks, through which a Theil–Sen line goes (W. J. Conover, "Practical
 * Nonparametric Statistics"; SciPy's `theilslopes`, method "separate"), by the lowest and the highest slope of its
 * interval.
 */
export function trendBand(weeks: readonly Week[], trend: Trend, plot: TempoPlot): string {
  const { low, high, verdict } = trend;
  const tested = weeks.flatMap(({ index, tested, bestClean }) =>
    tested && isRate(bestClean) ? [{ week: index, rate: bestClean }] : [],
  );
  if ((verdict !== "rising" && verdict !== "falling") || tested.length < 2) return "";
  if (low === null || high === null || !Number.isFinite(low) || !Number.isFinite(high)) return "";
  const week = median(tested.map((each) => each.week));
  const rate = median(tested.map((each) => each.rate));
  const first = tested[0]!.week;
  const last = tested.at(-1)!.week;
  // On a ratio scale a straight line is bent, so that it takes a point every half week. What falls below the scale, or
  // below nothing, stands on its edge.
  const halfWeeks = Array.from({ length: (last - first) * 2 + 1 }, (_, half) => first + half / 2);
  const path = area<number>()
    .x((at) => plot.x(at + 0.5))
    .y0((at) => plot.y(rate + Math.min(low * (at - week), high * (at - week))))
    .y1((at) => plot.y(rate + Math.max(low * (at - week), high * (at - week))))
    .digits(DIGITS);
  return path(halfWeeks) ?? "";
}

export interface Dot {
  readonly x: number;
  readonly y: number;
  /** Drawn full; an open dot says no more than that it was not noted as reached. */
  readonly reached: boolean;
}

export interface Dots {
  readonly dots: readonly Dot[];
  /** How many attempts have no dot, as there were too many to tell apart. */
  readonly left: number;
}

/** So many dots can still be told apart in a small chart, and a hover carries them. */
const MOST_DOTS = 300;
/** In pixels. */
const COLUMN = 2;

/**
 * One dot for each attempt, at its day and rate; those in the very same place share one. Where there are more than can
 * be told apart, the highest that was reached and the highest that was not stand for those within two pixels from left
 * to right.
 */
export function dotsOf({ attempts }: TempoFrame, plot: TempoPlot): Dots {
  const placed = attempts.map((attempt) => dotOf(attempt, plot));
  const different = unique(placed, ({ x, y, reached }) => `${x} ${y} ${reached}`);
  if (different.length <= MOST_DOTS) return { dots: different, left: 0 };
  const highestFirst = [...different].sort((a, b) => a.y - b.y || a.x - b.x);
  const kept = unique(highestFirst, ({ x, reached }) => `${Math.floor(x / COLUMN)} ${reached}`);
  const shown = new Set(kept.map(({ x, y, reached }) => `${x} ${y} ${reached}`));
  const left = placed.filter(({ x, y, reached }) => !shown.has(`${x} ${y} ${reached}`)).length;
  return { dots: kept.sort((a, b) => a.x - b.x || a.y - b.y), left };
}

function dotOf({ day, rate, reached }: TimedAttempt, plot: TempoPlot): Dot {
  const rounded = (value: number) => Math.round(value * 10) / 10;
  return { x: rounded(plot.day(day)), y: rounded(plot.y(rate)), reached: reached === true };
}

/** The first of each key, in order. */
function unique<T>(values: readonly T[], keyOf: (value: T) => string): T[] {
  const first = new Map<string, T>();
  for (const value of values) if (!first.has(keyOf(value))) first.set(keyOf(value), value);
  return [...first.values()];
}
