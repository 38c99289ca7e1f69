import type { PreviewSpan } from "../../../shared/preview.ts";
import { LATELY } from "../../history/trend.ts";
import { firstDay, spanLabels, weekCount, weeksFrom, weeksUpTo } from "../../history/week-span.ts";
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

/** `in these 26 weeks, 2025-W22 to 2025-W47`, or `so far`. */
export function spanInWords({ since, today }: SpanOfDays): string {
  if (since === undefined) return "so far";
  const span = weeksFrom(since, today);
  return `in these ${weekCount(span)} weeks, ${spanLabels(span).join(" to ")}`;
}
