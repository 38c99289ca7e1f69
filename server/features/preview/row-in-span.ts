import { type ExerciseRow, exerciseRow } from "../../history/exercise-row.ts";
import { breaksKey, sinceOfStrand } from "../../history/journal-facts.ts";
import { weeksOfStrand } from "../../history/journal-history.ts";
import type { AttemptRecord } from "../../history/record.ts";
import { type Exercise, exerciseOf, type Strand, strandOf } from "../../history/strands.ts";
import { type Week, weeksOf } from "../../history/weeks.ts";
import type { Journal } from "../../journal/journal.ts";
import type { SpanOfDays } from "./span.ts";
import { trendOfDays } from "./trend.ts";

/** An exercise of the journal, and what of it lies in the span. */
export interface RowInSpan {
  /** The object of the history, which stays the same until an edit touches it. */
  readonly source: Exercise;
  readonly row: ExerciseRow;
  /** Of the weeks that are drawn, and no others. */
  readonly trend: string;
}

/** The latest record of the strand that is shown. */
export function lastOf({ exercise }: ExerciseRow): AttemptRecord {
  return exercise.strands[0]!.records.at(-1)!;
}

/** Whether a strand was played at a tempo within the span. */
export function isTimed({ records }: Strand, { since = Number.NEGATIVE_INFINITY }: SpanOfDays): boolean {
  return records.some(({ day, rate }) => rate !== null && day >= since);
}

/**
 * Undefined where nothing was practised in the span.
 *
 * @param keptAs the name that it is kept under: whoever looks at days of their own has one of their own
 */
export function rowInSpan(
  journal: Journal,
  source: Exercise,
  days: SpanOfDays,
  keptAs = "preview row",
): RowInSpan | undefined {
  const inputs = [days.since, days.today, breaksKey(journal, source.instrument, days.today)];
  return journal.memo.from(source, keptAs, inputs, () => {
    const inSpan = exerciseInSpan(source, days);
    if (!inSpan) return undefined;
    const [strand] = inSpan.strands;
    const back = sinceOfStrand(journal, strand!, days.today);
    const row = exerciseRow(inSpan, weeksInSpan(journal, strand!, days), back);
    return { source, row, trend: trendOfDays(row, days, strand!.records[0]!.day) };
  });
}

/** As the history of the days since then has it (`exercisesOf`), without days ahead; a strand with tempos first. */
function exerciseInSpan({ strands }: Exercise, days: SpanOfDays): Exercise | undefined {
  const { since, today } = days;
  const own = strands.flatMap((strand): Strand[] => {
    const ahead = strand.records.at(-1)!.day > today;
    const records = ahead ? strand.records.filter(({ day }) => day <= today) : strand.records;
    const last = records.at(-1);
    if (!last || (since !== undefined && last.day < since)) return [];
    return [ahead || since !== undefined ? strandOf(records, since) : strand];
  });
  if (own.length === 0) return undefined;
  const exercise = exerciseOf(own);
  const timed = exercise.strands.filter((strand) => isTimed(strand, days));
  return { ...exercise, strands: [...timed, ...exercise.strands.filter((strand) => !timed.includes(strand))] };
}

function weeksInSpan(journal: Journal, strand: Strand, { since }: SpanOfDays): readonly Week[] {
  return since === undefined ? weeksOfStrand(journal, strand) : weeksOf(strand.records, since);
}
