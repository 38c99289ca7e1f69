import type { DayNumber } from "../journal/calendar.ts";
import type { AttemptRecord } from "./record.ts";
import type { Strand } from "./strands.ts";
import { LEAP, TRIED_WITHIN } from "./thresholds.ts";

/** An attempt that was reached far above everything before it, and what it is held against. */
export interface Leap {
  readonly record: AttemptRecord;
  /** The best that was reached before; where nothing was, the fastest that was tried in the twelve weeks before. */
  readonly before: AttemptRecord;
}

/**
 * The leaps of a strand: each reached tempo is held against what was before it, of which it then may become the best.
 */
export function leapsOf({ records }: Pick<Strand, "records">): readonly Leap[] {
  const leaps: Leap[] = [];
  const before = new Before();
  for (const record of records) {
    const against = isReached(record) ? before.held(record) : undefined;
    if (against && isLeap(record.rate!, against.rate!)) leaps.push({ record, before: against });
    before.add(record);
  }
  return leaps;
}

/**
 * The records of a strand before a day without the leaps that stand alone: often a digit is a slip, so nothing is
 * proposed by such a tempo until it was reached on a second day. The same array where nothing is left out.
 *
 * @param records oldest first
 */
export function withoutLeaps(records: readonly AttemptRecord[], day: DayNumber): readonly AttemptRecord[] {
  const before = new Before();
  const leaps: AttemptRecord[] = [];
  for (const record of records) {
    if (record.day >= day) break;
    if (!isReached(record)) {
      before.add(record);
      continue;
    }
    before.known = Math.max(before.known, reachedOnTwoDays(record, leaps));
    const against = before.known > 0 ? before.known : before.held(record)?.rate;
    if (against !== undefined && against !== null && isLeap(record.rate!, against)) leaps.push(record);
    else before.add(record);
  }
  const alone = new Set(leaps.filter((leap) => !isReachedAgain(leap, records, day)));
  return alone.size === 0 ? records : records.filter((record) => !alone.has(record));
}

/** Whether a tempo is over so many times another that its digits are worth a look. */
export function isLeap(rate: number, before: number): boolean {
  return rate * LEAP.denominator > before * LEAP.numerator;
}

/** How fast two days agree on, of an attempt and leaps of other days; 0 where there are none. */
function reachedOnTwoDays({ rate, day }: AttemptRecord, leaps: readonly AttemptRecord[]): number {
  const others = leaps.filter((leap) => leap.day !== day).map((leap) => Math.min(leap.rate!, rate!));
  return Math.max(0, ...others);
}

function isReachedAgain(leap: AttemptRecord, records: readonly AttemptRecord[], day: DayNumber): boolean {
  return records.some((each) => {
    return each.day < day && each.day !== leap.day && isReached(each) && each.rate! >= leap.rate!;
  });
}

function isReached({ rate, reached }: AttemptRecord): boolean {
  return rate !== null && reached === true;
}

/** What a strand had before an attempt. */
class Before {
  /** The best rate that was reached; 0 where none was. */
  known = 0;
  private best: AttemptRecord | undefined;
  private readonly tried: AttemptRecord[] = [];

  add(record: AttemptRecord): void {
    if (record.rate === null) return;
    if (record.reached !== true) {
      if (!this.best) this.tried.push(record); // asked for only until something is reached
      return;
    }
    if (!this.best || record.rate > this.best.rate!) this.best = record;
    this.known = Math.max(this.known, record.rate);
  }

  /** What an attempt is held against; undefined where nothing is known. */
  held({ day }: AttemptRecord): AttemptRecord | undefined {
    if (this.best) return this.best;
    let fastest: AttemptRecord | undefined;
    for (const each of this.tried)
      if (each.day >= day - TRIED_WITHIN && (!fastest || each.rate! > fastest.rate!)) fastest = each;
    return fastest;
  }
}
