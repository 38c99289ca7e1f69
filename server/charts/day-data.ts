import { MOST_PHASES } from "./phase-fill.ts";

/** The minutes of one week by day and phase. Minutes that are no positive number count for nothing. */
export interface DayBars {
  /** `Week 10`. */
  readonly title: string;
  /** The phases in the order to stack them, the lowest first; an empty name is time under no phase. */
  readonly phases: readonly string[];
  /** Seven, Monday first. */
  readonly days: readonly DayMinutes[];
  /** Last week's minutes on each of the seven days, Monday first; left out where there was no such week. */
  readonly lastWeek?: readonly number[];
}

export interface DayMinutes {
  /** `Mon`. */
  readonly label: string;
  /** Of each phase, in their order. */
  readonly minutes: readonly number[];
  /** Some of them were shared out, not written. */
  readonly about?: boolean;
  /** What is said of a day without minutes: `rest`. */
  readonly note?: string;
}

/** The week as it is drawn: phases without minutes left out, and no more of them than can be told apart. */
export interface WeekByDay {
  readonly phases: readonly string[];
  readonly days: readonly Day[];
  /** The minutes of the longest day, this week or last. */
  readonly most: number;
}

export interface Day {
  readonly label: string;
  /** Of each of the week's phases, the lowest first. */
  readonly minutes: readonly number[];
  readonly total: number;
  /** On the same weekday last week. */
  readonly lastWeek: number;
  readonly about: boolean;
  readonly note: string;
}

const OTHER = "other";
const NO_PHASE = "no phase";

export function weekByDay(data: DayBars): WeekByDay {
  const kept = phasesKept(data);
  const rest = data.phases.map((_, phase) => phase).filter((phase) => !kept.includes(phase));
  const hasRest = rest.some((phase) => minutesIn(data, phase) > 0);
  const days = data.days.map((day, place) => {
    const all = data.phases.map((_, phase) => countable(day.minutes[phase]));
    const other = sum(rest.map((phase) => all[phase]!));
    const minutes = [...kept.map((phase) => all[phase]!), ...(hasRest ? [other] : [])];
    const { label, about = false, note = "" } = day;
    return { label, minutes, total: sum(minutes), lastWeek: countable(data.lastWeek?.[place]), about, note };
  });
  const names = kept.map((phase) => data.phases[phase]! || NO_PHASE);
  return {
    phases: [...names, ...(hasRest ? [OTHER] : [])],
    days,
    most: Math.max(0, ...days.flatMap(({ total, lastWeek }) => [total, lastWeek])),
  };
}

/** The places of the phases that have minutes; where there are too many, of those with most. */
function phasesKept(data: DayBars): number[] {
  const worked = data.phases.map((_, phase) => phase).filter((phase) => minutesIn(data, phase) > 0);
  if (worked.length <= MOST_PHASES) return worked;
  const most = [...worked].sort((a, b) => minutesIn(data, b) - minutesIn(data, a) || a - b).slice(0, MOST_PHASES - 1);
  return most.sort((a, b) => a - b);
}

function minutesIn({ days }: DayBars, phase: number): number {
  return sum(days.map(({ minutes }) => countable(minutes[phase])));
}

/** Nobody practises longer than a day on one day, and what is no number is none. */
function countable(minutes: number | undefined): number {
  return minutes !== undefined && minutes > 0 ? Math.min(minutes, MINUTES_OF_A_DAY) : 0;
}

const MINUTES_OF_A_DAY = 24 * 60;

export function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
