import type { PreviewChart, PreviewTable } from "../../../shared/preview.ts";
import { ROW_SIZE } from "../../charts/look.ts";
import { tempoChart } from "../../charts/tempo-chart.ts";
import type { TempoAim } from "../../charts/tempo-data.ts";
import { axisOf, type ExerciseRow } from "../../history/exercise-row.ts";
import type { AttemptRecord } from "../../history/record.ts";
import { bestWithNote, shown, weekRows } from "../../history/trend-words.ts";
import { blankWeeks, type Week } from "../../history/weeks.ts";
import { type DayNumber, isoDate, parseWeekLabel, weekIndex } from "../../journal/calendar.ts";
import { hashOf } from "./text.ts";

/** How a row's chart is framed. */
export interface ChartFrame {
  readonly name: string;
  readonly today: DayNumber;
  /** How many ISO weeks it is wide, the present one at the right edge. */
  readonly columns: number;
  readonly aim?: AimedTempo;
}

/** An aim at a tempo by a day. */
export interface AimedTempo {
  readonly rate: number;
  readonly by: DayNumber;
}

/** The tempos of a row's strand, with the weeks up to this one, and the same figures as a table. */
export function rowChart(row: ExerciseRow, frame: ChartFrame): PreviewChart {
  const { weeks, notation, trend, latest } = row;
  const first = parseWeekLabel(weeks[0]!.week)!;
  const drawing = tempoChart(
    {
      title: frame.name,
      axis: axisOf(latest, notation),
      notation,
      weeks: weeksThrough(weeks, frame.today),
      attempts: attemptsIn(row.exercise.strands[0]!.records, first, frame.today),
      trend,
      aim: frame.aim && aimIn(frame.aim, first),
      span: frame.columns,
    },
    { kind: "classes", ...ROW_SIZE, id: `exercise ${hashOf(row.exercise.key)}` },
  );
  return drawing.ok ? { ok: true, svg: drawing.svg, table: weekTable(row, frame) } : drawing;
}

/** The weeks, and those since without practice, so that a rest shows. */
function weeksThrough(weeks: readonly Week[], today: DayNumber): readonly Week[] {
  const next = weekIndex(parseWeekLabel(weeks.at(-1)!.week)!) + 1;
  return [...weeks, ...blankWeeks(next, weekIndex(today))];
}

function attemptsIn(records: readonly AttemptRecord[], first: DayNumber, today: DayNumber) {
  return records.flatMap(({ day, rate, reached }) =>
    rate !== null && day >= first && day <= today ? [{ day: day - first, rate, reached: reached === true }] : [],
  );
}

function aimIn({ rate, by }: AimedTempo, first: DayNumber): TempoAim {
  return { rate, day: by - first, date: isoDate(by) };
}

/** One row for each week with practice, oldest first, in the player's note value. */
function weekTable({ weeks, notation, latest }: ExerciseRow, { aim }: ChartFrame): PreviewTable {
  const axis = axisOf(latest, notation);
  const practised = weekRows(
    weeks.filter(({ attempts }) => attempts > 0),
    notation,
  );
  const aimed = aim ? ` Aim: ${shown(aim.rate, notation.noteValue, notation.beat)} by ${isoDate(aim.by)}.` : "";
  return {
    caption: `By week; weeks without practice are left out.${aimed}`,
    headings: ["Week", axis === "" || axis === "at" ? "Best" : `Best, ${axis}`, "Attempts", "Minutes"],
    rows: practised.map((row) => [row.week, bestWithNote(row), row.attempts, row.minutes]),
  };
}
