import type { PreviewExercise, PreviewExerciseContent, PreviewGroup, PreviewMoving } from "../../../shared/preview.ts";
import { TEMPO_MARKS } from "../../charts/tempo-words.ts";
import { type ExerciseRow, exerciseRow, rateAsWritten } from "../../history/exercise-row.ts";
import { journalHistory, weeksOfStrand } from "../../history/journal-history.ts";
import { type Exercise, exerciseOf, latestFirst, type Strand, strandOf } from "../../history/strands.ts";
import type { Verdict } from "../../history/trend.ts";
import { type WeekSpan, weeksFrom } from "../../history/week-span.ts";
import { bestWeek, type Week, weeksOf } from "../../history/weeks.ts";
import type { Journal } from "../../journal/journal.ts";
import { exerciseInWords, oneOfStrands } from "../explain/exercise-words.ts";
import { type AimedTempo, type ChartFrame, rowChart } from "./chart.ts";
import { type SpanOfDays, spanInWords } from "./span.ts";
import { hashOf, placeOf, sentence, shownText } from "./text.ts";

/** Which exercises to show. */
export interface MovingAsked {
  readonly days: SpanOfDays;
  /** Null for all. */
  readonly instrument: string | null;
  /** The one that an entry means where it names none. */
  readonly usualInstrument: string | null;
  readonly most: number;
  /** Hashes of exercises that the page shows already. */
  readonly known: ReadonlySet<string>;
  /** The latest aim at a tempo by a day, by the key of its strand. */
  readonly aims: ReadonlyMap<string, AimedTempo>;
}

const GROUPS: readonly { readonly title: string; readonly verdicts: readonly Verdict[] }[] = [
  { title: "Moving", verdicts: ["rising", "falling"] },
  { title: "Level", verdicts: ["level"] },
  { title: "Too early to say", verdicts: ["too early"] },
];

/**
 * The exercises of a span: those that moved, those that rest, those too young to say; in each group the latest
 * practised first.
 */
export function movingSection(journal: Journal, asked: MovingAsked): PreviewMoving {
  const all = [...journalHistory(journal).exercises.values()].filter(
    ({ instrument }) => asked.instrument === null || instrument === asked.instrument,
  );
  const rows = all.flatMap((exercise) => rowInSpan(journal, exercise, asked.days) ?? []);
  const span = spanOfCharts(rows, asked.days);
  let room = asked.most;
  const groups = GROUPS.map(({ title, verdicts }): PreviewGroup => {
    const own = rows.filter(({ row }) => verdicts.includes(row.trend.verdict)).sort(byLatest);
    const shown = own.slice(0, room);
    room -= shown.length;
    return { title, exercises: shown.map((each) => exerciseShown(journal, each, { asked, span })) };
  });
  return {
    sentence:
      rows.length === 0
        ? emptySentence(all.length, asked.days)
        : sentence(`best tempos ${spanInWords(asked.days)}. ${TEMPO_MARKS}`),
    groups: groups.filter(({ exercises }) => exercises.length > 0),
    left: Math.max(0, rows.length - asked.most),
  };
}

function emptySentence(exercises: number, days: SpanOfDays): string {
  const none = exercises === 0 ? "No exercise is written yet" : `No exercise was practised ${spanInWords(days)}`;
  return `${none}. Write a line such as \`D minor melodic, thirds, 8ths at 60 clean\` below a day, and its weeks appear here.`;
}

/** An exercise of the journal, and what of it lies in the span. */
interface RowInSpan {
  /** The object of the history, which stays the same until an edit touches it. */
  readonly source: Exercise;
  readonly row: ExerciseRow;
}

function byLatest(a: RowInSpan, b: RowInSpan): number {
  return latestFirst(a.row.exercise, b.row.exercise);
}

/** Undefined where nothing was practised in the span. */
function rowInSpan(journal: Journal, source: Exercise, days: SpanOfDays): RowInSpan | undefined {
  return journal.memo.from(source, "preview row", [days.since, days.today], () => {
    const inSpan = exerciseInSpan(source, days);
    return inSpan && { source, row: exerciseRow(inSpan, weeksInSpan(journal, inSpan.strands[0]!, days)) };
  });
}

/** As the history of the days since then has it (`exercisesOf`), without days ahead. */
function exerciseInSpan({ strands }: Exercise, { since, today }: SpanOfDays): Exercise | undefined {
  const own = strands.flatMap((strand): Strand[] => {
    const ahead = strand.records.at(-1)!.day > today;
    const records = ahead ? strand.records.filter(({ day }) => day <= today) : strand.records;
    const last = records.at(-1);
    if (!last || (since !== undefined && last.day < since)) return [];
    return [ahead || since !== undefined ? strandOf(records, since) : strand];
  });
  return own.length > 0 ? exerciseOf(own) : undefined;
}

function weeksInSpan(journal: Journal, strand: Strand, { since }: SpanOfDays): readonly Week[] {
  return since === undefined ? weeksOfStrand(journal, strand) : weeksOf(strand.records, since);
}

/** How wide each chart is: a week is as wide in every one. */
function spanOfCharts(rows: readonly RowInSpan[], { since, today }: SpanOfDays): WeekSpan {
  const first = rows.reduce((day, { row }) => Math.min(day, row.exercise.strands[0]!.records[0]!.day), today);
  return weeksFrom(since ?? first, today);
}

interface Showing {
  readonly asked: MovingAsked;
  readonly span: WeekSpan;
}

function exerciseShown(journal: Journal, { source, row }: RowInSpan, showing: Showing): PreviewExercise {
  const { latest, exercise } = row;
  const { hash, shows } = drawn(journal, source, row, showing);
  return {
    key: exercise.key,
    hash,
    place: placeOf(journal, latest.uri, latest.block, latest.line),
    ...(showing.asked.known.has(hash) ? {} : { shows }),
  };
}

interface Drawn {
  readonly hash: string;
  readonly shows: PreviewExerciseContent;
}

/** Drawn once while neither the exercise nor what else bears on it changes. */
function drawn(journal: Journal, source: Exercise, row: ExerciseRow, showing: Showing): Drawn {
  const { asked, span } = showing;
  const { usualInstrument } = asked;
  const aim = asked.aims.get(row.exercise.strands[0]!.key);
  const inputs = [row, span.first, span.last, usualInstrument, aim?.rate, aim?.by];
  return journal.memo.from(source, "preview drawing", inputs, () => {
    const shows = contentOf(row, usualInstrument, { span, aim });
    return { hash: hashOf(JSON.stringify(shows)), shows };
  });
}

function contentOf(
  row: ExerciseRow,
  usualInstrument: string | null,
  frame: Omit<ChartFrame, "name">,
): PreviewExerciseContent {
  const name = nameOf(row.exercise, usualInstrument);
  return {
    name,
    strand: strandWords(row),
    best: bestSentence(row),
    trend: sentence(row.trendWords),
    chart: rowChart(row, { name, ...frame }),
  };
}

/** `D melodic minor, thirds`, with `on tenor recorder` where that is not the instrument that goes without saying. */
function nameOf({ subject, pattern, instrument }: Exercise, usualInstrument: string | null): string {
  const what = exerciseInWords(subject, pattern);
  return shownText(instrument === null || instrument === usualInstrument ? what : `${what}, on ${instrument}`);
}

function strandWords({ exercise: { strands }, strand, lastPractised }: ExerciseRow): string {
  const which = oneOfStrands(strands.length, strands[0]!);
  return `${sentence(shownText(strand)).slice(0, -1)}${which}; last on ${lastPractised}`;
}

function bestSentence({ weeks, latest, notation }: ExerciseRow): string {
  const best = bestWeek(weeks);
  if (!best) return "No tempo was reached in these weeks.";
  return sentence(`best ${rateAsWritten(best.bestClean, latest, notation)}, in ${best.week}`);
}
