import { entryOf } from "../../history/entry-of-record.ts";
import type { HistoryIndex } from "../../history/history-index.ts";
import { playedEntry } from "../../history/played.ts";
import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import { declaredLines } from "../../journal/declared-lines.ts";
import { hasSeveral } from "../../journal/each-subject.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { readEntry } from "../../journal/read-entry.ts";
import { subjectKey } from "../../journal/subject-text.ts";
import { type Location, rangeOn } from "./named.ts";
import { type ExerciseThere, entryOfWork } from "./under-cursor.ts";

/** The records of an exercise, or of one way of playing it. */
export function recordsOf(history: HistoryIndex, { exerciseKey, strandKey }: ExerciseThere): readonly AttemptRecord[] {
  const strands = history.exercises.get(exerciseKey)?.strands ?? [];
  return strands.filter(({ key }) => strandKey === undefined || key === strandKey).flatMap(({ records }) => records);
}

/** The line on which something was first played. */
export function firstRecord(records: readonly AttemptRecord[]): AttemptRecord | undefined {
  return records.reduce<AttemptRecord | undefined>(
    (first, each) => (first === undefined || inTimeOrder(each, first) < 0 ? each : first),
    undefined,
  );
}

/** Aims at an exercise, then what is set of it: where each says what is to be played. */
export function workOnExercise(journal: Journal, { exerciseKey }: ExerciseThere): readonly Location[] {
  const found = declaredLines(journal).flatMap(({ declared, uri, block, line }) => {
    const source = entryOfWork(declared);
    if (!source) return [];
    const entry = readEntry(source, line, journal.vocabulary);
    const keys = playedEntry(entry, journal.conventions(uri)).attempts.map(({ manner }) => manner.exerciseKey);
    if (!keys.includes(exerciseKey)) return [];
    const document = journal.files.get(uri)!;
    const first = document.starts[document.blocks.indexOf(block)]!;
    return [{ type: declared.type, uri, range: rangeOn(first + line, source.subject ?? source) }];
  });
  return [...found.filter(({ type }) => type === "aim"), ...found.filter(({ type }) => type !== "aim")].map(
    ({ uri, range }) => ({ uri, range }),
  );
}

/** Where a record says what is played: the words of its subject, or those that stand for the line above. */
export function placeOfRecord(journal: Journal, record: AttemptRecord, strand: boolean): Location | undefined {
  const document = journal.files.get(record.uri);
  const index = document ? document.blocks.indexOf(record.block) : -1;
  if (index < 0) return undefined;
  const line = document!.starts[index]! + record.line;
  if (strand && record.rate !== null) return { uri: record.uri, range: rangeOn(line, record) };
  const entry = entryOf(journal, record);
  return { uri: record.uri, range: rangeOn(line, entry ? subjectOf(entry, record.subjectKey) : record) };
}

/** The columns of one subject of an entry. */
export function subjectOf({ source, place }: Entry, key: string): { readonly start: number; readonly end: number } {
  const { subject, same } = source;
  if (!subject) return place;
  const { start, end, meaning } = subject;
  if (meaning.type !== "faulty subject" && hasSeveral(meaning) && meaning.at && !same) {
    const own = meaning.at[meaning.subjects.findIndex((each) => subjectKey(each) === key)];
    if (own) return { start: start + own.start, end: start + own.end };
  }
  return { start, end };
}
