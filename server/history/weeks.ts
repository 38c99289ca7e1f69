import { type DayNumber, weekIndex, weekLabels } from "../journal/calendar.ts";
import type { AttemptRecord } from "./record.ts";

/** What one ISO 8601 week says of a strand. */
export interface Week {
  /** `2026-W10`. */
  readonly week: string;
  /** The highest rate that was reached, in notes a minute (titles: beats a minute). Null where none was. */
  readonly bestClean: number | null;
  /**
   * The week's best shows what the player could do, and the trend may count it: it comes near the best of the weeks
   * before, or an attempt at or above it failed. A week that reached nothing has no figure and is not tested.
   */
  readonly tested: boolean;
  readonly attempts: number;
  readonly minutes: number;
  /** Some of the minutes were shared out, not written. */
  readonly about: boolean;
}

const NOTHING = { bestClean: null, tested: false, attempts: 0, minutes: 0, about: false } as const;

/** A run of weeks without a record, by their running numbers (`weekIndex`), both ends included. */
export function blankWeeks(first: number, last: number): Week[] {
  return weekLabels(first, last).map((week) => ({ week, ...NOTHING }));
}

/** Weeks without a record, each made once: of a journal of years most weeks of most strands are such. */
export class BlankWeeks {
  readonly #weeks = new Map<number, Week>();

  /** @param index the week's running number, as `weekIndex` gives it */
  at(index: number): Week {
    const known = this.#weeks.get(index);
    if (known) return known;
    const blank = blankWeeks(index, index)[0]!;
    this.#weeks.set(index, blank);
    return blank;
  }
}

/** How many weeks back a week's best is compared. */
const WEEKS_BEFORE = 8;

/** A best of at least nine tenths of the weeks before is a test. Two integers, so that 90 of 100 is exactly enough. */
const NEAR_BEST = { numerator: 9, denominator: 10 };

/** Minutes are summed as integers, so that no order of adding gives another sum. */
const PARTS_OF_A_MINUTE = 1e9;
const SHOWN_PARTS_OF_A_MINUTE = 1e6;

interface Sums {
  best: number | null;
  /** The highest rate that was tried and not reached. */
  failed: number;
  attempts: number;
  minuteParts: number;
  about: boolean;
}

/**
 * The weekly figures of one strand: every ISO week from the first to the last with a record, oldest first, those
 * between without one too, so that a week's place in the list is its distance from the first. With `since`, the weeks from the one that holds that day on, as whole weeks; what went
 * before still counts in judging whether a week was tested. The records may come in any order. Strands that are given the
 * same `blanks` share their weeks without a record.
 */
export function weeksOf(records: readonly AttemptRecord[], since?: DayNumber, blanks = new BlankWeeks()): Week[] {
  const { start, sums } = sumByWeek(records);
  const from = since === undefined ? 0 : Math.max(0, weekIndex(since) - start);
  const first = sums.findIndex((week, at) => week !== undefined && at >= from);
  if (first === -1) return [];
  const weeks: Week[] = [];
  for (let at = first; at < sums.length; at++) weeks.push(weekFrom(at, blanks.at(start + at), sums));
  return weeks;
}

/** One place for each week from `start`, the first with a record, to the last. */
function sumByWeek(records: readonly AttemptRecord[]): { start: number; sums: (Sums | undefined)[] } {
  let start = Number.POSITIVE_INFINITY;
  let end = Number.NEGATIVE_INFINITY;
  for (const record of records) {
    start = Math.min(start, weekIndex(record.day));
    end = Math.max(end, weekIndex(record.day));
  }
  if (end < start) return { start: 0, sums: [] };
  const sums = new Array<Sums | undefined>(end - start + 1).fill(undefined);
  for (const record of records) {
    const at = weekIndex(record.day) - start;
    let week = sums[at];
    if (!week) {
      week = { best: null, failed: Number.NEGATIVE_INFINITY, attempts: 0, minuteParts: 0, about: false };
      sums[at] = week;
    }
    add(week, record);
  }
  return { start, sums };
}

function add(sums: Sums, record: AttemptRecord): void {
  sums.attempts += record.count;
  sums.minuteParts += Math.round(record.minutes * PARTS_OF_A_MINUTE);
  sums.about ||= record.about;
  if (record.rate === null) return;
  if (record.reached === false) sums.failed = Math.max(sums.failed, record.rate);
  else if (record.reached && (sums.best === null || record.rate > sums.best)) sums.best = record.rate;
}

function weekFrom(at: number, blank: Week, sums: readonly (Sums | undefined)[]): Week {
  const own = sums[at];
  if (!own) return blank;
  return {
    week: blank.week,
    bestClean: own.best,
    tested: wasTested(at, own, sums),
    attempts: own.attempts,
    minutes: shownMinutes(own.minuteParts),
    about: own.about,
  };
}

function wasTested(at: number, { best, failed }: Sums, sums: readonly (Sums | undefined)[]): boolean {
  if (best === null) return false;
  if (failed >= best) return true;
  let before = 0;
  for (let back = Math.max(0, at - WEEKS_BEFORE); back < at; back++) before = Math.max(before, sums[back]?.best ?? 0);
  return best * NEAR_BEST.denominator >= before * NEAR_BEST.numerator;
}

function shownMinutes(parts: number): number {
  const perPart = PARTS_OF_A_MINUTE / SHOWN_PARTS_OF_A_MINUTE;
  return Math.round(parts / perPart) / SHOWN_PARTS_OF_A_MINUTE;
}
