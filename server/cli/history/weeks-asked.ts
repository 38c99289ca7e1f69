import type { Choice } from "../../history/strands.ts";
import { LATELY } from "../../history/trend.ts";
import { type WeekSpan, weeksFrom, weeksUpTo } from "../../history/week-span.ts";
import { type DayNumber, mondayOf, weekIndex } from "../../journal/calendar.ts";
import { type AttemptsAsked, attemptsAsked } from "../attempts-asked.ts";
import { printable } from "../printable.ts";

/** Which attempts to tell of, and in how many weeks. */
export interface WeeksAsked extends AttemptsAsked {
  /** The last ones up to the end of the axis. */
  readonly weeks?: number;
}

export type ReadWeeksAsked =
  | { readonly ok: true; readonly asked: WeeksAsked }
  | { readonly ok: false; readonly reason: string };

/** From 1 to 9999: almost two centuries. */
const WEEKS = /^[1-9]\d{0,3}$/;

/** Reads `--subject`, `--weeks`, `--since` and `--until`. */
export function weeksAsked(values: ReadonlyMap<string, string>): ReadWeeksAsked {
  const wanted = attemptsAsked(values);
  const weeks = values.get("weeks");
  if (!wanted.ok || weeks === undefined) return wanted;
  if (!WEEKS.test(weeks))
    return {
      ok: false,
      reason: `“--weeks” takes a whole number from 1 to 9999, such as 26, not “${printable(weeks)}”.`,
    };
  if (wanted.asked.since !== undefined)
    return { ok: false, reason: "Choose one of “--weeks” and “--since”: both say which week is the first." };
  return { ok: true, asked: { ...wanted.asked, weeks: Number(weeks) } };
}

/**
 * The one axis of weeks that a table has: half a year unless something else is asked for, up to the last practised week
 * or that of `until`, and not from before there was any practice. What is dated ahead makes it no longer. Undefined
 * where none of the days is one that was asked for.
 *
 * @param days those with an attempt
 */
export function axisOf(days: readonly DayNumber[], asked: WeeksAsked, today: DayNumber): WeekSpan | undefined {
  const { since = Number.NEGATIVE_INFINITY, weeks } = asked;
  const until = lastDayOf(asked);
  const asks = days.filter((day) => day >= since && day <= until);
  const practised = latestOf(asks.filter((day) => day <= today)) ?? latestOf(asks);
  if (practised === undefined) return undefined;
  const end = asked.until === undefined ? practised : Math.min(until, Math.max(today, practised));
  const last = weekIndex(end);
  const { first } = asked.since === undefined ? weeksUpTo(last, weeks ?? LATELY) : weeksFrom(asked.since, end);
  return { first: Math.min(last, Math.max(first, weekIndex(oldestOf(days)))), last };
}

// Of ten years there are more days than a call takes arguments.
function latestOf(days: readonly DayNumber[]): DayNumber | undefined {
  return days.length === 0 ? undefined : days.reduce((a, b) => Math.max(a, b));
}

function oldestOf(days: readonly DayNumber[]): DayNumber {
  return days.reduce((a, b) => Math.min(a, b));
}

/** The days of whole weeks that were asked for; all where none were. */
export function choiceOf(asked: WeeksAsked, axis: WeekSpan | undefined): Choice {
  if (asked.weeks !== undefined && axis) return daysOf(axis);
  return { since: asked.since, ...(asked.until !== undefined && { until: lastDayOf(asked) }) };
}

/** From the Monday of the first week to the Sunday of the last. */
export function daysOf({ first, last }: WeekSpan): Required<Choice> {
  return { since: mondayOf(first), until: mondayOf(last) + DAYS_AFTER_MONDAY };
}

const DAYS_AFTER_MONDAY = 6;

/** The Sunday of the week that holds the last day asked for. */
function lastDayOf({ until }: WeeksAsked): DayNumber {
  return until === undefined ? Number.POSITIVE_INFINITY : mondayOf(weekIndex(until)) + DAYS_AFTER_MONDAY;
}
