import { sinceLately } from "../history/journal-facts.ts";
import { type AttemptRecord, inTimeOrder } from "../history/record.ts";
import { type Standing, standingOf } from "../history/start-tempo.ts";
import type { Exercise, Strand } from "../history/strands.ts";
import { BEGIN_AT, EXERCISES_WITHIN } from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import type { PlanBasis } from "./plan-basis.ts";

/** Where an exercise is on the morning of a day. What is played to warm up is no turn at it. */
export interface ExerciseState {
  readonly exercise: Exercise;
  /** As it was played last, but for an uneven rhythm: that is a change for a day. */
  readonly strand: Strand;
  /** Its latest record before the day, as it is to be written. */
  readonly latest: AttemptRecord;
  /** The latest of them that says how it went; undefined where none does. */
  readonly noted?: AttemptRecord;
  readonly last: DayNumber;
  /** On how many days it was practised. */
  readonly days: number;
  readonly standing: Standing;
}

/** Looks up, once each, where an exercise is; undefined where it was not played before the day. */
export type ExerciseStates = (exercise: Exercise) => ExerciseState | undefined;

export function exerciseStates(basis: PlanBasis): ExerciseStates {
  const known = new Map<Exercise, ExerciseState | undefined>();
  return (exercise) => {
    if (!known.has(exercise)) known.set(exercise, stateOf(basis, exercise));
    return known.get(exercise);
  };
}

function stateOf(basis: PlanBasis, exercise: Exercise): ExerciseState | undefined {
  const { journal, day } = basis;
  const isTurn = (record: AttemptRecord): boolean => record.day < day && !isWarmUp(record);
  const turns = exercise.strands.flatMap((strand) => {
    const latest = strand.records.findLast(isTurn);
    return latest ? [{ strand, latest }] : [];
  });
  turns.sort((a, b) => inTimeOrder(b.latest, a.latest));
  const [last] = turns;
  if (!last) return undefined;
  const isEven = ({ latest }: typeof last): boolean =>
    latest.evenness === "even" && latest.day >= day - EXERCISES_WITHIN;
  const { strand, latest } = turns.find(isEven) ?? last;
  const noted = strand.records.findLast((record) => record.day < day && record.reached !== null);
  let days: number | undefined; // few are asked for it, and it looks at every day of the exercise
  return {
    exercise,
    strand,
    latest,
    ...(noted ? { noted } : {}),
    last: last.latest.day,
    get days() {
      days ??= new Set(turns.flatMap(({ strand: { records } }) => records.filter(isTurn).map((each) => each.day))).size;
      return days;
    },
    standing: sinceTrouble(basis, strand.records, standingOf(strand.records, day, sinceLately(journal, strand, day))),
  };
}

/**
 * What was steady before a break, or before something hurt, is not known to be so yet: since then it is at most the
 * best that was reached, and until something was, a good deal less.
 */
function sinceTrouble(
  { day, hurt, backSince }: PlanBasis,
  records: readonly AttemptRecord[],
  standing: Standing,
): Standing {
  const from = Math.max(backSince ?? Number.NEGATIVE_INFINITY, (hurt.last ?? Number.NEGATIVE_INFINITY) + 1);
  if (standing.steady === null || !Number.isFinite(from) || from > day) return standing;
  const reached = records.flatMap(({ day: on, rate, reached: is }) =>
    on >= from && on < day && is === true && rate !== null ? [rate] : [],
  );
  const most = reached.length > 0 ? Math.max(...reached) : standing.steady * BEGIN_AT;
  const steady = Math.min(standing.steady, most);
  return { ...standing, steady, sure: steady };
}

function isWarmUp({ phase }: AttemptRecord): boolean {
  return phase === "warm-up";
}

/** Whether it goes so well that it may be varied: it has a steady tempo, and the last attempt was reached. */
export function isFluent({ standing, noted }: ExerciseState): boolean {
  return standing.steady !== null && noted?.reached === true;
}
