import { type DayNumber, weekIndex, weekLabelOf, weekLabels } from "../journal/calendar.ts";
import type { AttemptRecord } from "./record.ts";
import type { WeekSpan } from "./week-span.ts";

/** What one ISO 8601 week says of a strand. */
export interface Week {
  /** `2026-W10`. */
  readonly week: string;
  /** Its running number (`weekIndex`), so that two weeks are as far apart as these. */
  readonly index: number;
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
 * The weekly figures of one strand: the ISO weeks with a record, oldest first. With `since`, the weeks from the one
 * that holds that day on, as whole weeks; what went before still counts in judging whether a week was tested. The
 * records may come in any order.
 */
export function weeksOf(records: readonly AttemptRecord[], since: DayNumber = Number.NEGATIVE_INFINITY): Week[] {
  const sums = sumByWeek(records);
  const from = weekIndex(since);
  return [...sums.keys()]
    .filter((index) => index >= from)
    .sort((a, b) => a - b)
    .map((index) => weekFrom(index, sums));
}

/** Every week of a span, oldest first: those that are given, and those without a record between and around them. */
export function everyWeek(weeks: readonly Week[], { first, last }: WeekSpan): Week[] {
  const given = new Map(weeks.map((week) => [week.index, week]));
  return weekLabels(first, last).map((week, at) => {
    const index = first + at;
    return given.get(index) ?? { week, index, bestClean: null, tested: false, attempts: 0, minutes: 0, about: false };
  });
}

/** The week with the highest best, the earliest of equals; undefined where nothing was reached. */
export function bestWeek(weeks: readonly Week[]): ReachedWeek | undefined {
  return weeks
    .filter(isReached)
    .reduce<ReachedWeek | undefined>((a, b) => (a && a.bestClean >= b.bestClean ? a : b), undefined);
}

/** A week in which some tempo was reached. */
export interface ReachedWeek extends Week {
  readonly bestClean: number;
}

function isReached(week: Week): week is ReachedWeek {
  return week.bestClean !== null;
}

/** What was done in each week with a record, by its running number. */
type SumsByWeek = ReadonlyMap<number, Readonly<Sums>>;

function sumByWeek(records: readonly AttemptRecord[]): SumsByWeek {
  const sums = new Map<number, Sums>();
  for (const record of records) {
    const index = weekIndex(record.day);
    let week = sums.get(index);
    if (!week) {
      week = { best: null, failed: Number.NEGATIVE_INFINITY, attempts: 0, minuteParts: 0, about: false };
      sums.set(index, week);
    }
    add(week, record);
  }
  return sums;
}

function add(sums: Sums, record: AttemptRecord): void {
  sums.attempts += record.count;
  sums.minuteParts += Math.round(record.minutes * PARTS_OF_A_MINUTE);
  sums.about ||= record.about;
  if (record.rate === null) return;
  if (record.reached === false) sums.failed = Math.max(sums.failed, record.rate);
  else if (record.reached && (sums.best === null || record.rate > sums.best)) sums.best = record.rate;
}

function weekFrom(index: number, sums: SumsByWeek): Week {
  const own = sums.get(index)!;
  return {
    week: weekLabelOf(index),
    index,
    bestClean: own.best,
    tested: wasTested(index, sums),
    attempts: own.attempts,
    minutes: shownMinutes(own.minuteParts),
    about: own.about,
  };
}

function wasTested(index: number, sums: SumsByWeek): boolean {
  const { best, failed } = sums.get(index)!;
  if (best === null) return false;
  if (failed >= best) return true;
  let before = 0;
  for (let back = index - WEEKS_BEFORE; back < index; back++) before = Math.max(before, sums.get(back)?.best ?? 0);
  return best * NEAR_BEST.denominator >= before * NEAR_BEST.numerator;
}

function shownMinutes(parts: number): number {
  const perPart = PARTS_OF_A_MINUTE / SHOWN_PARTS_OF_A_MINUTE;
  return Math.round(parts / perPart) / SHOWN_PARTS_OF_A_MINUTE;
}
