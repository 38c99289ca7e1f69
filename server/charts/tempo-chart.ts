import { spanLabels, weekCount } from "../history/week-span.ts";
import {
  type ChartPalette,
  coloursOf,
  FONT_SIZE,
  fitted,
  type Look,
  label,
  picture,
  sizeOf,
  textWidth,
} from "./look.ts";
import { type Drawing, element, figure } from "./svg.ts";
import { frameOf, isRate, shownRate, type TempoChart, type TempoFrame } from "./tempo-data.ts";
import { belowBest, bestLine, type Dots, dotsOf, trendBand } from "./tempo-marks.ts";
import { type TempoPlot, tempoPlot } from "./tempo-plot.ts";
import { describeTempo } from "./tempo-words.ts";

const LEAST_SIZE = { width: 160, height: 60 };

/** In pixels. */
const DOT = 2.2;
const SMALL_DOT = 1.2;
const TICK = 4;
/** How far below the slowest tempo the line stands that the weeks stand on. */
const BASELINE = 2;
const AIM = 14;
const AIM_WIDTH = 2.5;

/**
 * The tempos of a strand by week: dots for attempts, a step line for the weekly best, a band for the trend where there
 * is one, an aim. Without a single tempo in the span there is nothing to draw.
 */
export function tempoChart(data: TempoChart, look: Look): Drawing {
  const frame = frameOf(data);
  const hasTempo = frame.attempts.length > 0 || frame.weeks.some(({ bestClean }) => isRate(bestClean));
  if (!hasTempo) return { ok: false, reason: nothingIn(frame) };
  const size = sizeOf(look, LEAST_SIZE);
  const colours = coloursOf(look);
  const plot = tempoPlot(data, frame, size);
  const dots = dotsOf(frame, plot);
  const text = describeTempo(data, frame, dots.left);
  const svg = picture(
    look,
    size,
    { kind: "tempo-chart", title: data.title, text },
    gridMarks(plot, colours),
    bandMark(data, frame, plot, colours),
    bestMarks(frame, plot, colours),
    attemptMarks(dots, Math.min(DOT, Math.max(SMALL_DOT, plot.week / 4)), colours),
    aimMark(frame, plot, colours),
    labels(data, frame, plot, colours),
  );
  return { ok: true, svg, text };
}

function nothingIn({ span }: TempoFrame): string {
  const weeks = weekCount(span);
  const when = weeks === 1 ? "this week" : `in these ${weeks} weeks`;
  return `No tempo is written ${when}. Write one and how it went on the exercise's line, such as \`at 60 clean\`, and its chart begins.`;
}

function gridMarks({ grid, left, right, bottom }: TempoPlot, { foreground }: ChartPalette): string {
  const across = grid.map(({ y }) => `M${figure(left)},${figure(y)}H${figure(right)}`).join("");
  return element(
    "g",
    { class: "chart-grid", fill: "none", stroke: foreground },
    element("path", { d: across, "stroke-opacity": 0.16 }),
    element("path", { d: `M${figure(left)},${figure(bottom + BASELINE)}H${figure(right)}`, "stroke-opacity": 0.4 }),
  );
}

function bandMark({ trend }: TempoChart, { weeks }: TempoFrame, plot: TempoPlot, { amount }: ChartPalette): string {
  const d = trendBand(weeks, trend, plot);
  if (d === "") return "";
  // The outline keeps it in sight where it is narrow.
  const paint = { fill: amount, "fill-opacity": 0.3, stroke: amount, "stroke-opacity": 0.55 };
  return element("path", { class: "chart-band", d, ...paint });
}

function bestMarks({ weeks }: TempoFrame, plot: TempoPlot, { foreground }: ChartPalette): string {
  const d = bestLine(weeks, plot);
  if (d === "") return "";
  const ticks = belowBest(weeks, plot).map((x) => `M${figure(x)},${figure(plot.bottom + BASELINE)}v${TICK}`);
  return element(
    "g",
    { class: "chart-best", fill: "none", stroke: foreground, "stroke-width": 1.25 },
    element("path", { class: "chart-line", d, "stroke-linejoin": "round" }),
    ticks.length === 0 ? "" : element("path", { class: "chart-tick", d: ticks.join("") }),
  );
}

/** Those that were reached lie on top. `radius` is in pixels. */
function attemptMarks({ dots }: Dots, radius: number, { foreground, background }: ChartPalette): string {
  const circles = (those: boolean) =>
    dots.filter(({ reached }) => reached === those).map(({ x, y }) => element("circle", { cx: x, cy: y, r: radius }));
  const group = (name: string, paint: Readonly<Record<string, string>>, marks: readonly string[]) =>
    marks.length === 0 ? "" : element("g", { class: name, ...paint }, ...marks);
  return [
    group("chart-other", { fill: background, stroke: foreground }, circles(false)),
    group("chart-reached", { fill: foreground }, circles(true)),
  ].join("");
}

/** A short mark at the aim's date, or with an arrow at the right edge where that lies beyond the weeks shown. */
function aimMark({ aim }: TempoFrame, plot: TempoPlot, { amount }: ChartPalette): string {
  if (!aim) return "";
  const place = plot.day(aim.day);
  const beyond = place > plot.right;
  const end = beyond ? plot.right : Math.min(place + AIM / 2, plot.right);
  const start = Math.max(end - AIM, plot.left);
  const [y, tip] = [plot.y(aim.rate), figure(end)];
  const arrow = `M${figure(end - 4)},${figure(y - 3.5)}L${tip},${figure(y)}L${figure(end - 4)},${figure(y + 3.5)}`;
  return element("path", {
    class: "chart-aim",
    d: `M${figure(start)},${figure(y)}H${tip}${beyond ? arrow : ""}`,
    fill: "none",
    stroke: amount,
    "stroke-width": AIM_WIDTH,
  });
}

function labels(data: TempoChart, frame: TempoFrame, plot: TempoPlot, colours: ChartPalette): string {
  const tempos = plot.grid.map(({ y, text }) =>
    label(text, { x: plot.left - 4, y: y + FONT_SIZE * 0.35, "text-anchor": "end" }),
  );
  const texts = [...heading(data, frame, plot, colours), ...tempos, ...weekLabels(frame, plot)];
  return element("g", { class: "chart-labels", "fill-opacity": 0.85 }, ...texts);
}

/** Above the chart: how tempos are counted, and the aim behind a sample of its mark. */
function heading(
  { axis, notation }: TempoChart,
  { aim }: TempoFrame,
  plot: TempoPlot,
  colours: ChartPalette,
): string[] {
  const text = aim ? fitted(`aim ${shownRate(aim.rate, notation)} by ${aim.date}`, plot.right / 2) : "";
  const sample = plot.right - textWidth(text) - AIM;
  const left = axis === "" ? [] : [label(fitted(axis, (aim ? sample : plot.right) - 8), { x: 0, y: FONT_SIZE - 1 })];
  if (!aim) return left;
  const mark = { d: `M${figure(sample)},${figure(FONT_SIZE * 0.55)}h${AIM - 4}`, fill: "none", stroke: colours.amount };
  return [
    ...left,
    element("path", { class: "chart-aim-sample", ...mark, "stroke-width": AIM_WIDTH }),
    label(text, { x: sample + AIM, y: FONT_SIZE - 1 }),
  ];
}

/** The first and the last week; the last alone where there is no room for both. */
function weekLabels({ told }: TempoFrame, plot: TempoPlot): string[] {
  const y = plot.bottom + BASELINE + FONT_SIZE + 3;
  const [first, last] = spanLabels(told);
  const start = plot.x(told.first);
  const apart = start + textWidth(first) + 8 <= plot.right - textWidth(last);
  return [
    ...(apart && weekCount(told) > 1 ? [label(first, { x: start, y })] : []),
    label(last, { x: plot.right, y, "text-anchor": "end" }),
  ];
}
