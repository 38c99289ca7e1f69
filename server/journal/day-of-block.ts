import type { Block } from "../syntax/document/document.ts";
import { dateWord } from "../syntax/line/day-line.ts";
import { type DayNumber, parseIsoDate } from "./calendar.ts";

/** The day that a block opens; undefined for a head, and where there is no such date. Its lines are not cut for it. */
export function dayOfBlock({ day, text }: Block): DayNumber | undefined {
  return day ? parseIsoDate(dateWord(/^[^\r\n]*/.exec(text)![0])?.text ?? "") : undefined;
}
