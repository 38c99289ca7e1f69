import { recordsOfBlock } from "../../history/attempts.ts";
import { type AttemptRecord, inTimeOrder, type Manner } from "../../history/record.ts";
import { beatName, noteValueName } from "../../history/value-names.ts";
import { type DayNumber, isoDate, weekLabel } from "../../journal/calendar.ts";
import { entryOfSubject } from "../../journal/each-subject.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Attempt, BlockModel, Entry } from "../../journal/model.ts";
import { subjectText } from "../../journal/subject-text.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { QUARTER } from "../../music/notes/note-value.ts";
import type { Block } from "../../syntax/document/document.ts";
import { type AttemptsAsked, isDayAsked, type NamedJournal, namedJournals, pathOf } from "../attempts-asked.ts";
import type { NamedFile, ReadJournals } from "../journals.ts";
import { isAttemptAt, subjectAsked } from "../subject-asked.ts";
import type { Cell } from "./csv.ts";
import { EXPORT_COLUMN_NAMES, type ExportColumn } from "./export-columns.ts";

export type ExportRow = Readonly<Record<ExportColumn, Cell>>;

/** An attempt as the history knows it, and what the line that it comes from says besides. */
export interface WrittenAttempt {
  readonly record: AttemptRecord;
  /** Of several subjects on its line, for that of the attempt. */
  readonly entry: Entry;
  readonly attempt: Attempt;
  readonly path: string;
  /** In the file, from 0. */
  readonly line: number;
  readonly of: Owner;
}

/** Whose a row is. */
export interface Owner {
  readonly journal: string;
  readonly player: string | null;
}

export function ownerOf(named: NamedJournal, cwd: string): Owner {
  return { journal: pathOf(named, cwd), player: named.player ?? null };
}

/**
 * The attempts that are asked for, from the very day of `since` up to that of `until`; one journal after the other,
 * oldest first. One by one, as what their lines say is many times the text.
 */
export function* writtenAttempts(
  read: ReadJournals,
  asked: AttemptsAsked,
  cwd: string,
): Generator<WrittenAttempt, void> {
  for (const named of namedJournals(read)) yield* attemptsIn(named, asked, ownerOf(named, cwd));
}

function* attemptsIn(named: NamedJournal, asked: AttemptsAsked, of: Owner): Generator<WrittenAttempt, void> {
  const { journal } = named;
  const { records, places } = recordsAsked(named, asked);
  /** Of the day that is told: one day may stand in several places. */
  const open = new Map<Block, (record: AttemptRecord) => WrittenAttempt>();
  let day: DayNumber | undefined;
  for (const record of records) {
    const { block } = record;
    if (record.day !== day) open.clear();
    day = record.day;
    const written = open.get(block) ?? writtenIn({ ...places.get(block)!, of, model: journal.readOnce(block) });
    open.set(block, written);
    yield written(record);
  }
}

/** The records that are asked for, the oldest first, and where each of their blocks is. */
function recordsAsked({ journal, files }: NamedJournal, asked: AttemptsAsked) {
  const at = asked.subject === undefined ? undefined : subjectAsked(asked.subject, journal);
  const records: AttemptRecord[] = [];
  const places = new Map<Block, Pick<ReadBlock, "file" | "start">>();
  for (const file of files) {
    const { blocks, starts } = journal.files.get(file.uri)!;
    for (const [i, block] of blocks.entries()) {
      for (const record of recordsOfBlock(journal, file.uri, block)) {
        if (!isAttemptAt(at, record) || !isDayAsked(record.day, asked)) continue;
        records.push(record);
        if (!places.has(block)) places.set(block, { file, start: starts[i]! });
      }
    }
  }
  return { records: records.sort(inTimeOrder), places };
}

/** A block as it was read, and where it is. */
export interface ReadBlock {
  readonly file: NamedFile;
  readonly of: Owner;
  /** The line that it begins on, from 0. */
  readonly start: number;
  readonly model: BlockModel;
}

/** The attempts of a block, in their order. */
export function attemptsInBlock(journal: Journal, block: Block, about: ReadBlock): WrittenAttempt[] {
  return recordsOfBlock(journal, about.file.uri, block).map(writtenIn(about));
}

/** Finds what the lines of a block say of each of its records. */
function writtenIn({ file: { path }, of, start, model }: ReadBlock): (record: AttemptRecord) => WrittenAttempt {
  const entries = new Map(model.entries.map((entry) => [entry.place.line, entry]));
  return (record) => {
    const written = entries.get(record.line)!;
    const entry = entryOfSubject(written, record.subjectKey);
    return { record, entry, attempt: written.attempts[record.attempt]!, path, line: start + record.line, of };
  };
}

/**
 * Figures are to a millionth: a third of ten minutes is no endless figure, and three of them still make ten.
 *
 * @param names what notes are called in subjects; where not given, what the journal calls them
 */
export function rowOf({ record, entry, attempt, path, line, of }: WrittenAttempt, names?: NoteNames): ExportRow {
  return inColumns(EXPORT_COLUMN_NAMES, {
    ...playCells({ entry, manner: record, attempt, rate: record.rate }, names),
    date: isoDate(record.day),
    week: weekLabel(record.day),
    order: record.order + 1,
    file: path,
    line: line + 1,
    phase: entry.phase ?? null,
    reached: record.reached,
    tries: record.count,
    minutes: toMillionth(record.minutes) || null,
    about: record.about,
    ...of,
  });
}

/** A row in the order of its columns; where nothing is known, null. */
export function inColumns<Column extends string>(
  columns: readonly Column[],
  cells: Readonly<Partial<Record<Column, Cell>>>,
): Readonly<Record<Column, Cell>> {
  return Object.fromEntries(columns.map((column) => [column, cells[column] ?? null])) as Record<Column, Cell>;
}

/** An attempt that was made, or is asked for. */
export interface Play {
  /** Of several subjects on its line, for that of the attempt. */
  readonly entry: Entry;
  readonly manner: Manner;
  readonly attempt: Attempt;
  readonly rate: number | null;
}

/** What is played, how and how fast: the same for an attempt and for an aim. */
export function playCells(
  { entry, manner, attempt, rate }: Play,
  names?: NoteNames,
): Partial<Record<ExportColumn, Cell>> {
  const { tempo, conditions } = attempt;
  const isTitle = manner.unit === "beats";
  return {
    instrument: manner.instrument,
    subject: names && entry.subject ? subjectText(entry.subject, names) : manner.subject,
    pattern: manner.pattern,
    movement: manner.movement,
    place: manner.where,
    reach: manner.reach,
    tonguing: manner.tonguing,
    evenness: manner.evenness,
    manner: conditions.manner.join(", ") || null,
    note_value: !isTitle && manner.noteValue ? noteValueName(manner.noteValue) : null,
    beat: tempo ? beatName(tempo.beat ?? (isTitle ? manner.beat : undefined) ?? QUARTER) : null,
    tempo: tempo?.bpm ?? null,
    tempo_low: tempo?.low ?? null,
    rate: rate === null ? null : toMillionth(rate),
    unit: manner.unit,
    outcome: attempt.outcomes.join(" ") || null,
    tries: attempt.tries.count,
    tries_with_outcome: attempt.outcomes.length > 0 ? attempt.tries.got : null,
  };
}

export function toMillionth(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}
