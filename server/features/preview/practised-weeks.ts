import { journalHistory } from "../../history/journal-history.ts";
import type { Strand } from "../../history/strands.ts";
import { holdsDay, weeksFrom, weeksUpTo } from "../../history/week-span.ts";
import { weekIndex } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import { daysOfJournal } from "../explain/dated-days.ts";
import { timeOf } from "./day-time.ts";
import { isInSpan, type SpanOfDays } from "./span.ts";

/** Minutes without an exercise or a piece are looked for in so many weeks: those that bars are drawn of. */
export const MOST_WEEKS = 104;

/**
 * The running numbers of the weeks of some days in which anything was practised.
 *
 * @param instrument what was played on another is left out, and so are minutes; null for all
 */
export function practisedWeeks(journal: Journal, days: SpanOfDays, instrument: string | null): ReadonlySet<number> {
  const weeks = new Set<number>();
  for (const exercise of journalHistory(journal).exercises.values()) {
    if (instrument !== null && exercise.instrument !== instrument) continue;
    for (const { records } of exercise.strands) addWeeks(weeks, records, days);
  }
  if (instrument !== null) return weeks;
  const latest = weeksUpTo(weekIndex(days.today), MOST_WEEKS);
  const { first } = days.since === undefined ? latest : weeksFrom(days.since, days.today);
  for (const day of daysOfJournal(journal)) {
    if (!isInSpan(day.date, days) || !holdsDay({ first, last: latest.last }, day.date)) continue;
    const week = weekIndex(day.date);
    if (!weeks.has(week) && timeOf(journal, day).phases.some(({ minutes }) => minutes > 0)) weeks.add(week);
  }
  return weeks;
}

/** From the latest back: of ten years of records only those of the span are looked at. */
function addWeeks(weeks: Set<number>, records: Strand["records"], days: SpanOfDays): void {
  for (let at = records.length - 1; at >= 0; at--) {
    const { day } = records[at]!;
    if (isInSpan(day, days)) weeks.add(weekIndex(day));
    else if (day <= days.today) break;
  }
}
