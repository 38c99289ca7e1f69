import type { TimeAxis } from "./time-axis.ts";
import { weekTexts } from "./week-texts.ts";

/** The minutes of each week of a span, by phase. Minutes that are no positive number count for nothing. */
export interface WeekBars {
  readonly title: string;
  readonly span: TimeAxis;
  /** One for each week of the span; by phase, of which an empty name is time under none. */
  readonly weeks: readonly ReadonlyMap<string, number>[];
}

/** The minutes by the tones that they are drawn in, the lowest first. */
export interface TonedWeeks {
  readonly tones: readonly Tone[];
  /** Of each week, the minutes of each tone. */
  readonly weeks: readonly (readonly number[])[];
  /** Of the longest week. */
  readonly most: number;
}

export interface Tone {
  readonly name: string;
  /** Which of the five it is, the fullest first. */
  readonly tone: number;
}

/** So many phases have a tone of their own. */
const NAMED = 3;
const OTHERS = { name: weekTexts.others, tone: 3 };
const NOT_DIVIDED = { name: weekTexts.notDivided, tone: 4 };
const MINUTES_OF_A_WEEK = 7 * 24 * 60;

/** The three phases with most minutes by name, the others together, and what is not divided. */
export function tonedWeeks({ weeks }: WeekBars): TonedWeeks {
  const sums = new Map<string, number>();
  for (const week of weeks)
    for (const [phase, minutes] of week) sums.set(phase, (sums.get(phase) ?? 0) + countable(minutes));
  const phases = [...sums]
    .filter(([phase, sum]) => phase !== "" && sum > 0)
    .sort(([a, most], [b, fewer]) => fewer - most || (a < b ? -1 : 1))
    .map(([phase]) => phase);
  const named = phases.slice(0, NAMED);
  const tones: Tone[] = named.map((name, tone) => ({ name, tone }));
  if (phases.length > NAMED) tones.push(OTHERS);
  if ((sums.get("") ?? 0) > 0) tones.push(NOT_DIVIDED);
  const toneOf = (phase: string) => {
    const own = named.indexOf(phase);
    return own >= 0 ? own : tones.indexOf(phase === "" ? NOT_DIVIDED : OTHERS);
  };
  const toned = weeks.map((week) => {
    const minutes = tones.map(() => 0);
    for (const [phase, each] of week) if (countable(each) > 0) minutes[toneOf(phase)]! += countable(each);
    return minutes;
  });
  return { tones, weeks: toned, most: Math.max(0, ...toned.map(sum)) };
}

export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function countable(minutes: number): number {
  return minutes > 0 ? Math.min(minutes, MINUTES_OF_A_WEEK) : 0;
}
