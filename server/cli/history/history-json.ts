import type { HistoryOfExercise } from "../../history/history.ts";
import type { Week } from "../../history/weeks.ts";
import type { Skipped } from "../paths.ts";
import { jsonText } from "../printable.ts";

/** Exercises, of several journals with the name of theirs, and what could not be read. */
export interface HistoryReport {
  readonly exercises: readonly (HistoryOfExercise & { readonly journal?: string })[];
  readonly skipped: readonly Skipped[];
}

/**
 * The report as one line of JSON, the same as `jsonText` writes, in pieces. Ten years are 30 MB of weeks, most of them
 * empty and many told twice, so that each is written once here, and never copied: that is several times less work.
 */
export function* historyJson({ exercises, skipped }: HistoryReport): Generator<string> {
  const blanks: BlankTexts = new Map();
  yield '{"exercises":[';
  for (const [i, exercise] of exercises.entries()) {
    if (i > 0) yield ",";
    yield* exerciseJson(exercise, blanks);
  }
  yield `],"skipped":${json(skipped)}}\n`;
}

function* exerciseJson(exercise: HistoryOfExercise, blanks: BlankTexts): Generator<string> {
  // An exercise has the weeks of one of its strands.
  const texts = new Map(exercise.strands.map(({ weeks }) => [weeks, weeksJson(weeks, blanks)]));
  yield* objectJson(exercise, {
    weeks: [texts.get(exercise.weeks)!],
    strands: arrayJson(exercise.strands.map((strand) => objectJson(strand, { weeks: [texts.get(strand.weeks)!] }))),
  });
}

/** An object in the order of its fields, some of which are pieces of JSON already. */
function* objectJson(fields: object, written: Readonly<Record<string, Iterable<string>>>): Generator<string> {
  let before = "{";
  for (const [name, value] of Object.entries(fields)) {
    if (value === undefined) continue;
    before += `"${name}":`;
    const pieces = written[name];
    if (pieces) {
      yield before;
      yield* pieces;
      before = ",";
    } else before += `${json(value)},`;
  }
  yield `${before.replace(/,$/, "")}}`;
}

function* arrayJson(elements: readonly Iterable<string>[]): Generator<string> {
  yield "[";
  for (const [i, element] of elements.entries()) {
    if (i > 0) yield ",";
    yield* element;
  }
  yield "]";
}

function json(value: unknown): string {
  return jsonText(value).trimEnd();
}

/** Of weeks without an attempt, which strands share. */
type BlankTexts = Map<Week, string>;

function weeksJson(weeks: readonly Week[], blanks: BlankTexts): string {
  return `[${weeks.map((week) => (week.attempts === 0 ? blankJson(week, blanks) : JSON.stringify(week))).join(",")}]`;
}

function blankJson(week: Week, blanks: BlankTexts): string {
  const text = blanks.get(week) ?? JSON.stringify(week);
  blanks.set(week, text);
  return text;
}
