import { atOnce } from "../journal/at-once.ts";
import { type DayNumber, weekIndex } from "../journal/calendar.ts";
import type { Tonguing } from "../journal/model.ts";
import { type AttemptRecord, compareText, type Evenness, inTimeOrder, type ReachClass } from "./record.ts";

/**
 * Attempts that may fairly be compared: one instrument, subject, pattern, reach, tonguing and evenness; for a title
 * one instrument, title, movement and place. Which of the two it is, `title` says; what does not apply is null.
 */
export interface Strand {
  readonly key: string;
  readonly title: boolean;
  readonly reach: ReachClass | null;
  readonly tonguing: Tonguing | null;
  readonly evenness: Evenness | null;
  readonly movement: string | null;
  readonly where: string | null;
  /** Oldest first; never empty. Those before `since` too, as a week is judged by the eight before it. */
  readonly records: readonly AttemptRecord[];
  /** Different ISO weeks with a record, from the week of `since` on. */
  readonly weeksPractised: number;
}

/** The strands that share instrument, subject and pattern. */
export interface Exercise {
  readonly key: string;
  readonly instrument: string | null;
  /** As the latest record has it. */
  readonly subject: string;
  readonly subjectKey: string;
  readonly pattern: string | null;
  readonly lastDay: DayNumber;
  /** Never empty. The first is the one to show: most weeks practised, then the latest. */
  readonly strands: readonly Strand[];
}

/** Which records to look at. */
export interface Choice {
  /** Leaves out strands that were last practised before this day. */
  readonly since?: DayNumber;
  /** Leaves out what was practised after this day, as if it were not written yet. */
  readonly until?: DayNumber;
}

/** Groups records into exercises, the latest practised first, then by subject. The records may come in any order. */
export function exercisesOf(records: readonly AttemptRecord[], choice: Choice = {}): Exercise[] {
  return atOnce(exercisesInSteps(records, choice));
}

/** So many records are grouped, or put in order, at one step. */
const RECORDS_A_STEP = 400;

/** The same, a few records at each step. */
export function* exercisesInSteps(records: readonly AttemptRecord[], choice: Choice = {}): Generator<void, Exercise[]> {
  const { since = Number.NEGATIVE_INFINITY, until = Number.POSITIVE_INFINITY } = choice;
  const groups = new Map<string, AttemptRecord[]>();
  for (let from = 0; from < records.length; from += RECORDS_A_STEP) {
    group(groups, records.slice(from, from + RECORDS_A_STEP), "strandKey");
    yield;
  }
  const exercises = new Map<string, Strand[]>();
  let ordered = 0;
  for (const all of groups.values()) {
    const group = all.every(({ day }) => day <= until) ? all : all.filter(({ day }) => day <= until);
    if (group.length === 0) continue;
    ordered += group.length;
    if (ordered > RECORDS_A_STEP) {
      ordered = 0;
      yield;
    }
    if (!isInOrder(group)) group.sort(inTimeOrder);
    if (group.at(-1)!.day < since) continue;
    const { exerciseKey } = group[0]!;
    const strand = strandOf(group, since);
    const strands = exercises.get(exerciseKey);
    if (strands) strands.push(strand);
    else exercises.set(exerciseKey, [strand]);
  }
  return Array.from(exercises.values(), exerciseOf).sort(latestFirst);
}

/** Whether each record is of a later day than the one before, or stands behind it in one day: so most come. */
function isInOrder(records: readonly AttemptRecord[]): boolean {
  for (let i = 1; i < records.length; i++) {
    const [before, record] = [records[i - 1]!, records[i]!];
    if (before.day > record.day || (before.day === record.day && before.order >= record.order)) return false;
  }
  return true;
}

/** Records that have the same strand, or exercise. */
export function grouped(
  records: readonly AttemptRecord[],
  key: "exerciseKey" | "strandKey",
): Map<string, AttemptRecord[]> {
  const groups = new Map<string, AttemptRecord[]>();
  group(groups, records, key);
  return groups;
}

function group(
  groups: Map<string, AttemptRecord[]>,
  records: readonly AttemptRecord[],
  key: "exerciseKey" | "strandKey",
): void {
  for (const record of records) {
    const own = record[key];
    const known = groups.get(own);
    if (known) known.push(record);
    else groups.set(own, [record]);
  }
}

/** The latest record of some strands, of those that fit; undefined where none does. */
export function latestOf(
  strands: readonly Pick<Strand, "records">[],
  fits: (record: AttemptRecord) => boolean = () => true,
): AttemptRecord | undefined {
  return strands
    .flatMap(({ records }) => records.findLast(fits) ?? [])
    .reduce<AttemptRecord | undefined>((a, b) => (a && inTimeOrder(a, b) > 0 ? a : b), undefined);
}

/** `octave, single, even`; for a title its movement and place, or `whole piece`. */
export function strandName(strand: Strand): string {
  const parts = strand.title ? [strand.movement, strand.where] : [strand.reach, strand.tonguing, strand.evenness];
  return parts.filter((part) => part !== null).join(", ") || "whole piece";
}

/** The exercise that strands of one make; at least one. */
export function exerciseOf(strands: readonly Strand[]): Exercise {
  const last = latestOf(strands)!;
  return {
    key: last.exerciseKey,
    instrument: last.instrument,
    subject: last.subject,
    subjectKey: last.subjectKey,
    pattern: last.pattern,
    lastDay: last.day,
    strands: [...strands].sort(mostWeeksFirst),
  };
}

/** The strand that records of one make, oldest first; at least one. */
export function strandOf(records: readonly AttemptRecord[], since: DayNumber = Number.NEGATIVE_INFINITY): Strand {
  const last = records.at(-1)!;
  const title = last.unit === "beats"; // only titles are counted in beats
  return {
    key: last.strandKey,
    title,
    reach: title ? null : last.reach,
    tonguing: title ? null : last.tonguing,
    evenness: title ? null : last.evenness,
    movement: title ? last.movement : null,
    where: title ? last.where : null,
    records,
    weeksPractised: countWeeks(records, since),
  };
}

/** A strand up to a day: what is dated ahead counts once its day has come. Undefined where all of it lies ahead. */
export function playedUpTo(strand: Strand, today: DayNumber): Strand | undefined {
  const { records } = strand;
  if (records.at(-1)!.day <= today) return strand;
  const played = records.filter(({ day }) => day <= today);
  return played.length > 0 ? strandOf(played) : undefined;
}

function countWeeks(inOrder: readonly AttemptRecord[], since: DayNumber): number {
  const first = weekIndex(since);
  let count = 0;
  let previous = Number.NaN;
  for (const record of inOrder) {
    const week = weekIndex(record.day);
    if (week < first || week === previous) continue;
    previous = week;
    count++;
  }
  return count;
}

function mostWeeksFirst(a: Strand, b: Strand): number {
  return (
    b.weeksPractised - a.weeksPractised ||
    inTimeOrder(b.records.at(-1)!, a.records.at(-1)!) ||
    compareText(a.key, b.key)
  );
}

export function latestFirst(a: Exercise, b: Exercise): number {
  return b.lastDay - a.lastDay || compareText(a.subject, b.subject) || compareText(a.key, b.key);
}
