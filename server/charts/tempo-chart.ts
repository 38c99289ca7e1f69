import { weekCount } from "../history/week-span.ts";
import { asPicture, inPage, type Look, label, mark, share, stretched, told, WIDE } from "./look.ts";
import { monthLabels, monthLines, pauseMarks } from "./months.ts";
import { type Drawing, figure } from "./svg.ts";
import { frameOf, isRate, type TempoChart, type TempoFrame } from "./tempo-data.ts";
import { bestDots, bestLines, bestOfDays, type Dots, everyDot, isSlow, slowWeeks, trendBand } from "./tempo-marks.ts";
import { type TempoPlot, tempoPlot } from "./tempo-plot.ts";
import { tempoTexts } from "./tempo-texts.ts";
import { describeTempo } from "./tempo-words.ts";

/** A chart in full: its title above, the names of the months below. In pixels. */
const FULL = { height: 120, top: 22, bottom: 92, ticks: 97, months: 115, leastWidth: 250 } as const;
/** In a row of the page, which may be higher and cuts the lines of the months off at its foot. */
const ROW = { height: 44, lines: 200, top: 8, bottom: 33, ticks: 36, leastWidth: 130 } as const;
/** In a hover. */
export const HOVER_SIZE = { width: 364, height: 72 } as const;
const HOVER = { top: 5, bottom: 48, ticks: 51.5, months: 69, leastWidth: 320 } as const;

/** How long the tick of a week of slow work is, and how far a number stands from the chart, in pixels. */
const TICK = 4;
const BESIDE = 8;
/** From the middle of a number to the line that it stands on, in pixels. */
const HALF_TEXT = 4;
/** How long the mark of an aim is, in the stretched space. */
const AIM = 24;

/**
 * The tempos of a strand by week: dots for attempts, a step line for the weekly best, a band for the trend where there
 * is one, an aim. Without a single tempo in the span there is nothing to draw.
 */
export function tempoChart(data: TempoChart, look: Look): Drawing {
  const frame = frameOf(data);
  if (!hasTempo(frame)) return { ok: false, reason: nothingIn(frame) };
  const size = look.kind === "page" ? FULL : HOVER;
  const plot = tempoPlot(data, frame, { ...size, sides: look.kind === "page" ? "round" : "ends" });
  const dots = everyDot(frame, plot);
  const text = describeTempo(data, frame, dots.left);
  const { attributes, words } = told(look, { title: data.title, text });
  const height = look.kind === "page" ? FULL.height : HOVER_SIZE.height;
  const parts = [
    stretched(
      height,
      monthLines(look, frame.span, size.top - 3, size.ticks),
      look.kind === "page" ? gridLines(plot, look) : "",
      marks(data, frame, plot, dots, { look, ticks: size.ticks }),
      aimMark(frame, plot, look),
    ),
    pauseMarks(look, frame.span, size.top - 3, size.ticks + TICK),
    sideLabels(plot),
    monthLabels(frame.span, size.months, size.leastWidth),
  ];
  if (look.kind === "picture") return { ok: true, text, svg: asPicture(look, HOVER_SIZE, attributes, words, ...parts) };
  const heading = data.axis === "" ? "" : label(data.axis, { x: -SIDE, y: 11 });
  const kind = frame.aim ? "tempo-chart has-aim" : "tempo-chart";
  return { ok: true, text, svg: inPage(kind, height, attributes, words, ...parts, aimLabel(frame, plot), heading) };
}

/** How far to the left of a chart in a page its numbers begin, in pixels. */
const SIDE = 30;

/**
 * The same in a row of a table, small and without a name of its own: of each day only the best and the nearest tempo
 * that was not reached; a week of slow work is a tick, or one such would flatten half a year. Undefined where there is
 * no tempo.
 */
export function tempoRow(data: TempoChart): string | undefined {
  const frame = frameOf(data);
  if (!hasTempo(frame)) return undefined;
  const shown = withoutSlow(frame);
  const look: Look = { kind: "page", id: "" };
  const plot = tempoPlot(data, { ...shown, aim: undefined }, { ...ROW, sides: "ends" });
  const marksOfRow = marks(data, shown, plot, bestDots(shown.attempts, plot, ROW.leastWidth), {
    look,
    ticks: ROW.ticks,
  });
  const ticks = ticksOf(frame, plot, { look, ticks: ROW.ticks });
  return inPage(
    "tempo-row",
    ROW.height,
    { "aria-hidden": "true" },
    stretched(ROW.height, monthLines(look, frame.span, 0, ROW.lines), marksOfRow, ticks),
    pauseMarks(look, frame.span, 0, ROW.lines),
    sideLabels(plot),
  );
}

/** The names of the months above the rows, over the same weeks. */
export function monthAxis({ span }: Pick<TempoChart, "span">): string {
  const look: Look = { kind: "page", id: "" };
  const marksOfAxis = stretched(16, monthLines(look, span, 13, 16));
  return inPage("month-axis", 16, { "aria-hidden": "true" }, marksOfAxis, monthLabels(span, 11, ROW.leastWidth));
}

/** The frame with only what a small chart draws as tempos; all of it where every week was one of slow work. */
function withoutSlow(frame: TempoFrame): TempoFrame {
  const attempts = bestOfDays(frame.attempts);
  const slow = new Set(frame.weeks.filter(isSlow).map(({ index }) => index));
  const weeks = frame.weeks.filter(({ index }) => !slow.has(index));
  const tested = attempts.filter(({ day }) => !slow.has(weekOf(day, frame)));
  if (tested.length === 0 && !weeks.some(({ bestClean }) => isRate(bestClean))) return { ...frame, attempts };
  return { ...frame, weeks, attempts: tested };
}

/** The running number of a day's week. */
function weekOf(day: number, { firstDay, span }: TempoFrame): number {
  return span.first + Math.floor((day - firstDay) / 7);
}

function hasTempo({ attempts, weeks }: TempoFrame): boolean {
  return attempts.length > 0 || weeks.some(({ bestClean }) => isRate(bestClean));
}

function nothingIn({ span }: TempoFrame): string {
  return tempoTexts.nothing(weekCount(span));
}

interface Drawn {
  readonly look: Look;
  /** Where ticks begin, in pixels from the top. */
  readonly ticks: number;
}

/** Band, lines and dots, what matters most on top. */
function marks(
  { trend }: TempoChart,
  frame: TempoFrame,
  plot: TempoPlot,
  { reached, other }: Omit<Dots, "left">,
  drawn: Drawn,
): string {
  const { look } = drawn;
  const { best, join } = bestLines(frame.weeks, plot);
  return [
    mark(look, "band", trend ? trendBand(frame.weeks, trend, plot) : ""),
    mark(look, "join", join),
    mark(look, "best", best),
    ticksOf(frame, plot, drawn),
    mark(look, "other", other),
    mark(look, "inside", other),
    mark(look, "reached", reached),
  ].join("");
}

function ticksOf({ weeks }: TempoFrame, plot: TempoPlot, { look, ticks }: Drawn): string {
  const each = slowWeeks(weeks, plot).map((x) => `M${figure(x)},${figure(ticks)}v${TICK}`);
  return mark(look, "tick", each.join(""));
}

function gridLines({ sides }: TempoPlot, look: Look): string {
  return mark(look, "grid", sides.map(({ y }) => `M0,${figure(y)}H${WIDE}`).join(""));
}

function sideLabels({ sides }: TempoPlot): string {
  return sides.map(({ y, text }) => label(text, { x: -BESIDE, y: y + HALF_TEXT, "text-anchor": "end" })).join("");
}

/** Where the mark of an aim ends: at its day, or at the axis' end where that lies beyond or is not said. */
function endOfAim({ aim }: TempoFrame, plot: TempoPlot): number {
  return aim?.day === undefined ? WIDE : Math.min(WIDE, plot.day(aim.day) + AIM / 2);
}

function aimMark(frame: TempoFrame, plot: TempoPlot, look: Look): string {
  if (!frame.aim) return "";
  const end = endOfAim(frame, plot);
  return mark(look, "aim", `M${figure(Math.max(0, end - AIM))},${figure(plot.y(frame.aim.rate))}H${figure(end)}`);
}

/** Behind the mark where that stands at the axis' end, else above it. */
function aimLabel(frame: TempoFrame, plot: TempoPlot): string {
  if (!frame.aim) return "";
  const end = endOfAim(frame, plot);
  const y = plot.y(frame.aim.rate);
  return end === WIDE
    ? label(tempoTexts.aimMark, { x: "100%", dx: BESIDE, y: y + HALF_TEXT })
    : label(tempoTexts.aimMark, { x: share(end - AIM / 2), y: y - BESIDE, "text-anchor": "middle" });
}
