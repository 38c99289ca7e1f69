import { type DayNumber, mondayOf, weekIndex } from "../journal/calendar.ts";

/** ISO weeks, one after the other, by their running numbers (`weekIndex`); the first and the last are among them. */
export interface WeekSpan {
  readonly first: number;
  readonly last: number;
}

/** The weeks from that of one day to that of another. */
export function weeksFrom(first: DayNumber, last: DayNumber): WeekSpan {
  return { first: weekIndex(first), last: weekIndex(last) };
}

/** So many weeks, of which this is the last. */
export function weeksUpTo(last: number, count: number): WeekSpan {
  return { first: last - count + 1, last };
}

/** How many weeks they are. */
export function weekCount({ first, last }: WeekSpan): number {
  return last - first + 1;
}

/** The Monday that they begin on. */
export function firstDay({ first }: WeekSpan): DayNumber {
  return mondayOf(first);
}

export function holdsDay({ first, last }: WeekSpan, day: DayNumber): boolean {
  const index = weekIndex(day);
  return index >= first && index <= last;
}

interface Indexed {
  /** The week's running number. */
  readonly index: number;
}

/** Those of some weeks that lie in a span. */
export function weeksIn<W extends Indexed>(weeks: readonly W[], { first, last }: WeekSpan): readonly W[] {
  return weeks.filter(({ index }) => index >= first && index <= last);
}

/** What of a span there is to tell: from the first of some weeks on, oldest first, where that comes later. */
export function toldSpan([oldest]: readonly Indexed[], { first, last }: WeekSpan): WeekSpan {
  return { first: Math.max(first, oldest?.index ?? last + 1), last };
}
