import { METRONOME_STEPS } from "../../../server/music/notes/note-value.ts";
import { normal } from "../random.ts";

/**
 * What an invented player writes down of a sitting.
 *
 * - `climbs`: goes up mark by mark until one is not reached, and notes the last that was and the one that was not.
 * - `reached only`: does the same, and notes only the mark that was reached.
 * - `comfortable`: keeps to a tempo that is set anew every four weeks, to nine tenths of what is possible then, and
 *   notes whether it was reached.
 */
export type Habit = "climbs" | "reached only" | "comfortable";

/** An invented player whose truth is known. What real players do may differ: the shapes here are assumptions. */
export interface Player {
  readonly habit: Habit;
  /** How much the tempo that is possible changes in a week, in per cent; a falling course is a rising one backwards. */
  readonly gain: number;
  /** The per cent are those of the lowest tempo of the course, a straight line; or those of the week before. */
  readonly growth: "line" | "compound";
  /** How the ability of a day swings about that line: the standard deviation of its logarithm, so 0.05 for 5 %. */
  readonly noise: number;
  /** From the first to the last, weeks without practice counted. */
  readonly weeks: number;
  readonly daysAWeek: 1 | 3;
  /** Four weeks off in a row, and of the others 15 in a hundred. */
  readonly gaps: boolean;
  /** Every sixth week or so is practised at 0.7 of what is possible, and nothing fails in it. */
  readonly slowWeeks: boolean;
  /** What the metronome can be set to: the usual marks, every whole number, or every tenth, so finely that steps do not count. */
  readonly metronome: "marks" | "whole numbers" | "tenths";
}

/** One day's attempts at the one exercise that the player has. */
export interface Sitting {
  readonly week: number;
  /** Days after the Monday of the first week. */
  readonly day: number;
  readonly attempts: readonly { readonly bpm: number; readonly reached: boolean }[];
}

/** In quarters a minute, rising. */
export const SETTINGS: Readonly<Record<Player["metronome"], readonly number[]>> = {
  marks: METRONOME_STEPS,
  "whole numbers": Array.from({ length: 271 }, (_, i) => 30 + i),
  tenths: Array.from({ length: 2701 }, (_, i) => (300 + i) / 10),
};

const SLOW = 0.7;
const COMFORTABLE = 0.9;
const WEEKS_A_TEMPO = 4;
const DAYS = { 1: [2], 3: [0, 2, 5] } as const;

/** The tempo that is as often reached as not, in quarters a minute, when `lowest` is the lowest of the course. */
export function levelOf({ gain, growth, weeks }: Player, lowest: number, week: number): number {
  const steps = gain < 0 ? weeks - 1 - week : week;
  const part = Math.abs(gain) / 100;
  return lowest * (growth === "line" ? 1 + part * steps : (1 + part) ** steps);
}

/** The place of the highest setting at or below a tempo; of the lowest one when all are above. They rise. */
function placeAtOrBelow(settings: readonly number[], bpm: number): number {
  let [below, above] = [0, settings.length];
  while (above - below > 1) {
    const middle = (below + above) >> 1;
    if (settings[middle]! <= bpm) below = middle;
    else above = middle;
  }
  return below;
}

function settingAtOrBelow({ metronome }: Player, bpm: number): number {
  return SETTINGS[metronome][placeAtOrBelow(SETTINGS[metronome], bpm)]!;
}

/** The tempo that a player who keeps to a comfortable one has set for a week. */
export function comfortableTempo(player: Player, lowest: number, week: number): number {
  const setIn = week - (week % WEEKS_A_TEMPO);
  return settingAtOrBelow(player, COMFORTABLE * levelOf(player, lowest, setIn));
}

/** A whole course of practice, oldest first. */
export function practiceOf(player: Player, lowest: number, random: () => number): Sitting[] {
  const off = player.gaps ? weeksOff(player.weeks, random) : new Set<number>();
  return Array.from({ length: player.weeks }, (_, week) => week).flatMap((week) => {
    const slow = player.slowWeeks && random() < 1 / 6;
    return off.has(week) ? [] : weekOf(player, lowest, week, slow, random);
  });
}

/**
 * The course again with one to three weeks more, practised at 0.7 of what is possible: weeks that were off before, or
 * among the three that come after the last.
 */
export function withSlowWeeks(
  sittings: readonly Sitting[],
  player: Player,
  lowest: number,
  random: () => number,
): Sitting[] {
  const practised = new Set(sittings.map(({ week }) => week));
  const free = Array.from({ length: player.weeks + 3 }, (_, week) => week).filter((week) => !practised.has(week));
  const chosen = new Set<number>();
  for (let wanted = 1 + Math.floor(3 * random()); chosen.size < wanted; ) chosen.add(oneOf(free, random));
  const slow = Array.from(chosen, (week) => weekOf(player, lowest, week, true, random)).flat();
  return [...sittings, ...slow].sort((a, b) => a.day - b.day);
}

function weeksOff(weeks: number, random: () => number): Set<number> {
  const gap = Math.floor((weeks - 3) * random());
  const off = new Set([gap, gap + 1, gap + 2, gap + 3]);
  for (let week = 0; week < weeks; week++) if (random() < 0.15) off.add(week);
  return off;
}

function weekOf(player: Player, lowest: number, week: number, slow: boolean, random: () => number): Sitting[] {
  return DAYS[player.daysAWeek].map((day) => {
    const possible = levelOf(player, lowest, week) * Math.exp(player.noise * normal(random));
    const attempts = slow
      ? [{ bpm: settingAtOrBelow(player, SLOW * possible), reached: true }]
      : attemptsOf(player, comfortableTempo(player, lowest, week), possible);
    return { week, day: 7 * week + day, attempts };
  });
}

function attemptsOf({ habit, metronome }: Player, comfortable: number, possible: number): Sitting["attempts"] {
  if (habit === "comfortable") return [{ bpm: comfortable, reached: comfortable <= possible }];
  const settings = SETTINGS[metronome];
  const place = placeAtOrBelow(settings, possible);
  const reached = { bpm: settings[place]!, reached: true };
  const next = settings[place + 1];
  if (habit === "reached only" || next === undefined) return [reached];
  return [reached, { bpm: next, reached: false }];
}

function oneOf<T>(all: readonly T[], random: () => number): T {
  return all[Math.floor(all.length * random())]!;
}
