import { firstDay, type WeekSpan, weekCount } from "../history/week-span.ts";
import { civil, type DayNumber, dayNumber } from "../journal/calendar.ts";
import { shortMonth } from "../journal/date-words.ts";
import { type Look, label, mark, share, tenth, textWidth, WIDE } from "./look.ts";

/** The first day of a month, or of a year where months would lie too close. */
interface Month {
  /** In the stretched space. */
  readonly x: number;
  readonly name: string;
}

/** Over more months than these the axis has years. */
const MOST_MONTHS = 18;
const DAYS_OF_WEEK = 7;
/** Between two labels, in pixels. */
const APART = 5;

/** Where the middle of a day is, from left to right. */
export function placeOfDay(day: DayNumber, span: WeekSpan): number {
  return ((day - firstDay(span) + 0.5) / (weekCount(span) * DAYS_OF_WEEK)) * WIDE;
}

/** Where a week begins, by its running number; with parts of a week, where those are over. */
export function placeOfWeek(week: number, span: WeekSpan): number {
  return ((week - span.first) / weekCount(span)) * WIDE;
}

/** A hairline at the first of each month. */
export function monthLines(look: Look, span: WeekSpan, top: number, bottom: number): string {
  const lines = monthsOf(span).starts.map(({ x }) => `M${tenth(x)},${tenth(top)}V${tenth(bottom)}`);
  return mark(look, "month", lines.join(""));
}

/**
 * The names of the months below or above an axis that is at least so many pixels wide: the first at its start, each
 * other at its line where it does not touch the one before, the last at the axis' end where it would reach beyond.
 */
export function monthLabels(span: WeekSpan, y: number, leastWidth: number): string {
  const { first, starts } = monthsOf(span);
  const pixel = leastWidth / WIDE;
  let end = textWidth(first) + APART;
  const labels = [label(first, { x: 0, y })];
  for (const [at, { x, name }] of starts.entries()) {
    const [from, wide] = [x * pixel + 2, textWidth(name)];
    const isBeyond = from + wide > leastWidth;
    if ((isBeyond ? leastWidth - wide : from) < end || (isBeyond && at < starts.length - 1)) continue;
    labels.push(
      isBeyond ? label(name, { x: "100%", y, "text-anchor": "end" }) : label(name, { x: share(x), dx: 2, y }),
    );
    end = (isBeyond ? leastWidth : from + wide) + APART;
  }
  return labels.join("");
}

/** The month that a span begins in, and those that begin within it. */
function monthsOf(span: WeekSpan): { readonly first: string; readonly starts: readonly Month[] } {
  const start = firstDay(span);
  const days = weekCount(span) * DAYS_OF_WEEK;
  const { year, month } = civil(start);
  const hasYears = days > MOST_MONTHS * 31;
  const starts: Month[] = [];
  for (let at = month; ; at++) {
    const next = { year: year + Math.floor(at / 12), month: (at % 12) + 1 };
    const day = dayNumber(next.year, next.month, 1);
    if (day === undefined || day >= start + days) break;
    if (hasYears && next.month !== 1) continue;
    starts.push({ x: ((day - start) / days) * WIDE, name: hasYears ? String(next.year) : shortMonth(next.month) });
  }
  return { first: hasYears ? String(year) : shortMonth(month), starts };
}
