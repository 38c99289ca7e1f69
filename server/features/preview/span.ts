import type { PreviewSpan } from "../../../shared/preview.ts";
import { axisWithin, type TimeAxis } from "../../charts/time-axis.ts";
import { LATELY } from "../../history/trend.ts";
import { firstDay, weekCount, weeksFrom, weeksUpTo } from "../../history/week-span.ts";
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

/** Of everything, the latest weeks of an axis that bars can still be told apart in. */
export function latestWeeks(axis: TimeAxis, most: number): TimeAxis {
  if (weekCount(axis) <= most) return axis;
  const first = axis.last - most + 1;
  const pauses = (axis.pauses ?? []).filter((pause) => pause.first >= first);
  return { first, last: axis.last, ...(pauses.length > 0 ? { pauses } : {}) };
}

/**
 * The weeks of the page's charts, up to the present one.
 *
 * @param practised the running numbers of weeks with practice, in these days or before
 */
export function axisOf({ since, today }: SpanOfDays, practised: ReadonlySet<number>): TimeAxis {
  const last = weekIndex(today);
  if (since !== undefined) return axisWithin(weeksFrom(since, today), practised);
  const first = [...practised].reduce((a, b) => Math.min(a, b), last);
  return axisWithin({ first, last }, practised);
}
