import { type DayNumber, mondayOf } from "../journal/calendar.ts";
import { dateInWords, dayInWords, shortDate, weekdayDate } from "../journal/date-words.ts";

/** `today`, `yesterday`, `on 16 March`: when something was, at the end of a sentence. */
export function onDay(day: DayNumber, today: DayNumber): string {
  const words = dayInWords(day, today);
  return day === today || day === today - 1 ? words : `on ${words}`;
}

/** `the week of 16 March`, from its running number. */
export function weekInWords(index: number, today: DayNumber): string {
  return `the week of ${dateInWords(mondayOf(index), today)}`;
}

/** `1 day`, `28 days`. */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

/** How long ago a day was: `today`, `yesterday`, `9 days ago`. */
export function daysAgo(days: number): string {
  return days === 0 ? "today" : days === 1 ? "yesterday" : `${days} days ago`;
}

/** How long a break of weeks or more was: `11 weeks`, from half a year on `7 months`, from two years on `2 years`. */
export function timeAway(days: number): string {
  if (days < 26 * 7) return counted(Math.floor(days / 7), "week");
  const months = Math.floor((days / 365.25) * 12);
  return months < 24 ? counted(months, "month") : counted(Math.floor(months / 12), "year");
}

/** `today`, `tomorrow`, `in 5 days`. */
export function daysAhead(days: number): string {
  return days === 0 ? "today" : days === 1 ? "tomorrow" : `in ${days} days`;
}

/** The day that something is for: `for today`, `for Sat 21 Mar`, and `was for 21 Nov` once it has passed. */
export function forDay(day: DayNumber, today: DayNumber): string {
  if (day === today) return "for today";
  return day < today ? `was for ${shortDate(day, today)}` : `for ${weekdayDate(day, today)}`;
}

const NUMBERS = [
  ...["no", "one", "two", "three", "four", "five", "six"],
  ...["seven", "eight", "nine", "ten", "eleven", "twelve"],
];

/** A small number in words: `four`. */
export function inWords(count: number): string {
  return NUMBERS[count] ?? String(count);
}
