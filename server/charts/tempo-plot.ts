import { type ScaleContinuousNumeric, scaleLinear, scaleLog } from "d3-scale";
import { firstDay, weekCount } from "../history/week-span.ts";
import { FONT_SIZE, type Size, textWidth } from "./look.ts";
import { counted, isRate, shownRate, type TempoChart, type TempoFrame } from "./tempo-data.ts";

/** Where things stand in a tempo chart, in pixels from its top left corner. */
export interface TempoPlot {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** How wide a week is. */
  readonly week: number;
  /** Where a week begins, from left to right, by its running number; with parts of a week, where those are over. */
  x(week: number): number;
  /** Where the middle of a day is, from left to right. */
  day(day: number): number;
  /** A rate to a place from top to bottom; what lies outside the scale stands on its edge. */
  y(rate: number): number;
  /** The tempos that have a line across, slowest first. */
  readonly grid: readonly GridTempo[];
}

export interface GridTempo {
  readonly y: number;
  readonly text: string;
}

/**
 * Half of the span that the slowest and the fastest tempo have at least between them, as a ratio: within it a wobble
 * stays one.
 */
const LEAST_HALF = 1.15;
/** The ratio that is left free above and below. */
const ROOM = 1.03;
const DAYS_OF_WEEK = 7;
/** In pixels. */
const LINES_APART = 22;

/** The frame's week columns from left to right; tempos on a ratio scale, so that ten per cent is as high everywhere. */
export function tempoPlot(data: TempoChart, frame: TempoFrame, size: Size): TempoPlot {
  const top = data.axis === "" && !frame.aim ? 6 : FONT_SIZE + 6;
  const bottom = size.height - FONT_SIZE - 8;
  const tempos = scaleLog().domain(domainOf(data, frame)).range([bottom, top]).clamp(true);
  const grid = gridOf(tempos);
  const left = Math.ceil(Math.max(...grid.map(({ text }) => textWidth(text)), 0)) + 6;
  const right = size.width - 4;
  const columns = weekCount(frame.span);
  const weeks = scaleLinear().domain([0, columns]).range([left, right]);
  return {
    left,
    right,
    top,
    bottom,
    week: (right - left) / columns,
    x: (week) => weeks(week - frame.span.first),
    day: (day) => weeks((day - firstDay(frame.span) + 0.5) / DAYS_OF_WEEK),
    y: (rate) => tempos(counted(rate, data.notation)),
    grid,
  };
}

/** From the slowest to the fastest tempo that is drawn, as the metronome has it, with some room around. */
function domainOf({ notation }: TempoChart, { weeks, attempts, aim }: TempoFrame): [number, number] {
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
  const middle = Math.sqrt(low * high);
  return [Math.min(low / ROOM, middle / LEAST_HALF), Math.max(high * ROOM, middle * LEAST_HALF)];
}

/** The lowest and the highest round tempo within the scale, and one between them where there is room. */
function gridOf(tempos: ScaleContinuousNumeric<number, number>): GridTempo[] {
  const round = tempos
    .ticks(5)
    .map((tempo) => ({ tempo, y: tempos(tempo), text: shownRate(tempo) }))
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
