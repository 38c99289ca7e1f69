import type { TempoAttempt, TempoChart } from "../../server/charts/tempo-data.ts";
import { trendOf } from "../../server/history/trend.ts";
import { weeksOf } from "../../server/history/weeks.ts";
import { isoDate, mondayOf, parseIsoDate, weekIndex } from "../../server/journal/calendar.ts";
import { practised } from "../history/attempt.ts";

/**
 * The chart's data for attempts of one strand (`practised`), counted in beats with one note to a beat, with what differs.
 * Invented.
 */
export function tempos(lines: string, different: Partial<TempoChart> = {}): TempoChart {
  const records = practised(lines);
  const weeks = weeksOf(records);
  const monday = mondayOf(weekIndex(records[0]!.day));
  const attempts = records.flatMap(({ day, rate, reached }): TempoAttempt[] =>
    rate === null ? [] : [{ day: day - monday, rate, reached: reached === true }],
  );
  const trend = trendOf(weeks, { lastWeeks: different.span ?? 26 });
  return { title: "D melodic minor, thirds", axis: "at", weeks, attempts, trend, ...different };
}

/** Lines for `tempos`: the rate of one attempt in each week from 2026-01-05 on; 0 is a week without. */
export function weekly(...rates: readonly number[]): string {
  const lines = rates.map((rate, week) => ({ rate, date: isoDate(MONDAY + 7 * week) }));
  return lines.flatMap(({ rate, date }) => (rate === 0 ? [] : [`${date}  ${rate}`])).join("\n");
}

const MONDAY = parseIsoDate("2026-01-05")!;
