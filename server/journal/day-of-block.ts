import type { Block } from "../syntax/document/document.ts";
import { dateWord } from "../syntax/line/day-line.ts";
import { type DayNumber, parseIsoDate, SHORT_WEEKDAYS, shortWeekday } from "./calendar.ts";

/** The day that a block opens; undefined for a head, and where there is no such date. Its lines are not cut for it. */
export function dayOfBlock({ day, text }: Block): DayNumber | undefined {
  return day ? parseIsoDate(dateWord(/^[^\r\n]*/.exec(text)![0])?.text ?? "") : undefined;
}

const DATE_END = "2026-03-02".length;

/**
 * A day line in its usual order and spacing, for an expression: its date, then its short weekday and its minutes where
 * they are stated.
 */
export const USUAL_DAY_LINE = `\\d{4}-\\d\\d-\\d\\d(?: (?:${SHORT_WEEKDAYS.join("|")}))?(?:, [1-9]\\d{0,2} min)?`;

/** What a text opens that begins with such a line; undefined where there is no such day, or it is another weekday. */
export function usualDay(text: string): { readonly date: DayNumber; readonly minutes?: number } | undefined {
  const date = parseIsoDate(text.slice(0, DATE_END));
  if (date === undefined) return undefined;
  const named = text[DATE_END] === " ";
  if (named && !text.startsWith(shortWeekday(date), DATE_END + 1)) return undefined;
  const end = named ? DATE_END + 4 : DATE_END;
  return text[end] === "," ? { date, minutes: Number.parseInt(text.slice(end + 2, end + 5), 10) } : { date };
}
