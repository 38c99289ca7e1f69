import { median } from "simple-statistics";
import { type DayNumber, weekIndex } from "../journal/calendar.ts";
import type { Break } from "./break.ts";
import { FRESH, WEEKS_ROUND_A_BREAK } from "./thresholds.ts";
import { testedOf } from "./trend.ts";
import type { Week } from "./weeks.ts";

/** How a strand goes since its instrument was taken up again. Rates are notes a minute, for titles beats a minute. */
export interface Return extends Break {
  /** The median usual rate of the last four tested weeks before the break; null where there are fewer. */
  readonly before: number | null;
  /** That of the first four after it. */
  readonly after: number | null;
  /** How many tested weeks there are since. */
  readonly testedWeeks: number;
  /** It came back so much lower that only what came after it is looked at. */
  readonly fresh: boolean;
}

/**
 * The returns of a strand, the oldest first: after each break that lies between weeks of its own.
 *
 * @param weeks all of the strand's, oldest first
 * @param breaks those of its instrument, oldest first
 */
export function returnsOf(weeks: readonly Week[], breaks: readonly Break[]): Return[] {
  const [first, last] = [weeks[0], weeks.at(-1)];
  if (!first || !last) return [];
  const tested = testedOf(weeks);
  return breaks.flatMap(({ since, days }) => {
    // The week of the first day back has no earlier day of practice: the break is longer than a week.
    const week = weekIndex(since);
    if (first.index >= week || last.index < week) return [];
    const back = tested.filter(({ index }) => index >= week);
    const before = middleOf(tested.filter(({ index }) => index < week).slice(-WEEKS_ROUND_A_BREAK));
    const after = middleOf(back.slice(0, WEEKS_ROUND_A_BREAK));
    return [{ since, days, before, after, testedWeeks: back.length, fresh: isLower(before, after) }];
  });
}

/**
 * The day from which on a strand is looked at: that of the last return with a fresh baseline. A later break that cost
 * nothing does not bring back what came before. Undefined where all of it counts.
 */
export function baselineOf(returns: readonly Return[]): DayNumber | undefined {
  return returns.findLast(({ fresh }) => fresh)?.since;
}

/** The return to tell of: the last one that cut something off, or that may do so yet; else the last. */
export function returnToTell(returns: readonly Return[]): Return | undefined {
  const open = returns.findLast((each) => each.fresh || isOpen(each));
  return open ?? returns.at(-1);
}

/** Whether it is too early to say what the break has cost. */
export function isOpen({ before, after }: Return): boolean {
  return before !== null && after === null;
}

function middleOf(weeks: readonly { readonly usual: number }[]): number | null {
  return weeks.length < WEEKS_ROUND_A_BREAK ? null : median(weeks.map(({ usual }) => usual));
}

/** A share that is met to the last figure is met, whatever a double makes of it. */
function isLower(before: number | null, after: number | null): boolean {
  if (before === null || after === null) return false;
  return after * FRESH.denominator <= before * FRESH.numerator * (1 + 1e-9);
}
