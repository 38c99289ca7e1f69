import { usualInstrument } from "../../features/explain/usual-instrument.ts";
import { nameOfRecord } from "../../features/explain/written-name.ts";
import { beatBefore } from "../../features/preview/beat.ts";
import { noteValueAsWritten } from "../../features/preview/way.ts";
import { type ArticulationWords, articulationWords } from "../../history/articulation-words.ts";
import { attemptsOfJournal } from "../../history/attempts.ts";
import { type PractisedDays, practisedDays } from "../../history/break.ts";
import { type Comparison, comparisonsOf } from "../../history/comparisons.ts";
import { type ExerciseRow, exerciseRow } from "../../history/exercise-row.ts";
import { factsInWords } from "../../history/facts-words.ts";
import type { AttemptRecord } from "../../history/record.ts";
import { type DayAsked, factsToday, lastDayOf, type StrandFacts } from "../../history/strand-facts.ts";
import {
  type Choice,
  type Exercise,
  exerciseOf,
  exercisesOf,
  grouped,
  latestFirst,
  type Strand,
} from "../../history/strands.ts";
import { LATELY } from "../../history/trend.ts";
import { shown, trendInColumn, trendInRates } from "../../history/trend-words.ts";
import { type WeekSpan, weeksIn, weeksUpTo } from "../../history/week-span.ts";
import { bestWeek, type Week, weeksOf } from "../../history/weeks.ts";
import { type DayNumber, mondayOf, weekIndex } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import { printable } from "../printable.ts";
import { daysOf } from "./weeks-asked.ts";

/** What is told of a strand, ready to print. */
export interface HistoryRow {
  readonly name: string;
  /** Of the axis; none where it was last practised before that. */
  readonly weeks: readonly Week[];
  /** `8ths 63–96`, the tempos of the lowest and the highest bar. */
  readonly tempos: string;
  readonly latest: string;
  readonly trend: string;
  /** Of this strand. ISO 8601. */
  readonly lastPractised: string;
  /** A break cut off what came before its trend. */
  readonly isCut: boolean;
  /** What is known beside the trend, a sentence each; only where every strand is shown. */
  readonly facts: readonly string[];
}

/** The rows of a journal, the latest practised first. */
export interface HistoryRows {
  readonly drawn: readonly HistoryRow[];
  /** Those last practised before the axis begins. */
  readonly ended: readonly HistoryRow[];
  /** An exercise has other strands than the one that is shown. */
  readonly hasOthers: boolean;
}

export interface RowsAsked {
  readonly axis: WeekSpan;
  /** What was asked for; with nothing, exercises that ended before the axis are told of as well. */
  readonly choice: Choice;
  readonly everyStrand: boolean;
  readonly today: DayNumber;
  /** Notes a minute in place of the player's own note value. */
  readonly rates: boolean;
}

/** A strand of an exercise, as an exercise of its own. */
interface Shown {
  readonly exercise: Exercise;
  /** All strands of its exercise. */
  readonly of: number;
}

export function rowsOf(records: readonly AttemptRecord[], journal: Journal, asked: RowsAsked): HistoryRows {
  const { axis, choice, everyStrand } = asked;
  const { since } = daysOf(axis);
  const all = exercisesOf(records, choice);
  const lately = new Map(exercisesOf(records, { ...choice, since }).map((each) => [each.key, each]));
  const shown = all.flatMap(({ key, strands }): Shown[] => {
    const own = everyStrand ? strands : [(lately.get(key)?.strands ?? strands)[0]!];
    return own.map((strand) => ({ exercise: exerciseOf([strand]), of: everyStrand ? 1 : strands.length }));
  });
  const isDrawn = ({ exercise }: Shown) => exercise.lastDay >= since;
  const instruments = new Set(all.map(({ instrument }) => instrument));
  const practised = practisedDays(attemptsOfJournal(journal));
  const attempts = everyStrand ? grouped(records, "exerciseKey") : new Map<string, AttemptRecord[]>();
  const toRow = (each: Shown) =>
    rowOf(each, journal, { ...asked, isDrawn: isDrawn(each), instruments, practised, attempts });
  const order = new Map(all.map(({ key }, at) => [key, at]));
  const inOrder = (a: Shown, b: Shown) =>
    (everyStrand ? order.get(a.exercise.key)! - order.get(b.exercise.key)! : 0) || latestFirst(a.exercise, b.exercise);
  const sorted = shown.sort(inOrder);
  return {
    drawn: sorted.filter(isDrawn).map(toRow),
    ended: choice.since === undefined ? sorted.filter((each) => !isDrawn(each)).map(toRow) : [],
    hasOthers: shown.some(({ of }) => of > 1),
  };
}

interface RowAsked extends RowsAsked {
  readonly isDrawn: boolean;
  readonly instruments: ReadonlySet<string | null>;
  readonly practised: PractisedDays;
  /** Those of each exercise, by its key, where what is known of it is told. */
  readonly attempts: ReadonlyMap<string, readonly AttemptRecord[]>;
}

function rowOf({ exercise, of }: Shown, journal: Journal, asked: RowAsked): HistoryRow {
  const { axis, isDrawn, rates, instruments } = asked;
  const strand = exercise.strands[0]!;
  const span = isDrawn ? axis : weeksUpTo(weekIndex(exercise.lastDay), LATELY);
  const facts = factsToday(strand, asked.practised, dayAsked(asked));
  const row = exerciseRow(exercise, weeksIn(weeksOf(strand.records, mondayOf(span.first)), span), facts.since);
  const usual = usualInstrument(journal);
  return {
    name: nameOf(row, of, journal, instruments.size > 1 ? usual : exercise.instrument),
    weeks: isDrawn ? row.weeks : [],
    ...temposOf(row, journal, rates),
    trend: trendIn(row, rates),
    lastPractised: row.lastPractised,
    isCut: row.trend.since !== undefined,
    facts: factsIn(row, facts, asked, articulationWords(journal, row.latest)),
  };
}

function factsIn(
  { exercise, notation }: ExerciseRow,
  facts: StrandFacts,
  asked: RowAsked,
  articulation: ArticulationWords,
): readonly string[] {
  const { rates, attempts } = asked;
  const own = attempts.get(exercise.key);
  if (!own) return [];
  const day = lastDayOf(dayAsked(asked));
  // One of each exercise is told, below the slower way.
  const isOfRow = ({ strands: [slower] }: Comparison) => slower === exercise.strands[0]!.key;
  const told = comparisonsOf(own, day).slice(0, 1).filter(isOfRow);
  return factsInWords(facts, told, rates ? {} : notation, day, articulation);
}

function dayAsked({ today, choice: { until } }: RowsAsked): DayAsked {
  return { today, ...(until === undefined ? {} : { until }) };
}

/**
 * `D melodic minor, thirds (octave, single, even)`; with `1 of 3 strands` where one of several is shown, and
 * `on alto recorder` where that is not the instrument that goes without saying.
 */
function nameOf(
  { exercise, strand, latest }: ExerciseRow,
  of: number,
  journal: Journal,
  withoutSaying: string | null,
): string {
  const { instrument } = exercise;
  const words = strandInWords(exercise.strands[0]!, strand, articulationWords(journal, latest));
  const which = of > 1 ? `${words}; 1 of ${of} strands` : words;
  const on = instrument === null || instrument === withoutSaying ? "" : ` on ${instrument}`;
  return printable(`${nameOfRecord(journal, latest)} (${which})${on}`);
}

/** The name of a strand; single notes as players of the instrument call them where it is not blown, or not at all. */
function strandInWords(
  { title, tonguing, reach, evenness }: Strand,
  name: string,
  { alone }: ArticulationWords,
): string {
  const single = alone("single");
  if (title || tonguing !== "single" || single === "tongued") return name;
  return [reach, single, evenness].filter((part) => part !== null).join(", ");
}

/** Where there is no figure. */
export const NONE = "–";

function temposOf(row: ExerciseRow, journal: Journal, rates: boolean): Pick<HistoryRow, "tempos" | "latest"> {
  const { weeks, notation, exercise } = row;
  const bests = weeks.flatMap(({ bestClean }) => bestClean ?? []);
  if (bests.length === 0) return { tempos: NONE, latest: NONE };
  const figure = (rate: number) => (rates ? shown(rate) : shown(rate, notation.noteValue, notation.beat));
  const [low, high] = [figure(Math.min(...bests)), figure(bestWeek(weeks)!.bestClean)];
  const before = rates ? "" : beforeTempo(row, exercise.strands[0]!, journal);
  return { tempos: before + (low === high ? low : `${low}–${high}`), latest: figure(bests.at(-1)!) };
}

/** What the player counts in, as it was last written: `quavers `, `16ths half=`, `quarter=`. */
function beforeTempo({ notation }: ExerciseRow, { records }: Strand, journal: Journal): string {
  const last = records.findLast(({ rate }) => rate !== null)!;
  const beat = beatBefore(journal, last, notation);
  const value = last.unit === "beats" ? undefined : noteValueAsWritten(journal, last);
  return printable([value, beat].filter(Boolean).join(" ") + (value && beat === "" ? " " : ""));
}

function trendIn({ weeks, notation, trend }: ExerciseRow, rates: boolean): string {
  if (weeks.every(({ bestClean }) => bestClean === null)) return weeks.length === 0 ? NONE : "no clean tempo";
  return rates ? trendInRates(trend, weeks) : trendInColumn(trend, weeks, notation);
}
