import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Position } from "../../syntax/document/document.ts";
import { daysOfJournal } from "./dated-days.ts";

/** A planned line that was not done, and where it ends. */
export interface PlannedLine {
  readonly uri: string;
  readonly end: Position;
}

/** The first line of a day that is planned and not done yet: in one file before the others. */
export function firstPlanned(journal: Journal, uri: string, day: DayNumber): PlannedLine | undefined {
  const days = daysOfJournal(journal).filter(({ date }) => date === day);
  const inOrder = [...days.filter((each) => each.uri === uri), ...days.filter((each) => each.uri !== uri)];
  for (const { uri: file, document, index } of inOrder) {
    const block = document.blocks[index]!;
    const entry = journal.model(block).entries.find(({ planned }) => planned);
    if (!entry) continue;
    const { line, end } = entry.place;
    return { uri: file, end: { line: document.starts[index]! + line, character: end } };
  }
  return undefined;
}
