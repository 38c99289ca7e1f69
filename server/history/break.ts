import type { DayNumber } from "../journal/calendar.ts";
import type { AttemptRecord } from "./record.ts";
import { BREAK_DAYS } from "./thresholds.ts";

/** The days on which each instrument was practised, in order; null is that of attempts that name none. */
export type PractisedDays = ReadonlyMap<string | null, readonly DayNumber[]>;

/** Time without a practised day on an instrument. */
export interface Break {
  /** The first day back. */
  readonly since: DayNumber;
  /** How many days before it were without practice. */
  readonly days: number;
}

/** The days of some attempts, by instrument, whatever order they come in. */
export function practisedDays(records: Iterable<Pick<AttemptRecord, "day" | "instrument">>): PractisedDays {
  const days = new Map<string | null, Set<DayNumber>>();
  for (const { day, instrument } of records) {
    const own = days.get(instrument);
    if (own) own.add(day);
    else days.set(instrument, new Set([day]));
  }
  return inOrder(days);
}

/** Days of each instrument, put in order. */
export function inOrder(days: ReadonlyMap<string | null, ReadonlySet<DayNumber>>): PractisedDays {
  return new Map(Array.from(days, ([instrument, own]) => [instrument, [...own].sort((a, b) => a - b)]));
}

/**
 * The breaks among the practised days of an instrument up to one day, the oldest first: three weeks or more in a row.
 * One that is not over yet is none.
 *
 * @param days in order, each once
 */
export function breaksUpTo(days: readonly DayNumber[], last: DayNumber): Break[] {
  const breaks: Break[] = [];
  for (let i = 1; i < days.length && days[i]! <= last; i++) {
    const without = days[i]! - days[i - 1]! - 1;
    if (without >= BREAK_DAYS) breaks.push({ since: days[i]!, days: without });
  }
  return breaks;
}
