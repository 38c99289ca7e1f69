import { recordsOfBlock } from "../history/attempts.ts";
import { dayMinutes } from "../history/day-minutes.ts";
import { MINUTES_AWAY, MINUTES_ON_CONCERT_DAY, UNIT } from "../history/thresholds.ts";
import { datedBlocks } from "../journal/dated-blocks.ts";
import { nameKey } from "../syntax/words/fold.ts";
import { timeAway } from "./day-words.ts";
import { kindOfDayTexts } from "./kind-of-day-texts.ts";
import { type PlanBasis, wholeUnits } from "./plan-basis.ts";

/** How long a plan may be, and why it is no longer. */
export interface MinutesOnDay {
  readonly minutes: number;
  readonly notes: readonly string[];
  /** The instrument was played for as long as it may be: what is left is without it. */
  readonly away: boolean;
  /** What the kind of the day leaves of the wish, before anything that was played is taken off. */
  readonly whole: number;
}

/** The time that was wished for, cut by what the day is for, and by how long the instrument may be played. */
export function minutesOnDay(basis: PlanBasis, wished: number): MinutesOnDay {
  const own = withConcert(basis, wished, byKind(basis, wished));
  const whole = own.minutes;
  const { minutes, notes } = lessPlayed(basis, own);
  const limit = basis.kind.kind === "no instrument" ? undefined : limitOn(basis);
  if (limit === undefined || limit.left >= minutes) return { minutes, notes, away: false, whole };
  const said = [...notes, limit.note];
  if (limit.left < UNIT) return { minutes: Math.min(minutes, MINUTES_AWAY), notes: said, away: true, whole };
  return { minutes: limit.left, notes: said, away: false, whole };
}

/** On a day on which one goes easy, what was played already is part of its time. */
function lessPlayed(basis: PlanBasis, own: OfKind): OfKind {
  const { kind } = basis.kind;
  if (kind !== "sparing" && kind !== "easing" && kind !== "return") return own;
  const played = minutesOfDay(basis);
  if (played === 0) return own;
  const left = wholeUnits(Math.max(0, own.minutes - played));
  if (left >= UNIT) return { minutes: left, notes: [...own.notes, kindOfDayTexts.playedOfThem(played)] };
  const isWhole = kind === "easing" && !basis.isBack;
  return { minutes: 0, notes: [isWhole ? kindOfDayTexts.thatWasTheTime : kindOfDayTexts.thatWasHalf] };
}

/** What was played on the day, on whatever instrument. */
function minutesOfDay({ journal, day }: PlanBasis): number {
  const phases = datedBlocks(journal, day, day).flatMap(({ block }) => dayMinutes(journal.model(block)).phases);
  return Math.round(phases.reduce((sum, { minutes }) => sum + minutes, 0));
}

/** What is left of the day on an instrument that is to be played for so long only. */
function limitOn(basis: PlanBasis): { readonly left: number; readonly note: string } | undefined {
  const { conventions, instrument, day } = basis;
  const limit = instrument === null ? undefined : conventions.limits.get(nameKey(instrument));
  if (!limit || (limit.until !== undefined && limit.until < day)) return undefined;
  const played = minutesPlayed(basis);
  const left = Math.max(0, limit.minutes - played);
  const note =
    played > 0
      ? kindOfDayTexts.limitUsed(limit.minutes, instrument!, played)
      : kindOfDayTexts.limit(limit.minutes, instrument!);
  return { left, note };
}

function minutesPlayed({ journal, day, instrument }: PlanBasis): number {
  const own = datedBlocks(journal, day, day).flatMap(({ uri, block }) => recordsOfBlock(journal, uri, block));
  return Math.round(own.reduce((sum, record) => sum + (record.instrument === instrument ? record.minutes : 0), 0));
}

type OfKind = Pick<MinutesOnDay, "minutes" | "notes">;

/** On the day of a concert and the day before it is no longer than that, whatever else the day is for. */
function withConcert(basis: PlanBasis, wished: number, own: OfKind): OfKind {
  const { kind, day } = basis;
  if (!kind.concert || kind.kind === "concert" || kind.kind === "no instrument" || kind.kind === "rest") return own;
  if (kind.concert.declared.on! - day > 1) return own;
  const cut = byKind({ ...basis, kind: { ...kind, kind: "concert" } }, wished);
  if (cut.minutes >= own.minutes) return own;
  return { minutes: cut.minutes, notes: [...byKind(basis, wished, cut.minutes).notes, ...cut.notes] };
}

/** @param most as long as it may be for other reasons; what is said names no more */
function byKind(basis: PlanBasis, wished: number, most = wished): OfKind {
  const { practised, day, isBack } = basis;
  const { kind, because, concert } = basis.kind;
  const part = (share: number): number => Math.min(most, Math.max(UNIT, wholeUnits(wished * share)));
  const cut = (minutes: number, note: string): OfKind => ({ minutes: Math.min(wished, minutes), notes: [note] });
  switch (kind) {
    case "no instrument":
      return { minutes: Math.min(wished, MINUTES_AWAY), notes: [] };
    case "sparing":
      return { minutes: Math.min(wished, part(HALF)), notes: [] };
    case "easing":
      return { minutes: Math.min(wished, part(isBack ? HALF : THREE_QUARTERS)), notes: [] };
    case "return":
      return cut(part(HALF), kindOfDayTexts.firstDayBack(backFrom(basis), timeInWords(part(HALF), wished)));
    case "concert": {
      const ahead = concert!.declared.on! - day;
      if (ahead === 0) return cut(MINUTES_ON_CONCERT_DAY, kindOfDayTexts.concertToday);
      if (ahead === 1) return cut(part(HALF), kindOfDayTexts.concertTomorrow);
      return { minutes: wished, notes: [kindOfDayTexts.concertAhead(ahead)] };
    }
    case "unhurried": {
      if (because === "pushed")
        return {
          minutes: wished,
          notes: [kindOfDayTexts.pushed],
        };
      const off = day - practised.at(-1)! - 1;
      return cut(part(THREE_QUARTERS), kindOfDayTexts.daysOff(off, timeInWords(part(THREE_QUARTERS), wished)));
    }
    case "rest":
    case "usual":
      return { minutes: wished, notes: [] };
  }
}

/** What one comes back from. */
function backFrom({ daysAway }: PlanBasis): string {
  return daysAway === undefined ? kindOfDayTexts.beingIll : kindOfDayTexts.away(timeAway(daysAway));
}

/** `15 minutes instead of 30`; where it is as much as was wished for, a short time. */
export function timeInWords(minutes: number, wished: number): string {
  return minutes < wished ? kindOfDayTexts.insteadOf(minutes, wished) : kindOfDayTexts.shortTime;
}

const HALF = 0.5;
const THREE_QUARTERS = 0.75;
