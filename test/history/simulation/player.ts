import { METRONOME_STEPS } from "../../../server/music/notes/note-value.ts";
import { normal } from "../random.ts";

/**
 * What an invented player writes down of a sitting.
 *
 * - `climbs`: goes up mark by mark until one is not reached, and notes the last that was and the one that was not.
 * - `reached only`: does the same, and notes only the mark that was reached.
 * - `comfortable`: keeps to a tempo that is set anew every four weeks, to nine tenths of what is possible then, and
 *   notes whether it was reached.
 * - `moves on`: works at one mark, the next one after it was reached and the one below after it was not; notes it, and
 *   where it was not reached the mark below as well.
 * - `cautious first`: keeps to nine tenths of what is possible for the first third of the course, then climbs.
 */
export type Habit = "climbs" | "reached only" | "comfortable" | "moves on" | "cautious first";

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
  /** The last: one in the first half of the course, five in the second. */
  readonly daysAWeek: 1 | 3 | "1, later 5";
  /** Four weeks off in a row, and of the others 15 in a hundred; or six weeks of ten off. */
  readonly gaps: boolean | "six in ten";
  /** Every sixth week or so, or every third, is practised at 0.7 of what is possible, and nothing fails in it. */
  readonly slowWeeks: boolean | "a third" | "two thirds";
  /** The form goes up and down over months: it keeps nine tenths of what it was, with a deviation of 0.02 a week. */
  readonly wanders: boolean;
  /**
   * Weeks that go otherwise than the rest; left out where none do.
   *
   * - `levels off`: nothing is gained in the last 14 weeks.
   * - `six weeks off`: none of weeks 11 to 16 is practised, the first being 0; nothing is gained in them, and nothing lost.
   * - `comes back lower`: the same, level before, and 12 % lower on the first day back, from where the gain begins.
   */
  readonly course?: "levels off" | "six weeks off" | "comes back lower";
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
const DAYS = { 1: [2], 3: [0, 2, 5], 5: [0, 1, 2, 4, 5] } as const;
const KEPT_OF_FORM = 0.9;
const CHANGE_OF_FORM = 0.02;

/** The tempo that is as often reached as not, in quarters a minute, when `lowest` is the lowest of the course. */
export function levelOf(player: Player, lowest: number, week: number): number {
  const { gain, growth, weeks, course } = player;
  if (course !== undefined) return lowest * levelIn(course, player, week);
  const steps = gain < 0 ? weeks - 1 - week : week;
  const part = Math.abs(gain) / 100;
  return lowest * (growth === "line" ? 1 + part * steps : (1 + part) ** steps);
}

const WEEKS_LEVEL = 14;
const [OFF_FROM, BACK_FROM] = [11, 17];
const LOWER = 0.88;

/** As a part of the tempo of the first week. */
function levelIn(course: NonNullable<Player["course"]>, { gain, weeks }: Player, week: number): number {
  const part = gain / 100;
  if (course === "levels off") return 1 + part * Math.min(week, weeks - WEEKS_LEVEL);
  const back = week - BACK_FROM;
  if (course === "six weeks off") return 1 + part * (back < 0 ? Math.min(week, OFF_FROM - 1) : OFF_FROM + back);
  return back < 0 ? 1 : LOWER * (1 + part * back);
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
  const off = weeksOff(player, random);
  const state = { mark: settingAtOrBelow(player, levelOf(player, lowest, 0)), form: 0 };
  return Array.from({ length: player.weeks }, (_, week) => week).flatMap((week) => {
    const slow = player.slowWeeks !== false && random() < SLOW_WEEKS[String(player.slowWeeks)]!;
    if (player.wanders) state.form = KEPT_OF_FORM * state.form + CHANGE_OF_FORM * normal(random);
    return off.has(week) ? [] : weekOf(player, { lowest, week, slow, state }, random);
  });
}

const SLOW_WEEKS: Readonly<Record<string, number>> = { true: 1 / 6, "a third": 1 / 3, "two thirds": 2 / 3 };

/** What a player takes along from week to week: the mark that is worked at, and how far the form is off, in logarithms. */
interface State {
  mark: number;
  form: number;
}

/** The days on which a week is practised, from Monday, 0, on; an odd number of them. */
export function daysOf({ daysAWeek, weeks }: Player, week: number): readonly number[] {
  return DAYS[daysAWeek === "1, later 5" ? (week < weeks / 2 ? 1 : 5) : daysAWeek];
}

interface PlayedWeek {
  readonly lowest: number;
  readonly week: number;
  readonly slow: boolean;
  readonly state: State;
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
  const slow = Array.from(chosen, (week) =>
    weekOf(player, { lowest, week, slow: true, state: { mark: 0, form: 0 } }, random),
  ).flat();
  return [...sittings, ...slow].sort((a, b) => a.day - b.day);
}

function weeksOff({ weeks, gaps, course }: Player, random: () => number): Set<number> {
  if (course === "six weeks off" || course === "comes back lower")
    return new Set(Array.from({ length: BACK_FROM - OFF_FROM }, (_, i) => OFF_FROM + i));
  if (gaps === false) return new Set();
  const gap = Math.floor((weeks - 3) * random());
  const off = new Set(gaps === true ? [gap, gap + 1, gap + 2, gap + 3] : []);
  for (let week = 0; week < weeks; week++) if (random() < (gaps === true ? 0.15 : 0.6)) off.add(week);
  return off;
}

function weekOf(player: Player, played: PlayedWeek, random: () => number): Sitting[] {
  const { lowest, week, slow, state } = played;
  return daysOf(player, week).map((day) => {
    const possible = levelOf(player, lowest, week) * Math.exp(state.form + player.noise * normal(random));
    const attempts = slow
      ? [{ bpm: settingAtOrBelow(player, SLOW * possible), reached: true }]
      : attemptsOf(player, played, possible);
    return { week, day: 7 * week + day, attempts };
  });
}

function attemptsOf(player: Player, { lowest, week, state }: PlayedWeek, possible: number): Sitting["attempts"] {
  const { habit, metronome, weeks } = player;
  const comfortable = comfortableTempo(player, lowest, week);
  if (habit === "comfortable") return [{ bpm: comfortable, reached: comfortable <= possible }];
  if (habit === "moves on") return atMark(player, state, possible);
  if (habit === "cautious first" && week < weeks / 3)
    return [{ bpm: settingAtOrBelow(player, COMFORTABLE * possible), reached: true }];
  const settings = SETTINGS[metronome];
  const place = placeAtOrBelow(settings, possible);
  const reached = { bpm: settings[place]!, reached: true };
  const next = settings[place + 1];
  if (habit === "reached only" || next === undefined) return [reached];
  return [reached, { bpm: next, reached: false }];
}

/** The mark that is worked at, where it fails the one below as well; then the next one, or that. */
function atMark({ metronome }: Player, state: State, possible: number): Sitting["attempts"] {
  const settings = SETTINGS[metronome];
  const [at, bpm] = [settings.indexOf(state.mark), state.mark];
  const below = settings[at - 1];
  if (bpm <= possible) {
    state.mark = settings[at + 1] ?? bpm;
    return [{ bpm, reached: true }];
  }
  if (below === undefined) return [{ bpm, reached: false }];
  state.mark = below;
  return [
    { bpm, reached: false },
    { bpm: below, reached: below <= possible },
  ];
}

function oneOf<T>(all: readonly T[], random: () => number): T {
  return all[Math.floor(all.length * random())]!;
}
