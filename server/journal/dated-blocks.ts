import { type Block, changedBlocks, type Document } from "../syntax/document/document.ts";
import type { DayNumber } from "./calendar.ts";
import { dayOfBlock } from "./day-of-block.ts";
import type { Journal } from "./journal.ts";

/** A day of the journal, where it stands. */
export interface DatedBlock {
  readonly day: DayNumber;
  readonly uri: string;
  readonly block: Block;
}

/** The days from one to another, both included, the latest first; of one date in the order of files and lines. */
export function datedBlocks(journal: Journal, since: DayNumber, until: DayNumber): readonly DatedBlock[] {
  const found: DatedBlock[] = [];
  for (const uri of journal.addresses) {
    const document = journal.files.get(uri)!;
    const days = daysOf(journal, uri, document);
    for (let i = 0; i < days.length; i++) {
      const day = days[i]!;
      if (day >= since && day <= until) found.push({ day, uri, block: document.blocks[i]! });
    }
  }
  return found.sort((a, b) => b.day - a.day);
}

interface Days {
  readonly document: Document;
  /** Of each block; not a number where it has no date. */
  readonly days: Float64Array;
}

/** After an edit only the blocks that changed are looked at. */
function daysOf({ memo }: Journal, uri: string, document: Document): Float64Array {
  const last = memo.latest<Days>("days of blocks", uri);
  if (last?.document === document) return last.days;
  const days = last ? daysAfter(last, document) : Float64Array.from(document.blocks, dateOrNone);
  memo.setLatest<Days>("days of blocks", uri, { document, days });
  return days;
}

function daysAfter(last: Days, document: Document): Float64Array {
  const { from, before, after } = changedBlocks(last.document, document);
  const days = new Float64Array(document.blocks.length);
  days.set(last.days.subarray(0, from));
  days.set(last.days.subarray(before), after);
  for (let i = from; i < after; i++) days[i] = dateOrNone(document.blocks[i]!);
  return days;
}

function dateOrNone(block: Block): number {
  return dayOfBlock(block) ?? Number.NaN;
}
