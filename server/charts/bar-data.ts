/** Where in a piece was worked, and how long ago. */
export interface BarStrip {
  /** The piece, and its movement where it has several. */
  readonly title: string;
  /** How many bars it has; left out where nobody said: then as many as were worked. */
  readonly bars?: number;
  readonly worked: readonly WorkedBars[];
}

/** A stretch of bars, both ends included. */
export interface WorkedBars {
  readonly from: number;
  readonly to: number;
  /** 0 is today. What lies ahead counts for nothing. */
  readonly daysAgo: number;
}

/** A stretch of bars that were last worked equally lately. */
export interface BarRun {
  readonly from: number;
  readonly to: number;
  /** A place in `RECENCIES`. */
  readonly recency: number;
}

/**
 * How lately a bar was worked, the latest first: up to how many days ago, in words, how tall in parts of the strip, how
 * dark.
 */
export const RECENCIES = [
  { days: 6, words: "7 days", height: 1, shade: 1 },
  { days: 27, words: "4 weeks", height: 0.7, shade: 0.75 },
  { days: 83, words: "12 weeks", height: 0.42, shade: 0.55 },
  { days: Number.POSITIVE_INFINITY, words: "longer ago", height: 0.2, shade: 0.4 },
] as const;

/** No piece has more. */
export const MOST_BARS = 10_000;

/** The number of the last bar to show; 0 where there is none. */
export function lastBar({ bars, worked }: BarStrip): number {
  if (bars !== undefined && Number.isFinite(bars) && bars >= 1) return Math.floor(bars);
  return worked.filter(isStretch).reduce((last, { to }) => Math.max(last, to), 0);
}

/** The stretches that were worked within the first `bars` bars, from left to right; the latest time counts. */
export function barRuns({ worked }: BarStrip, bars: number): BarRun[] {
  const last: (number | undefined)[] = new Array<number | undefined>(bars).fill(undefined);
  const longestAgoFirst = worked.filter(isStretch).sort((a, b) => b.daysAgo - a.daysAgo);
  for (const { from, to, daysAgo } of longestAgoFirst) last.fill(recencyOf(daysAgo), Math.max(0, from - 1), to);
  const runs: BarRun[] = [];
  last.forEach((recency, place) => {
    if (recency === undefined) return;
    const before = runs.at(-1);
    if (before?.to === place && before.recency === recency) runs[runs.length - 1] = { ...before, to: place + 1 };
    else runs.push({ from: place + 1, to: place + 1, recency });
  });
  return runs;
}

/** The highest bar that was worked beyond the last, or 0. */
export function workedBeyond({ worked }: BarStrip, bars: number): number {
  const highest = worked.filter(isStretch).reduce((last, { to }) => Math.max(last, to), 0);
  return highest > bars ? highest : 0;
}

function isStretch({ from, to, daysAgo }: WorkedBars): boolean {
  return Number.isInteger(from) && Number.isInteger(to) && from >= 0 && to >= Math.max(1, from) && daysAgo >= 0;
}

function recencyOf(daysAgo: number): number {
  return RECENCIES.findIndex(({ days }) => daysAgo <= days);
}
