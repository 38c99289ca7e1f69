import type { NoteValue } from "../journal/model.ts";
import { METRONOME_STEPS, notesPerMinute, QUARTER } from "../music/notes/note-value.ts";
import { type Trend, WEEKS_FOR_A_TREND } from "./trend.ts";
import type { Week } from "./weeks.ts";

/**
 * How a player writes a rate: so many beats a minute of `beat`, playing notes of `noteValue`. With no note value one
 * note is played to a beat, as in a title, whose rates are beats a minute already. The beat is a quarter unless said.
 */
export interface Notation {
  readonly noteValue?: NoteValue | null;
  readonly beat?: NoteValue;
}

/** Notes a minute as the beats a minute that the metronome is set to. */
export function metronomeOf(rate: number, { noteValue, beat = QUARTER }: Notation): number {
  return noteValue ? rate / notesPerMinute(1, beat, noteValue) : rate;
}

/**
 * A rate in the player's note value, to at most one decimal: 144 notes a minute in 8ths is `72`, the number that
 * stands behind `8ths at`.
 */
export function shown(rate: number, noteValue: NoteValue | null = null, beat: NoteValue = QUARTER): string {
  return String(Math.round(metronomeOf(rate, { noteValue, beat }) * 10) / 10);
}

/**
 * A trend as a player says it: `rising by about 2 metronome marks a week, 1 to 3`. `weeks` are those that the trend
 * was fitted on: a mark is as wide as the metronome's steps are at their latest tested best. A slow trend is told over
 * four or thirteen weeks, so that it is a whole mark.
 */
export function trendInWords(trend: Trend, weeks: readonly Week[], notation: Notation = {}): string {
  if (trend.verdict === "too early") return `too early to say: ${tooFew(trend.weeks)}`;
  if (trend.verdict === "level") return "level";
  const { slope, low, high } = trend;
  const best = latestTestedBest(weeks);
  if (slope === null || low === null || high === null || best === null) return trend.verdict;
  const perMark = stepAt(metronomeOf(best, notation)) / metronomeOf(1, notation);
  const ends = [Math.abs(low), Math.abs(high)].sort((a, b) => a - b);
  return `${trend.verdict} by ${pace(Math.abs(slope) / perMark, ends[0]! / perMark, ends[1]! / perMark)}`;
}

/** The best of the latest week that the trend counts, or null. */
export function latestTestedBest(weeks: readonly Week[]): number | null {
  return weeks.findLast((week) => week.tested && week.bestClean !== null)?.bestClean ?? null;
}

const FRAMES = [
  { weeks: 1, words: "a week" },
  { weeks: 4, words: "in four weeks" },
  { weeks: 13, words: "in 13 weeks" },
] as const;

/** Metronome marks a week, in the shortest frame that makes a whole one of them. */
function pace(middle: number, low: number, high: number): string {
  const frame = FRAMES.find(({ weeks }) => middle * weeks >= 0.75);
  if (!frame) return `less than 1 metronome mark ${FRAMES.at(-1)!.words}`;
  const [about, from, to] = [middle, low, high].map((marks) => halves(marks * frame.weeks));
  const range = from === to ? "" : `, ${from === "0" ? "almost none" : from} to ${to}`;
  return `about ${about} metronome ${about === "1" ? "mark" : "marks"} ${frame.words}${range}`;
}

/** To the nearest half below 3, as more would be false precision; to a whole from there on. */
function halves(value: number): string {
  return String(value < 3 ? Math.round(value * 2) / 2 : Math.round(value));
}

/** How far it is from one metronome mark to the next at this tempo; beyond the scale, as at its end. */
function stepAt(bpm: number): number {
  const above = METRONOME_STEPS.findIndex((step) => step > bpm);
  const upper = above === -1 ? METRONOME_STEPS.length - 1 : Math.max(1, above);
  return METRONOME_STEPS[upper]! - METRONOME_STEPS[upper - 1]!;
}

const COUNT_WORDS = ["no", "one", "two", "three", "four"] as const;

function tooFew(weeks: number): string {
  const counted = weeks === 0 ? "no tested week yet" : `${COUNT_WORDS[weeks]} tested ${weeks === 1 ? "week" : "weeks"}`;
  return `${counted}, it takes ${COUNT_WORDS[WEEKS_FOR_A_TREND]}`;
}

/** One line of the table of a strand's weeks, ready to print. */
export interface WeekRow {
  readonly week: string;
  /** In the player's note value; a dash where no tempo was reached. */
  readonly best: string;
  /** What the trend makes of it: `tested`, `worked below best`, or nothing. */
  readonly note: string;
  readonly attempts: string;
  /** `20`, or `about 20` where it was shared out. */
  readonly minutes: string;
}

/** The headings of the table, in the order of a row's fields. */
export const WEEK_HEADINGS = ["Week", "Best", "", "Attempts", "Minutes"] as const;

/** The weekly table, in the order of the weeks. */
export function weekRows(weeks: readonly Week[], notation: Notation = {}): WeekRow[] {
  return weeks.map((week) => ({
    week: week.week,
    best: week.bestClean === null ? "–" : shown(week.bestClean, notation.noteValue, notation.beat),
    note: noteOf(week),
    attempts: String(week.attempts),
    minutes: `${week.about ? "about " : ""}${Math.round(week.minutes)}`,
  }));
}

/** The best of a week for a table without a column for notes: only what keeps it out of the trend is said. */
export function bestWithNote({ best, note }: WeekRow): string {
  return note === BELOW_BEST ? `${best} (${note})` : best;
}

const BELOW_BEST = "worked below best";

function noteOf(week: Week): string {
  if (week.bestClean === null) return "";
  return week.tested ? "tested" : BELOW_BEST;
}
