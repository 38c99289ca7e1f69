import { type DayNumber, mondayOf } from "../journal/calendar.ts";
import { dateInWords, dayInWords, shortDate, weekdayDate } from "../journal/date-words.ts";
import { dayTexts } from "./day-texts.ts";

/** `today`, `yesterday`, `on 16 March`: when something was, at the end of a sentence. */
export function onDay(day: DayNumber, today: DayNumber): string {
  const words = dayInWords(day, today);
  return day === today || day === today - 1 ? words : dayTexts.on(words);
}

/** `the week of 16 March`, from its running number. */
export function weekInWords(index: number, today: DayNumber): string {
  return dayTexts.weekOf(dateInWords(mondayOf(index), today));
}

/** How long ago a day was: `today`, `yesterday`, `9 days ago`. */
export function daysAgo(days: number): string {
  return days === 0 ? dayTexts.today : days === 1 ? dayTexts.yesterday : dayTexts.daysAgo(days);
}

/** How long a break of weeks or more was: `11 weeks`, from half a year on `7 months`, from two years on `2 years`. */
export function timeAway(days: number): string {
  if (days < 26 * 7) return dayTexts.weeksAway(Math.floor(days / 7));
  const months = Math.floor((days / 365.25) * 12);
  return months < 24 ? dayTexts.monthsAway(months) : dayTexts.yearsAway(Math.floor(months / 12));
}

/** `today`, `tomorrow`, `in 5 days`. */
export function daysAhead(days: number): string {
  return days === 0 ? dayTexts.today : days === 1 ? dayTexts.tomorrow : dayTexts.inDays(days);
}

/** The day that something is for: `for today`, `for Sat 21 Mar`, and `was for 21 Nov` once it has passed. */
export function forDay(day: DayNumber, today: DayNumber): string {
  if (day === today) return dayTexts.forToday;
  return day < today ? dayTexts.wasFor(shortDate(day, today)) : dayTexts.forDay(weekdayDate(day, today));
}

/** A small number in words: `four`. */
export function inWords(count: number): string {
  return dayTexts.numbers[count] ?? String(count);
}
