import type { Ceiling } from "../history/ceiling.ts";
import { standingOf } from "../history/start-tempo.ts";
import type { Exercise } from "../history/strands.ts";
import { BREAK_DAYS, DAYS_BEFORE_A_CONCERT, DAYS_OFF } from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import type { DeclaredConcert } from "../journal/declared-lines.ts";

/**
 * What a day is for, before anything else is decided.
 *
 * - `rest`: written as a day of rest. `no instrument`: the body hurts today or did yesterday.
 * - `sparing`: it hurt lately. `easing`: the two days after that. `return`: the first days after a break.
 * - `unhurried`: nothing above what is steady. `concert`: the same, with a concert ahead.
 */
export type KindOfDay = "rest" | "no instrument" | "sparing" | "easing" | "return" | "concert" | "unhurried" | "usual";

/** A day with the reasons that go with its kind. */
export interface DayKind {
  readonly kind: KindOfDay;
  /** Why it is unhurried: days without practice, or days on which something was pushed. */
  readonly because?: "days off" | "pushed";
  readonly concert?: DeclaredConcert;
}

/** What tells the kind of a day. */
export interface KindAsked {
  readonly day: DayNumber;
  readonly isRest: boolean;
  readonly ceiling: Ceiling;
  readonly concerts: readonly DeclaredConcert[];
  /** Of the instrument, before the day, in order. */
  readonly practised: readonly DayNumber[];
  readonly exercises: readonly Exercise[];
  /** Days on which nothing is pushed come by themselves. */
  readonly unhurriedDays: boolean;
}

/** The first kind that fits, care before all others. */
export function kindOfDay(asked: KindAsked): DayKind {
  const { day, isRest, ceiling, practised, unhurriedDays } = asked;
  const concert = nextConcert(asked);
  const beside = concert ? { concert } : {};
  if (isRest) return { kind: "rest", ...beside };
  if (ceiling.kind === "without instrument") return { kind: "no instrument", ...beside };
  if (ceiling.kind !== "usual") return { kind: ceiling.kind, ...beside };
  const last = practised.at(-1);
  const off = last === undefined ? 0 : day - last - 1;
  if (off >= DAYS_OFF && off < BREAK_DAYS) return { kind: "unhurried", because: "days off", ...beside };
  if (concert) return { kind: "concert", concert };
  const lately = practised.slice(-2);
  const isPushed = unhurriedDays && lately.length === 2 && lately.every((each) => wasPushed(asked, each));
  return isPushed ? { kind: "unhurried", because: "pushed" } : { kind: "usual" };
}

/** The next concert within two weeks; of two on one day the first that is declared. */
function nextConcert({ concerts, day }: KindAsked): DeclaredConcert | undefined {
  return concerts
    .filter(({ declared: { on } }) => on !== undefined && on >= day && on - day <= DAYS_BEFORE_A_CONCERT)
    .sort((a, b) => a.declared.on! - b.declared.on!)[0];
}

/** Whether something was tried on a day that was faster than what was steady, or else reached, before it. */
function wasPushed({ exercises }: KindAsked, day: DayNumber): boolean {
  return exercises.some(({ strands, lastDay }) => {
    if (lastDay < day) return false;
    return strands.some(({ records }) => {
      const tried = records.flatMap((record) => (record.day === day && record.rate !== null ? [record.rate] : []));
      if (tried.length === 0) return false;
      const { steady, reached } = standingOf(records, day);
      const known = steady ?? reached;
      return known !== null && tried.some((rate) => rate > known);
    });
  });
}
