import type { PreviewSpan } from "../../../shared/preview.ts";
import { LATELY } from "../../history/trend.ts";
import { firstDay, type WeekSpan, weekCount, weeksFrom, weeksUpTo } from "../../history/week-span.ts";
import { type DayNumber, weekIndex } from "../../journal/calendar.ts";

/** The days that the preview looks at, both ends included; days ahead count for nothing yet. */
export interface SpanOfDays {
  /** A Monday; undefined for everything up to today. */
  readonly since?: DayNumber;
  readonly today: DayNumber;
}

export const USUAL_SPAN: PreviewSpan = LATELY;

/** So many ISO weeks, the present one the last of them. */
export function spanOfDays(span: PreviewSpan, today: DayNumber): SpanOfDays {
  return span === "all" ? { today } : { since: firstDay(weeksUpTo(weekIndex(today), span)), today };
}

export function isInSpan(day: DayNumber, { since, today }: SpanOfDays): boolean {
  return day <= today && (since === undefined || day >= since);
}

/** What was practised within so many days is recent: the last four weeks. */
export const RECENT_DAYS = 28;

/** A young journal's axis has so many weeks at least, of those that were chosen: two months. */
const LEAST_WEEKS = 8;

/**
 * The weeks of a chart's axis, up to the present one. A young journal's begins with its first week; in the first of all
 * it leaves some empty that are still to come, or one week would be as wide as the page.
 *
 * @param first the first day that anything was played
 */
export function axisOf({ since, today }: SpanOfDays, first: DayNumber): WeekSpan {
  const begin = Math.min(first, today);
  if (since === undefined) return weeksFrom(begin, today);
  const chosen = weeksFrom(since, today);
  const start = Math.max(chosen.first, weekIndex(begin));
  const least = Math.min(weekCount(chosen), LEAST_WEEKS);
  return { first: start, last: Math.max(chosen.last, start + least - 1) };
}
