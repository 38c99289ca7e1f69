import { LATELY } from "../../history/trend.ts";
import { toldSpan, weeksUpTo } from "../../history/week-span.ts";
import { everyWeek, type Week } from "../../history/weeks.ts";

/**
 * One sign for a week, so that shape alone tells them apart: a block for a tested week (Unicode block elements, from an
 * eighth to a whole), a column of dots for one worked below best (Braille patterns, from one dot to four).
 */
export const SIGNS = { tested: "▁▂▃▄▅▆▇█", belowBest: "⡀⡄⡆⡇", notReached: "–", notPractised: "·" } as const;

/** A row of bars, and the rates that its lowest and its highest bar stand for. */
export interface Bars {
  readonly signs: string;
  /** Undefined where no week shown has a figure. */
  readonly scale?: { readonly low: number; readonly high: number };
}

/**
 * The weeks of half a year up to the last that was practised; at least one. The lowest figure has the lowest bar; where
 * all are alike, a middling one.
 */
export function barsOf(weeks: readonly Week[]): Bars {
  const shown = everyWeek(weeks, toldSpan(weeks, weeksUpTo(weeks.at(-1)!.index, LATELY)));
  const rates = shown.flatMap(({ bestClean }) => bestClean ?? []);
  if (rates.length === 0) return { signs: shown.map((week) => signOf(week, () => "")).join("") };
  const scale = { low: Math.min(...rates), high: Math.max(...rates) };
  const spread = scale.high - scale.low;
  const barOf = (bars: string, rate: number) => {
    const step = spread === 0 ? bars.length / 2 - 1 : Math.round(((rate - scale.low) / spread) * (bars.length - 1));
    return bars[step]!;
  };
  return { signs: shown.map((week) => signOf(week, barOf)).join(""), scale };
}

function signOf({ bestClean, tested, attempts }: Week, barOf: (bars: string, rate: number) => string): string {
  if (bestClean !== null) return barOf(tested ? SIGNS.tested : SIGNS.belowBest, bestClean);
  return attempts > 0 ? SIGNS.notReached : SIGNS.notPractised;
}
