import { exerciseInWords } from "../history/exercise-words.ts";
import { compareText } from "../history/record.ts";
import type { Exercise } from "../history/strands.ts";
import {
  AIM_WITHIN,
  EXERCISES_WITHIN,
  KEY_OF_A_PIECE_WITHIN,
  LONG_AGO,
  NEIGHBOUR_WITHIN,
  TURN,
} from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { type AimCandidate, aimLine, aimsOpen } from "./aims-open.ts";
import type { Candidate } from "./candidate.ts";
import { fluencyLine, groundworkLine } from "./exercise-lines.ts";
import { type ExerciseState, type ExerciseStates, isFluent } from "./exercise-states.ts";
import { fingerChangeCandidates } from "./finger-change-lines.ts";
import { type KeyCandidate, keyLine, keysOpen } from "./keys-open.ts";
import type { LineDraft, PlanRule } from "./plan.ts";
import type { PlanBasis } from "./plan-basis.ts";
import { planTexts } from "./plan-texts.ts";
import { aimReason, keyReason, leftAloneReason } from "./plan-words.ts";

/** A candidate with what its rule orders it by. */
interface Ranked {
  readonly rule: PlanRule;
  readonly key: string;
  readonly text: string;
  /** The last day it was played; undefined where it was not yet. */
  readonly last?: DayNumber;
  /** Its own day ahead. */
  readonly by?: DayNumber;
  readonly reasons: readonly string[];
  readonly state?: ExerciseState;
  readonly most?: number;
  /** Where it was not played yet: how it is begun. */
  readonly begin?: (place: number) => LineDraft | undefined;
}

/**
 * What may be practised slowly or varied, the first to be considered first: rules 2 to 8 (the plan's reference,
 * syntaxes/PLAN.md). Exercises take turns: who was left alone longest comes first.
 */
export function* candidatesOf(basis: PlanBasis, states: ExerciseStates): Generator<Candidate> {
  const aims = aimsOpen(basis, states);
  const keys = keysOpen(basis, states);
  const most = mostOf(aims);
  const others = exercisesOpen(basis, states, most);
  const { day } = basis;
  const since = (days: number) => (each: { readonly last?: DayNumber }) =>
    each.last === undefined || day - each.last >= days;
  const own = keys.filter(({ need }) => need.what === "key").map((each) => rankedKey(basis, each, "long ago", most));
  const asAim = (rule: PlanRule) => (each: AimCandidate) => rankedAim(basis, each, rule);
  yield* inOrder([...aims.map(asAim("long ago")), ...own].filter(since(LONG_AGO)), longestFirst);
  yield* inOrder(
    aims
      .filter(({ outOfSight }) => outOfSight)
      .map(asAim("aim"))
      .filter(since(AIM_WITHIN)),
    nearestFirst,
  );
  yield* inOrder(
    own.filter(since(KEY_OF_A_PIECE_WITHIN)).map((each) => ({ ...each, rule: "key of a piece" as const })),
    longestFirst,
  );
  yield* fingerChangeCandidates(basis, states);
  const rest = [...aims.filter(({ last }) => last !== undefined).map(asAim("others")), ...others];
  yield* inOrder(rest.filter(since(TURN + 1)), notReachedFirst);
  const next = keys
    .filter(({ need }) => need.what === "neighbour")
    .map((each) => rankedKey(basis, each, "next key", most));
  yield* inOrder(next.filter(since(NEIGHBOUR_WITHIN)), longestFirst);
  const far = keys.filter(({ need }) => need.what === "range").map((each) => rankedKey(basis, each, "next key", most));
  yield* inOrder(far, longestFirst);
  const again = rest.filter(({ last }) => last !== undefined && day - last === TURN);
  yield* inOrder(
    again.map((each) => ({ ...each, rule: "again" as const, reasons: [planTexts.turn] })),
    notReachedFirst,
  );

  function* inOrder(all: readonly Ranked[], order: (a: Ranked, b: Ranked) => number): Generator<Candidate> {
    const sorted = [...all].sort((a, b) => order(a, b) || ties(a, b));
    for (const each of sorted) yield candidate(basis, each);
  }
}

function candidate(basis: PlanBasis, ranked: Ranked): Candidate {
  const { rule, key, state, reasons, most, begin } = ranked;
  const wanted = (place: number) => ({ rule, reasons, place, ...(most === undefined ? {} : { most }) });
  return {
    key,
    fluent: state !== undefined && isFluent(state),
    write: (phase, place) => {
      if (!state) return phase === "groundwork" ? begin?.(place) : undefined;
      return phase === "fluency"
        ? fluencyLine(basis, state, wanted(place))
        : groundworkLine(basis, state, wanted(place));
    },
  };
}

function rankedAim(basis: PlanBasis, aim: AimCandidate, rule: PlanRule): Ranked {
  const { key, text, by, state, most, last } = aim;
  return {
    rule,
    key,
    text,
    reasons: [rule === "others" && state ? leftAloneReason(basis, state) : aimReason(basis, aim)],
    begin: (place) => aimLine(basis, aim, { rule, place, reasons: [aimReason(basis, aim)] }),
    ...(last === undefined ? {} : { last }),
    ...(by === undefined ? {} : { by }),
    ...(state ? { state } : {}),
    ...(most === undefined ? {} : { most }),
  };
}

function rankedKey(basis: PlanBasis, each: KeyCandidate, rule: PlanRule, most: ReadonlyMap<string, number>): Ranked {
  const { key, text, state, last } = each;
  const reasons = [keyReason(basis, each)];
  const rate = state && most.get(state.strand.key);
  return {
    rule,
    key,
    text,
    reasons,
    begin: (place) => keyLine(basis, each, { rule, place, reasons }),
    ...(last === undefined ? {} : { last }),
    ...(state ? { state } : {}),
    ...(rate === undefined ? {} : { most: rate }),
  };
}

/** Exercises of the last twelve weeks: scales, chords, techniques; titles are pieces, and long tones begin the day. */
function exercisesOpen(basis: PlanBasis, states: ExerciseStates, most: ReadonlyMap<string, number>): readonly Ranked[] {
  return basis.exercises.flatMap((exercise): Ranked[] => {
    if (exercise.lastDay < basis.day - EXERCISES_WITHIN || !isTurn(exercise, basis.day)) return [];
    const state = states(exercise);
    if (!state || state.last < basis.day - EXERCISES_WITHIN) return [];
    const rate = most.get(state.strand.key);
    return [
      {
        rule: "others",
        key: exercise.key,
        text: exerciseInWords(exercise.subject, exercise.pattern),
        last: state.last,
        reasons: [leftAloneReason(basis, state)],
        state,
        ...(rate === undefined ? {} : { most: rate }),
      },
    ];
  });
}

function isTurn({ strands, subjectKey, lastDay }: Exercise, day: DayNumber): boolean {
  return !strands[0]!.title && lastDay >= day - EXERCISES_WITHIN && !/^figure: (?:long tones|notes)\b/.test(subjectKey);
}

/** The rate of the fastest open aim at each strand. */
function mostOf(aims: readonly AimCandidate[]): ReadonlyMap<string, number> {
  const most = new Map<string, number>();
  for (const { most: rate, state } of aims)
    if (rate !== undefined && state) most.set(state.strand.key, Math.max(rate, most.get(state.strand.key) ?? 0));
  return most;
}

function longestFirst(a: Ranked, b: Ranked): number {
  return (a.last ?? Number.NEGATIVE_INFINITY) === (b.last ?? Number.NEGATIVE_INFINITY)
    ? 0
    : (a.last ?? Number.NEGATIVE_INFINITY) - (b.last ?? Number.NEGATIVE_INFINITY);
}

function nearestFirst(a: Ranked, b: Ranked): number {
  return (a.by ?? Number.MAX_SAFE_INTEGER) - (b.by ?? Number.MAX_SAFE_INTEGER);
}

function notReachedFirst(a: Ranked, b: Ranked): number {
  const failed = ({ state }: Ranked) => Number(state?.noted?.reached !== false);
  return failed(a) - failed(b) || longestFirst(a, b);
}

/** The nearer day, the longer ago, the text. */
function ties(a: Ranked, b: Ranked): number {
  return nearestFirst(a, b) || longestFirst(a, b) || compareText(a.text, b.text) || compareText(a.key, b.key);
}
