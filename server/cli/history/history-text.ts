import stringWidth from "string-width";
import { exerciseInWords } from "../../features/explain/exercise-words.ts";
import type { ExerciseRow } from "../../history/exercise-row.ts";
import { LATELY, type Trend, WEEKS_FOR_A_TREND } from "../../history/trend.ts";
import { type Paint, painter } from "../colour.ts";
import type { Io } from "../io.ts";
import { printable } from "../printable.ts";
import { WIDTH, wrapped } from "../wrapped.ts";
import { type Bars, barsOf, SIGNS } from "./history-bars.ts";

const GAP = "  ";

/** What a journal is called, and its exercises as they are shown. */
export interface JournalRows {
  readonly journal: string;
  readonly rows: readonly ExerciseRow[];
}

/** What is told of an exercise, ready to print. */
interface Line {
  readonly name: string;
  /** In the order of `FIGURES`. */
  readonly figures: readonly string[];
  readonly lastPractised: string;
}

const NAME = "Exercise";
const FIGURES = ["Weeks", "Scale", "Latest", "Trend, a week"];
const LAST_PRACTISED = "Last practised";
/** The columns that are aligned to the right. */
const RIGHT = FIGURES.indexOf("Latest");

/**
 * A table of exercises for each journal, with its name where there are several. Columns are aligned by display width;
 * on a terminal that is too narrow, the name of an exercise stands above its figures.
 */
export function historyText(journals: readonly JournalRows[], io: Io): string {
  const paint = painter(io);
  const room = io.isTerminal ? io.columns?.() || WIDTH : Number.POSITIVE_INFINITY;
  const several = journals.length > 1;
  const tables = journals
    .filter(({ rows }) => rows.length > 0)
    .map(({ journal, rows }) => [...(several ? [paint(printable(journal), "bold")] : []), ...table(rows, paint, room)]);
  const rows = journals.flatMap((each) => each.rows);
  return `${tables.map((lines) => lines.join("\n")).join("\n\n")}\n\n${legend(rows).join("\n")}\n`;
}

function table(rows: readonly ExerciseRow[], paint: Paint, room: number): string[] {
  const instruments = new Set(rows.map(({ exercise }) => exercise.instrument));
  const told = rows.map((row) => lineOf(row, instruments.size > 1));
  const broad = broadLines(told);
  const lines = broad.every((line) => stringWidth(line) <= room) ? broad : stackedLines(told, room);
  return lines.map((line, i) => (i === 0 ? paint(line, "dim") : line));
}

function lineOf(row: ExerciseRow, withInstrument: boolean): Line {
  const bars = barsOf(row.weeks);
  const latest = latestBest(row);
  return {
    name: nameOf(row, withInstrument),
    figures: [bars.signs, scaleText(bars), figure(latest), latest === null ? "no clean tempo" : trendText(row.trend)],
    lastPractised: row.lastPractised,
  };
}

function broadLines(rows: readonly Line[]): string[] {
  const cells = rows.map(({ name, figures, lastPractised }) => [name, ...figures, lastPractised]);
  return aligned([[NAME, ...FIGURES, LAST_PRACTISED], ...cells], RIGHT + 1);
}

/** Two lines for each exercise, or more where its name is long. */
function stackedLines(rows: readonly Line[], room: number): string[] {
  const [heading, ...figures] = aligned([FIGURES, ...rows.map((row) => row.figures)], RIGHT);
  const indent = " ".repeat("2026-03-02".length + GAP.length);
  return [
    `${"Last on".padEnd(indent.length)}${NAME}\n${GAP}${heading}`,
    ...rows.flatMap(({ name, lastPractised }, i) => [
      ...wrapped(name, room - indent.length, stringWidth).map((line, at) =>
        at === 0 ? `${lastPractised}${GAP}${line}` : indent + line,
      ),
      GAP + figures[i]!,
    ]),
  ];
}

/** Cells in columns, two apart; `right` is the column that is aligned to the right. */
function aligned(rows: readonly (readonly string[])[], right: number): string[] {
  const widths = rows[0]!.map((_, column) => rows.reduce((most, row) => Math.max(most, stringWidth(row[column]!)), 0));
  return rows.map((row) =>
    row
      .map((cell, column) => padded(cell, widths[column]!, column === right))
      .join(GAP)
      .trimEnd(),
  );
}

function padded(cell: string, width: number, right: boolean): string {
  const space = " ".repeat(width - stringWidth(cell));
  return right ? space + cell : cell + space;
}

/**
 * `D melodic minor, thirds (octave, single, even)`; with `1 of 3 strands` where one of several is shown, and
 * `on alto recorder` where there are several instruments.
 */
function nameOf({ exercise, strand }: ExerciseRow, withInstrument: boolean): string {
  const { subject, pattern, strands, instrument } = exercise;
  const what = exerciseInWords(subject, pattern);
  const which = strands.length > 1 ? `${strand}; 1 of ${strands.length} strands` : strand;
  return printable(`${what} (${which})${withInstrument && instrument !== null ? ` on ${instrument}` : ""}`);
}

/** The latest, whether or not its week was tested. */
function latestBest({ weeks }: Pick<ExerciseRow, "weeks">): number | null {
  return weeks.findLast(({ bestClean }) => bestClean !== null)?.bestClean ?? null;
}

/** `138–192`. */
function scaleText({ scale }: Bars): string {
  if (!scale) return "–";
  const [low, high] = [figure(scale.low), figure(scale.high)];
  return low === high ? low : `${low}–${high}`;
}

/** `rising 2.4 (1.1 to 4)`. */
function trendText({ verdict, slope, low, high, weeks }: Trend): string {
  if (verdict === "too early") return `too early: ${weeks} tested ${weeks === 1 ? "week" : "weeks"}`;
  return `${verdict} ${figure(slope)} (${figure(low)} to ${figure(high)})`;
}

function figure(value: number | null): string {
  return value === null ? "–" : String(Math.round(value * 10) / 10).replace("-", "−");
}

/** What the signs and figures mean; of what there is none, nothing. */
function legend(rows: readonly ExerciseRow[]): string[] {
  const isReached = rows.some((row) => latestBest(row) !== null);
  const sentences = isReached
    ? [
        `Weeks: the ${LATELY} up to the last that was practised, or fewer. ${SIGNS.tested[6]} stands for the best clean tempo of a tested week, ${SIGNS.belowBest[2]} for that of a week worked below best, ${SIGNS.notReached} for a week without a clean tempo, ${SIGNS.notPractised} for one without practice. Scale: what the lowest and the highest bar of the row stand for.`,
        `Figures: notes a minute, for pieces and studies beats a minute. Trend: over the tested weeks, from ${WEEKS_FOR_A_TREND} of them on; in brackets the 95% interval.`,
      ]
    : [
        `No tempo was reached so far, so there are no bars: a tempo counts once it is marked clean or easy, as in “8ths at 60 clean”. ${SIGNS.notReached} stands for a week without a clean tempo, ${SIGNS.notPractised} for one without practice.`,
      ];
  const strands = rows.some(({ exercise }) => exercise.strands.length > 1)
    ? [
        "1 of 3 strands: the exercise was played in three ways that are not compared, and the one with most weeks is shown; daystave history --json gives all.",
      ]
    : [];
  return [...sentences, ...strands].flatMap((sentence) => wrapped(sentence, WIDTH));
}
