import { median } from "simple-statistics";
import { type Trend, weeksSince } from "../history/trend.ts";
import type { Week } from "../history/weeks.ts";
import { dots, tenth, WIDE } from "./look.ts";
import { isRate, type TempoFrame, type TimedAttempt } from "./tempo-data.ts";
import type { TempoPlot } from "./tempo-plot.ts";

/** Over so many weeks without a figure a thin line still joins the best of the weeks before and behind. */
const MOST_JOINED = 8;

/** The `d` of two paths. */
export interface BestLines {
  /** The weekly best: level through its week, a step to the next. */
  readonly best: string;
  /** A line over weeks without a figure, which guides the eye and claims nothing. */
  readonly join: string;
}

export function bestLines(weeks: readonly Week[], plot: TempoPlot): BestLines {
  const reached = weeks.flatMap(({ index, bestClean }) => (isRate(bestClean) ? [{ index, rate: bestClean }] : []));
  let best = "";
  let join = "";
  for (const [at, { index, rate }] of reached.entries()) {
    const before = reached[at - 1];
    const [start, end, y] = [plot.week(index), plot.week(index + 1), plot.y(rate)].map(tenth);
    const goesOn = before?.index === index - 1;
    best += `${goesOn ? `V${y}` : `M${start},${y}`}H${end}`;
    if (before && !goesOn && index - before.index - 1 <= MOST_JOINED)
      join += `M${tenth(plot.week(before.index + 1))},${tenth(plot.y(before.rate))}H${start}V${y}`;
  }
  return { best, join };
}

/** Where the weeks of slow work have their tick, from left to right: in the middle of the week. */
export function slowWeeks(weeks: readonly Week[], plot: TempoPlot): number[] {
  return weeks.flatMap((week) => (isSlow(week) ? [plot.week(week.index + 0.5)] : []));
}

/** A week of slow work has a best that the trend does not count. */
export function isSlow({ bestClean, tested }: Week): boolean {
  return isRate(bestClean) && !tested;
}

/** The least half of a band's height, and how far it may reach beyond the scale, in pixels. */
const LEAST_HALF = 2;
const BEYOND = 4;

/**
 * Along the trend's line, as wide as half of its weeks lie from it; empty where there is none to show. The line goes
 * through the median week and the median of their figures, as a Theil–Sen line does (W. J. Conover, "Practical
 * Nonparametric Statistics"; SciPy's `theilslopes`, method "separate").
 */
export function trendBand(weeks: readonly Week[], { slope, verdict, since }: Trend, plot: TempoPlot): string {
  const tested = weeksSince(weeks, since).flatMap((week) => {
    const rate = figureOf(week);
    return week.tested && isRate(rate) ? [{ week: week.index, rate }] : [];
  });
  if ((verdict !== "rising" && verdict !== "falling") || tested.length < 2) return "";
  if (slope === null || !Number.isFinite(slope)) return "";
  const middle = { week: median(tested.map((each) => each.week)), rate: median(tested.map((each) => each.rate)) };
  const rateAt = (week: number) => middle.rate + slope * (week - middle.week);
  const away = median(tested.map(({ week, rate }) => Math.abs(plot.y(rate) - plot.y(rateAt(week)))));
  const half = Math.max(LEAST_HALF, away);
  // On a ratio scale a straight line is bent, so that it takes a point every half week.
  const [first, last] = [tested[0]!.week, tested.at(-1)!.week];
  const points = Array.from({ length: (last - first) * 2 + 1 }, (_, at) => {
    const week = first + at / 2;
    return { x: tenth(plot.week(week + 0.5)), y: plot.y(rateAt(week)) };
  });
  const within = (y: number) => Math.min(Math.max(y, plot.top - BEYOND), plot.bottom + BEYOND);
  const there = points.map(({ x, y }) => `${x},${tenth(within(y - half))}`);
  const back = points.map(({ x, y }) => `${x},${tenth(within(y + half))}`).reverse();
  return `M${[...there, ...back].join("L")}Z`;
}

/** What the trend is fitted on. */
function figureOf({ usual }: Week): number | null {
  return usual;
}

/** The attempts as the `d` of two paths, a dot each. */
export interface Dots {
  readonly reached: string;
  /** An open dot says no more than that it was not noted as reached. */
  readonly other: string;
  /** How many attempts have no dot, as there were too many to tell apart. */
  readonly left: number;
}

/** So many dots can still be told apart, and a hover carries them. */
const MOST_DOTS = 300;
/** In the stretched space. */
const COLUMN = 6;

/**
 * One dot for each attempt, at its day and rate; those in the very same place share one. Where there are more than can
 * be told apart, the highest that was reached and the highest that was not stand for those close by.
 */
export function everyDot({ attempts }: TempoFrame, plot: TempoPlot): Dots {
  const placed = attempts.map((attempt) => dotOf(attempt, plot));
  const different = unique(placed, ({ x, y, reached }) => `${x} ${y} ${reached}`);
  if (different.length <= MOST_DOTS) return { ...byKind(different), left: 0 };
  const highestFirst = [...different].sort((a, b) => a.y - b.y || a.x - b.x);
  const kept = unique(highestFirst, ({ x, reached }) => `${Math.floor(x / COLUMN)} ${reached}`);
  const shown = new Set(kept.map(({ x, y, reached }) => `${x} ${y} ${reached}`));
  const left = placed.filter(({ x, y, reached }) => !shown.has(`${x} ${y} ${reached}`)).length;
  return { ...byKind(kept.sort((a, b) => a.x - b.x || a.y - b.y)), left };
}

/** Of some dots those that may touch another: all in its column and in those beside it. */
function nearby(all: readonly Dot[], width: number): (dot: Dot) => readonly Dot[] {
  const columnOf = ({ x }: Dot) => Math.floor((x * width) / WIDE / FROM_OPEN);
  const columns = new Map<number, Dot[]>();
  for (const dot of all) {
    const column = columns.get(columnOf(dot));
    if (column) column.push(dot);
    else columns.set(columnOf(dot), [dot]);
  }
  return (dot) => [-1, 0, 1].flatMap((beside) => columns.get(columnOf(dot) + beside) ?? []);
}

/** How wide a dot of a row is, in pixels. */
const SMALL_DOT = 3.5;

/** How far an open dot stands from the filled one of its own day, of others, and from the next open one, in pixels. */
const FROM_OWN = 3;
const FROM_OTHERS = 4;
const FROM_OPEN = 2 * SMALL_DOT;

/**
 * One filled dot for the best of each day, one open one for the nearest tempo above it that was not reached, as far as
 * there is room in a row so many pixels wide: an open one is left out where it would touch what else is near. The
 * latest come first.
 */
export function bestDots(attempts: readonly TimedAttempt[], plot: TempoPlot, width: number): Omit<Dots, "left"> {
  const all = bestOfDays(attempts).map((attempt) => dotOf(attempt, plot));
  const filled = all.filter(({ reached }) => reached);
  const apart = (a: Dot, b: Dot) => Math.hypot(((a.x - b.x) * width) / WIDE, a.y - b.y);
  const filledNear = nearby(filled, width);
  const open: Dot[] = [];
  for (const dot of all.filter(({ reached }) => !reached).sort((a, b) => b.x - a.x || a.y - b.y)) {
    const isClear = filledNear(dot).every((each) => apart(dot, each) >= (each.x === dot.x ? FROM_OWN : FROM_OTHERS));
    if (!isClear) continue;
    const next = open.findLastIndex(({ x }) => ((x - dot.x) * width) / WIDE >= FROM_OPEN); // they go from right to left
    if (open.slice(next + 1).every((each) => apart(dot, each) >= FROM_OPEN)) open.push(dot);
  }
  return byKind([...filled, ...open.reverse()]);
}

/** Of each day the best that was reached, and the nearest above it that was not; where none was, the lowest. */
export function bestOfDays(attempts: readonly TimedAttempt[]): readonly TimedAttempt[] {
  const days = new Map<number, TimedAttempt[]>();
  for (const attempt of attempts) {
    const known = days.get(attempt.day);
    if (known) known.push(attempt);
    else days.set(attempt.day, [attempt]);
  }
  return [...days.values()].flatMap((own) => {
    const best = own.filter(({ reached }) => reached).reduce<TimedAttempt | undefined>(faster, undefined);
    const above = own
      .filter(({ reached, rate }) => !reached && (best === undefined || rate > best.rate))
      .reduce<TimedAttempt | undefined>((a, b) => (a && a.rate <= b.rate ? a : b), undefined);
    return [...(best ? [best] : []), ...(above ? [above] : [])];
  });
}

function faster(a: TimedAttempt | undefined, b: TimedAttempt): TimedAttempt {
  return a && a.rate >= b.rate ? a : b;
}

interface Dot {
  readonly x: number;
  readonly y: number;
  readonly reached: boolean;
}

function dotOf({ day, rate, reached }: TimedAttempt, plot: TempoPlot): Dot {
  const rounded = (value: number) => Math.round(value * 10) / 10;
  return { x: rounded(plot.day(day)), y: rounded(plot.y(rate)), reached: reached === true };
}

function byKind(those: readonly Dot[]): Omit<Dots, "left"> {
  return { reached: dots(those.filter((dot) => dot.reached)), other: dots(those.filter((dot) => !dot.reached)) };
}

/** The first of each key, in order. */
function unique<T>(values: readonly T[], keyOf: (value: T) => string): T[] {
  const first = new Map<string, T>();
  for (const value of values) if (!first.has(keyOf(value))) first.set(keyOf(value), value);
  return [...first.values()];
}
