import { counted, isRate, shownRate, type TempoChart, type TempoFrame } from "./tempo-data.ts";
import { type TempoScale, tempoScale } from "./tempo-scale.ts";
import { placeOfDay, placeOfWeek, type TimeAxis } from "./time-axis.ts";

/** Where things stand in a tempo chart: across in the stretched space, downwards in pixels. */
export interface TempoPlot {
  readonly span: TimeAxis;
  readonly top: number;
  readonly bottom: number;
  /** Where a week begins, by its running number; with parts of a week, where those are over. */
  week(week: number): number;
  /** Where the middle of a day is. */
  day(day: number): number;
  /** A rate to a place from top to bottom; what lies outside the scale stands on its edge. */
  y(rate: number): number;
  /** The tempos that stand at the side, slowest first. */
  readonly sides: readonly SideTempo[];
}

export interface SideTempo {
  readonly y: number;
  readonly text: string;
}

/** How a chart is laid out, in pixels. */
export interface PlotSize {
  readonly top: number;
  readonly bottom: number;
  /** What its numbers at the side are: the slowest and the fastest tempo, or round ones. */
  readonly sides: "ends" | "round";
}

/** The least ratio of the fastest tempo to the slowest that fills the height: within it a wobble stays one. */
const LEAST_RATIO = 1.1;
/** The ratio that is left free above and below round numbers. */
const ROOM = 1.02;
/** In pixels, for numbers one below the other. */
const LINES_APART = 22;
const NUMBERS_APART = 11;

/** The frame's weeks from left to right; tempos on a ratio scale, so that ten per cent is as high everywhere. */
export function tempoPlot(data: TempoChart, frame: TempoFrame, { top, bottom, sides }: PlotSize): TempoPlot {
  const { low, high } = rangeOf(data, frame);
  const room = sides === "round" ? ROOM : 1;
  const tempos = tempoScale([Math.min(low, high / LEAST_RATIO) / room, high * room], { bottom, top });
  return {
    span: frame.span,
    top,
    bottom,
    week: (week) => placeOfWeek(week, frame.span),
    day: (day) => placeOfDay(day, frame.span),
    y: (rate) => tempos.y(counted(rate, data.notation)),
    sides: sides === "round" ? roundTempos(tempos) : ends(tempos, low, high),
  };
}

/** The slowest and the fastest tempo that is drawn, as the metronome has it. */
function rangeOf({ notation }: TempoChart, { weeks, attempts, aim }: TempoFrame): { low: number; high: number } {
  let low = Number.POSITIVE_INFINITY;
  let high = 0;
  const include = (rate: number | null) => {
    if (!isRate(rate)) return;
    const tempo = counted(rate, notation);
    low = Math.min(low, tempo);
    high = Math.max(high, tempo);
  };
  for (const { bestClean } of weeks) include(bestClean);
  for (const { rate } of attempts) include(rate);
  include(aim?.rate ?? null);
  return { low, high };
}

/** The slowest and the fastest; one number where they are the same. */
function ends(tempos: TempoScale, low: number, high: number): SideTempo[] {
  const fastest = { y: tempos.y(high), text: shownRate(high) };
  const slowest = { y: Math.max(tempos.y(low), fastest.y + NUMBERS_APART), text: shownRate(low) };
  return slowest.text === fastest.text ? [fastest] : [slowest, fastest];
}

/** The lowest and the highest round tempo within the scale, and one between them where there is room. */
function roundTempos(tempos: TempoScale): SideTempo[] {
  const round = tempos
    .round(5)
    .map((tempo) => ({ tempo, y: tempos.y(tempo), text: shownRate(tempo) }))
    .filter(({ tempo, text }) => Math.abs(Number(text) - tempo) < 1e-6);
  const lowest = round[0];
  const highest = round.at(-1);
  if (!lowest || !highest) return [];
  if (lowest.y - highest.y < LINES_APART) return [lowest];
  const middle = (lowest.y + highest.y) / 2;
  const between = round
    .filter(({ y }) => lowest.y - y >= LINES_APART && y - highest.y >= LINES_APART)
    .sort((a, b) => Math.abs(a.y - middle) - Math.abs(b.y - middle))[0];
  return [lowest, ...(between ? [between] : []), highest];
}
