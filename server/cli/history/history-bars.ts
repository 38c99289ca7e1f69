import { type WeekSpan, weekCount } from "../../history/week-span.ts";
import type { Week } from "../../history/weeks.ts";

/**
 * One sign for a week, so that shape alone tells them apart: a block for a tested week (Unicode block elements, from an
 * eighth to a whole), a column of dots for one worked below best (Braille patterns, from one dot to four).
 */
export const SIGNS = { tested: "▁▂▃▄▅▆▇█", belowBest: "⡀⡄⡆⡇", notReached: "–", notPractised: "·" } as const;

/** What one sign says: of a week, or of several put together. */
type Told = Pick<Week, "bestClean" | "tested" | "attempts">;

const NOTHING: Told = { bestClean: null, tested: false, attempts: 0 };

/**
 * A row of signs, one for each week of an axis, or for so many together, of which the first may be fewer. The lowest
 * figure has the lowest bar; where all are alike, a middling one.
 *
 * @param weeks those of the axis with a record
 */
export function barsOf(weeks: readonly Week[], axis: WeekSpan, each = 1): string {
  const told = together(weeks, axis, each);
  const rates = told.flatMap(({ bestClean }) => bestClean ?? []);
  const [low, high] = [Math.min(...rates), Math.max(...rates)];
  const barOf = (bars: string, rate: number) => {
    const step = low === high ? bars.length / 2 - 1 : Math.round(((rate - low) / (high - low)) * (bars.length - 1));
    return bars[step]!;
  };
  return told.map((week) => signOf(week, barOf)).join("");
}

/** The best of so many weeks each, counted from the last back. */
function together(weeks: readonly Week[], axis: WeekSpan, each: number): readonly Told[] {
  const told = new Array<Told>(Math.ceil(weekCount(axis) / each)).fill(NOTHING);
  for (const week of weeks) {
    const at = told.length - 1 - Math.floor((axis.last - week.index) / each);
    const before = told[at]!;
    const best = (week.bestClean ?? -1) > (before.bestClean ?? -1) ? week : before;
    told[at] = { bestClean: best.bestClean, tested: best.tested, attempts: before.attempts + week.attempts };
  }
  return told;
}

function signOf({ bestClean, tested, attempts }: Told, barOf: (bars: string, rate: number) => string): string {
  if (bestClean !== null) return barOf(tested ? SIGNS.tested : SIGNS.belowBest, bestClean);
  return attempts > 0 ? SIGNS.notReached : SIGNS.notPractised;
}

/** So many weeks may one sign stand for: at most a year, unless there are too many years. */
const TOGETHER = [1, 2, 4, 8, 13, 26, 52];

/** The fewest weeks that one sign has to stand for so that so many weeks fit into some columns. */
export function weeksASign(count: number, columns: number): number {
  return TOGETHER.find((each) => Math.ceil(count / each) <= columns) ?? Math.ceil(count / columns);
}
