import type { DayNumber } from "../journal/calendar.ts";
import { METRONOME_STEPS, nearestSteps } from "../music/notes/note-value.ts";
import type { Ceiling } from "./ceiling.ts";
import { withoutLeaps } from "./leaps.ts";
import type { AttemptRecord } from "./record.ts";
import { steadyRate } from "./steady.ts";
import { BEGIN_AT, DAYS_FOR_A_NOTCH, TRIED_WITHIN } from "./thresholds.ts";

/**
 * How a strand stands before a day. Rates are notes a minute, for titles beats a minute. A leap that stands alone
 * (`withoutLeaps`) is none of it.
 */
export interface Standing {
  /** Null where no tempo is steady. */
  readonly steady: number | null;
  /** The best of the latest day on which a tempo was reached; null where none was. */
  readonly reached: number | null;
  /** That day. */
  readonly reachedOn: DayNumber | null;
  /**
   * What counts after something hurt, and after a break: what is steady, or else what was reached on two days within
   * twelve weeks, or else the lowest of the last day on which something was; never above what was reached last where
   * nothing is steady.
   */
  readonly sure: number | null;
  /** The latest day on which it was practised, with a tempo or without; null where it was not yet. */
  readonly practisedOn: DayNumber | null;
}

/**
 * What the records of a strand, oldest first, say before a day.
 *
 * @param since the first day back after a break that cuts off what came before (`baselineOf`)
 */
export function standingOf(records: readonly AttemptRecord[], day: DayNumber, since?: DayNumber): Standing {
  const practisedOn = records.findLast((record) => record.day < day)?.day ?? null;
  const told = withoutLeaps(records, day);
  const steady = steadyRate(told, day, since);
  const last = reachedLast(told, day);
  if (!last) return { steady, reached: null, reachedOn: null, sure: steady, practisedOn };
  const { on: reachedOn, best: reached } = last;
  const sure = steady ?? Math.min(reached, reachedTwice(told, reachedOn, since) ?? last.lowest);
  return { steady, reached, reachedOn, sure, practisedOn };
}

interface ReachedLast {
  readonly on: DayNumber;
  readonly best: number;
  readonly lowest: number;
}

/** What was reached on the latest day before one on which something was. */
function reachedLast(records: readonly AttemptRecord[], day: DayNumber): ReachedLast | undefined {
  let last: ReachedLast | undefined;
  for (let i = records.length - 1; i >= 0; i--) {
    const { day: on, rate, reached } = records[i]!;
    if (last && on < last.on) break;
    if (on >= day || rate === null || reached !== true) continue;
    last = { on, best: Math.max(rate, last?.best ?? rate), lowest: Math.min(rate, last?.lowest ?? rate) };
  }
  return last;
}

/** The fastest that was reached on two days, of those within twelve weeks up to one; undefined where none was. */
function reachedTwice(records: readonly AttemptRecord[], last: DayNumber, since?: DayNumber): number | undefined {
  const bests = new Map<DayNumber, number>();
  const first = Math.max(last - TRIED_WITHIN, since ?? Number.NEGATIVE_INFINITY);
  for (let i = records.length - 1; i >= 0 && records[i]!.day >= first; i--) {
    const { day: on, rate, reached } = records[i]!;
    if (on <= last && rate !== null && reached === true) bests.set(on, Math.max(rate, bests.get(on) ?? rate));
  }
  return [...bests.values()].sort((a, b) => b - a)[1];
}

/**
 * The tempo to begin with on a day, in beats a minute: the notch at or below four fifths of the steady one; where none
 * is steady a notch below the last reached; after two weeks without it a notch lower, after four two. Undefined where
 * none was reached, and on a day without the instrument.
 *
 * @param perBeat notes a minute of one beat a minute, as the player counts
 */
export function startTempo(
  { steady, reached, sure, practisedOn }: Standing,
  day: DayNumber,
  perBeat: number,
  ceiling: Ceiling,
): number | undefined {
  if (reached === null || ceiling.kind === "without instrument") return undefined;
  const begin = steady === null ? notchBelow(reached / perBeat) : notchAtOrBelow((BEGIN_AT * steady) / perBeat);
  const tempo = afterRest(begin, { practisedOn }, day);
  const most = highestTempo(ceiling, { sure });
  return most === undefined ? tempo : Math.min(tempo, notchAtOrBelow(most / perBeat));
}

/** A tempo as it is taken up again: after two weeks without the strand a notch lower, after four two. */
export function afterRest(tempo: number, { practisedOn }: Pick<Standing, "practisedOn">, day: DayNumber): number {
  const rested = DAYS_FOR_A_NOTCH.filter((days) => day - (practisedOn ?? day) >= days).length;
  let lower = tempo;
  for (let i = 0; i < rested; i++) lower = notchBelow(lower);
  return lower;
}

/**
 * How fast a strand may be proposed at most, as a rate; undefined where the day sets no limit. On a day without the
 * instrument nothing may be proposed at all: ask for its kind first.
 */
export function highestTempo({ share }: Ceiling, { sure }: Pick<Standing, "sure">): number | undefined {
  return share === undefined || sure === null ? undefined : share * sure;
}

/** The setting of the metronome at or below a tempo; under its lowest the whole number, but for what a double adds. */
export function notchAtOrBelow(bpm: number): number {
  const close = bpm * (1 + 1e-9);
  return METRONOME_STEPS.findLast((step) => step <= close) ?? Math.max(1, Math.floor(close));
}

/** The setting above a tempo; beyond the highest the tempo itself. */
export function notchAbove(bpm: number): number {
  return nearestSteps(bpm).above ?? bpm;
}

/** The setting below a tempo; under the lowest, as far below as the lowest two are apart. */
export function notchBelow(bpm: number): number {
  const apart = METRONOME_STEPS[1]! - METRONOME_STEPS[0]!;
  return nearestSteps(bpm).below ?? Math.max(1, Math.ceil(bpm) - apart);
}
