import { rateAsWritten } from "../history/exercise-row.ts";
import { type AttemptRecord, inTimeOrder } from "../history/record.ts";
import { type Exercise, type Strand, strandName } from "../history/strands.ts";
import { type Trend, trendOf } from "../history/trend.ts";
import type { Week } from "../history/weeks.ts";
import { metronomeOf, type Notation, trendInWords, weekRows } from "../history/words.ts";
import { isoDate } from "../journal/calendar.ts";
import type { DayNumber } from "../journal/model.ts";
import { sentenceCase } from "./explain.ts";
import { escapeMarkdown, markdownTable } from "./markdown.ts";
import { startTempo } from "./start-tempo.ts";

/** How far back the trend looks, in ISO weeks. */
const TREND_WEEKS = 26;
/** The most rows of the table: the latest weeks. */
const TABLE_WEEKS = 12;

/** What a line practises, in the words of the records. */
export interface Practised {
  /** `straight` where a scale names no pattern; null for titles. */
  readonly pattern: string | null;
  readonly instrument: string | null;
  readonly movement: string | null;
  readonly where: string | null;
}

/** What the history says of one exercise: what went before, and how the strand of the line moves. */
export interface ExerciseHistory {
  readonly strand: Strand;
  /** How the line writes its tempos, or the strand where the line has none. */
  readonly notation: Notation;
  /** The latest record of the exercise from before the line, of another line. */
  readonly before?: AttemptRecord;
}

/** The exercise that a line belongs to: that of its own records, or the one that is called alike. */
export function exerciseHistory(
  exercises: readonly Exercise[],
  own: readonly AttemptRecord[],
  practised: Practised,
  today: DayNumber,
): ExerciseHistory | undefined {
  const first = own[0];
  const strand = first ? strandOfLine(exercises, first) : strandCalled(exercises, practised);
  if (!strand) return undefined;
  const exercise = exercises.find((each) => each.strands.includes(strand))!;
  const earlier = exercise.strands
    .flatMap((each) => each.records)
    .filter(({ day }) => day <= today)
    .filter((record) => !first || (inTimeOrder(record, first) < 0 && !isSameLine(record, first)));
  const before = earlier.reduce<AttemptRecord | undefined>(
    (latest, record) => (!latest || inTimeOrder(latest, record) < 0 ? record : latest),
    undefined,
  );
  const written = own.find(({ rate }) => rate !== null) ?? strand.records.findLast(({ rate }) => rate !== null);
  return { strand, before, notation: { noteValue: written?.noteValue, beat: written?.beat } };
}

function isSameLine(a: AttemptRecord, b: AttemptRecord): boolean {
  return a.block === b.block && a.line === b.line;
}

function strandOfLine(exercises: readonly Exercise[], own: AttemptRecord): Strand | undefined {
  return exercises
    .flatMap((each) => each.strands)
    .find((strand) => strand.records.some((record) => isSameLine(record, own)));
}

function strandCalled(
  exercises: readonly Exercise[],
  { pattern, instrument, movement, where }: Practised,
): Strand | undefined {
  const alike = exercises.filter((each) => each.pattern === pattern);
  const exercise = alike.find((each) => each.instrument === instrument) ?? alike[0];
  return (
    exercise?.strands.find((strand) => strand.title && strand.movement === movement && strand.where === where) ??
    exercise?.strands[0]
  );
}

/** Where to start today, the weeks and the trend of a strand, as paragraphs of Markdown. */
export function historyInMarkdown(
  { strand, notation }: ExerciseHistory,
  weeks: readonly Week[],
  today: DayNumber,
): readonly string[] {
  return [
    ...startOf(strand, notation, today),
    ...tableOf(strand, weeks, notation),
    trendSentence(strand, weeks, notation),
  ];
}

function startOf({ records }: Strand, notation: Notation, today: DayNumber): string[] {
  const reached = records.findLast((record) => record.reached && record.rate !== null && record.day <= today);
  if (!reached || reached.rate === null) return [];
  const gap = today - reached.day;
  const start = Math.round(startTempo(metronomeOf(reached.rate, notation), gap) * 10) / 10;
  const ago = gap === 0 ? "today" : gap === 1 ? "yesterday" : `${gap} days ago`;
  return [`Start near ${start}. Last reached: ${rateAsWritten(reached.rate, reached, notation)}, ${ago}.`];
}

function tableOf(strand: Strand, weeks: readonly Week[], notation: Notation): string[] {
  const practised = weeks
    .slice(-TREND_WEEKS)
    .filter(({ attempts }) => attempts > 0)
    .slice(-TABLE_WEEKS);
  if (practised.length === 0) return [];
  const rows = weekRows(practised, notation).map(({ week, best, note, attempts }) => [
    week,
    note === "worked below best" ? `${best} (${note})` : best,
    attempts,
  ]);
  return [
    `${sentenceCase(escapeMarkdown(nameOf(strand)))}:`,
    markdownTable(["ISO week", "Best reached", "Attempts"], rows),
  ];
}

function nameOf(strand: Strand): string {
  if (!strand.title || strand.movement === null) return strandName(strand);
  return [`mvt ${strand.movement}`, ...(strand.where === null ? [] : [strand.where])].join(", ");
}

function trendSentence({ title }: Strand, weeks: readonly Week[], notation: Notation): string {
  const latest = weeks.slice(-TREND_WEEKS);
  const trend = trendOf(latest);
  return `Trend: ${trendInWords(trend, latest, notation)}${interval(trend, title ? "beats" : "notes")}.`;
}

/** The slope and its interval in figures, where there are enough weeks for them to say something. */
function interval({ slope, low, high, level, verdict, weeks }: Trend, unit: string): string {
  if (verdict === "too early" || slope === null || low === null || high === null) return "";
  return ` (Theil–Sen over ${weeks} tested weeks: ${signed(slope)} ${unit} a minute each week, ${level * 100} % interval ${signed(low)} to ${signed(high)})`;
}

function signed(value: number): string {
  const figure = Math.abs(value).toFixed(1);
  return figure === "0.0" ? "0" : `${value < 0 ? "−" : "+"}${figure}`;
}

/** `Last time, 2026-03-02`, before the line that was written then. */
export function lastTime({ day }: AttemptRecord): string {
  return `Last time, ${isoDate(day)}`;
}
