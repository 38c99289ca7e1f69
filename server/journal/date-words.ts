import { civil, type DayNumber, weekday, weekLabel } from "./calendar.ts";
import { dateTexts } from "./date-texts.ts";

/** `16 March`, as a sentence has it; with its year where that is another one than that of the day it is read on. */
export function dateInWords(day: DayNumber, read: DayNumber): string {
  return `${dayOfMonth(day)} ${dateTexts.months[civil(day).month - 1]!}${yearBeside(day, read)}`;
}

/** `2 Nov`, for a table; likewise. */
export function shortDate(day: DayNumber, read: DayNumber): string {
  return `${dayOfMonth(day)} ${shortMonth(civil(day).month)}${yearBeside(day, read)}`;
}

/** `Mon 26 Oct`; likewise. */
export function weekdayDate(day: DayNumber, read: DayNumber): string {
  return `${shortWeekday(day)} ${shortDate(day, read)}`;
}

/** `Mon 2`: a day of which one knows in which month it is. */
export function weekdayOfMonth(day: DayNumber): string {
  return `${shortWeekday(day)} ${dayOfMonth(day)}`;
}

/** So many days back a date without its year could be another one: half a year. */
const FAR_BACK = 26 * 7;

/** `Mon 26 Oct`, and with its year where that is another one, or more than half a year back. */
export function weekdayDateBack(day: DayNumber, read: DayNumber): string {
  return isFarBack(day, read)
    ? `${shortWeekday(day)} ${shortDate(day, day)} ${civil(day).year}`
    : weekdayDate(day, read);
}

export function isFarBack(day: DayNumber, read: DayNumber): boolean {
  return read - day > FAR_BACK;
}

/** `today`, `yesterday`, `16 March`: as it opens what is said of a day. */
export function dayInWords(day: DayNumber, read: DayNumber): string {
  if (day === read) return dateTexts.today;
  return day === read - 1 ? dateTexts.yesterday : dateInWords(day, read);
}

function dayOfMonth(day: DayNumber): string {
  return dateTexts.dayOfMonth(civil(day).day);
}

function shortWeekday(day: DayNumber): string {
  return dateTexts.shortWeekdays[weekday(day) - 1]!;
}

function yearBeside(day: DayNumber, read: DayNumber): string {
  const { year } = civil(day);
  return year === civil(read).year ? "" : ` ${year}`;
}

const DAYS_OF_WEEK = 7;

/** A day as it stands behind what was done on it: `today`, `yesterday`, within a week `Mon 16 Nov`, else `9 Nov`. */
export function dayBack(day: DayNumber, read: DayNumber): string {
  const back = read - day;
  if (back === 0) return dateTexts.today;
  if (back === 1) return dateTexts.yesterday;
  return back > 0 && back < DAYS_OF_WEEK ? weekdayDate(day, read) : shortDate(day, read);
}

/** `Sunday 22 November`. */
export function longDate(day: DayNumber): string {
  return `${dateTexts.weekdays[weekday(day) - 1]!} ${dateInWords(day, day)}`;
}

/** `25 May to 22 November 2026`: from one day to another with the year, as it heads a page that is kept. */
export function datesInWords(first: DayNumber, last: DayNumber): string {
  const whole = `${dateInWords(last, last)} ${civil(last).year}`;
  return first === last ? whole : dateTexts.fromTo(dateInWords(first, last), whole);
}

/** `9 to 15 March`, `30 March to 5 April`. */
export function daysInWords(first: DayNumber, last: DayNumber): string {
  const [from, to] = [civil(first), civil(last)];
  const inOneMonth = from.month === to.month && from.year === to.year;
  return dateTexts.fromTo(inOneMonth ? dayOfMonth(first) : dateInWords(first, last), dateInWords(last, last));
}

/** `2026-W11 (9 to 15 March)`, of the week that begins on a Monday. */
export function weekInWords(monday: DayNumber): string {
  return `${weekLabel(monday)} (${daysInWords(monday, monday + DAYS_OF_WEEK - 1)})`;
}

/** `Nov`; 1 is January. */
export function shortMonth(month: number): string {
  return dateTexts.shortMonths[month - 1]!;
}
