import { type DayNumber, mondayOf } from "../journal/calendar.ts";
import { dateInWords, shortDate } from "../journal/date-words.ts";
import type { NoteValue } from "../journal/model.ts";
import { notchesBetween, notesPerMinute, QUARTER } from "../music/notes/note-value.ts";
import { minutesInWords } from "./minute-words.ts";
import { type Trend, testedOf, type Verdict, weeksSince } from "./trend.ts";
import { trendTexts } from "./trend-texts.ts";
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
  const words = withRange(trend, weeks, notation);
  return trend.since === undefined ? words : trendTexts.sinceReturn(words, dateInWords(trend.since, readOn(weeks)));
}

function withRange(trend: Trend, weeks: readonly Week[], notation: Notation): string {
  const moved = movedIn(trend, weeks, notation);
  if (!moved) return standing(trend.verdict);
  const { way, middle, least, most } = moved;
  // What moves is never said to move by nothing, however slowly.
  if (least === 0 || middle === 0)
    return most === 0
      ? trendTexts.inFourWeeks(trendTexts[way], trendTexts.little)
      : trendTexts.atMost(trendTexts[way], notches(most));
  const by = notches(middle);
  return least === most
    ? trendTexts.about(trendTexts[way], by)
    : trendTexts.aboutBetween(trendTexts[way], by, numeral(least), numeral(most));
}

/** A trend beside others, without its range: `up 1½ notches in four weeks`. */
export function trendInBrief(trend: Trend, weeks: readonly Week[], notation: Notation = {}): string {
  const moved = movedIn(trend, weeks, notation);
  return sinceInBrief(
    moved ? trendTexts.inFourWeeks(trendTexts[moved.way], byOf(moved)) : standing(trend.verdict),
    trend,
    weeks,
  );
}

/** The same in a column whose heading says that it is in four weeks: `up 1½ notches`. */
export function trendInColumn(trend: Trend, weeks: readonly Week[], notation: Notation = {}): string {
  const moved = movedIn(trend, weeks, notation);
  return sinceInBrief(
    moved ? trendTexts.by(trendTexts[moved.way], byOf(moved)) : standing(trend.verdict),
    trend,
    weeks,
  );
}

/** The same without notches: `up 7.2`, notes a minute in four weeks, for titles beats. */
export function trendInRates(trend: Trend, weeks: readonly Week[]): string {
  const { verdict, slope } = trend;
  if ((verdict !== "rising" && verdict !== "falling") || slope === null)
    return sinceInBrief(standing(verdict), trend, weeks);
  const tenths = Math.round(Math.abs(slope) * WEEKS_TOLD * 10);
  const by = tenths === 0 ? trendTexts.lessThanATenth : String(tenths / 10);
  return sinceInBrief(trendTexts.by(standing(verdict), by), trend, weeks);
}

/** With ` since 20 Apr`, where a break cut off what came before. */
function sinceInBrief(words: string, { since }: Trend, weeks: readonly Week[]): string {
  return since === undefined ? words : trendTexts.since(words, shortDate(since, readOn(weeks)));
}

/** A date goes without its year where that is the year of the latest week. */
function readOn(weeks: readonly Week[]): DayNumber {
  return mondayOf(weeks.at(-1)!.index);
}

function byOf({ middle }: Moved): string {
  return middle === 0 ? trendTexts.little : notches(middle);
}

const WEEKS_TOLD = 4;

function standing(verdict: Verdict): string {
  switch (verdict) {
    case "too early":
      return trendTexts.tooEarly;
    case "level":
      return trendTexts.noClearChange;
    case "rising":
      return trendTexts.up;
    case "falling":
      return trendTexts.down;
  }
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
  return trendTexts.notches(count, numeral(count));
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
    reached: week.tries === 0 ? NONE : trendTexts.reachedOf(week.reached, week.tries),
    note: noteOf(week),
    attempts: String(week.attempts),
    minutes: minutesInWords(week.minutes, week.about),
  }));
}

const NONE = "–";

/** The best of a week for a table without a column for notes: only what keeps it out of the trend is said. */
export function bestWithNote(row: WeekRow): string {
  return isSlowWork(row) ? trendTexts.withNote(row.best, row.note) : row.best;
}

export function isSlowWork({ note }: WeekRow): boolean {
  return note === trendTexts.slowWork;
}

function noteOf(week: Week): string {
  if (week.bestClean === null) return "";
  return week.tested ? trendTexts.tested : trendTexts.slowWork;
}
