import { median } from "simple-statistics";
import { type DayNumber, mondayOf, weekIndex, weekLabelOf, weekLabels } from "../journal/calendar.ts";
import type { AttemptRecord } from "./record.ts";
import { LEAST_WEEKS_BESIDE, NEAR_BEST, WEEKS_AWAY, WEEKS_BEFORE } from "./thresholds.ts";
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
   * The week's figure, by which the trend goes: the median of the best rates of its days, slow days left out. Null
   * where none was reached.
   */
  readonly usual: number | null;
  /**
   * The week's best shows what the player could do, and the trend may count it: it comes near the best of the weeks
   * beside it, or a faster attempt failed. A week that reached nothing has no figure and is not tested.
   */
  readonly tested: boolean;
  readonly attempts: number;
  /** Tries of which it is said how they went, and how many of them were reached: `clean 4 of 5` is 5 and 4. */
  readonly tries: number;
  readonly reached: number;
  readonly minutes: number;
  /** Some of the minutes were shared out, not written. */
  readonly about: boolean;
}

/** Minutes are summed as integers, so that no order of adding gives another sum. */
const PARTS_OF_A_MINUTE = 1e9;
const SHOWN_PARTS_OF_A_MINUTE = 1e6;

/** The fastest of some attempts. */
interface Fastest {
  best: number | null;
  /** That was tried and not reached. */
  failed: number;
}

interface Sums extends Fastest {
  readonly days: Map<DayNumber, Fastest>;
  attempts: number;
  tries: number;
  reached: number;
  minuteParts: number;
  about: boolean;
}

/**
 * The weekly figures of one strand: the ISO weeks with a record, oldest first. With `since`, the weeks from the one
 * that holds that day on, as whole weeks; what went before still counts in judging whether a week was tested. The
 * records may come in any order.
 */
export function weeksOf(records: readonly AttemptRecord[], since: DayNumber = Number.NEGATIVE_INFINITY): Week[] {
  const from = weekIndex(since);
  // None that is farther away bears on the weeks that are asked for, and a journal may be of ten years.
  const first = mondayOf(from - WEEKS_AWAY);
  const sums = sumByWeek(Number.isFinite(since) ? records.filter(({ day }) => day >= first) : records);
  const indexes = [...sums.keys()].sort((a, b) => a - b);
  const bests = indexes.flatMap((index) => {
    const { best } = sums.get(index)!;
    return best === null ? [] : [{ index, best }];
  });
  const places = new Map(bests.map(({ index }, at) => [index, at]));
  return indexes
    .filter((index) => index >= from)
    .map((index) => {
      const own = sums.get(index)!;
      const at = places.get(index);
      return weekFrom(index, own, at !== undefined && wasTested(own, bests, at));
    });
}

/** Every week of a span, oldest first: those that are given, and those without a record between and around them. */
export function everyWeek(weeks: readonly Week[], { first, last }: WeekSpan): Week[] {
  const given = new Map(weeks.map((week) => [week.index, week]));
  return weekLabels(first, last).map((week, at) => {
    const index = first + at;
    return given.get(index) ?? { week, index, ...EMPTY };
  });
}

const EMPTY = {
  bestClean: null,
  usual: null,
  tested: false,
  attempts: 0,
  tries: 0,
  reached: 0,
  minutes: 0,
  about: false,
} satisfies Omit<Week, "week" | "index">;

/** The week with the highest best, the earliest of equals; undefined where nothing was reached. */
export function bestWeek(weeks: readonly Week[]): ReachedWeek | undefined {
  return weeks
    .filter(isReached)
    .reduce<ReachedWeek | undefined>((a, b) => (a && a.bestClean >= b.bestClean ? a : b), undefined);
}

/** A week in which some tempo was reached. */
export interface ReachedWeek extends Week {
  readonly bestClean: number;
  readonly usual: number;
}

/** A week in which some tempo was reached. */
export function isReached(week: Week): week is ReachedWeek {
  return week.bestClean !== null && week.usual !== null;
}

/** What was done in each week with a record, by its running number. */
type SumsByWeek = ReadonlyMap<number, Readonly<Sums>>;

function sumByWeek(records: readonly AttemptRecord[]): SumsByWeek {
  const sums = new Map<number, Sums>();
  for (const record of records) {
    const index = weekIndex(record.day);
    let week = sums.get(index);
    if (!week) {
      week = nothingDone();
      sums.set(index, week);
    }
    add(week, record);
  }
  return sums;
}

function nothingTried(): Fastest {
  return { best: null, failed: Number.NEGATIVE_INFINITY };
}

/** Written out: copying `nothingTried` into it took most of the time of a sum. */
function nothingDone(): Sums {
  return {
    best: null,
    failed: Number.NEGATIVE_INFINITY,
    days: new Map(),
    attempts: 0,
    tries: 0,
    reached: 0,
    minuteParts: 0,
    about: false,
  };
}

function add(sums: Sums, record: AttemptRecord): void {
  sums.attempts += record.count;
  sums.minuteParts += Math.round(record.minutes * PARTS_OF_A_MINUTE);
  sums.about ||= record.about;
  if (record.reached !== null) {
    sums.tries += record.count;
    sums.reached += record.got;
  }
  if (record.rate === null || record.reached === null) return;
  let day = sums.days.get(record.day);
  if (!day) {
    day = nothingTried();
    sums.days.set(record.day, day);
  }
  tried(sums, record.rate, record.reached);
  tried(day, record.rate, record.reached);
}

function tried(fastest: Fastest, rate: number, reached: boolean): void {
  if (!reached) fastest.failed = Math.max(fastest.failed, rate);
  else if (fastest.best === null || rate > fastest.best) fastest.best = rate;
}

function weekFrom(index: number, own: Readonly<Sums>, tested: boolean): Week {
  return {
    week: weekLabelOf(index),
    index,
    bestClean: own.best,
    usual: usualOf(own),
    tested,
    attempts: own.attempts,
    tries: own.tries,
    reached: own.reached,
    minutes: shownMinutes(own.minuteParts),
    about: own.about,
  };
}

/** The median of the days' bests; a day far below the week's best on which nothing faster failed was a slow one. */
function usualOf({ best, days }: Readonly<Sums>): number | null {
  if (best === null) return null;
  const bests: number[] = [];
  for (const day of days.values())
    if (day.best !== null && (isNear(day.best, best) || day.failed > day.best)) bests.push(day.best);
  return median(bests);
}

interface BestOfWeek {
  readonly index: number;
  readonly best: number;
}

/** Whether a week, the one at a place among those that reached something, shows what the player could do. */
function wasTested({ best, failed }: Readonly<Sums>, bests: readonly BestOfWeek[], at: number): boolean {
  return failed > best! || isNear(best!, bestBeside(bests, at));
}

/**
 * The best of the weeks before; where those are few, also of the week itself and the next ones. So a strand's first
 * weeks are judged by each other.
 */
function bestBeside(bests: readonly BestOfWeek[], at: number): number {
  const own = bests[at]!.index;
  let best = 0;
  let count = 0;
  for (let i = at - 1; i >= 0 && i >= at - WEEKS_BEFORE && bests[i]!.index >= own - WEEKS_AWAY; i--, count++)
    best = Math.max(best, bests[i]!.best);
  for (let i = at; i < bests.length && count < LEAST_WEEKS_BESIDE && bests[i]!.index <= own + WEEKS_AWAY; i++, count++)
    best = Math.max(best, bests[i]!.best);
  return best;
}

/** At least so many parts of another, but for what a double cannot hold. */
function isNear(rate: number, best: number): boolean {
  return rate * NEAR_BEST.denominator >= best * NEAR_BEST.numerator * (1 - Number.EPSILON * 8);
}

function shownMinutes(parts: number): number {
  const perPart = PARTS_OF_A_MINUTE / SHOWN_PARTS_OF_A_MINUTE;
  return Math.round(parts / perPart) / SHOWN_PARTS_OF_A_MINUTE;
}
