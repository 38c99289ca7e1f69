import type { Block } from "../syntax/document/document.ts";
import { type DayNumber, parseIsoDate } from "./calendar.ts";

/** The day that a block opens; undefined for a head, and where there is no such date. */
export function dayOfBlock({ date }: Block): DayNumber | undefined {
  return date && parseIsoDate(date.text);
}
