import type { DayNumber } from "../journal/calendar.ts";
import { normalQuantile } from "./normal-quantile.ts";
import type { AttemptRecord } from "./record.ts";
import { CONFIDENCE, LEAST_DAYS_TRIED, LEAST_TRIES, STEADY, TRIED_WITHIN } from "./thresholds.ts";

/** How often one tempo of a strand was reached. */
export interface CleanShare {
  /** Notes a minute, for titles beats a minute. */
  readonly rate: number;
  readonly reached: number;
  readonly tries: number;
  /** On how many days it was tried. */
  readonly days: number;
  /** The ends of the interval of the share, from 0 to 1. Tries of one day hang together, so the true one is wider. */
  readonly low: number;
  readonly high: number;
}

/**
 * How often each tempo was reached that a strand tried in the twelve weeks before a day, the slowest first; those with
 * enough tries on enough days to be shown.
 *
 * @param records oldest first
 * @param since the first day back after a break that cuts off what came before (`baselineOf`)
 */
export function cleanShares(
  records: readonly AttemptRecord[],
  day: DayNumber,
  since?: DayNumber,
): readonly CleanShare[] {
  return [...triedBefore(records, day, since)]
    .filter(([, { tries, days }]) => tries >= LEAST_TRIES && days.size >= LEAST_DAYS_TRIED)
    .sort(([a], [b]) => a - b)
    .map(([rate, { reached, tries, days }]) => {
      return { rate, reached, tries, days: days.size, ...wilsonInterval(reached, tries) };
    });
}

/**
 * The fastest tempo that a strand reached in four fifths of at least five tries in the twelve weeks before a day.
 *
 * @param records oldest first
 * @param since the first day back after a break that cuts off what came before (`baselineOf`)
 */
export function steadyRate(records: readonly AttemptRecord[], day: DayNumber, since?: DayNumber): number | null {
  let steady: number | null = null;
  for (const [rate, { reached, tries }] of triedBefore(records, day, since)) {
    const holds = tries >= LEAST_TRIES && reached * STEADY.denominator >= tries * STEADY.numerator;
    if (holds && (steady === null || rate > steady)) steady = rate;
  }
  return steady;
}

interface Tried {
  reached: number;
  tries: number;
  readonly days: Set<DayNumber>;
}

/** What was said of each tempo, exactly that one. */
function triedBefore(
  records: readonly AttemptRecord[],
  day: DayNumber,
  since = Number.NEGATIVE_INFINITY,
): ReadonlyMap<number, Tried> {
  const tried = new Map<number, Tried>();
  const first = Math.max(day - TRIED_WITHIN, since);
  for (let i = records.length - 1; i >= 0 && records[i]!.day >= first; i--) {
    const record = records[i]!;
    if (record.day >= day || record.rate === null || record.reached === null) continue;
    const own = tried.get(record.rate) ?? { reached: 0, tries: 0, days: new Set() };
    tried.set(record.rate, own);
    own.reached += record.got;
    own.tries += record.count;
    own.days.add(record.day);
  }
  return tried;
}

/**
 * The interval of a share of which `reached` of `tries` are known: (k + z²/2 ± z √(k(n − k)/n + z²/4)) / (n + z²).
 *
 * Wilson, E. B. (1927), "Probable inference, the law of succession, and statistical inference", JASA 22, 209–212.
 */
export function wilsonInterval(reached: number, tries: number): { readonly low: number; readonly high: number } {
  const z = normalQuantile((1 + CONFIDENCE) / 2);
  const middle = reached + (z * z) / 2;
  const reach = z * Math.sqrt((reached * (tries - reached)) / tries + (z * z) / 4);
  return {
    low: Math.max(0, (middle - reach) / (tries + z * z)),
    high: Math.min(1, (middle + reach) / (tries + z * z)),
  };
}
