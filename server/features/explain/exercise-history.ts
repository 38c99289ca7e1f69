import { recordsAt } from "../../history/attempts.ts";
import { movementOfRecord, patternOfRecord } from "../../history/exercise-name.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { playedEntry } from "../../history/played.ts";
import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import { placeKey } from "../../history/strand-key.ts";
import { type Exercise, latestFirst, latestOf, type Strand } from "../../history/strands.ts";
import type { Notation } from "../../history/trend-words.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { type Conventions, instrumentOf } from "../../journal/conventions.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { subjectKey } from "../../journal/subject-text.ts";

/** What a line practises, in the words of the records. */
interface Practised {
  /** `straight` where a scale names no pattern; null for titles. */
  readonly pattern: string | null;
  readonly instrument: string | null;
  readonly movement: string | null;
  readonly where: string | null;
  /** In which way, where the line says so. */
  readonly way?: Pick<AttemptRecord, "exerciseKey" | "strandKey">;
}

/** What the history has of the exercise on a line. */
export interface ExerciseHistory {
  /** The line's own; where it was not played like this yet, another one of the exercise. */
  readonly strand: Strand;
  readonly isOwn: boolean;
  /** The other ways in which the exercise is played, or the other places of a title. */
  readonly others: readonly Strand[];
  /** How the line writes its tempos, or the strand where the line has none. */
  readonly notation: Notation;
  /** The latest record of the strand from before the line, of another line. */
  readonly before?: AttemptRecord;
  /** The same of the other strands, where that of the line has none. */
  readonly otherwise?: AttemptRecord;
}

/** An entry, and where it stands. */
export interface EntryInFile {
  readonly journal: Journal;
  readonly uri: string;
  /** From 0, within the file. */
  readonly line: number;
  /** One subject of several, for that alone. */
  readonly entry: Entry;
  readonly today: DayNumber;
}

/** What the history has of the exercise that an entry with a subject practises; undefined where it has none. */
export function historyOfEntry({ journal, uri, line, entry, today }: EntryInFile): ExerciseHistory | undefined {
  const conventions = journal.conventions(uri);
  const instrument = entry.instrument ?? conventions.instrument;
  const practised = {
    pattern: patternOfRecord(entry),
    instrument: instrumentOf(instrument, conventions)?.id ?? instrument ?? null,
    movement: movementOfRecord(entry),
    where: entry.where?.text || null,
    way: wayMeant(entry, conventions),
  };
  const key = subjectKey(entry.subject!);
  const own = recordsAt(journal, uri, line).filter((record) => record.subjectKey === key);
  return exerciseHistory(exercisesCalled(journal, key), own, practised, today);
}

/** In which way an entry is meant, where it says how it is played; a title always says where. */
function wayMeant(entry: Entry, conventions: Conventions): Practised["way"] {
  const says = entry.source.items.some(({ meaning: { type } }) => type === "articulation" || type === "span");
  return says && entry.subject!.type !== "title" ? playedEntry(entry, conventions).attempts[0]?.manner : undefined;
}

/** Every exercise at one subject, the latest practised first. */
function exercisesCalled(journal: Journal, key: string): readonly Exercise[] {
  const { exercises } = journalHistory(journal);
  return [...exercises.values()].filter(({ subjectKey }) => subjectKey === key).sort(latestFirst);
}

/** The exercise that a line belongs to: that of its own records, or the one among these that is called alike. */
function exerciseHistory(
  exercises: readonly Exercise[],
  own: readonly AttemptRecord[],
  practised: Practised,
  today: DayNumber,
): ExerciseHistory | undefined {
  const first = own[0];
  const meant = first ?? practised.way;
  const played = meant && strandOfLine(exercises, meant);
  const strand = played ?? (first ? undefined : strandCalled(exercises, practised));
  if (!strand) return undefined;
  const isOwn = played !== undefined || practised.way === undefined;
  const { strands } = exercises.find((each) => each.strands.includes(strand))!;
  const others = strands.filter((each) => each !== strand);
  const isEarlier = (record: AttemptRecord): boolean =>
    record.day <= today && (!first || (inTimeOrder(record, first) < 0 && !isSameLine(record, first)));
  const before = latestOf([strand], isEarlier);
  const otherwise = before ? undefined : latestOf(others, isEarlier);
  const written = own.find(({ rate }) => rate !== null) ?? strand.records.findLast(({ rate }) => rate !== null);
  const notation = { noteValue: written?.noteValue, beat: written?.beat };
  return { strand, isOwn, others, before, otherwise, notation };
}

export function isSameLine(a: AttemptRecord, b: AttemptRecord): boolean {
  return a.block === b.block && a.line === b.line;
}

function strandOfLine(
  exercises: readonly Exercise[],
  { exerciseKey, strandKey }: NonNullable<Practised["way"]>,
): Strand | undefined {
  return exercises.find(({ key }) => key === exerciseKey)?.strands.find(({ key }) => key === strandKey);
}

function strandCalled(
  exercises: readonly Exercise[],
  { pattern, instrument, movement, where }: Practised,
): Strand | undefined {
  const alike = exercises.filter((each) => each.pattern === pattern);
  const exercise = alike.find((each) => each.instrument === instrument) ?? alike[0];
  return (
    exercise?.strands.find(
      (strand) => strand.title && strand.movement === movement && isSamePlace(strand.where, where),
    ) ?? exercise?.strands[0]
  );
}

function isSamePlace(a: string | null, b: string | null): boolean {
  return a === null || b === null ? a === b : placeKey(a) === placeKey(b);
}
