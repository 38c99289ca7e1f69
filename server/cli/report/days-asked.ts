import {
  civil,
  type DayNumber,
  isoDate,
  mondayOf,
  parseWeekLabel,
  weekIndex,
  weekLabel,
} from "../../journal/calendar.ts";
import { datesInWords, daysInWords, weekInWords } from "../../journal/date-words.ts";
import { attemptsAsked } from "../attempts-asked.ts";
import { printable } from "../printable.ts";

/** The days that a report is about. */
export interface DaysAsked {
  readonly since: DayNumber;
  /** The last one, or today where that comes before. */
  readonly until: DayNumber;
  /** `2026-W11 (9 to 15 March)`, `28 February to 15 March 2026`. */
  readonly title: string;
}

export type ReadDaysAsked =
  | { readonly ok: true; readonly days: DaysAsked }
  | { readonly ok: false; readonly reason: string };

/** Reads `--week`, or `--since` and `--until`; the week of today where none is given. Days after today do not exist. */
export function daysAsked(values: ReadonlyMap<string, string>, today: DayNumber): ReadDaysAsked {
  const wanted = attemptsAsked(values);
  if (!wanted.ok) return wanted;
  const { since, until } = wanted.asked;
  const week = values.get("week");
  if (since === undefined && until === undefined) return weekAsked(week, today);
  if (week !== undefined) return fault("Choose one of “--week” and “--since”: both say which days.");
  if (since === undefined) return fault("“--until” needs “--since”: say from which day, or name a “--week”.");
  if (since > today) return fault(`“--since ${isoDate(since)}” is after today: put an earlier day.`);
  const last = Math.min(until ?? today, today);
  return { ok: true, days: { since, until: last, title: spanInWords(since, until ?? today) } };
}

function weekAsked(week: string | undefined, today: DayNumber): ReadDaysAsked {
  const monday = week === undefined ? mondayOf(weekIndex(today)) : parseWeekLabel(week.toUpperCase());
  if (monday === undefined)
    return fault(`“--week” takes an ISO week, such as ${weekLabel(today)}, not “${printable(week!)}”.`);
  if (monday > today) return fault(`“--week ${weekLabel(monday)}” is after today: put an earlier week.`);
  return { ok: true, days: { since: monday, until: Math.min(monday + 6, today), title: weekInWords(monday) } };
}

function spanInWords(first: DayNumber, last: DayNumber): string {
  if (first === last) return datesInWords(first, last);
  return `${daysInWords(first, last)} ${civil(last).year}`;
}

function fault(reason: string): ReadDaysAsked {
  return { ok: false, reason };
}
