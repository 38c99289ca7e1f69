import { type DayNumber, mondayOf } from "../journal/calendar.ts";
import { dateInWords, shortDate } from "../journal/date-words.ts";
import type { NoteValue } from "../journal/model.ts";
import { notchesBetween, notesPerMinute, QUARTER } from "../music/notes/note-value.ts";
import { minutesInWords } from "./minute-words.ts";
import { type Trend, testedOf, type Verdict, weeksSince } from "./trend.ts";
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
 * A trend in a sentence, with its range: `up about 1½ notches in four weeks (1 to 2)`. `weeks` are those that it was
 * fitted on: notches of the metronome are counted back from their latest usual tempo, as the player counts it.
 */
export function trendInWords(trend: Trend, weeks: readonly Week[], notation: Notation = {}): string {
  const since = trend.since === undefined ? "" : `, since the return on ${dateInWords(trend.since, readOn(weeks))}`;
  return withRange(trend, weeks, notation) + since;
}

function withRange(trend: Trend, weeks: readonly Week[], notation: Notation): string {
  const moved = movedIn(trend, weeks, notation);
  if (!moved) return standing(trend.verdict);
  const { way, middle, least, most } = moved;
  // What moves is never said to move by nothing, however slowly.
  if (least === 0 || middle === 0)
    return most === 0 ? `${way} ${LITTLE} ${IN}` : `${way} by at most about ${notches(most)} ${IN}`;
  const range = least === most ? "" : ` (${numeral(least)} to ${numeral(most)})`;
  return `${way} about ${notches(middle)} ${IN}${range}`;
}

/** A trend beside others, without its range: `up 1½ notches in four weeks`. */
export function trendInBrief(trend: Trend, weeks: readonly Week[], notation: Notation = {}): string {
  const moved = movedIn(trend, weeks, notation);
  return (moved ? `${inBrief(moved)} ${IN}` : standing(trend.verdict)) + sinceInBrief(trend, weeks);
}

/** The same in a column whose heading says that it is in four weeks: `up 1½ notches`. */
export function trendInColumn(trend: Trend, weeks: readonly Week[], notation: Notation = {}): string {
  const moved = movedIn(trend, weeks, notation);
  return (moved ? inBrief(moved) : standing(trend.verdict)) + sinceInBrief(trend, weeks);
}

/** The same without notches: `up 7.2`, notes a minute in four weeks, for titles beats. */
export function trendInRates(trend: Trend, weeks: readonly Week[]): string {
  const { verdict, slope } = trend;
  const since = sinceInBrief(trend, weeks);
  if ((verdict !== "rising" && verdict !== "falling") || slope === null) return standing(verdict) + since;
  const tenths = Math.round(Math.abs(slope) * WEEKS_TOLD * 10);
  return `${standing(verdict)} ${tenths === 0 ? "less than 0.1" : tenths / 10}${since}`;
}

/** ` since 20 Apr`, where a break cut off what came before. */
function sinceInBrief({ since }: Trend, weeks: readonly Week[]): string {
  return since === undefined ? "" : ` since ${shortDate(since, readOn(weeks))}`;
}

/** A date goes without its year where that is the year of the latest week. */
function readOn(weeks: readonly Week[]): DayNumber {
  return mondayOf(weeks.at(-1)!.index);
}

function inBrief({ way, middle }: Moved): string {
  return `${way} ${middle === 0 ? LITTLE : notches(middle)}`;
}

const WEEKS_TOLD = 4;
const IN = "in four weeks";
const LITTLE = "less than half a notch";

function standing(verdict: Verdict): string {
  const words = { "too early": "too early to say", level: "no clear change", rising: "up", falling: "down" };
  return words[verdict];
}

/** Which way a trend goes, and by how many notches in four weeks: about, at least, and at most; as they are shown. */
interface Moved {
  readonly way: "up" | "down";
  readonly middle: number;
  /** 0 where it is none, or goes the other way. */
  readonly least: number;
  readonly most: number;
}

/** Undefined where nothing moves, or nothing can be said of it. */
function movedIn(
  { verdict, slope, low, high, since }: Trend,
  weeks: readonly Week[],
  notation: Notation,
): Moved | undefined {
  if (verdict !== "rising" && verdict !== "falling") return undefined;
  const now = testedOf(weeksSince(weeks, since)).at(-1)?.usual;
  if (slope === null || now === undefined) return undefined;
  const sign = verdict === "rising" ? 1 : -1;
  const by = (each: number): number => {
    const before = metronomeOf(now - WEEKS_TOLD * each, notation);
    return halves(Math.max(0, sign * notchesBetween(before, metronomeOf(now, notation))));
  };
  const [least, most] = [by(low ?? slope), by(high ?? slope)].sort((a, b) => a - b);
  return { way: sign > 0 ? "up" : "down", middle: by(slope), least: least!, most: most! };
}

/** To the nearest half below 3, as more would be false precision; to a whole from there on. */
function halves(value: number): number {
  return value < 3 ? Math.round(value * 2) / 2 : Math.round(value);
}

/** `half a notch`, `a notch`, `1½ notches`. */
function notches(count: number): string {
  if (count === 0.5) return "half a notch";
  return count === 1 ? "a notch" : `${numeral(count)} notches`;
}

/** `½`, `1`, `1½`. */
function numeral(count: number): string {
  const whole = Math.floor(count);
  return `${whole === 0 ? "" : whole}${count === whole ? "" : "½"}`;
}

/** The best of the latest week that the trend counts, or null. */
export function latestTestedBest(weeks: readonly Week[]): number | null {
  return testedOf(weeks).at(-1)?.bestClean ?? null;
}

/** One line of the table of a strand's weeks, ready to print. */
export interface WeekRow {
  /** ISO 8601: `2026-W45`. */
  readonly week: string;
  /** Its Monday. */
  readonly monday: DayNumber;
  /** In the player's note value; a dash where no tempo was reached. */
  readonly best: string;
  /** The week's number, by which the trend goes; a dash where it has none. */
  readonly usual: string;
  /** `5 of 6` tries; a dash where nothing was said of how they went. */
  readonly reached: string;
  /** What the trend makes of it: `tested`, `slow work`, or nothing. */
  readonly note: string;
  readonly attempts: string;
  /** `20`, or `about 20` where it was shared out (`minutesInWords`). */
  readonly minutes: string;
}

/** The weekly table, in the order of the weeks. */
export function weekRows(weeks: readonly Week[], notation: Notation = {}): WeekRow[] {
  const tempo = (rate: number | null): string =>
    rate === null ? NONE : shown(rate, notation.noteValue, notation.beat);
  return weeks.map((week) => ({
    week: week.week,
    monday: mondayOf(week.index),
    best: tempo(week.bestClean),
    usual: tempo(week.usual),
    reached: week.tries === 0 ? NONE : `${week.reached} of ${week.tries}`,
    note: noteOf(week),
    attempts: String(week.attempts),
    minutes: minutesInWords(week.minutes, week.about),
  }));
}

const NONE = "–";

/** The best of a week for a table without a column for notes: only what keeps it out of the trend is said. */
export function bestWithNote({ best, note }: WeekRow): string {
  return note === SLOW_WORK ? `${best} (${note})` : best;
}

const SLOW_WORK = "slow work";

function noteOf(week: Week): string {
  if (week.bestClean === null) return "";
  return week.tested ? "tested" : SLOW_WORK;
}
