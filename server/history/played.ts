import { type Conventions, instrumentOf } from "../journal/conventions.ts";
import { eachSubject } from "../journal/each-subject.ts";
import type { Attempt, Entry } from "../journal/model.ts";
import { entryCount } from "../journal/read-entry.ts";
import { subjectKey, subjectName } from "../journal/subject-text.ts";
import { movementOfRecord, patternOfRecord } from "./exercise-name.ts";
import { countingOf, goalBeat, rateBy } from "./rate.ts";
import type { Manner } from "./record.ts";
import { reachClassOf } from "./span-class.ts";
import { exerciseKeyOf, strandKeyOf } from "./strand-key.ts";

/** One attempt, whatever day it was made on. */
export interface PlayedAttempt {
  readonly manner: Manner;
  readonly rate: number | null;
  readonly reached: boolean | null;
  /** How many tries it stands for. */
  readonly count: number;
  /** In how many of them it was reached. */
  readonly got: number;
  /** Which of the entry's subjects (`eachSubject`) it is at, and which of its attempts it is. */
  readonly subject: number;
  readonly attempt: number;
}

/** What an entry says for the history, whatever day it stands in. */
export interface PlayedEntry {
  /**
   * Those at one subject behind those at another. None where it is no exercise: an activity, or free practice, which
   * take their share of the time all the same.
   */
  readonly attempts: readonly PlayedAttempt[];
  /** As stated on the line. */
  readonly minutes?: number;
  /** It counts even where it was planned. */
  readonly counted: boolean;
}

export function playedEntry(entry: Entry, conventions: Conventions): PlayedEntry {
  const { counted, minutes } = entryCount(entry.source);
  const attempts = isExercise(entry) ? attemptsAtEach(entry, conventions) : [];
  return { attempts, counted, ...(minutes === undefined ? {} : { minutes }) };
}

/** Whether it is practice of something: an activity, or free practice, takes its share of the time alone. */
export function isExercise({ subject }: Entry): boolean {
  return subject !== undefined && subject.type !== "activity" && subject.type !== "free";
}

function attemptsAtEach(entry: Entry, conventions: Conventions): readonly PlayedAttempt[] {
  return eachSubject(entry).flatMap(({ entry: one, attempts }, subject) => {
    const told = toldBy(one, conventions);
    return one.attempts.map((attempt, i) => ({
      ...playedAttempt(one, attempt, conventions, told),
      subject,
      attempt: attempts[i]!,
    }));
  });
}

function playedAttempt(
  entry: Entry,
  attempt: Attempt,
  conventions: Conventions,
  told: Told,
): Omit<PlayedAttempt, "subject" | "attempt"> {
  const { tempo, reached, tries, got } = attempt;
  const counting = tempo && countingOf(entry, attempt.conditions, tempo, conventions);
  return {
    manner: mannerOf(entry, attempt, conventions, told),
    rate: tempo && counting ? rateBy(counting, tempo.bpm) : null,
    reached,
    count: tries.count,
    got,
  };
}

/** What an entry says of all its attempts. */
export type Told = Pick<Manner, "instrument" | "subject" | "subjectKey" | "pattern" | "movement" | "where" | "unit">;

export function toldBy(entry: Entry, conventions: Conventions): Told {
  const subject = entry.subject!;
  const title = subject.type === "title";
  return {
    instrument: nameOfInstrument(entry, conventions),
    subject: subjectName(subject, conventions.names),
    subjectKey: subjectKey(subject),
    pattern: patternOfRecord(entry),
    movement: title ? movementOfRecord(entry) : null,
    where: title ? entry.where?.text || null : null,
    unit: title ? "beats" : "notes",
  };
}

/**
 * What was played in one attempt, and in which way.
 *
 * @param told, reach what is the same for many attempts, where it is known
 */
export function mannerOf(
  entry: Entry,
  { conditions, tempo }: Pick<Attempt, "conditions" | "tempo">,
  conventions: Conventions,
  told = toldBy(entry, conventions),
  reach = told.unit === "beats" ? null : reachClassOf(entry, conditions, conventions),
): Manner {
  const title = told.unit === "beats";
  const manner = {
    ...told,
    reach,
    tonguing: conditions.articulation?.tonguing ?? conventions.usualTonguing,
    evenness: conditions.rhythm && !conditions.rhythm.even ? ("uneven" as const) : ("even" as const),
    rhythm: conditions.rhythm?.even === false ? conditions.rhythm.text : undefined,
    direction: conditions.direction,
    byHeart: conditions.manner.includes(BY_HEART) || undefined,
  };
  return {
    ...manner,
    noteValue: title ? undefined : (conditions.noteValue ?? conventions.noteValue),
    beat: title ? goalBeat(entry, conventions) : tempo?.beat,
    exerciseKey: exerciseKeyOf(manner),
    strandKey: strandKeyOf(manner),
  };
}

/** As the table of terms has it (`server/syntax/words/terms.ts`). */
const BY_HEART = "by heart";

function nameOfInstrument(entry: Entry, conventions: Conventions): string | null {
  const id = entry.instrument ?? conventions.instrument;
  return instrumentOf(id, conventions)?.id ?? id ?? null;
}
