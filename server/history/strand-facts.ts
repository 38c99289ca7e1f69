import { type DayNumber, weekIndex } from "../journal/calendar.ts";
import { type Break, breaksUpTo, type PractisedDays } from "./break.ts";
import type { AttemptRecord } from "./record.ts";
import { baselineOf, isOpen, type Return, returnsOf, returnToTell } from "./return.ts";
import { type Settled, settledIn } from "./settled.ts";
import { type CleanShare, cleanShares, steadyRate } from "./steady.ts";
import { playedUpTo, type Strand } from "./strands.ts";
import { weeksSince } from "./trend.ts";
import { type Week, weeksOf } from "./weeks.ts";

/** What is known of a strand on a day, beside its trend. Rates are notes a minute, for titles beats a minute. */
export interface StrandFacts {
  readonly returned: Return | null;
  /** The first day back after the break that cuts off what came before; missing where all of it counts. */
  readonly since?: DayNumber;
  readonly settled: Settled | null;
  readonly steady: number | null;
  readonly shares: readonly CleanShare[];
}

/** A day, and the last one that is looked at, where that comes before. */
export interface DayAsked {
  readonly today: DayNumber;
  readonly until?: DayNumber;
}

/** What is known of a strand today; or as it was the day after `until`, where that comes before. */
export function factsToday(strand: Strand, practised: PractisedDays, asked: DayAsked): StrandFacts {
  const { today, until = Number.POSITIVE_INFINITY } = asked;
  const last = lastDayOf(asked);
  const played = playedUpTo(strand, last)?.records ?? [];
  const breaks = breaksUpTo(practised.get(strand.records[0]!.instrument) ?? [], last);
  return factsOf(played, weeksOf(played), breaks, Math.min(today, until + 1));
}

/** The last day that is looked at. */
export function lastDayOf({ today, until = Number.POSITIVE_INFINITY }: DayAsked): DayNumber {
  return Math.min(today, until);
}

/**
 * What is known of a strand on a day. Days after it do not exist; what is steady is asked before the day's own
 * practice.
 *
 * @param played the strand's records up to that day, oldest first
 * @param weeks those of the records
 * @param breaks those of its instrument up to that day, oldest first
 */
export function factsOf(
  played: readonly AttemptRecord[],
  weeks: readonly Week[],
  breaks: readonly Break[],
  day: DayNumber,
): StrandFacts {
  const returns = returnsOf(weeks, breaks);
  const since = baselineOf(returns);
  const returned = returnToTell(returns) ?? null;
  // While it is too early to say what a break has cost, nothing holds that was so before it.
  const mayHaveSettled = !(returned && isOpen(returned));
  return {
    returned,
    ...(since === undefined ? {} : { since }),
    settled: mayHaveSettled ? settledIn(weeksSince(weeks, since), weekIndex(day)) : null,
    steady: steadyRate(played, day, since),
    shares: cleanShares(played, day, since),
  };
}
