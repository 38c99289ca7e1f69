import type { PreviewChart, PreviewTable } from "../../../shared/preview.ts";
import { ROW_SIZE } from "../../charts/look.ts";
import { tempoChart } from "../../charts/tempo-chart.ts";
import { axisOf, type ExerciseRow } from "../../history/exercise-row.ts";
import { bestWithNote, shown, weekRows } from "../../history/trend-words.ts";
import type { WeekSpan } from "../../history/week-span.ts";
import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import { hashOf } from "./text.ts";

/** How a row's chart is framed. */
export interface ChartFrame {
  readonly name: string;
  /** How wide it is; the present week is the last. */
  readonly span: WeekSpan;
  readonly aim?: AimedTempo;
}

/** An aim at a tempo by a day. */
export interface AimedTempo {
  readonly rate: number;
  readonly by: DayNumber;
}

/**
 * The tempos of a row's strand, with the weeks up to this one, so that a rest shows, and the same figures as a table.
 */
export function rowChart(row: ExerciseRow, frame: ChartFrame): PreviewChart {
  const { exercise, weeks, notation, trend, latest } = row;
  const { name, span, aim } = frame;
  const drawing = tempoChart(
    {
      title: name,
      axis: axisOf(latest, notation),
      notation,
      weeks,
      attempts: exercise.strands[0]!.records,
      trend,
      aim: aim && { rate: aim.rate, day: aim.by, date: isoDate(aim.by) },
      span,
    },
    { kind: "classes", ...ROW_SIZE, id: `exercise ${hashOf(exercise.key)}` },
  );
  return drawing.ok ? { ok: true, svg: drawing.svg, table: weekTable(row, frame) } : drawing;
}

/** One row for each week with practice, oldest first, in the player's note value. */
function weekTable({ weeks, notation, latest }: ExerciseRow, { aim }: ChartFrame): PreviewTable {
  const axis = axisOf(latest, notation);
  const aimed = aim ? ` Aim: ${shown(aim.rate, notation.noteValue, notation.beat)} by ${isoDate(aim.by)}.` : "";
  return {
    caption: `By week; weeks without practice are left out.${aimed}`,
    headings: ["Week", axis === "" || axis === "at" ? "Best" : `Best, ${axis}`, "Attempts", "Minutes"],
    rows: weekRows(weeks, notation).map((row) => [row.week, bestWithNote(row), row.attempts, row.minutes]),
  };
}
