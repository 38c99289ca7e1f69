import { type BarStrip, barRuns, lastBar, MOST_BARS, RECENCIES } from "./bar-data.ts";
import { describeBars } from "./bar-words.ts";
import { type KeyEntry, keyOf } from "./legend.ts";
import { baseline, type ChartPalette, coloursOf, FONT_SIZE, type Look, label, picture, sizeOf } from "./look.ts";
import { type Attributes, type Drawing, element, figure } from "./svg.ts";

const LEAST_SIZE = { width: 160, height: 50 };
const LEAST_STRIP = 12;
/** Bars at least so wide have a gap between them, in pixels. */
const WIDE_BAR = 4;
/** From one number of a bar to the next, in pixels. */
const NUMBERS_APART = 34;

/**
 * The bars of a piece from left to right: the later a bar was worked, the taller and the darker it stands, in four
 * steps; a bar that was never worked is the bare line.
 */
export function barStrip(data: BarStrip, look: Look): Drawing {
  const bars = lastBar(data);
  if (bars === 0) return { ok: false, reason: NOTHING };
  if (bars > MOST_BARS) return { ok: false, reason: tooMany(bars) };
  const colours = coloursOf(look);
  const size = sizeOf(look, LEAST_SIZE);
  const { width, height } = size;
  const key = keyOf(keyEntries(colours), width);
  const below = FONT_SIZE + 8 + key.height;
  const bottom = Math.max(height - below, LEAST_STRIP + 2);
  const strip = { bars, bar: width / bars, bottom, tall: bottom - 2 };
  const text = describeBars(data, bars);
  const svg = picture(
    look,
    { width, height: bottom + below },
    { kind: "bar-strip", title: data.title, text },
    barMarks(data, strip, colours),
    baseline(bottom, size, colours),
    element("g", { class: "chart-labels", "fill-opacity": 0.85 }, ...barNumbers(strip, width)),
    element("g", { class: "chart-key", transform: `translate(0 ${figure(bottom + FONT_SIZE + 8)})` }, key.marks),
  );
  return { ok: true, svg, text };
}

const NOTHING =
  "No bars are written for this piece. Say how many it has where it is declared, such as `96 bars`, or which were worked, such as `bars 17-32`.";

function tooMany(bars: number): string {
  return `Bar ${bars} is further than a strip can show, which ends at bar ${MOST_BARS}. Is a figure too many in it?`;
}

/** In pixels but for `bars`, which is how many there are. */
interface Strip {
  readonly bars: number;
  readonly bar: number;
  readonly bottom: number;
  readonly tall: number;
}

/** One rectangle for each stretch worked equally lately; for each bar where bars are wide enough to be seen. */
function barMarks(data: BarStrip, strip: Strip, { amount }: ChartPalette): string {
  const gap = strip.bar >= WIDE_BAR ? 1 : 0;
  const rects = barRuns(data, strip.bars).flatMap(({ from, to, recency }) => {
    const stretches = gap ? Array.from({ length: to - from + 1 }, (_, at) => [from + at, from + at]) : [[from, to]];
    return stretches.map(([first, last]) => {
      const width = (last! - first! + 1) * strip.bar - gap;
      return element("rect", {
        x: (first! - 1) * strip.bar,
        width,
        ...risen(recency, strip),
        ...paintOf(recency, amount),
      });
    });
  });
  return element("g", { class: "chart-bars" }, ...rects);
}

function risen(recency: number, { bottom, tall }: Pick<Strip, "bottom" | "tall">): Attributes {
  const height = tall * RECENCIES[recency]!.height;
  return { y: bottom - height, height };
}

function paintOf(recency: number, amount: string): Attributes {
  return { fill: amount, "fill-opacity": RECENCIES[recency]!.shade };
}

/** The first bar, every so many, and the last. */
function barNumbers({ bars, bar, bottom }: Strip, width: number): string[] {
  const step = STEPS.find((each) => each * bar >= NUMBERS_APART) ?? bars;
  const y = bottom + FONT_SIZE + 2;
  const between = Array.from({ length: Math.floor(bars / step) }, (_, at) => (at + 1) * step).filter(
    (number) => middleOf(number, bar) > NUMBERS_APART * 0.6 && middleOf(number, bar) < width - NUMBERS_APART * 0.8,
  );
  const inner = between.map((number) =>
    label(String(number), { x: middleOf(number, bar), y, "text-anchor": "middle" }),
  );
  const last = bars > 1 ? [label(String(bars), { x: width, y, "text-anchor": "end" })] : [];
  return [label("1", { x: 0, y }), ...inner, ...last];
}

const STEPS = [1, 2, 4, 8, 16, 32, 50, 100, 200, 500, 1000, 2000];

function middleOf(number: number, bar: number): number {
  return (number - 0.5) * bar;
}

function keyEntries({ amount }: ChartPalette): KeyEntry[] {
  const square = { x: 0, width: FONT_SIZE };
  return RECENCIES.map(({ words }, recency) => ({
    sample: element("rect", {
      ...square,
      ...risen(recency, { bottom: FONT_SIZE, tall: FONT_SIZE }),
      ...paintOf(recency, amount),
    }),
    text: recency === 0 ? `last ${words}` : words,
  }));
}
