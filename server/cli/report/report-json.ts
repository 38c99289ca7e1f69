import { type HistoryTrend, trendWithWeeks } from "../../history/history.ts";
import { strandName } from "../../history/strands.ts";
import { weeksSince } from "../../history/trend.ts";
import { isoDate } from "../../journal/calendar.ts";
import { type AimRow, rowsOfAims } from "../aims/aims-report.ts";
import { type Said, type SetRow, saidRow, setRow } from "../pupils/pupils-report.ts";
import type { PlayedExercise } from "./exercises-played.ts";
import type { JournalReport } from "./journal-report.ts";
import { sumOf } from "./practice-time.ts";

/** `report --json` of one journal. */
export interface ReportJson {
  readonly name: string;
  readonly since: string;
  readonly until: string;
  readonly time: readonly { readonly phase: string | null; readonly minutes: number; readonly about: boolean }[];
  readonly days: readonly { readonly date: string; readonly minutes: number | null }[];
  readonly moved: readonly ExerciseJson[];
  readonly settled: readonly ExerciseJson[];
  readonly unchanged: readonly ExerciseJson[];
  readonly early: readonly ExerciseJson[];
  readonly aims: readonly AimRow[];
  readonly pieces: readonly {
    readonly piece: string;
    readonly place: string | null;
    readonly days: readonly string[];
    readonly latest: number | null;
    readonly goal: number | null;
  }[];
  readonly set: readonly SetRow[];
  readonly questions: readonly Said[];
  readonly words: readonly Said[];
  readonly body?: readonly Said[];
}

interface ExerciseJson {
  readonly subject: string;
  readonly strand: string;
  readonly best: number | null;
  readonly trend: HistoryTrend;
  readonly facts: readonly string[];
}

export function reportJson(report: JournalReport): ReportJson {
  const { around, name, days, time, exercises, withBody } = report;
  return {
    name,
    since: isoDate(days.since),
    until: isoDate(days.until),
    time: time.phases.map((phase) => {
      const { minutes, about } = sumOf(time.days.flatMap((day) => day.phases.get(phase) ?? []));
      return { phase: phase === "" ? null : phase, minutes: rounded(minutes), about };
    }),
    days: time.days.map(({ day, minutes }) => ({
      date: isoDate(day),
      minutes: minutes === null ? null : rounded(minutes),
    })),
    moved: exercises.moved.map(exerciseJson),
    settled: exercises.settled.map(exerciseJson),
    unchanged: exercises.unchanged.map(exerciseJson),
    early: exercises.early.map(exerciseJson),
    aims: rowsOfAims(around, report.aims, { today: days.until, dated: true, discreet: !withBody }),
    pieces: report.pieces.flatMap(({ name: piece, goal, places }) =>
      places.map(({ where, days: worked, latest }) => ({
        piece,
        place: where,
        days: worked.map(isoDate),
        latest,
        goal,
      })),
    ),
    set: report.set.map(setRow),
    questions: report.asked.map(saidRow),
    words: report.said.map(saidRow),
    ...(withBody ? { body: report.body.map(saidRow) } : {}),
  };
}

function exerciseJson({ name, row: { exercise, weeks, trend }, best, facts }: PlayedExercise): ExerciseJson {
  return {
    subject: name,
    strand: strandName(exercise.strands[0]!),
    best,
    trend: trendWithWeeks(weeksSince(weeks, trend.since)),
    facts,
  };
}

const PARTS_OF_A_MINUTE = 1e6;

/** Without what a double adds to a share. */
function rounded(minutes: number): number {
  return Math.round(minutes * PARTS_OF_A_MINUTE) / PARTS_OF_A_MINUTE;
}
