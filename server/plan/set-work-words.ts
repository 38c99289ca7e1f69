import type { DayNumber } from "../journal/calendar.ts";
import { weekdayDate, weekdayOfMonth } from "../journal/date-words.ts";
import { type DeclaredSet, withoutDay } from "../journal/declared-lines.ts";
import { forDay, inWords } from "./day-words.ts";
import { setTexts } from "./set-texts.ts";
import type { SetWork } from "./set-work.ts";

/** The most days to name one by one. */
const MOST_DAYS = 6;

/** Nothing but words in quotes. */
const QUOTED = /^["“”„«»]([^"“”„«»]*)["“”„«»]$/;

/** As it was set, without its day, the number of days that is said beside it, and quotes around words. */
export function textOfSet({ text, declared: { words, days } }: DeclaredSet): string {
  const whole = withoutDay(text);
  const undated = days === undefined ? whole : whole.replace(/[\s,]+\d+ (?:days?|times|x)\s*$/i, "");
  return words !== undefined ? undated.replace(QUOTED, "$1") : undated;
}

/** `played Mon 2, Sun 8, Mon 9; set for four days`, and once its day has passed `was for 6 Mar`; may be empty. */
export function setWorkInWords({ work, done }: SetWork, today: DayNumber): string {
  const { words, by } = work.declared;
  return [
    ...playedOn(done, words === undefined, today),
    ...(by !== undefined && by < today ? [forDay(by, today)] : setFor(work)),
  ].join("; ");
}

/** The same, and the day that it is for where that is ahead: `played Mon 2; for Fri 6 Mar`. */
export function setWorkWithDay(each: SetWork, today: DayNumber): string {
  const { by } = each.work.declared;
  const ahead = by !== undefined && by >= today ? [forDay(by, today)] : [];
  return [setWorkInWords(each, today), ...ahead].filter((words) => words !== "").join("; ");
}

/** Ahead the day that it is for, else the one on which it was set. */
export function dayOfSet({ declared: { by }, day }: DeclaredSet, today: DayNumber): string {
  if (by !== undefined && by >= today) return forDay(by, today);
  return day === undefined ? setTexts.noDate : weekdayDate(day, today);
}

/** Where it was not played, nothing is said. */
function playedOn(days: readonly DayNumber[], isExercise: boolean, today: DayNumber): string[] {
  if (days.length === 0) return [];
  if (days.length > MOST_DAYS) {
    const last = days.at(-1)!;
    const said = isExercise ? setTexts.playedOnDays : setTexts.doneOnDays;
    return [said(inWords(days.length), weekdayDate(last, today))];
  }
  return [(isExercise ? setTexts.played : setTexts.done)(days.map(weekdayOfMonth).join(", "))];
}

function setFor({ declared: { days } }: DeclaredSet): string[] {
  if (days === undefined) return [];
  return [days === 1 ? setTexts.setForOneDay : setTexts.setForDays(inWords(days))];
}
