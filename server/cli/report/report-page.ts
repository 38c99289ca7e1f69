import { aimsByStrand } from "../../features/preview/aims.ts";
import { beatBefore } from "../../features/preview/beat.ts";
import { type Aimed, openedExercise } from "../../features/preview/opened.ts";
import { pieceRow } from "../../features/preview/piece-rows.ts";
import { sentence } from "../../features/preview/text.ts";
import { LATELY, type Trend } from "../../history/trend.ts";
import { shown } from "../../history/trend-words.ts";
import { toldSpan, weeksUpTo } from "../../history/week-span.ts";
import { civil, type DayNumber, shortWeekday, weekIndex } from "../../journal/calendar.ts";
import { weekdayDate } from "../../journal/date-words.ts";
import { withoutDay } from "../../journal/declared-lines.ts";
import type { Spoken } from "../../plan/lesson.ts";
import type { SetWork } from "../../plan/set-work.ts";
import { setWorkInWords, textOfSet } from "../../plan/set-work-words.ts";
import { saidOf } from "../aims/aims-text.ts";
import type { PlayedExercise } from "./exercises-played.ts";
import type { JournalReport } from "./journal-report.ts";
import type { ExerciseBlock, Item, Page, Part, PartBlock, Table } from "./page.ts";
import type { WorkedPiece, WorkedPlace } from "./pieces-worked.ts";
import { timeBlocks } from "./time-part.ts";

/** A report part by part; of which there is nothing to say, those are left out. */
export function reportPage(report: JournalReport, { charts }: { readonly charts: boolean }): Page {
  const { name, days, exercises } = report;
  const aims = aimsByStrand(report.around.journal, report.aims, days.until);
  const played = (list: readonly PlayedExercise[], hasCharts: boolean): readonly PartBlock[] =>
    list.length === 0
      ? []
      : [
          {
            type: "exercises",
            exercises: list.map((each) => exerciseBlock(report, each, hasCharts ? aims : undefined)),
          },
        ];
  const parts: readonly Part[] = [
    { heading: "For the lesson", blocks: lessonBlocks(report) },
    { heading: "Set work", blocks: listOf(report.set.map((each) => setItem(each, days.until))) },
    { heading: "Time", blocks: timeBlocks(report.time, days.until) },
    { heading: "Moved", blocks: played(exercises.moved, charts) },
    { heading: "Settled", blocks: played(exercises.settled, charts) },
    { heading: "No clear change", blocks: played(exercises.unchanged, charts) },
    { heading: "Too early to say", blocks: played(exercises.early, false) },
    { heading: "Aims", blocks: listOf(aimItems(report)) },
    { heading: "Pieces", blocks: pieceBlocks(report, charts) },
    { heading: "Body", blocks: listOf(report.body.map(({ day, text }) => dated(day, text, days.until))) },
    { heading: "The days", blocks: dayBlocks(report) },
  ];
  const filled = parts.filter(({ blocks }) => blocks.length > 0);
  return { title: `${name}, ${days.title}`, name, parts: filled };
}

function listOf(items: readonly Item[], name?: string): readonly PartBlock[] {
  return items.length === 0 ? [] : [{ type: "list", items, ...(name === undefined ? {} : { name }) }];
}

function dated(day: DayNumber, text: string, until: DayNumber): Item {
  return { day: weekdayDate(day, until), text };
}

function lessonBlocks({ asked, said, days: { until } }: JournalReport): readonly PartBlock[] {
  const items = (spoken: readonly Spoken[]) => spoken.map(({ day, text }) => dated(day, text, until));
  return [...listOf(items(asked), "Questions"), ...listOf(items(said), "The teacher’s words")];
}

/** With the day that it is for, else the one on which it was set; it is read later, so nothing is today. */
function setItem(set: SetWork, until: DayNumber): Item {
  const { day, declared } = set.work;
  const { by } = declared;
  const dayShown =
    by !== undefined ? `for ${weekdayDate(by, until)}` : day === undefined ? undefined : weekdayDate(day, until);
  return {
    ...(dayShown === undefined ? {} : { day: dayShown }),
    text: textOfSet(set.work),
    below: setWorkInWords(set, Math.min(until, by ?? until)),
  };
}

function aimItems({ around, aims, withBody, days: { until } }: JournalReport): readonly Item[] {
  return aims.map((aim) => ({
    text: withoutDay(aim.text),
    below: saidOf(around.journal, aim, { today: until, dated: true, discreet: !withBody }),
  }));
}

/** @param aims by strand, where a chart is to be drawn */
function exerciseBlock(
  { around: { journal }, days: { until } }: JournalReport,
  { name, way, row, best, facts }: PlayedExercise,
  aims: ReadonlyMap<string, Aimed> | undefined,
): ExerciseBlock {
  const { notation, trend, trendWords, exercise } = row;
  const last = exercise.strands[0]!.records.findLast(({ rate }) => rate !== null)!;
  const tempo = (rate: number) => beatBefore(journal, last, notation) + shown(rate, notation.noteValue, notation.beat);
  const told = {
    name,
    way,
    sentences: [
      best === null ? "No tempo reached." : `Best: ${tempo(best)}.`,
      // What has no clear change, or is too early to say, is headed so.
      ...(isMoving(trend) || trend.since !== undefined ? [sentence(trendWords)] : []),
      ...facts,
    ],
  };
  const drawn = aims && openedExercise(journal, row, frameOf(name, row.weeks, { until, aim: aims.get(exercise.key) }));
  if (!drawn) return told;
  const { svg, table } = drawn.chart;
  const rows = table.rows.map(({ cells }) => cells);
  return { ...told, chart: { svg, table: { ...table, rows, sums: false, words: 1 } } };
}

function isMoving({ verdict }: Trend): boolean {
  return verdict === "rising" || verdict === "falling";
}

/** The weeks from the first with practice on, of half a year, but eight at least. */
function frameOf(
  name: string,
  weeks: PlayedExercise["row"]["weeks"],
  { until, aim }: { readonly until: DayNumber; readonly aim: Aimed | undefined },
) {
  const last = weekIndex(until);
  const { first } = toldSpan(weeks, weeksUpTo(last, LATELY));
  const span = { first: Math.min(first, last - LEAST_WEEKS + 1), last };
  return { name, span, today: until, hasTrend: true, ...(aim ? { aim } : {}) };
}

const LEAST_WEEKS = 8;

function pieceBlocks({ around: { journal }, pieces, days: { until } }: JournalReport, charts: boolean): PartBlock[] {
  if (pieces.length === 0) return [];
  const pictures = pieces.flatMap(({ name, part }) => {
    const svg = part?.line.declared.bars === undefined ? "" : pieceRow(journal, part, until).chart.svg;
    return svg === "" ? [] : [{ name, svg }];
  });
  return [
    { type: "table", table: pieceTable(pieces, until) },
    ...(charts && pictures.length > 0 ? [{ type: "pictures" as const, pictures }] : []),
  ];
}

function pieceTable(pieces: readonly WorkedPiece[], until: DayNumber): Table {
  const tempo = (rate: number | null) => (rate === null ? "–" : shown(rate));
  const rows = pieces.flatMap(({ name, goal, places }) =>
    places.map(({ where, latest, days }) => [
      name,
      where ?? "whole piece",
      workedOn({ days }, until),
      tempo(latest),
      goal === null ? "" : tempo(goal),
    ]),
  );
  return {
    caption: "Pieces and studies by place",
    headings: ["piece", "place", "worked", "latest clean", "goal"],
    rows,
    sums: false,
    words: 3,
  };
}

/** The most days to name one by one. */
const MOST_DAYS = 6;

/** `Mon 2, Sat 7`, `on 9 days, last Sat 7 Mar`. */
function workedOn({ days }: Pick<WorkedPlace, "days">, until: DayNumber): string {
  if (days.length > MOST_DAYS) return `on ${days.length} days, last ${weekdayDate(days.at(-1)!, until)}`;
  return days.map((day) => `${shortWeekday(day)} ${civil(day).day}`).join(", ");
}

function dayBlocks({ lines, withBody }: JournalReport): readonly PartBlock[] {
  if (lines.length === 0) return [];
  const days = lines.map((day) => ({ type: "lines" as const, lines: day.lines }));
  return withBody ? days : [{ type: "sentence", text: WITHOUT_BODY }, ...days];
}

/** Said whether or not there is any, as it would tell that there is. */
const WITHOUT_BODY = "What was understood to be about the body is left out of these lines.";
