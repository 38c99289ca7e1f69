import type { PreviewOpened, PreviewTableRow } from "../../../shared/preview.ts";
import { tempoChart } from "../../charts/tempo-chart.ts";
import type { TimeAxis } from "../../charts/time-axis.ts";
import type { ExerciseRow } from "../../history/exercise-row.ts";
import { factsOfStrandInWords } from "../../history/journal-facts.ts";
import type { Strand } from "../../history/strands.ts";
import { isSlowWork, metronomeOf, type Notation, shown, weekRows } from "../../history/trend-words.ts";
import { beatInWords, noteValueInWords } from "../../history/value-names.ts";
import { bestWeek, type Week, weeksOf } from "../../history/weeks.ts";
import { type DayNumber, weekIndex } from "../../journal/calendar.ts";
import { shortDate } from "../../journal/date-words.ts";
import type { Journal } from "../../journal/journal.ts";
import { numberTexts } from "../../music/notes/number-texts.ts";
import { exerciseTexts } from "./exercise-texts.ts";
import { placeOfRecord } from "./lines.ts";
import { hashOf } from "./text.ts";
import { wayInWords } from "./way.ts";

/** An aim at a tempo; its day where one is said. */
export interface Aimed {
  readonly rate: number;
  readonly by?: DayNumber;
}

/** How a chart is framed. */
export interface OpenedFrame {
  readonly name: string;
  readonly span: TimeAxis;
  readonly today: DayNumber;
  /** Whether the trend of these weeks may be told. */
  readonly hasTrend: boolean;
  readonly aim?: Aimed;
}

/** The full chart of an exercise, and its weeks as a table, the latest first. */
export function openedExercise(journal: Journal, row: ExerciseRow, frame: OpenedFrame): PreviewOpened | null {
  const { exercise, weeks, notation, trend } = row;
  const { name, span, aim, hasTrend } = frame;
  const strand = exercise.strands[0]!;
  const drawing = tempoChart(
    {
      title: name,
      axis: axisTitle(notation),
      notation,
      weeks,
      attempts: strand.records,
      ...(hasTrend ? { trend } : {}),
      span,
      ...(aim ? { aim: { rate: aim.rate, ...(aim.by === undefined ? {} : { day: aim.by }) } } : {}),
    },
    { kind: "page", id: `exercise ${hashOf(exercise.key)}` },
  );
  if (!drawing.ok) return null;
  return {
    key: exercise.key,
    chart: {
      svg: drawing.svg,
      table: {
        caption: exerciseTexts.byWeek(name),
        headings: exerciseTexts.headings,
        rows: rowsOf(journal, strand, weeks, { notation, today: frame.today }),
        foot: footOf(journal, row, frame),
      },
    },
  };
}

/** `tempo, 8ths`, `tempo, 8ths, half notes a beat`. */
function axisTitle({ noteValue, beat }: Notation): string {
  const named = beat && (beat.numerator !== 1 || beat.denominator !== 4) ? exerciseTexts.beats(beatInWords(beat)) : "";
  return [exerciseTexts.tempo, noteValue ? noteValueInWords(noteValue) : "", named]
    .filter((part) => part !== "")
    .join(", ");
}

interface Written {
  readonly notation: Notation;
  readonly today: DayNumber;
}

/** The latest first; each leads to the last line of its week. */
function rowsOf(
  journal: Journal,
  { records }: Strand,
  weeks: readonly Week[],
  { notation, today }: Written,
): PreviewTableRow[] {
  const lastOfWeek = new Map(records.map((record) => [weekIndex(record.day), record]));
  return weekRows(weeks, notation)
    .map((row, at): PreviewTableRow => {
      const { monday, best, usual, note, reached, minutes } = row;
      const last = lastOfWeek.get(weeks[at]!.index);
      return {
        cells: [
          shortDate(monday, today),
          best,
          isSlowWork(row) ? note : usual,
          reached,
          minutes === "0" ? "–" : minutes,
        ],
        place: last ? placeOfRecord(journal, last) : null,
      };
    })
    .reverse();
}

/** The slope with its interval, for anyone who wants them, and the other ways of playing. */
function footOf(
  journal: Journal,
  { exercise, notation, trend }: ExerciseRow,
  { today, hasTrend }: OpenedFrame,
): string {
  const { slope, low, high, verdict, weeks } = trend;
  const per = (rate: number) => signed(metronomeOf(rate, notation));
  const slopes =
    !hasTrend || verdict === "too early" || slope === null || low === null || high === null
      ? []
      : [exerciseTexts.slope(per(slope), per(low), per(high), weeks)];
  const others = exercise.strands.slice(1, 1 + MOST_OTHERS).flatMap((strand) => otherWay(journal, strand, today));
  const facts = hasTrend ? factsOfStrandInWords(journal, exercise.strands[0]!, notation, today) : [];
  return [...slopes, ...facts, ...(others.length > 0 ? [exerciseTexts.also(others)] : [])].join(" ");
}

const MOST_OTHERS = 3;

/** `tongued, one octave: 69 on 7 Sep`. */
function otherWay(journal: Journal, strand: Strand, today: DayNumber): string {
  const last = strand.records.at(-1)!;
  const best = bestWeek(weeksOf(strand.records))?.bestClean ?? null;
  const way = wayInWords(journal, strand);
  const day = shortDate(last.day, today);
  if (best === null) return exerciseTexts.otherWay(way, day);
  return exerciseTexts.otherWayAt(way, shown(best, last.noteValue, last.beat), day);
}

function signed(value: number): string {
  const number = Math.abs(value).toFixed(2);
  return number === "0.00" ? "0" : `${value < 0 ? "−" : ""}${numberTexts.decimal(number)}`;
}
