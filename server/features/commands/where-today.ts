import { orderOf } from "../../checks/file/journal-order.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Document, Position } from "../../syntax/document/document.ts";
import { datedDays, lastLineOf } from "../explain/dated-days.ts";
import { roomBelow } from "./lines-in-file.ts";

/**
 * Where a file opens: at the end of today, on an empty line if there is one; without today at the end of the file.
 * Undefined where that is the top: in a file without days, and in one that has the newest first.
 */
export function whereToday(journal: Journal, uri: string, today: DayNumber): Position | undefined {
  const document = journal.files.get(uri);
  const days = document ? datedDays(uri, document) : [];
  if (!document || days.length === 0) return undefined;
  const there = days.find(({ date }) => date === today);
  if (!there) return orderOf(days).newestFirst ? undefined : endOf(document, document.blocks.length - 1, Infinity);
  const room = roomBelow(document, there.index) > 0 ? 1 : 0;
  return endOf(document, there.index, lastLineOf(document.blocks[there.index]!) + room);
}

/** The end of a line of a block, or of its last one. */
function endOf({ blocks, starts }: Document, index: number, line: number): Position {
  const { lines } = blocks[index]!;
  const at = Math.min(line, lines.length - 1);
  return { line: starts[index]! + at, character: lines[at]!.length };
}
