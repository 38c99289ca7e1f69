import { scaleLinear } from "d3-scale";
import { type Day, type DayBars, sum, type WeekByDay, weekByDay } from "./day-data.ts";
import { describeDays, shownMinutes } from "./day-words.ts";
import { type Key, type KeyEntry, keyOf } from "./legend.ts";
import {
  baseline,
  type ChartPalette,
  coloursOf,
  FONT_SIZE,
  fitted,
  type Look,
  label,
  picture,
  sizeOf,
} from "./look.ts";
import { type PhaseFills, phaseFills } from "./phase-fill.ts";
import { type Drawing, element, figure, idFrom } from "./svg.ts";

const LEAST_SIZE = { width: 220, height: 90 };
/** The least height of the longest bar, in pixels. */
const LEAST_BAR = 30;
/** How wide a bar is, in parts of its day's width. */
const BAR = 0.56;
/** How far last week's mark reaches beyond its bar on either side, in pixels. */
const OVERHANG = 4;
/** How far a figure stands above its bar, in pixels. */
const ABOVE = 3;

/**
 * One bar for each day of a week, split by phase. Last week stands as a thin mark across each bar, the total of the
 * same weekday: that is what a bar can be held against on its own scale, where the total of the whole week would dwarf
 * every day.
 */
export function dayBars(data: DayBars, look: Look): Drawing {
  const week = weekByDay(data);
  if (week.most === 0) return { ok: false, reason: NOTHING };
  const colours = coloursOf(look);
  const fills = phaseFills(idFrom(look.id), colours);
  const size = sizeOf(look, LEAST_SIZE);
  const { width, height } = size;
  const key = keyOf(keyEntries(week, fills, colours), width);
  const below = FONT_SIZE + 8 + key.height;
  const above = week.days.reduce((lines, day) => Math.max(lines, figureOf(day).length), 0) * FONT_SIZE + ABOVE;
  const bottom = Math.max(height - below, above + LEAST_BAR);
  const y = scaleLinear().domain([0, week.most]).range([bottom, above]);
  const text = describeDays(week);
  const days = week.days.map((day, place) =>
    dayMarks(day, columnOf(place, width / week.days.length, y), fills, colours),
  );
  const svg = picture(
    look,
    { width, height: bottom + below },
    { kind: "day-bars", title: data.title, text },
    element("defs", {}, fills.patterns),
    ...days,
    baseline(bottom, size, colours),
    keyMarks(key, bottom + FONT_SIZE + 8),
  );
  return { ok: true, svg, text };
}

const NOTHING =
  "No minutes are written this week or last. Write them behind a date, such as `2026-03-02 Mon, 20 min`, or on the line of an exercise.";

/** Where a day stands, in pixels. */
interface Column {
  readonly middle: number;
  /** Of its texts, and of its bar. */
  readonly width: number;
  readonly bar: number;
  /** Minutes to a place from top to bottom. */
  y(minutes: number): number;
}

function columnOf(place: number, width: number, y: (minutes: number) => number): Column {
  return { middle: (place + 0.5) * width, width, bar: width * BAR, y };
}

function dayMarks(day: Day, column: Column, fills: PhaseFills, colours: ChartPalette): string {
  return element(
    "g",
    { class: "chart-day" },
    ...phaseMarks(day, column, fills),
    lastWeekMark(day, column, colours),
    ...dayLabels(day, column),
  );
}

function phaseMarks({ minutes }: Day, { middle, bar, y }: Column, fills: PhaseFills): string[] {
  return minutes.flatMap((each, phase) => {
    if (each === 0) return [];
    const below = sum(minutes.slice(0, phase));
    const top = y(below + each);
    const place = { x: middle - bar / 2, y: top, width: bar, height: y(below) - top };
    return [element("rect", { ...place, ...fills.of(phase) })];
  });
}

function lastWeekMark({ lastWeek }: Day, { middle, bar, y }: Column, { foreground }: ChartPalette): string {
  if (lastWeek === 0) return "";
  const d = `M${figure(middle - bar / 2 - OVERHANG)},${figure(y(lastWeek))}h${figure(bar + 2 * OVERHANG)}`;
  return element("path", { class: "chart-last-week", d, ...lastWeekPaint(foreground) });
}

function dayLabels(day: Day, { middle, width, y }: Column): string[] {
  const lines = [...figureOf(day)].reverse();
  // A figure that last week's mark would cross stands above the mark.
  const crossed = day.lastWeek > day.total && y(day.total) - y(day.lastWeek) < lines.length * FONT_SIZE + ABOVE;
  const top = y(crossed ? day.lastWeek : day.total) - ABOVE;
  const figures = lines.map((text, line) => ({ text, y: top - line * FONT_SIZE }));
  const name = { text: day.label, y: y(0) + FONT_SIZE + 2 };
  return [...figures, name].map((each) =>
    label(fitted(each.text, width), { x: middle, y: each.y, "text-anchor": "middle" }),
  );
}

/** What stands above a bar, line by line. */
function figureOf({ total, about, note }: Day): readonly string[] {
  if (total === 0) return note === "" ? [] : [note];
  return [...(about ? ["about"] : []), shownMinutes(total)];
}

function lastWeekPaint(foreground: string) {
  return { fill: "none", stroke: foreground, "stroke-width": 1.5 };
}

function keyEntries({ phases, days }: WeekByDay, fills: PhaseFills, { foreground }: ChartPalette): KeyEntry[] {
  const square = { x: 0.5, y: 0.5, width: FONT_SIZE - 1, height: FONT_SIZE - 1 };
  const ofPhases = phases.map((name, phase) => ({
    sample: element("rect", { ...square, ...fills.of(phase) }),
    text: fitted(name, LONGEST_NAME),
  }));
  const line = element("path", { d: `M0,${FONT_SIZE / 2}h${FONT_SIZE}`, ...lastWeekPaint(foreground) });
  const hasLast = days.some(({ lastWeek }) => lastWeek > 0);
  return [...ofPhases, ...(hasLast ? [{ sample: line, text: "same day last week" }] : [])];
}

/** Of a phase in the key, in pixels. */
const LONGEST_NAME = 150;

function keyMarks({ marks }: Key, y: number): string {
  return element("g", { class: "chart-key", transform: `translate(0 ${figure(y)})` }, marks);
}
