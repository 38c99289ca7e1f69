import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import { placeKey } from "../../history/strand-key.ts";
import { type Exercise, latestOf, type Strand } from "../../history/strands.ts";
import type { Notation } from "../../history/trend-words.ts";
import type { DayNumber } from "../../journal/calendar.ts";

/** What a line practises, in the words of the records. */
export interface Practised {
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

/** The exercise that a line belongs to: that of its own records, or the one among these that is called alike. */
export function exerciseHistory(
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
