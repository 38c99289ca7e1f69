import type { PreviewSpan } from "../../../shared/preview.ts";
import { type DayNumber, mondayOf, weekIndex, weekLabelOf } from "../../journal/calendar.ts";

/** The days that the preview looks at, both ends included; days ahead count for nothing yet. */
export interface SpanOfDays {
  /** A Monday; undefined for everything up to today. */
  readonly since?: DayNumber;
  readonly today: DayNumber;
}

export const USUAL_SPAN: PreviewSpan = 26;

/** So many ISO weeks, the present one the last of them. */
export function spanOfDays(span: PreviewSpan, today: DayNumber): SpanOfDays {
  return span === "all" ? { today } : { since: mondayOf(weekIndex(today) - span + 1), today };
}

export function isInSpan(day: DayNumber, { since, today }: SpanOfDays): boolean {
  return day <= today && (since === undefined || day >= since);
}

/** `in these 26 weeks, 2025-W22 to 2025-W47`, or `so far`. */
export function spanInWords({ since, today }: SpanOfDays): string {
  if (since === undefined) return "so far";
  const [first, last] = [weekIndex(since), weekIndex(today)];
  return `in these ${last - first + 1} weeks, ${weekLabelOf(first)} to ${weekLabelOf(last)}`;
}
