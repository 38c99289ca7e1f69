import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { BlockModel } from "../../journal/model.ts";
import type { Block } from "../../syntax/document/document.ts";
import { sortOf } from "../../syntax/line/line.ts";
import { dayOn, lastLineOf, type PlacedDay } from "../explain/dated-days.ts";
import type { EntryUnderCursor } from "../explain/line-under-cursor.ts";
import { sectionsOf } from "../explain/sections.ts";
import type { CommandAnswer, CommandDone } from "./command-answer.ts";
import { belowEntry, insertedBelow, type NewLine } from "./entry-below.ts";
import { indentAt } from "./entry-indent.ts";
import { dayBegunWith } from "./new-day.ts";

/** Whether an entry stands on a day that is over, or on none that can be: what was written there stays as it is. */
export function isPast({ model }: EntryUnderCursor, today: DayNumber): boolean {
  return (model.day?.date ?? Number.NEGATIVE_INFINITY) < today;
}

/**
 * A line that goes on from an entry: below it and its remarks; or, where its day is over, today, in the same phase or
 * at the end. Where the journal has no today yet, one is begun.
 */
export function goesOnToday(
  journal: Journal,
  uri: string,
  found: EntryUnderCursor,
  added: NewLine,
  today: DayNumber,
): CommandAnswer {
  if (!isPast(found, today)) return belowEntry(uri, found, added);
  const day = dayOn(journal, uri, today);
  return day ? insertedIn(journal, day, added, found.entry.phase) : dayBegunWith(journal, uri, today, added);
}

function insertedIn(
  journal: Journal,
  { uri, document, index }: PlacedDay,
  added: NewLine,
  phase: string | undefined,
): CommandDone {
  const block = document.blocks[index]!;
  const model = journal.model(block);
  const section =
    phase === undefined
      ? undefined
      : sectionsOf(model.lines.map(({ type }) => sortOf(type))).findLast(({ line }) => phaseOf(model, line) === phase);
  const line = section?.lastLine ?? lastLineOf(block);
  const day = { uri, document, first: document.starts[index]!, block };
  return insertedBelow(day, line, roomBelow(block, model, line) ?? indentAt(block, model, line), added);
}

/** What the empty line below is indented by that a day without entries was begun with. */
function roomBelow({ lines }: Block, { entries }: BlockModel, line: number): string | undefined {
  const next = lines[line + 1] ?? "";
  return entries.length === 0 && /^[ \t]+$/.test(next) ? next : undefined;
}

function phaseOf({ lines }: BlockModel, at: number): string | undefined {
  const line = lines[at]!;
  const opening = line.type === "phase" ? line.items[0]?.meaning : undefined;
  return opening?.type === "phase" ? opening.id : undefined;
}
