import { type DayNumber, isoDate } from "../journal/calendar.ts";
import type { AttemptRecord } from "./record.ts";
import { type Exercise, latestOf, strandName } from "./strands.ts";
import { type Trend, trendOf } from "./trend.ts";
import { type Notation, shown, trendInBrief, trendInWords } from "./trend-words.ts";
import { beatInWords, noteValueInWords } from "./value-names.ts";
import { valueTexts } from "./value-texts.ts";
import type { Week } from "./weeks.ts";

/** One exercise as it is shown: its strand with most weeks, in the player's own note value. */
export interface ExerciseRow {
  readonly exercise: Exercise;
  readonly strand: string;
  readonly weeks: readonly Week[];
  readonly trend: Trend;
  /** Without a full stop: `up about 1½ notches in four weeks (1 to 2)`. */
  readonly trendWords: string;
  /** The same for a column: `up 1½ notches in four weeks`. */
  readonly trendBrief: string;
  readonly notation: Notation;
  /** ISO 8601. */
  readonly lastPractised: string;
  readonly latest: AttemptRecord;
}

/**
 * The row of an exercise, with the weeks of its first strand, on which the trend is fitted.
 *
 * @param since the first day back after a break that cuts off what came before (`baselineOf`)
 */
export function exerciseRow(exercise: Exercise, weeks: readonly Week[], since?: DayNumber): ExerciseRow {
  const strand = exercise.strands[0]!;
  const trend = trendOf(weeks, since);
  const notation = notationOf(strand.records);
  const latest = latestOf(exercise.strands)!;
  return {
    exercise,
    strand: strandName(strand),
    weeks,
    trend,
    trendWords: trendInWords(trend, weeks, notation),
    trendBrief: trendInBrief(trend, weeks, notation),
    notation,
    lastPractised: isoDate(exercise.lastDay),
    latest,
  };
}

/** What the player counted in when a rate was last written. */
function notationOf(records: readonly AttemptRecord[]): Notation {
  const { noteValue, beat } = records.findLast(({ rate }) => rate !== null) ?? records.at(-1)!;
  return { noteValue, beat };
}

/** A rate as the player wrote it: `8ths at 72`, `16ths at half=60`, for a title `quarter=84`. */
export function rateAsWritten(rate: number, of: Pick<AttemptRecord, "unit">, notation: Notation): string {
  const tempo = tempoAsWritten(rate, of, notation);
  if (of.unit === "beats") return tempo;
  const { noteValue } = notation;
  return noteValue ? valueTexts.at(noteValueInWords(noteValue), tempo) : valueTexts.atTempo(tempo);
}

/** The same without the note value: `72`, `half=60`. */
export function tempoAsWritten(rate: number, of: Pick<AttemptRecord, "unit">, notation: Notation): string {
  const bpm = of.unit === "beats" ? shown(rate) : shown(rate, notation.noteValue, notation.beat);
  return beatBefore(of, notation) + bpm;
}

/** What the player writes before the number of a tempo: `half=`; empty where that goes without saying. */
export function beatBefore({ unit }: Pick<AttemptRecord, "unit">, { beat }: Notation): string {
  const isNamed = beat && (unit === "beats" || beat.numerator !== 1 || beat.denominator !== 4);
  return isNamed ? `${beatInWords(beat)}=` : "";
}

/** What tempos count: two that count alike have the same. */
export function axisOf(of: Pick<AttemptRecord, "unit">, notation: Notation): string {
  const value = of.unit === "notes" && notation.noteValue ? noteValueInWords(notation.noteValue) : "";
  return `${value}, ${beatBefore(of, notation)}`;
}
