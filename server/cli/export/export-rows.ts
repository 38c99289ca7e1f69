import { recordsOfBlock } from "../../history/attempts.ts";
import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import { beatName, noteValueName } from "../../history/value-names.ts";
import { isoDate, weekLabel } from "../../journal/calendar.ts";
import { entryOfSubject } from "../../journal/each-subject.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Attempt, Entry } from "../../journal/model.ts";
import { subjectText } from "../../journal/subject-text.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { QUARTER } from "../../music/notes/note-value.ts";
import { type AttemptsAsked, type NamedJournal, namedJournals } from "../attempts-asked.ts";
import type { NamedFile, ReadJournals } from "../journals.ts";
import { isAttemptAt, subjectAsked } from "../subject-asked.ts";
import type { Cell } from "./csv.ts";
import type { ExportColumn } from "./export-columns.ts";

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
}

/** The attempts that are asked for, from the very day of `since` on; one journal after the other, oldest first. */
export function writtenAttempts(read: ReadJournals, asked: AttemptsAsked): WrittenAttempt[] {
  return namedJournals(read).flatMap((named) => attemptsIn(named, asked));
}

function attemptsIn({ journal, files }: NamedJournal, { since, subject }: AttemptsAsked): WrittenAttempt[] {
  const at = subject === undefined ? undefined : subjectAsked(subject, journal);
  return files
    .flatMap((file) => attemptsInFile(journal, file))
    .filter(({ record }) => isAttemptAt(at, record) && (since === undefined || record.day >= since))
    .sort((a, b) => inTimeOrder(a.record, b.record));
}

function attemptsInFile(journal: Journal, { path, uri }: NamedFile): WrittenAttempt[] {
  const { blocks, starts } = journal.files.get(uri)!;
  return blocks.flatMap((block, i) => {
    const records = recordsOfBlock(journal, uri, block);
    if (records.length === 0) return [];
    const entries = new Map(journal.readOnce(block).entries.map((entry) => [entry.place.line, entry]));
    return records.map((record): WrittenAttempt => {
      const written = entries.get(record.line)!;
      const entry = entryOfSubject(written, record.subjectKey);
      return { record, entry, attempt: written.attempts[record.attempt]!, path, line: starts[i]! + record.line };
    });
  });
}

/**
 * Figures are to a millionth: a third of ten minutes is no endless figure, and three of them still make ten.
 *
 * @param names what notes are called in subjects; where not given, what the journal calls them
 */
export function rowOf({ record, entry, attempt, path, line }: WrittenAttempt, names?: NoteNames): ExportRow {
  const { tempo, conditions } = attempt;
  const isTitle = record.unit === "beats";
  return {
    date: isoDate(record.day),
    week: weekLabel(record.day),
    order: record.order + 1,
    file: path,
    line: line + 1,
    phase: entry.phase ?? null,
    instrument: record.instrument,
    subject: names && entry.subject ? subjectText(entry.subject, names) : record.subject,
    pattern: record.pattern,
    movement: record.movement,
    place: record.where,
    reach: record.reach,
    tonguing: record.tonguing,
    evenness: record.evenness,
    manner: conditions.manner.join(", ") || null,
    note_value: !isTitle && record.noteValue ? noteValueName(record.noteValue) : null,
    beat: tempo ? beatName(tempo.beat ?? (isTitle ? record.beat : undefined) ?? QUARTER) : null,
    tempo: tempo?.bpm ?? null,
    tempo_low: tempo?.low ?? null,
    rate: record.rate === null ? null : toMillionth(record.rate),
    unit: record.unit,
    outcome: attempt.outcomes.join(" ") || null,
    reached: record.reached,
    tries: record.count,
    tries_with_outcome: attempt.outcomes.length > 0 ? attempt.tries.got : null,
    minutes: toMillionth(record.minutes) || null,
    about: record.about,
  };
}

function toMillionth(value: number): number {
  return Math.round(value * 1e6) / 1e6;
}
