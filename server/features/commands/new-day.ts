import { orderOf } from "../../checks/file/journal-order.ts";
import { type DayNumber, isoDate, weekday } from "../../journal/calendar.ts";
import { type Journal, MARKER } from "../../journal/journal.ts";
import type { Document, Position } from "../../syntax/document/document.ts";
import { datedDays, dayOn, daysOfJournal, lastLineOf, type PlacedDay } from "../explain/dated-days.ts";
import { WEEKDAY_NAMES } from "../explain/explain.ts";
import { lineEndOf } from "../explain/line-under-cursor.ts";
import { refusal } from "../explain/refusal.ts";
import type { CommandAnswer, CommandDone } from "./command-answer.ts";
import { lastPhases, type SessionPhases } from "./phases-before.ts";

export interface NewDayOptions {
  readonly today: DayNumber;
  /** With the phases of the last session and their minutes. */
  readonly phases: boolean;
}

/**
 * Today's day line, written as the file writes them, below the day before or, in a file that has the newest first,
 * above it; the cursor goes to the empty line below. Where the journal has today already, the cursor goes to the end of
 * that day, which gets the phases if it is empty. From a marker without a day it goes to the file of the latest day.
 */
export function newDay(journal: Journal, uri: string, { today, phases }: NewDayOptions): CommandAnswer {
  const session = phases ? lastPhases(journal, today) : undefined;
  const there = dayOn(journal, uri, today);
  if (there) return session && isEmpty(there) ? insertedAfter(there, ["", session]) : endOf(there);
  if (phases && !session) return NO_PHASES;
  const file = fileForDay(journal, uri, today);
  const document = journal.files.get(file);
  if (!document)
    return refusal("This file belongs to no journal that is open. Save it as a .practice file and try again.");
  const days = datedDays(file, document);
  const index = blockBefore(document, days, today);
  return insertedAfter({ uri: file, document, index }, [dayLine(journal, document, days, today), session]);
}

const NO_PHASES = refusal(
  "No earlier day of this journal has phases, so there are none to take over. Daystave: New Day puts in the day alone.",
);

/** The marker of a journal holds declarations; days go there only if no other file has any. */
function fileForDay(journal: Journal, uri: string, today: DayNumber): string {
  const document = journal.files.get(uri);
  if (!uri.endsWith(`/${MARKER}`) || (document && datedDays(uri, document).length > 0)) return uri;
  const days = daysOfJournal(journal).filter(({ date }) => date < today);
  return days.reduce<PlacedDay | undefined>((a, b) => (a && a.date > b.date ? a : b), undefined)?.uri ?? uri;
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

function endOf({ uri, document, index }: PlacedDay): CommandDone {
  const block = document.blocks[index]!;
  const line = lastLineOf(block);
  const cursor = { line: document.starts[index]! + line, character: block.lines[line]!.trimEnd().length };
  return { ok: true, uri, edits: [], cursor };
}

/** What goes in: a day line, or "" below one that stands there; then phases, with room for the first entry. */
type NewLines = readonly [day: string, session: SessionPhases | undefined];

/**
 * Puts lines in below a block, in the place of the empty lines at its end; other days keep the distance they have in
 * the file.
 */
function insertedAfter(place: Pick<PlacedDay, "uri" | "document" | "index">, [day, session]: NewLines): CommandDone {
  const { uri, document, index } = place;
  const start = endOfContent(document, index);
  const isLast = index + 1 >= document.blocks.length;
  const from = start ?? startOfContent(document, index);
  const end = isLast ? endOfDocument(document) : startOfContent(document, index + 1);
  const gap = isSeparated(document) ? [""] : [];
  const above = start ? ["", ...(day === "" ? [] : gap)] : [];
  const opening = [...above, ...(day === "" ? [] : [day]), ...(session?.lines.slice(0, 1) ?? [])];
  const lines = [...opening, session?.indent ?? "", ...(session?.lines.slice(1) ?? [])];
  const below = isLast ? (lines.at(-1)!.trim() === "" ? [] : [""]) : [...gap, ""];
  return {
    ok: true,
    uri,
    edits: [{ range: { start: from, end }, newText: [...lines, ...below].join(lineEndOf(document)) }],
    cursor: { line: from.line + opening.length, character: session?.indent.length ?? 0 },
  };
}

/** Behind the last line that holds anything; undefined where a block, or all above the first, is empty. */
function endOfContent({ blocks, starts }: Document, index: number): Position | undefined {
  const block = blocks[index];
  const line = block ? lastLineOf(block) : 0;
  const text = block?.lines[line] ?? "";
  return /[^\s\uFEFF]/.test(text) ? { line: starts[index]! + line, character: text.trimEnd().length } : undefined;
}

/** The start of a block, or of the file, behind a byte order mark. */
function startOfContent({ blocks, starts }: Document, index: number): Position {
  const block = Math.max(0, index);
  return { line: starts[block]!, character: blocks[block]!.text.startsWith("\uFEFF") ? 1 : 0 };
}

function endOfDocument({ blocks, lineCount }: Document): Position {
  return { line: lineCount - 1, character: blocks.at(-1)!.lines.at(-1)!.length };
}

/** Whether an empty line stands between the last two days; as in most files, where there are no two. */
function isSeparated({ blocks }: Document): boolean {
  const before = blocks.findLast((block, i) => block.day && i < blocks.length - 1);
  return !before || before.lines.at(-1)!.trim() === "";
}

/** As the latest day line before has it: indented or not, the weekday in its words or left out. */
function dayLine(journal: Journal, { blocks }: Document, days: readonly PlacedDay[], today: DayNumber): string {
  const date = isoDate(today);
  const name = WEEKDAY_NAMES[weekday(today) - 1]!;
  const latest = days.filter((day) => day.date < today).reduce<PlacedDay | undefined>(later, undefined) ?? days[0];
  if (!latest) return `${date} ${name.slice(0, 3)}`;
  const block = blocks[latest.index]!;
  const text = block.lines[0]!;
  const { line } = journal.ownModel(block).day!;
  const lead = text.slice(0, line.start).replace("\uFEFF", "");
  const written = line.items.find(({ meaning }) => meaning.type === "weekday");
  if (!written) return lead + date;
  return (
    lead + date + text.slice(line.dateEnd, written.start) + writtenLike(text.slice(written.start, written.end), name)
  );
}

/** A weekday in full or in three letters, in lower case or with a full stop, as another one is written. */
function writtenLike(word: string, name: string): string {
  const letters = /day$/i.test(word) ? name : name.slice(0, 3) + (word.endsWith(".") ? "." : "");
  return word === word.toLowerCase() ? letters.toLowerCase() : letters;
}

function later(a: PlacedDay | undefined, b: PlacedDay): PlacedDay {
  return a && a.date > b.date ? a : b;
}
