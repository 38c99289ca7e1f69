import { type WeekSpan, weekCount } from "../history/week-span.ts";
import { type DayNumber, mondayOf } from "../journal/calendar.ts";
import { WIDE } from "./look.ts";

/** The weeks of a chart from left to right, each as wide as the next but for long pauses. */
export interface TimeAxis extends WeekSpan {
  /** Stretches of it without practice that are drawn as narrow as two weeks; in order, and apart. */
  readonly pauses?: readonly WeekSpan[];
}

/** A pause has at least so many weeks: over fewer, a line joins what lies on both sides. */
const LEAST_PAUSE = 9;
/** How wide a pause is drawn, in weeks. */
const PAUSE = 2;
const DAYS_OF_WEEK = 7;

/**
 * Some weeks as an axis. Where half of them or more are long pauses these are drawn narrow, so that what was practised
 * has room; else all weeks are alike, and so are the months.
 *
 * @param practised the running numbers of weeks with practice
 */
function withPauses(span: WeekSpan, practised: readonly number[]): TimeAxis {
  const weeks = [...new Set(practised)].sort((a, b) => a - b);
  const ends = [...weeks, span.last + 1];
  const pauses = weeks
    .map((week, at): WeekSpan => ({ first: week + 1, last: ends[at + 1]! - 1 }))
    .filter((gap) => weekCount(gap) >= LEAST_PAUSE);
  const empty = pauses.reduce((sum, pause) => sum + weekCount(pause), 0);
  const { first, last } = span;
  return empty * 2 >= weekCount(span) ? { first, last, pauses } : { first, last };
}

/** A short axis has so many weeks at least, of those that there are to show: two months. */
const LEAST_WEEKS = 8;

/**
 * What of some weeks is drawn: from the first with practice on. Where that is not long ago some are left empty that are
 * still to come, or one week would be as wide as the chart.
 *
 * @param practised the running numbers of weeks with practice, these or others
 */
export function axisWithin(weeks: WeekSpan, practised: Iterable<number>): TimeAxis {
  const within = [...practised].filter((week) => week >= weeks.first && week <= weeks.last);
  const first = within.reduce((a, b) => Math.min(a, b), weeks.last);
  const least = Math.min(weekCount(weeks), LEAST_WEEKS);
  return withPauses({ first, last: Math.max(weeks.last, first + least - 1) }, within);
}

/** Where the middle of a day is, from left to right. */
export function placeOfDay(day: DayNumber, axis: TimeAxis): number {
  return placeOfTime(day + 0.5, axis);
}

/** Where a day begins. */
export function startOfDay(day: DayNumber, axis: TimeAxis): number {
  return placeOfTime(day, axis);
}

function placeOfTime(day: number, axis: TimeAxis): number {
  return placeOfWeek(axis.first + (day - mondayOf(axis.first)) / DAYS_OF_WEEK, axis);
}

/** Where a week begins, by its running number; with parts of a week, where those are over. */
export function placeOfWeek(week: number, axis: TimeAxis): number {
  return (drawnBefore(week, axis) / drawnBefore(axis.last + 1, axis)) * WIDE;
}

/** How many weeks wide is what lies before a time. */
function drawnBefore(week: number, { first, pauses = [] }: TimeAxis): number {
  return pauses.reduce((wide, pause) => {
    const count = weekCount(pause);
    const over = Math.min(Math.max(week - pause.first, 0), count);
    return wide - over * (1 - PAUSE / count);
  }, week - first);
}

/** The weeks between its pauses. */
export function stretchesOf({ first, last, pauses = [] }: TimeAxis): WeekSpan[] {
  const starts = [first, ...pauses.map((pause) => pause.last + 1)];
  const ends = [...pauses.map((pause) => pause.first - 1), last];
  return starts.map((start, at) => ({ first: start, last: ends[at]! })).filter((each) => each.last >= each.first);
}
