/** How fast, and how lately, each bar of a piece was played. */
export interface PieceStrip {
  /** The piece, and its movement where it has several. */
  readonly title: string;
  /** How many bars it has. */
  readonly bars: number;
  /** The tempo that is wanted, in beats a minute; left out where none is. */
  readonly wanted?: number;
  /** Oldest first. */
  readonly worked: readonly WorkedBars[];
}

/** A stretch of bars that was played, both ends included. */
export interface WorkedBars {
  readonly from: number;
  readonly to: number;
  /** 0 is today. What lies ahead counts for nothing. */
  readonly daysAgo: number;
  /** The tempo that was reached, in beats a minute; null where none was. */
  readonly reached: number | null;
}

/** A stretch of bars that are alike. */
export interface BarRun {
  readonly from: number;
  readonly to: number;
  /** The latest tempo that was reached there; null where none was. */
  readonly reached: number | null;
  /** A place in `RECENCIES`; null where it was never worked. */
  readonly recency: number | null;
}

/** How lately a bar was worked, the latest first: up to how many days ago. */
export const RECENCIES = [6, 27, 83, Number.POSITIVE_INFINITY] as const;

/** No piece has more. */
export const MOST_BARS = 10_000;

/** The stretches of a piece from its first bar to its last. */
export function barRuns({ bars, worked }: PieceStrip): BarRun[] {
  const recency = new Array<number | null>(bars).fill(null);
  const reached = new Array<number | null>(bars).fill(null);
  for (const stretch of worked) {
    if (!isStretch(stretch)) continue;
    const [from, to] = [Math.max(0, stretch.from - 1), stretch.to];
    recency.fill(recencyOf(stretch.daysAgo), from, to);
    if (isTempo(stretch.reached)) reached.fill(stretch.reached, from, to);
  }
  const runs: BarRun[] = [];
  for (let bar = 1; bar <= bars; bar++) {
    const own = { reached: reached[bar - 1]!, recency: recency[bar - 1]! };
    const before = runs.at(-1);
    if (before && before.reached === own.reached && before.recency === own.recency)
      runs[runs.length - 1] = { ...before, to: bar };
    else runs.push({ from: bar, to: bar, ...own });
  }
  return runs;
}

function isTempo(reached: number | null): reached is number {
  return reached !== null && Number.isFinite(reached) && reached > 0;
}

function isStretch({ from, to, daysAgo }: WorkedBars): boolean {
  return Number.isInteger(from) && Number.isInteger(to) && from >= 0 && to >= Math.max(1, from) && daysAgo >= 0;
}

function recencyOf(daysAgo: number): number {
  return RECENCIES.findIndex((days) => daysAgo <= days);
}
