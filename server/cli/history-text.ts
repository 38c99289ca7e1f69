import stringWidth from "string-width";
import type { HistoryOfExercise } from "../history/history.ts";
import type { Trend } from "../history/trend.ts";
import type { Week } from "../history/weeks.ts";
import { type Paint, painter } from "./colour.ts";
import type { JournalHistory } from "./history.ts";
import type { Io } from "./io.ts";
import { printable } from "./printable.ts";

/** Unicode block elements, from an eighth to a whole. */
const BARS = "▁▂▃▄▅▆▇█";
const NO_FIGURE = "·";

/** As many weeks as a row of bars shows: half a year. */
const MOST_WEEKS = 26;

const HEADINGS = ["Exercise", "Weeks", "Best", "Trend, a week", "Last practised"];

/** A table of exercises for each journal, with its name where there are several. Columns are aligned by display width. */
export function historyText(histories: readonly JournalHistory[], io: Io): string {
  const paint = painter(io);
  const several = histories.length > 1;
  const tables = histories
    .filter(({ exercises }) => exercises.length > 0)
    .map(({ journal, exercises }) => [
      ...(several ? [paint(printable(journal), "bold")] : []),
      ...table(exercises, paint),
    ]);
  return `${tables.map((lines) => lines.join("\n")).join("\n\n")}\n\n${LEGEND}\n`;
}

const LEGEND =
  "Bars: the best clean tempo of each week, lowest to highest; a dot is a week without one.\nFigures: notes a minute, for pieces and studies beats a minute; in brackets the 95% interval.";

function table(exercises: readonly HistoryOfExercise[], paint: Paint): string[] {
  const instruments = new Set(exercises.map(({ instrument }) => instrument));
  const rows = exercises.map((exercise) => [
    nameOf(exercise, instruments.size > 1),
    barsOf(exercise.weeks),
    figure(latestBest(exercise.weeks)),
    trendText(exercise.trend),
    exercise.lastPractised,
  ]);
  const widths = HEADINGS.map((_, i) => Math.max(...[HEADINGS, ...rows].map((cells) => stringWidth(cells[i]!))));
  const line = (cells: readonly string[]) =>
    cells
      .map((cell, i) => padded(cell, widths[i]!, i === 2))
      .join("  ")
      .trimEnd();
  return [paint(line(HEADINGS), "dim"), ...rows.map(line)];
}

/** `D melodic minor, thirds (octave, single, even)`; `on alto recorder` where there are several instruments. */
function nameOf({ subject, pattern, strand, instrument }: HistoryOfExercise, withInstrument: boolean): string {
  const what = pattern === null || pattern === "straight" ? subject : `${subject}, ${pattern}`;
  return printable(`${what} (${strand})${withInstrument && instrument !== null ? ` on ${instrument}` : ""}`);
}

/** One sign a week, the latest weeks. The lowest figure has the lowest bar; where all are alike, half a one. */
function barsOf(weeks: readonly Week[]): string {
  const figures = weeks.slice(-MOST_WEEKS).map(({ bestClean }) => bestClean);
  const known = figures.filter((each) => each !== null);
  const low = Math.min(...known);
  const spread = Math.max(...known) - low;
  const bar = (rate: number) => BARS[spread === 0 ? 3 : Math.round(((rate - low) / spread) * (BARS.length - 1))]!;
  return figures.map((each) => (each === null ? NO_FIGURE : bar(each))).join("");
}

function latestBest(weeks: readonly Week[]): number | null {
  return weeks.findLast(({ bestClean }) => bestClean !== null)?.bestClean ?? null;
}

/** `rising 2.4 (1.1 to 4)`. */
function trendText({ verdict, slope, low, high, weeks }: Trend): string {
  if (verdict === "too early") return `too early: ${weeks} tested ${weeks === 1 ? "week" : "weeks"}`;
  return `${verdict} ${figure(slope)} (${figure(low)} to ${figure(high)})`;
}

function figure(value: number | null): string {
  return value === null ? "–" : String(Math.round(value * 10) / 10).replace("-", "−");
}

function padded(cell: string, width: number, right: boolean): string {
  const space = " ".repeat(width - stringWidth(cell));
  return right ? space + cell : cell + space;
}
