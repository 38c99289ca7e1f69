// Calendar days as integers. The conversions are those of Howard Hinnant, "chrono-Compatible Low-Level Date
// Algorithms" (days_from_civil, civil_from_days): years begin in March, so that a leap day is the last of its year.

/** Days since 1970-01-01 in the proleptic Gregorian calendar. A calendar day has no zone. */
export type DayNumber = number;

/** A date of the proleptic Gregorian calendar (ISO 8601). `month` is 1 to 12, `day` 1 to 31. */
export interface CivilDate {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** A week of ISO 8601. `year` is the week's own, which differs from the calendar's around New Year. */
export interface IsoWeek {
  readonly year: number;
  readonly week: number;
}

const FIRST_YEAR = 1;
const LAST_YEAR = 9999;

const DAYS_OF_WEEK = 7;
const DAYS_OF_ERA = 146_097; // 400 years
const EPOCH_FROM_ERA = 719_468; // from 0000-03-01 to 1970-01-01

/** The Monday of the week that 1970-01-01, a Thursday, lies in. */
const MONDAY_OF_INDEX_0: DayNumber = -3;

function isLeapYear(year: number): boolean {
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
}

/** Days in a month, 1 to 12. */
export function daysInMonth(year: number, month: number): number {
  if (month === 2) return isLeapYear(year) ? 29 : 28;
  return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
}

function daysFromCivil(year: number, month: number, day: number): DayNumber {
  const marchYear = month <= 2 ? year - 1 : year;
  const era = Math.floor(marchYear / 400);
  const yearOfEra = marchYear - era * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + day - 1;
  const dayOfEra = yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * DAYS_OF_ERA + dayOfEra - EPOCH_FROM_ERA;
}

/**
 * The day's number, or undefined for a date that does not exist (30 February, month 13) and for a year outside 1 to
 * 9999, which four digits cannot write or ISO 8601 leaves to agreement.
 */
export function dayNumber(year: number, month: number, day: number): DayNumber | undefined {
  if (!Number.isInteger(year) || !Number.isInteger(month) || !Number.isInteger(day)) return undefined;
  if (year < FIRST_YEAR || year > LAST_YEAR || month < 1 || month > 12) return undefined;
  if (day < 1 || day > daysInMonth(year, month)) return undefined;
  return daysFromCivil(year, month, day);
}

/** The date of a day number. */
export function civil(day: DayNumber): CivilDate {
  const shifted = day + EPOCH_FROM_ERA;
  const era = Math.floor(shifted / DAYS_OF_ERA);
  const dayOfEra = shifted - era * DAYS_OF_ERA;
  const yearOfEra = Math.floor(
    (dayOfEra - Math.floor(dayOfEra / 1460) + Math.floor(dayOfEra / 36_524) - Math.floor(dayOfEra / 146_096)) / 365,
  );
  const dayOfYear = dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  return {
    year: yearOfEra + era * 400 + (month <= 2 ? 1 : 0),
    month,
    day: dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1,
  };
}

/** ISO 8601: `2026-03-02`. */
export function isoDate(day: DayNumber): string {
  const date = civil(day);
  return `${digits(date.year, 4)}-${twoDigits(date.month)}-${twoDigits(date.day)}`;
}

/** Reads `2026-03-02`, and nothing looser. Undefined where that is not a date, or not one that exists. */
export function parseIsoDate(text: string): DayNumber | undefined {
  if (text.length !== 10 || text.charCodeAt(4) !== HYPHEN || text.charCodeAt(7) !== HYPHEN) return undefined;
  return dayNumber(numberAt(text, 0, 4), numberAt(text, 5, 7), numberAt(text, 8, 10));
}

const HYPHEN = 45;
const ZERO = 48;

/** The number that the digits from one place to another make; NaN where something else stands among them. */
function numberAt(text: string, from: number, to: number): number {
  let value = 0;
  for (let i = from; i < to; i++) {
    const digit = text.charCodeAt(i) - ZERO;
    value = digit >= 0 && digit <= 9 ? value * 10 + digit : Number.NaN;
  }
  return value;
}

/** 1 is Monday, 7 Sunday (ISO 8601). */
export function weekday(day: DayNumber): 1 | 2 | 3 | 4 | 5 | 6 | 7 {
  const fromMonday = day - MONDAY_OF_INDEX_0;
  return (fromMonday - Math.floor(fromMonday / DAYS_OF_WEEK) * DAYS_OF_WEEK + 1) as 1 | 2 | 3 | 4 | 5 | 6 | 7;
}

/** As they stand on day lines, from Monday. */
export const SHORT_WEEKDAYS: readonly string[] = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

export function shortWeekday(day: DayNumber): string {
  return SHORT_WEEKDAYS[weekday(day) - 1]!;
}

/** The ISO 8601 week that the day lies in: the week belongs to the year that holds its Thursday. */
export function isoWeek(day: DayNumber): IsoWeek {
  const thursday = day - weekday(day) + 4;
  const year = civil(thursday).year;
  return { year, week: Math.floor((thursday - daysFromCivil(year, 1, 1)) / DAYS_OF_WEEK) + 1 };
}

/** How many ISO weeks the year has: 52 or 53. */
export function weeksInYear(year: number): 52 | 53 {
  // 28 December lies in the last week of its year.
  return isoWeek(daysFromCivil(year, 12, 28)).week as 52 | 53;
}

/** The Monday of an ISO week. A week beyond the year's last runs on into the next year. */
export function weekStart(year: number, week: number): DayNumber {
  // 4 January lies in the first week of its year.
  const inFirstWeek = daysFromCivil(year, 1, 4);
  return inFirstWeek - weekday(inFirstWeek) + 1 + (week - 1) * DAYS_OF_WEEK;
}

/** `2026-W10`: the week that the day lies in. */
export function weekLabel(day: DayNumber): string {
  const { year, week } = isoWeek(day);
  return `${digits(year, 4)}-W${twoDigits(week)}`;
}

/** The Monday of `2026-W10`. Undefined where that is not a week, or not one that exists. */
export function parseWeekLabel(text: string): DayNumber | undefined {
  const match = /^(\d{4})-W(\d{2})$/.exec(text);
  if (!match) return undefined;
  const year = Number(match[1]);
  const week = Number(match[2]);
  return year >= FIRST_YEAR && week >= 1 && week <= weeksInYear(year) ? weekStart(year, week) : undefined;
}

/** A running number of ISO weeks, so that differences are weeks. The week of 1970-01-01 is 0. */
export function weekIndex(day: DayNumber): number {
  return Math.floor((day - MONDAY_OF_INDEX_0) / DAYS_OF_WEEK);
}

/** The Monday of a running week number. */
export function mondayOf(index: number): DayNumber {
  return index * DAYS_OF_WEEK + MONDAY_OF_INDEX_0;
}

/** `2026-W10` for a running week number. */
export function weekLabelOf(index: number): string {
  return weekLabel(mondayOf(index));
}

/** The labels of a run of weeks, both ends included: `weekLabelOf` for each, without converting each. */
export function weekLabels(first: number, last: number): string[] {
  const labels: string[] = [];
  let index = first;
  while (index <= last) {
    const { year, week } = isoWeek(mondayOf(index));
    const lastOfYear = Math.min(last, index + weeksInYear(year) - week);
    const prefix = `${digits(year, 4)}-W`;
    for (let number = week; index <= lastOfYear; index++, number++) labels.push(prefix + twoDigits(number));
  }
  return labels;
}

function twoDigits(value: number): string {
  return value < 10 ? `0${value}` : String(value);
}

function digits(value: number, width: number): string {
  return String(value).padStart(width, "0");
}
