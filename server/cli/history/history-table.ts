import stringWidth from "string-width";
import type { WeekSpan } from "../../history/week-span.ts";
import { weekCount } from "../../history/week-span.ts";
import { type DayNumber, mondayOf } from "../../journal/calendar.ts";
import { shortDate } from "../../journal/date-words.ts";
import { wrapped } from "../wrapped.ts";
import { barsOf } from "./history-bars.ts";
import { type HistoryRow, type HistoryRows, NONE } from "./history-rows.ts";

const GAP = "  ";
const NAME = "Exercise";
const FIGURES = ["Tempo", "Latest", "Trend in four weeks"];
const LAST_PRACTISED = "Last practised";
/** In a table that a terminal is too narrow for, the day stands before the name. */
const LAST_ON = "Last on";
const DAY = " ".repeat("2026-03-02".length + GAP.length);

/** How a table is set. */
export interface Setting {
  readonly axis: WeekSpan;
  /** How many weeks one sign stands for. */
  readonly each: number;
  /** In columns. */
  readonly room: number;
  /** By whose year the dates of the axis need none. */
  readonly today: DayNumber;
}

/** A line, and whether it is a heading. */
export interface TableLine {
  readonly text: string;
  readonly isHeading: boolean;
}

/**
 * The rows of a journal: each a line where there is room; else the name above its figures; on a very narrow terminal
 * the bars between the two. No line is broader than the room, but for a word that is so by itself.
 */
export function tableOf({ drawn, ended }: HistoryRows, setting: Setting): TableLine[] {
  const cells = [...drawn, ...ended].map((row) => cellsOf(row, setting));
  const headings = [axisHeading(setting), ...FIGURES];
  const figures = aligned([headings, ...cells], headings.indexOf("Latest"));
  const lines = broad(figures, [...drawn, ...ended], setting) ?? stacked(figures, cells, [...drawn, ...ended], setting);
  const [heading, ...rows] = lines.map((row, at) => {
    const facts = at === 0 ? [] : [...drawn, ...ended][at - 1]!.facts;
    return [...row, ...facts.flatMap((fact) => inLines(fact, setting.room - GAP.length).map((line) => GAP + line))];
  });
  const below = rows.slice(drawn.length);
  return [
    ...asHeading(heading!),
    ...rows.slice(0, drawn.length).flatMap(asText),
    ...(below.length > 0 ? asHeading(wrapped(ENDED, setting.room)) : []),
    ...below.flatMap(asText),
  ];
}

const ENDED = "Not practised in these weeks; tempos and trend of the half year before they ended:";

function asHeading(lines: readonly string[]): TableLine[] {
  return lines.map((text) => ({ text, isHeading: true }));
}

function asText(lines: readonly string[]): TableLine[] {
  return lines.map((text) => ({ text, isHeading: false }));
}

function cellsOf({ weeks, tempos, latest, trend }: HistoryRow, { axis, each }: Setting): string[] {
  return [weeks.length === 0 ? "" : barsOf(weeks, axis, each), tempos, latest, trend];
}

/** The Mondays of the first and the last week, at both ends where they are far enough apart. */
function axisHeading({ axis, each, today }: Setting): string {
  const [first, last] = [axis.first, axis.last].map((week) => shortDate(mondayOf(week), today));
  if (axis.first === axis.last) return last!;
  const space = Math.ceil(weekCount(axis) / each) - stringWidth(first! + last!);
  return space < 2 ? `${first}–${last}` : first! + " ".repeat(space) + last;
}

/** The fewest columns for a name beside its figures, unless all names are shorter. */
const LEAST_NAME = 40;

/** The lines of each row, the headings first; undefined where there is no room for names beside their figures. */
function broad(
  figures: readonly string[],
  rows: readonly HistoryRow[],
  { room }: Setting,
): (readonly string[])[] | undefined {
  const wide = widest(figures);
  const beside = wide + LAST_PRACTISED.length + 2 * GAP.length;
  const longest = widest([NAME, ...rows.map(({ name }) => name)]);
  const width = Math.min(longest, room - beside);
  if (width < Math.min(longest, LEAST_NAME)) return undefined;
  const lasts = [LAST_PRACTISED, ...rows.map(({ lastPractised }) => lastPractised)];
  return [NAME, ...rows.map(({ name }) => name)].map((name, at) => {
    const [first = "", ...more] = inLines(name, width);
    const line = [first, figures[at]!].map((cell, i) => padded(cell, i === 0 ? width : wide));
    return [[...line, lasts[at]!].join(GAP), ...more];
  });
}

function stacked(
  figures: readonly string[],
  cells: readonly (readonly string[])[],
  rows: readonly HistoryRow[],
  setting: Setting,
): (readonly string[])[] {
  const { room } = setting;
  const isNarrow = GAP.length + widest(figures) > room;
  const heading = isNarrow ? axisHeading(setting) : figures[0]!;
  return [
    [`${padded(LAST_ON, DAY.length)}${NAME}`, GAP + heading],
    ...rows.map(({ name, lastPractised }, at) => [
      ...inLines(name, room - DAY.length).map((line, i) => (i === 0 ? lastPractised + GAP : DAY) + line),
      ...(isNarrow ? narrow(cells[at]!, room) : [GAP + figures[at + 1]!.trimStart()]),
    ]),
  ];
}

/** The bars, and below them in words what has no column. */
function narrow([bars = "", tempos, latest, trend]: readonly string[], room: number): string[] {
  const words = [tempos, ...(tempos!.includes("–") ? [`latest ${latest}`] : []), trend]
    .filter((each) => each !== NONE && each !== `latest ${NONE}`)
    .join(", ");
  return [...(bars === "" ? [] : [bars]), ...(words === "" ? [] : inLines(words, room - GAP.length))].map(
    (line) => GAP + line,
  );
}

/** Cells in columns, two apart; `right` is the column that is aligned to the right. */
function aligned(rows: readonly (readonly string[])[], right: number): string[] {
  const widths = rows[0]!.map((_, column) => widest(rows.map((row) => row[column]!)));
  return rows.map((row) =>
    row
      .map((cell, column) => padded(cell, widths[column]!, column === right))
      .join(GAP)
      .trimEnd(),
  );
}

function widest(texts: readonly string[]): number {
  return texts.reduce((most, text) => Math.max(most, stringWidth(text)), 0);
}

function padded(cell: string, width: number, right = false): string {
  const space = " ".repeat(Math.max(0, width - stringWidth(cell)));
  return right ? space + cell : cell + space;
}

/** Words in lines of so many columns; a word that is longer, as a title without spaces may be, is cut where it must. */
function inLines(text: string, width: number): string[] {
  return wrapped(text, width, stringWidth).flatMap((line) => (stringWidth(line) <= width ? [line] : cut(line, width)));
}

const GRAPHEMES = new Intl.Segmenter("en", { granularity: "grapheme" });

function cut(word: string, width: number): string[] {
  const lines = [""];
  for (const { segment } of GRAPHEMES.segment(word)) {
    const last = lines.at(-1)!;
    if (last === "" || stringWidth(last + segment) <= width) lines[lines.length - 1] = last + segment;
    else lines.push(segment);
  }
  return lines;
}
