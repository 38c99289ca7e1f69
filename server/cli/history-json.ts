import type { HistoryOfExercise, HistoryOfStrand } from "../history/history.ts";
import type { Week } from "../history/weeks.ts";
import type { Skipped } from "./paths.ts";
import { jsonText } from "./printable.ts";

/** Exercises, of several journals with the name of theirs, and what could not be read. */
export interface HistoryReport {
  readonly exercises: readonly (HistoryOfExercise & { readonly journal?: string })[];
  readonly skipped: readonly Skipped[];
}

/**
 * The report as one line of JSON, the same as `jsonText` writes. Ten years are 30 MB of weeks, most of them empty and many told
 * twice, so that they are put together here: that is several times less work.
 */
export function historyJson({ exercises, skipped }: HistoryReport): string {
  const told = new Map<readonly Week[], string>();
  const weeksOf = (weeks: readonly Week[]): string => {
    const text = told.get(weeks) ?? weeksJson(weeks);
    told.set(weeks, text);
    return text;
  };
  const strandJson = (strand: HistoryOfStrand): string => objectJson(strand, { weeks: weeksOf(strand.weeks) });
  const parts = exercises.map((exercise) =>
    objectJson(exercise, {
      weeks: weeksOf(exercise.weeks),
      strands: `[${exercise.strands.map(strandJson).join(",")}]`,
    }),
  );
  return `{"exercises":[${parts.join(",")}],"skipped":${json(skipped)}}\n`;
}

/** An object in the order of its fields, some of which are JSON already. */
function objectJson(fields: object, written: Readonly<Record<string, string>>): string {
  const parts = Object.entries(fields)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => `"${name}":${written[name] ?? json(value)}`);
  return `{${parts.join(",")}}`;
}

function json(value: unknown): string {
  return jsonText(value).trimEnd();
}

function weeksJson(weeks: readonly Week[]): string {
  return `[${weeks.map((week) => (isEmpty(week) ? emptyJson(week) : JSON.stringify(week))).join(",")}]`;
}

function isEmpty({ bestClean, tested, attempts, minutes, about }: Week): boolean {
  return bestClean === null && !tested && attempts === 0 && minutes === 0 && !about;
}

function emptyJson({ week }: Week): string {
  return `{"week":"${week}","bestClean":null,"tested":false,"attempts":0,"minutes":0,"about":false}`;
}
