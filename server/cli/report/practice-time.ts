import { type DayTime, dayMinutes } from "../../history/day-minutes.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { datedBlocks } from "../../journal/dated-blocks.ts";
import type { Journal } from "../../journal/journal.ts";
import type { DaysAsked } from "./days-asked.ts";

/** Minutes, and whether some of them were shared out, not written. */
export interface Minutes {
  readonly minutes: number;
  readonly about: boolean;
}

/** A day that was not only planned. */
export interface TimedDay {
  readonly day: DayNumber;
  /** All of it; null where the day says nothing of minutes. */
  readonly minutes: number | null;
  /** By phase; an empty name is time under none. */
  readonly phases: ReadonlyMap<string, Minutes>;
}

export interface PracticeTime {
  /** The earliest first, each date once. */
  readonly days: readonly TimedDay[];
  /** The phases in the order in which they first came; time under none, an empty name, comes last. */
  readonly phases: readonly string[];
}

/** The minutes of some days by phase. */
export function practiceTime(journal: Journal, { since, until }: DaysAsked): PracticeTime {
  const byDay = new Map<DayNumber, Map<string, Minutes>>();
  const rests = new Set<DayNumber>();
  for (const { day, block } of [...datedBlocks(journal, since, until)].sort((a, b) => a.day - b.day)) {
    const model = journal.model(block);
    const time = dayMinutes(model);
    const isRest = model.day?.rest !== undefined;
    if (isRest) rests.add(day);
    if (!isRest && time.phases.length === 0 && model.entries.every(({ planned }) => planned)) continue;
    const own = byDay.get(day) ?? new Map<string, Minutes>();
    byDay.set(day, own);
    addTime(own, time);
  }
  const days = [...byDay].map(([day, phases]) => ({ day, phases, minutes: minutesOf(phases, rests.has(day)) }));
  const names = new Set(days.flatMap(({ phases }) => [...phases.keys()]));
  const isNamed = (name: string) => name !== "";
  return { days, phases: [...[...names].filter(isNamed), ...(names.has("") ? [""] : [])] };
}

function addTime(own: Map<string, Minutes>, { phases }: DayTime): void {
  for (const { phase, ...time } of phases) own.set(phase, sumOf([...(own.has(phase) ? [own.get(phase)!] : []), time]));
}

function minutesOf(phases: ReadonlyMap<string, Minutes>, isRest: boolean): number | null {
  return phases.size === 0 && !isRest ? null : sumOf([...phases.values()]).minutes;
}

export function sumOf(all: readonly Minutes[]): Minutes {
  return {
    minutes: all.reduce((sum, { minutes }) => sum + minutes, 0),
    about: all.some(({ about, minutes }) => about && minutes > 0),
  };
}
