import type { TempoAim, TempoChart } from "../../server/charts/tempo-data.ts";
import { LATELY, trendOf } from "../../server/history/trend.ts";
import { weeksIn, weeksUpTo } from "../../server/history/week-span.ts";
import { weeksOf } from "../../server/history/weeks.ts";
import { isoDate, parseIsoDate } from "../../server/journal/calendar.ts";
import { practised } from "../history/attempt.ts";

/** What differs from the usual chart; how many weeks it is wide, up to the last with a record. */
interface Different extends Partial<Omit<TempoChart, "span">> {
  readonly wide?: number;
}

/**
 * The chart's data for attempts of one strand (`practised`), counted in beats with one note to a beat, with what
 * differs. Invented.
 */
export function tempos(lines: string, { wide = LATELY, ...different }: Different = {}): TempoChart {
  const attempts = practised(lines);
  const weeks = weeksOf(attempts);
  const span = weeksUpTo(weeks.at(-1)!.index, wide);
  const trend = trendOf(weeksIn(weeks, span));
  return { title: "D melodic minor, thirds", axis: "tempo", weeks, attempts, trend, span, ...different };
}

/** A tempo to reach by a day, ISO 8601. */
export function aimAt(rate: number, date: string): TempoAim {
  return { rate, day: parseIsoDate(date)! };
}

/** Lines for `tempos`: the rate of one attempt in each week from 2026-01-05 on; 0 is a week without. */
export function weekly(...rates: readonly number[]): string {
  const lines = rates.map((rate, week) => ({ rate, date: isoDate(MONDAY + 7 * week) }));
  return lines.flatMap(({ rate, date }) => (rate === 0 ? [] : [`${date}  ${rate}`])).join("\n");
}

/** Of the first of these weeks. */
export const MONDAY = parseIsoDate("2026-01-05")!;
