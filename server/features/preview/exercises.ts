import type {
  PreviewExercise,
  PreviewExerciseContent,
  PreviewExercises,
  PreviewLine,
} from "../../../shared/preview.ts";
import { monthAxis, tempoRow } from "../../charts/tempo-chart.ts";
import type { TimeAxis } from "../../charts/time-axis.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { countOfMinutes } from "../../history/minute-words.ts";
import { type AttemptRecord, inTimeOrder } from "../../history/record.ts";
import { type Exercise, latestFirst, latestOf } from "../../history/strands.ts";
import { shown } from "../../history/trend-words.ts";
import { weekCount, weeksFrom } from "../../history/week-span.ts";
import { bestWeek } from "../../history/weeks.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { dayBack } from "../../journal/date-words.ts";
import type { Journal } from "../../journal/journal.ts";
import { dayTexts } from "../../plan/day-texts.ts";
import { nameOfRecord, techniqueOfRecord } from "../explain/written-name.ts";
import { exerciseTexts } from "./exercise-texts.ts";
import { line, placeOfRecord } from "./lines.ts";
import { type Aimed, type OpenedFrame, openedExercise } from "./opened.ts";
import { isTimed, lastOf, type RowInSpan, rowInSpan } from "./row-in-span.ts";
import { isInSpan, RECENT_DAYS, type SpanOfDays } from "./span.ts";
import { hashOf, shownText } from "./text.ts";
import { wayInWords } from "./way.ts";

/** Which exercises to show. */
export interface ExercisesAsked {
  readonly days: SpanOfDays;
  /** Of the charts: one for all. */
  readonly axis: TimeAxis;
  /** Null for all. */
  readonly instrument: string | null;
  /** The one that an entry means where it names none. */
  readonly usualInstrument: string | null;
  readonly most: number;
  /** Hashes of exercises that the page shows already. */
  readonly known: ReadonlySet<string>;
  /** The next aim at a tempo, by the key of its strand. */
  readonly aims: ReadonlyMap<string, Aimed>;
  /** Whether what there is may be a part of the journal: then no trend is told. */
  readonly reading: boolean;
  /** The key of the one that is unfolded. */
  readonly open: string | undefined;
}

/** The exercises of a span, the latest practised first; null where there is none. */
export function exercisesSection(journal: Journal, asked: ExercisesAsked): PreviewExercises | null {
  const { days, most } = asked;
  const rows = exercisesIn(journal, asked).flatMap((exercise) => rowInSpan(journal, exercise, days) ?? []);
  if (rows.length === 0) return isPlayed(journal, days) ? nothingIn(days) : null;
  rows.sort(byLatest);
  const { axis: span } = asked;
  const timed = rows.filter(({ row }) => isTimed(row.exercise.strands[0]!, days));
  const shownRows = timed.slice(0, most);
  const recent = shownRows.filter(({ row }) => isRecent(lastOf(row), days.today));
  const plain = withoutTempo(journal, rows, asked);
  const draw = (each: RowInSpan) => exerciseShown(journal, each, asked);
  const opened = timed.find(({ row }) => row.exercise.key === asked.open);
  return {
    note: recent.length > 0 ? exerciseTexts.recent : "",
    axis: shownRows.length > 0 ? monthAxis({ span }) : "",
    recent: recent.map(draw),
    earlier: shownRows.filter((each) => !recent.includes(each)).map(draw),
    plain: plain.filter(({ last }) => isRecent(last, days.today)).map((each) => each.line),
    earlierPlain: plain.filter(({ last }) => !isRecent(last, days.today)).map((each) => each.line),
    left: timed.length - shownRows.length,
    opened: opened ? openedExercise(journal, opened.row, frameOf(journal, opened, asked)) : null,
  };
}

/** Whether anything but titles was played, whenever that was. */
function isPlayed(journal: Journal, { today }: SpanOfDays): boolean {
  const all = [...journalHistory(journal).exercises.values()];
  return all.some(({ strands }) => strands.some(({ title, records }) => !title && records[0]!.day <= today));
}

function nothingIn({ since, today }: SpanOfDays): PreviewExercises {
  const note =
    since === undefined ? exerciseTexts.nothing : exerciseTexts.nothingInWeeks(weekCount(weeksFrom(since, today)));
  const none = { axis: "", recent: [], earlier: [], plain: [], earlierPlain: [], left: 0, opened: null };
  return { note, ...none };
}

/** Those that are no title, on the instrument that is asked for. */
function exercisesIn(journal: Journal, { instrument }: ExercisesAsked): readonly Exercise[] {
  return [...journalHistory(journal).exercises.values()].filter(
    (exercise) => !exercise.strands[0]!.title && (instrument === null || exercise.instrument === instrument),
  );
}

/** By the strand that is shown. */
function byLatest(a: RowInSpan, b: RowInSpan): number {
  return lastOf(b.row).day - lastOf(a.row).day || latestFirst(a.row.exercise, b.row.exercise);
}

function isRecent({ day }: AttemptRecord, today: DayNumber): boolean {
  return day > today - RECENT_DAYS;
}

function frameOf(journal: Journal, { row }: RowInSpan, asked: ExercisesAsked): OpenedFrame {
  const aim = asked.aims.get(row.exercise.strands[0]!.key);
  return {
    name: nameOf(journal, row.exercise, asked.usualInstrument),
    span: asked.axis,
    today: asked.days.today,
    hasTrend: !asked.reading,
    ...(aim ? { aim } : {}),
  };
}

function exerciseShown(journal: Journal, each: RowInSpan, asked: ExercisesAsked): PreviewExercise {
  const { row } = each;
  const { hash, shows } = drawn(journal, each, asked);
  return {
    key: row.exercise.key,
    hash,
    place: placeOfRecord(journal, lastOf(row)),
    ...(asked.known.has(hash) ? {} : { shows }),
  };
}

interface Drawn {
  readonly hash: string;
  readonly shows: PreviewExerciseContent;
}

/** Drawn once while neither the exercise nor what else bears on it changes. */
function drawn(journal: Journal, each: RowInSpan, asked: ExercisesAsked): Drawn {
  const { usualInstrument, days, reading, axis } = asked;
  const inputs = [each.row, JSON.stringify(axis), usualInstrument, days.today, reading];
  return journal.memo.from(each.source, "preview drawing", inputs, () => {
    const shows = contentOf(journal, each, asked);
    return { hash: hashOf(JSON.stringify(shows)), shows };
  });
}

function contentOf(journal: Journal, each: RowInSpan, asked: ExercisesAsked): PreviewExerciseContent {
  const { row } = each;
  const { exercise, weeks, notation, trend } = row;
  const strand = exercise.strands[0]!;
  const inWeeks = strand.records.filter(({ day }) => isInSpan(day, asked.days));
  const latest = inWeeks.findLast(({ rate, reached }) => reached === true && rate !== null)?.rate ?? null;
  const fastest = bestWeek(weeks)?.bestClean ?? null;
  const told = (rate: number | null) => (rate === null ? "" : shown(rate, notation.noteValue, notation.beat));
  const name = nameOf(journal, exercise, asked.usualInstrument);
  return {
    name,
    way: wayInWords(journal, strand),
    trend: asked.reading ? "" : each.trend,
    latest: told(latest),
    fastest: told(fastest),
    day: dayBack(lastOf(row).day, asked.days.today),
    chart:
      tempoRow({
        title: name,
        axis: "",
        notation,
        weeks,
        attempts: strand.records,
        ...(asked.reading ? {} : { trend }),
        span: asked.axis,
      }) ?? "",
  };
}

/** `D melodic minor, thirds`, with `on tenor recorder` where that is not the instrument that goes without saying. */
export function nameOf(journal: Journal, { strands, instrument }: Exercise, usualInstrument: string | null): string {
  const what = nameOfRecord(journal, latestOf(strands)!);
  return shownText(
    instrument === null || instrument === usualInstrument ? what : exerciseTexts.onInstrument(what, instrument),
  );
}

/** What was played without a tempo in the span, as one line. */
interface Plain {
  readonly line: PreviewLine;
  readonly last: AttemptRecord;
}

/**
 * The ways of playing that have no tempo, one line for each exercise; a technique, such as long tones, is one whatever
 * its notes. The latest first.
 */
function withoutTempo(journal: Journal, rows: readonly RowInSpan[], asked: ExercisesAsked): Plain[] {
  const { days, usualInstrument } = asked;
  const byName = new Map<string, { behind: string; isTechnique: boolean; records: AttemptRecord[] }>();
  for (const { row } of rows) {
    const { exercise } = row;
    const technique = techniqueOf(exercise);
    const name = technique ?? nameOf(journal, exercise, usualInstrument);
    for (const strand of exercise.strands) {
      if (isTimed(strand, days)) continue;
      const own = strand.records.filter(({ day }) => isInSpan(day, days));
      const known = byName.get(name);
      const way = HAS_WAYS.test(exercise.subjectKey) ? wayInWords(journal, strand) : "";
      if (known) known.records.push(...own);
      else if (own.length > 0)
        byName.set(name, { isTechnique: technique !== undefined, behind: way === "" ? "" : `, ${way}`, records: own });
    }
  }
  return [...byName]
    .map(([known, { behind, isTechnique, records }]) => {
      const last = records.sort(inTimeOrder).at(-1)!;
      const name = isTechnique ? shownText(techniqueOfRecord(journal, last)) : known;
      const facts = factsOf(records);
      return { line: line(name, placeOfRecord(journal, last), dayBack(last.day, days.today), { behind, facts }), last };
    })
    .sort((a, b) => inTimeOrder(b.last, a.last));
}

/** What may be played in several ways that go by a name. */
const HAS_WAYS = /^(?:scale|chord|chain|several): /;

/** `long tones`, on whichever notes, by the name in the tables; undefined for what is no technique. */
function techniqueOf({ subjectKey, subject }: Exercise): string | undefined {
  const isFigure = subjectKey.startsWith("figure: ") && subject.includes(" on ");
  return isFigure || subjectKey.startsWith("technique: ") ? shownText(subject.split(" on ")[0]!) : undefined;
}

/** `28 days` and `about 160 minutes`. */
function factsOf(records: readonly AttemptRecord[]): string[] {
  return [dayTexts.days(new Set(records.map(({ day }) => day)).size), countOfMinutes(records) ?? ""];
}
