import { civil } from "../../journal/calendar.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import type { Document } from "../../syntax/document/document.ts";

/** Days that stand next to each other in a file and lie in one month, or in one year; indices are those of blocks. */
export interface DaysTogether {
  readonly first: number;
  readonly last: number;
}

/**
 * The months and the years of a file, in its order; a month that another one stands in the middle of is there twice. A
 * day whose date does not exist belongs to the days before it. Nothing but first lines is read.
 */
export function monthsAndYears({ blocks }: Document): {
  readonly months: readonly DaysTogether[];
  readonly years: readonly DaysTogether[];
} {
  const months: { key: number; first: number; last: number }[] = [];
  const years: typeof months = [];
  for (const [i, block] of blocks.entries()) {
    if (!block.day) continue;
    const date = dayOfBlock(block);
    const { year, month } = date === undefined ? NOWHEN : civil(date);
    goOn(years, year, i);
    goOn(months, 12 * year + month, i);
  }
  return { months, years };
}

const NOWHEN = { year: Number.NaN, month: Number.NaN };

function goOn(runs: { key: number; first: number; last: number }[], key: number, block: number): void {
  const run = runs.at(-1);
  if (run && (run.key === key || Number.isNaN(key))) run.last = block;
  else runs.push({ key, first: block, last: block });
}
