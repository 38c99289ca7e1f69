import { recordsOfBlock } from "../history/attempts.ts";
import { type Ceiling, ceilingOn } from "../history/ceiling.ts";
import { dayMinutes } from "../history/day-minutes.ts";
import { journalHistory } from "../history/journal-history.ts";
import { compareText } from "../history/record.ts";
import type { Exercise } from "../history/strands.ts";
import {
  BEGIN_AT,
  BREAK_DAYS,
  DAYS_OF_USUAL_MINUTES,
  EXERCISES_WITHIN,
  LEAST_DAYS_OF_MINUTES,
  MINUTES_PLANNED,
  RETURN_DAYS,
  UNIT,
} from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { type Conventions, instrumentOf } from "../journal/conventions.ts";
import { datedBlocks } from "../journal/dated-blocks.ts";
import { type DeclaredLine, declaredLines, ofType } from "../journal/declared-lines.ts";
import type { Journal } from "../journal/journal.ts";
import type { Instrument } from "../music/instruments/instrument.ts";
import { midi } from "../music/notes/note.ts";
import { type DayKind, kindOfDay } from "./kind-of-day.ts";
import type { PlanAsked } from "./plan.ts";
import { type WhatHurt, whatHurt } from "./what-hurt.ts";

/** Everything that a plan is made from: the journal as it was on the morning of a day. */
export interface PlanBasis {
  readonly journal: Journal;
  readonly day: DayNumber;
  /** The file by whose conventions lines are written. */
  readonly uri: string;
  readonly conventions: Conventions;
  /** As records name it; null where the journal names none. */
  readonly instrument: string | null;
  /** What is known of it. */
  readonly played?: Instrument;
  readonly lines: readonly DeclaredLine[];
  /** Those of the instrument. */
  readonly exercises: readonly Exercise[];
  /** The days before this one on which the instrument was practised, in order. */
  readonly practised: readonly DayNumber[];
  readonly ceiling: Ceiling;
  /** The day on which the instrument was taken up after its last break, within twelve weeks. */
  readonly backSince?: DayNumber;
  /** One of the first days after a break, whatever else it is. */
  readonly isBack: boolean;
  /** How many days that break was without practice. */
  readonly daysAway?: number;
  readonly kind: DayKind;
  /** What is left alone, since something hurt there; nothing on days that need no such care. */
  readonly hurt: WhatHurt;
}

export function planBasis(journal: Journal, { day, instrument: asked, settings }: PlanAsked): PlanBasis {
  const uri = latestFile(journal, day);
  const conventions = journal.conventions(uri);
  const all = [...journalHistory(journal).exercises.values()];
  const usual = conventions.instrument;
  const id = asked === undefined ? usual : (ownOfKind(conventions, all, asked) ?? asked);
  const instrument = id === undefined ? mostPlayed(all, day) : (instrumentOf(id, conventions)?.id ?? id);
  const exercises = all.filter((exercise) => exercise.instrument === instrument);
  const practised = daysBefore(exercises, day);
  const lines = declaredLines(journal);
  const daysAway = breakBefore(practised, day);
  const isBack = daysAway !== undefined;
  const ceiling = withReturn(ceilingOn(journal, day, instrument), isBack);
  const kind = kindOfDay({
    day,
    isRest: isRest(journal, day),
    ceiling,
    concerts: ofType(lines, "concert"),
    practised,
    exercises,
    unhurriedDays: settings.unhurriedDays,
  });
  const played = instrument === null ? undefined : instrumentOf(instrument, conventions);
  return {
    journal,
    day,
    uri,
    conventions,
    instrument,
    ...(played ? { played } : {}),
    lines,
    exercises,
    practised,
    ceiling,
    isBack,
    ...(isBack ? { daysAway } : {}),
    ...backSince(practised, day),
    kind,
    hurt: whatHurt(journal, day),
  };
}

/** How many days without practice the last break had, where it ended so few practised days ago or ends on this day. */
function breakBefore(practised: readonly DayNumber[], day: DayNumber): number | undefined {
  const days = [...practised.slice(-RETURN_DAYS), day];
  const without = days.map((each, i) => (i > 0 ? each - days[i - 1]! - 1 : 0));
  return without.findLast((count) => count >= BREAK_DAYS);
}

function backSince(practised: readonly DayNumber[], day: DayNumber): Pick<PlanBasis, "backSince"> {
  const since = practised.findLast((each, i) => i > 0 && each - practised[i - 1]! > BREAK_DAYS);
  return since === undefined || since < day - EXERCISES_WITHIN ? {} : { backSince: since };
}

/** After pain and a break at once the lower limit holds. */
function withReturn(ceiling: Ceiling, isBack: boolean): Ceiling {
  if (!isBack || ceiling.share === undefined) return ceiling;
  return { ...ceiling, share: Math.min(ceiling.share, BEGIN_AT) };
}

/**
 * The player's own instrument of a kind that is asked for by the kind's name: `"new piccolo"` where nothing is played
 * on another piccolo.
 */
function ownOfKind(conventions: Conventions, all: readonly Exercise[], asked: string): string | undefined {
  const kind = instrumentOf(asked, conventions);
  if (!kind || kind.family === "declared" || all.some(({ instrument }) => instrument === kind.id)) return undefined;
  const isOfKind = ({ family, low, high }: Instrument): boolean =>
    family === kind.family && midi(low) === midi(kind.low) && midi(high) === midi(kind.high);
  return [...conventions.instruments.values()].find((own) => own.id !== kind.id && isOfKind(own))?.id;
}

/** The file of the latest day, or the first there is; the conventions of none where the journal is empty. */
function latestFile(journal: Journal, day: DayNumber): string {
  return datedBlocks(journal, Number.NEGATIVE_INFINITY, day)[0]?.uri ?? journal.addresses[0] ?? journal.root;
}

/** Where none is declared: the one that was practised on most days lately; of equals by name. */
function mostPlayed(exercises: readonly Exercise[], day: DayNumber): string | null {
  const days = new Map<string | null, Set<DayNumber>>();
  for (const { instrument, lastDay, strands } of exercises) {
    if (lastDay < day - EXERCISES_WITHIN) continue;
    const own = days.get(instrument) ?? new Set();
    days.set(instrument, own);
    for (const { records } of strands)
      for (const record of records) if (record.day < day && record.day >= day - EXERCISES_WITHIN) own.add(record.day);
  }
  const most = [...days].sort(([a, own], [b, other]) => other.size - own.size || compareText(a ?? "", b ?? ""))[0];
  return most?.[0] ?? null;
}

function daysBefore(exercises: readonly Exercise[], day: DayNumber): readonly DayNumber[] {
  const days = new Set<DayNumber>();
  for (const { strands } of exercises)
    for (const { records } of strands) for (const record of records) if (record.day < day) days.add(record.day);
  return [...days].sort((a, b) => a - b);
}

function isRest(journal: Journal, day: DayNumber): boolean {
  return datedBlocks(journal, day, day).some(({ block }) => {
    const { day: frame, lines } = journal.model(block);
    return frame?.rest !== undefined || lines.some(({ type }) => type === "rest");
  });
}

/**
 * The minutes that a player usually practises: the middle of the last practised days that say how long they were, down
 * to whole units.
 */
export function usualMinutes({ journal, day, practised }: PlanBasis): number {
  const last = new Set(practised.slice(-DAYS_OF_USUAL_MINUTES));
  const [first] = last;
  if (first === undefined) return MINUTES_PLANNED.unknown;
  const byDay = new Map<DayNumber, number>();
  for (const { day: date, block } of datedBlocks(journal, first, day - 1)) {
    if (!last.has(date)) continue;
    const minutes = dayMinutes(journal.model(block)).phases.reduce((sum, phase) => sum + phase.minutes, 0);
    byDay.set(date, (byDay.get(date) ?? 0) + minutes);
  }
  const told = [...byDay.values()].filter((minutes) => minutes > 0).sort((a, b) => a - b);
  if (told.length < LEAST_DAYS_OF_MINUTES) return MINUTES_PLANNED.unknown;
  const half = told.length / 2;
  const middle = (told[Math.floor(half - 0.5)]! + told[Math.ceil(half - 0.5)]!) / 2;
  return Math.max(MINUTES_PLANNED.least, Math.min(MINUTES_PLANNED.most, wholeUnits(middle)));
}

/** Down to a multiple of five minutes. */
export function wholeUnits(minutes: number): number {
  return Math.floor((minutes + 1e-9) / UNIT) * UNIT;
}

/** What was played on the day itself, by the keys of exercises and of strands, and whether it was at all. */
export function playedOnDay({ journal, day }: PlanBasis): ReadonlySet<string> {
  const keys = new Set<string>();
  for (const { uri, block } of datedBlocks(journal, day, day))
    for (const { exerciseKey, strandKey } of recordsOfBlock(journal, uri, block)) keys.add(exerciseKey).add(strandKey);
  return keys;
}
