import type { DayNumber } from "../journal/calendar.ts";
import type { Conventions } from "../journal/conventions.ts";
import { USUAL_DAY_LINE, usualDay } from "../journal/day-of-block.ts";
import { DaySkeleton } from "../journal/day-skeleton.ts";
import type { Journal } from "../journal/journal.ts";
import { type Block, blockIndexAt } from "../syntax/document/document.ts";
import { DayAttempt, DayTime } from "./day-attempt.ts";
import type { TimedDay } from "./minutes.ts";
import { type PlayedEntry, playedEntry } from "./played.ts";
import { PlayedLines } from "./played-lines.ts";
import type { AttemptRecord } from "./record.ts";

/** Every attempt of a journal that counts: planned lines, days without a date, and activities do not. */
export function attemptsOfJournal(journal: Journal): readonly AttemptRecord[] {
  const records: AttemptRecord[] = [];
  for (const uri of journal.addresses) {
    for (const block of journal.files.get(uri)!.blocks)
      for (const record of recordsOfBlock(journal, uri, block)) records.push(record);
  }
  return records;
}

/** The records of the entry on one line of a file; none where no entry that counts stands there. */
export function recordsAt(journal: Journal, uri: string, line: number): readonly AttemptRecord[] {
  const document = journal.files.get(uri);
  if (!document) return NONE;
  const index = blockIndexAt(document, line);
  const below = line - document.starts[index]!;
  return recordsOfBlock(journal, uri, document.blocks[index]!).filter((record) => record.line === below);
}

/** Where an attempt stands in its file now, from 0; undefined where it stands there no more. */
export function lineOf(journal: Journal, { uri, block, line }: AttemptRecord): number | undefined {
  const document = journal.files.get(uri);
  const index = document ? document.blocks.indexOf(block) : -1;
  return index < 0 ? undefined : document!.starts[index]! + line;
}

interface Kept {
  conventions?: Conventions;
  uri?: string;
  records: readonly AttemptRecord[];
}

const NONE: readonly AttemptRecord[] = [];

/** The same array while the block, and what it is read by, stay the same. */
export function recordsOfBlock(journal: Journal, uri: string, block: Block): readonly AttemptRecord[] {
  if (!block.day) return NONE;
  const conventions = journal.conventions(uri);
  const kept = journal.memo.of(block, "attempts", (): Kept => ({ records: NONE }));
  if (kept.conventions === conventions && kept.uri === uri) return kept.records;
  const lines = journal.memo.of(conventions, "played lines", () => new PlayedLines(journal.partContext, conventions));
  const day = playedDay(block, lines) ?? readDay(journal, block, conventions);
  kept.records = day ? dayRecords(day, uri, block) : NONE;
  kept.conventions = conventions;
  kept.uri = uri;
  return kept.records;
}

/** A day's entries, each with its line and what it says, and the frames that bear on their time. */
interface PlayedDay extends TimedDay {
  readonly date: DayNumber;
  readonly entries: readonly DayEntry[];
}

interface DayEntry {
  readonly line: number;
  readonly entry: PlayedEntry;
  readonly minutes?: number;
  readonly planned: boolean;
  readonly stretch: number;
}

const USUAL = new RegExp(`^${USUAL_DAY_LINE}$`);

/** A day whose line says its date and its minutes, and which holds entries and phases; undefined for any other. */
function playedDay(block: Block, played: PlayedLines): PlayedDay | undefined {
  // Cut for this once: what a block keeps of its lines would stay for as long as the journal is open.
  const lines = block.text.includes("\r") ? block.lines : block.text.split("\n");
  const day = USUAL.test(lines[0]!) ? usualDay(lines[0]!) : undefined;
  if (!day) return undefined;
  const skeleton = new DaySkeleton();
  skeleton.openDay(0, day.minutes, false, false);
  const entries: DayEntry[] = [];
  for (let line = 1; line < lines.length; line++) {
    const said = played.read(lines[line]!);
    if (!said) return undefined;
    if (said.type === "phase") skeleton.openPhase(line, said.phase, said.minutes, false);
    if (said.type !== "entry") continue;
    const { entry } = said;
    const planned = skeleton.addEntry(line, entry);
    entries.push({ line, entry, minutes: entry.minutes, planned, stretch: skeleton.phases.length - 1 });
  }
  return { date: day.date, entries, sittings: skeleton.sittings, phases: skeleton.phases };
}

/** Any day, read line by line. */
function readDay(journal: Journal, block: Block, conventions: Conventions): PlayedDay | undefined {
  const { day, entries, sittings, phases } = journal.readOnce(block);
  if (day?.date === undefined) return undefined;
  return {
    date: day.date,
    sittings,
    phases,
    entries: entries.map((entry) => ({
      line: entry.place.line,
      entry: playedEntry(entry, conventions),
      minutes: entry.minutes,
      planned: entry.planned,
      stretch: entry.stretch,
    })),
  };
}

function dayRecords(day: PlayedDay, uri: string, block: Block): readonly AttemptRecord[] {
  const records: AttemptRecord[] = [];
  const time = new DayTime(day);
  const { date } = day;
  for (let i = 0; i < day.entries.length; i++) {
    const { line, entry, planned } = day.entries[i]!;
    if (planned || entry.attempts.length === 0) continue;
    const place = { uri, block, line, time, entry: i };
    for (const attempt of entry.attempts) records.push(new DayAttempt(date, records.length, attempt, place));
  }
  return records;
}
