import type { Palette } from "../../../shared/protocol.ts";
import { rateAsWritten } from "../../history/exercise-row.ts";
import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import { type Exercise, latestOf, type Strand, strandName, strandOf } from "../../history/strands.ts";
import { type Trend, trendOf } from "../../history/trend.ts";
import { bestWithNote, metronomeOf, type Notation, trendInWords, weekRows } from "../../history/trend-words.ts";
import { weeksIn } from "../../history/week-span.ts";
import type { Week } from "../../history/weeks.ts";
import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import { daysAgo } from "../explain/days-away.ts";
import { oneOfStrands } from "../explain/exercise-words.ts";
import { sentenceCase } from "../explain/explain.ts";
import { escapeMarkdown, markdownTable } from "../explain/markdown.ts";
import { NOTHING_REACHED, startTempo } from "../explain/start-tempo.ts";
import { chartInMarkdown, spanLately } from "./chart.ts";

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
  /** As many strands as the exercise has. */
  readonly strands: number;
  /** How the line writes its tempos, or the strand where the line has none. */
  readonly notation: Notation;
  /** The latest record of the exercise from before the line, of another line. */
  readonly before?: AttemptRecord;
}

/** The exercise that a line belongs to: that of its own records, or the one among these that is called alike. */
export function exerciseHistory(
  exercises: readonly Exercise[],
  own: readonly AttemptRecord[],
  practised: Practised,
  today: DayNumber,
): ExerciseHistory | undefined {
  const first = own[0];
  const strand = first ? strandOfLine(exercises, first) : strandCalled(exercises, practised);
  if (!strand) return undefined;
  const { strands } = exercises.find((each) => each.strands.includes(strand))!;
  const isEarlier = (record: AttemptRecord): boolean =>
    record.day <= today && (!first || (inTimeOrder(record, first) < 0 && !isSameLine(record, first)));
  const before = latestOf(strands, isEarlier);
  const written = own.find(({ rate }) => rate !== null) ?? strand.records.findLast(({ rate }) => rate !== null);
  return { strand, strands: strands.length, before, notation: { noteValue: written?.noteValue, beat: written?.beat } };
}

function isSameLine(a: AttemptRecord, b: AttemptRecord): boolean {
  return a.block === b.block && a.line === b.line;
}

function strandOfLine(exercises: readonly Exercise[], { exerciseKey, strandKey }: AttemptRecord): Strand | undefined {
  return exercises.find(({ key }) => key === exerciseKey)?.strands.find(({ key }) => key === strandKey);
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

/** A strand up to today: what is dated ahead counts once its day has come. Undefined where all of it lies ahead. */
export function playedUpTo(strand: Strand, today: DayNumber): Strand | undefined {
  const { records } = strand;
  if (records.at(-1)!.day <= today) return strand;
  const played = records.filter(({ day }) => day <= today);
  return played.length > 0 ? strandOf(played) : undefined;
}

/** What a hover on an exercise is made of besides its history. */
export interface Telling {
  /** As the player writes it: `D melodic minor, thirds`. */
  readonly title: string;
  readonly today: DayNumber;
  /** The colours of a picture; without them there is none. */
  readonly palette?: Palette;
  /** Its hardest step on the instrument, if that is told: a paragraph of Markdown. */
  readonly hardest: readonly string[];
}

/**
 * Where to start today, the picture, the trend and the weeks of a strand, as paragraphs of Markdown; nothing of it lies
 * ahead.
 */
export function historyInMarkdown(
  { strand, strands, notation }: ExerciseHistory,
  weeks: readonly Week[],
  { title, today, palette, hardest }: Telling,
): readonly string[] {
  const span = spanLately(today, strand.records.at(-1)!.day);
  const latest = weeksIn(weeks, span);
  const trend = trendOf(latest);
  const chart = palette && chartInMarkdown(strand, weeks, { title, notation, trend, span, palette });
  const name = sentenceCase(escapeMarkdown(strandName(strand)));
  return [
    startOf(strand, notation, today),
    ...hardest,
    `${name}${oneOfStrands(strands, strand)}:`,
    ...(chart ? [chart] : []),
    // Above the table, which may be longer than what of a hover is in sight.
    `Trend: ${trendInWords(trend, latest, notation)}.`,
    ...tableOf(latest, notation),
    ...trendInFigures(trend, strand.title ? "beats" : "notes"),
  ];
}

function startOf({ records }: Strand, notation: Notation, today: DayNumber): string {
  const reached = records.filter((record) => record.reached && record.rate !== null);
  const last = reached.at(-1);
  if (last?.rate == null) return NOTHING_REACHED;
  const gap = today - last.day;
  const start = Math.round(startTempo(metronomeOf(last.rate, notation), gap) * 10) / 10;
  return `Start near ${start}. Last reached: ${rateAsWritten(last.rate, last, notation)}, ${daysAgo(gap)}${bestOf(reached, last, notation)}.`;
}

/** The best so far where that is another one than the last. */
function bestOf(reached: readonly AttemptRecord[], last: AttemptRecord, notation: Notation): string {
  const best = reached.reduce((a, b) => (b.rate! > a.rate! ? b : a));
  if (best.rate! <= last.rate!) return ", the best so far";
  return `; the best so far was ${rateAsWritten(best.rate!, best, notation)}, on ${isoDate(best.day)}`;
}

function tableOf(weeks: readonly Week[], notation: Notation): string[] {
  const latest = weeks.slice(-TABLE_WEEKS);
  if (latest.length === 0) return [];
  const timed = latest.some(({ minutes }) => Math.round(minutes) > 0);
  const rows = weekRows(latest, notation).map((row) => [
    row.week,
    bestWithNote(row),
    row.attempts,
    ...(timed ? [row.minutes === "0" ? "–" : row.minutes] : []),
  ]);
  return [markdownTable(["ISO week", "Best reached", "Attempts", ...(timed ? ["Minutes"] : [])], rows)];
}

/** The slope and its interval, for who wants them, where there are enough weeks for them to say something. */
function trendInFigures({ slope, low, high, level, verdict, weeks }: Trend, unit: string): string[] {
  if (verdict === "too early" || slope === null || low === null || high === null) return [];
  return [
    `In figures: ${signed(slope)} ${unit} a minute each week, ${level * 100} % interval ${signed(low)} to ${signed(high)} (Theil–Sen, ${weeks} tested weeks).`,
  ];
}

function signed(value: number): string {
  const figure = Math.abs(value).toFixed(1);
  return figure === "0.0" ? "0" : `${value < 0 ? "−" : "+"}${figure}`;
}

/** `Last time, 2026-03-02`, before the line that was written then. */
export function lastTime({ day }: AttemptRecord): string {
  return `Last time, ${isoDate(day)}`;
}
