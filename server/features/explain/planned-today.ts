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
  return allPlanned(journal, uri, day)[0];
}

/** The next such line below one of a file; from the last on the first again. */
export function nextPlanned(journal: Journal, uri: string, day: DayNumber, line: number): PlannedLine | undefined {
  const all = allPlanned(journal, uri, day);
  return all.find((each) => each.uri === uri && each.end.line > line) ?? all[0];
}

function allPlanned(journal: Journal, uri: string, day: DayNumber): readonly PlannedLine[] {
  const days = daysOfJournal(journal).filter(({ date }) => date === day);
  const inOrder = [...days.filter((each) => each.uri === uri), ...days.filter((each) => each.uri !== uri)];
  return inOrder.flatMap(({ uri: file, document, index }) =>
    journal
      .model(document.blocks[index]!)
      .entries.flatMap(({ planned, place: { line, end } }) =>
        planned ? [{ uri: file, end: { line: document.starts[index]! + line, character: end } }] : [],
      ),
  );
}
