import { orderOf } from "../../checks/file/journal-order.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { type Journal, MARKER } from "../../journal/journal.ts";
import type { Document } from "../../syntax/document/document.ts";
import { datedDays, dayOn, daysOfJournal, lastLineOf, type PlacedDay } from "../explain/dated-days.ts";
import { lastPhases, type SessionPhases } from "../explain/phases-before.ts";
import { refusal } from "../explain/refusal.ts";
import type { CommandAnswer } from "./command-answer.ts";
import { commandTexts } from "./command-texts.ts";
import type { NewLine } from "./entry-below.ts";
import { indentAt } from "./entry-indent.ts";
import { freshLineIn, insertedAfter, type NewLines } from "./lines-in-file.ts";
import { behindDate, dayLine, indentBelowDay } from "./today-line.ts";

export interface NewDayOptions {
  readonly today: DayNumber;
  /** With the phases of the last session and their minutes. */
  readonly phases: boolean;
}

/**
 * Today's day line, written as the file writes them, below the day before or, in a file that has the newest first,
 * above it; the cursor goes to the empty line below. Where the journal has today already, the cursor goes to an empty
 * line at the end of that day, which gets the phases if it is empty. From a marker without a day it goes to the file of
 * the latest day.
 */
export function newDay(journal: Journal, uri: string, { today, phases }: NewDayOptions): CommandAnswer {
  const session = phases ? lastPhases(journal, today) : undefined;
  const there = dayOn(journal, uri, today);
  if (there && session && isEmpty(there)) return insertedAfter(there, { day: "", ...belowDay("", session) });
  if (there) return freshLineIn(there, indentAtEnd(journal, there));
  if (phases && !session) return NO_PHASES;
  return dayBegun(journal, uri, today, (indent) => belowDay(indent, session));
}

const NO_PHASES = refusal(commandTexts.noPhases);

/** Today, where the journal does not have it, begun with one entry, which is indented as the file has it. */
export function dayBegunWith(journal: Journal, uri: string, today: DayNumber, entry: NewLine): CommandAnswer {
  return dayBegun(journal, uri, today, (indent) => ({
    below: [indent + entry.text],
    cursor: { line: 0, character: indent.length + entry.cursor },
  }));
}

/**
 * Today, where the journal does not have it.
 *
 * @param belowWith what goes below, from what a first entry is indented by
 * @param told what its line says beside the date: `45 min`, `plan`
 */
export function dayBegun(
  journal: Journal,
  uri: string,
  today: DayNumber,
  belowWith: (indent: string) => Omit<NewLines, "day">,
  told: readonly string[] = [],
): CommandAnswer {
  const file = fileForDay(journal, uri, today);
  const document = journal.files.get(file);
  if (!document) return refusal(commandTexts.noFile);
  const days = datedDays(file, document);
  const index = blockBefore(document, days, today);
  const below = belowWith(indentBelowDay(journal, document, days, today));
  const day = dayLine(journal, document, days, today) + behindDate(journal, document, days, today, told);
  return insertedAfter({ uri: file, document, index }, { day, ...below });
}

/** Room for the first entry, below the first of the phases where there are any. */
function belowDay(indent: string, session: SessionPhases | undefined): Omit<NewLines, "day"> {
  if (!session) return { below: [indent], cursor: { line: 0, character: indent.length } };
  const [first, ...further] = session.lines;
  return { below: [first!, session.indent, ...further], cursor: { line: 1, character: session.indent.length } };
}

/**
 * The marker of a journal holds declarations; days go there only if no other file has any. Where another file begins
 * after this one ends, as when each month has its own, the journal goes on there.
 */
function fileForDay(journal: Journal, uri: string, today: DayNumber): string {
  const document = journal.files.get(uri);
  const own = document ? datedDays(uri, document) : [];
  if (!uri.endsWith(`/${MARKER}`) && own.length === 0) return uri;
  const end = Math.max(...own.map(({ date }) => date)); // of a marker without days it is before all others
  const before = daysOfJournal(journal).filter(({ date }) => date < today);
  const begunEarlier = new Set(before.filter(({ date }) => date <= end).map((day) => day.uri));
  const further = before.filter((day) => !begunEarlier.has(day.uri));
  return further.reduce<PlacedDay | undefined>((a, b) => (a && a.date > b.date ? a : b), undefined)?.uri ?? uri;
}

/** The index of the block that today goes below; -1 for the top of a file without a head. */
function blockBefore({ blocks }: Document, days: readonly PlacedDay[], today: DayNumber): number {
  const { newestFirst } = orderOf(days);
  if (newestFirst) return (days.find(({ date }) => date < today)?.index ?? blocks.length) - 1;
  const before = days.findLast(({ date }) => date < today);
  return before?.index ?? (days[0]?.index ?? blocks.length) - 1;
}

function isEmpty({ document, index }: PlacedDay): boolean {
  return lastLineOf(document.blocks[index]!) === 0;
}

function indentAtEnd(journal: Journal, { uri, document, index, date }: PlacedDay): string {
  const block = document.blocks[index]!;
  const line = lastLineOf(block);
  return line === 0
    ? indentBelowDay(journal, document, datedDays(uri, document), date)
    : indentAt(block, journal.model(block), line);
}
