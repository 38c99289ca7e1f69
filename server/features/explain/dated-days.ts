import type { DayNumber } from "../../journal/calendar.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Block, Document } from "../../syntax/document/document.ts";

/** A day whose date exists, and where it stands. */
export interface PlacedDay {
  readonly uri: string;
  readonly document: Document;
  /** Of its block. */
  readonly index: number;
  readonly date: DayNumber;
}

/** The days of a file in its order. Nothing but their first lines is read. */
export function datedDays(uri: string, document: Document): readonly PlacedDay[] {
  return document.blocks.flatMap((block, index): PlacedDay[] => {
    const date = dayOfBlock(block);
    return date === undefined ? [] : [{ uri, document, index, date }];
  });
}

/** The days of all files of a journal. */
export function daysOfJournal({ addresses, files }: Journal): readonly PlacedDay[] {
  return addresses.flatMap((uri) => datedDays(uri, files.get(uri)!));
}

/** The day of a date: in one file before the others. */
export function dayOn(journal: Journal, uri: string, date: DayNumber): PlacedDay | undefined {
  const days = daysOfJournal(journal).filter((day) => day.date === date);
  return days.find((day) => day.uri === uri) ?? days[0];
}

/** The last line of a block that holds anything, within the block. */
export function lastLineOf({ lines }: Block): number {
  return Math.max(
    0,
    lines.findLastIndex((line) => /[^\s\uFEFF]/.test(line)),
  );
}
