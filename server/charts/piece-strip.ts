import { inPage, label, share, stretched, tenth, textWidth, told, WIDE } from "./look.ts";
import { type BarRun, barRuns, MOST_BARS, type PieceStrip } from "./piece-data.ts";
import { pieceStripTexts } from "./piece-strip-texts.ts";
import { type Drawing, element } from "./svg.ts";

/** In pixels. */
const HEIGHT = 44;
/** Where the tempo that is wanted is, and where two thirds of it are. */
const TOP = 7.5;
const FOOT = 29;
/** Where the numbers of bars stand, and how long the mark above each is. */
const BARS = 42;
const TICK = 3;
/** In a narrow page. */
const LEAST_WIDTH = 130;
/** Between two numbers. */
const APART = 10;
/** The tempo at the foot, as a share of that at the top: a line has room to move, and nothing seems filled up. */
const FOOT_SHARE = 2 / 3;
/** A line that reaches the top stands just below it, and one at the foot just above. */
const BELOW_TOP = 0.75;
const BESIDE = 8;
const HALF_TEXT = 4.5;
const NUMBERS_APART = 12;

/**
 * A piece from its first bar to its last: a line at the height of the latest tempo that was reached, above it the one
 * that is wanted; the fill below is the fuller the later a bar was worked.
 */
export function pieceStrip(data: PieceStrip, id: string): Drawing {
  const { bars, title } = data;
  if (!Number.isInteger(bars) || bars < 1 || bars > MOST_BARS) return { ok: false, reason: noStrip(bars) };
  const runs = barRuns(data);
  const tempos = runs.flatMap(({ reached }) => reached ?? []);
  const wanted = data.wanted ?? Math.max(0, ...tempos);
  const text = describeStrip(data, runs);
  const { attributes, words } = told({ kind: "page", id }, { title, text });
  const numbered = numberedBars(bars);
  const heights = { wanted, bar: WIDE / bars };
  const svg = inPage(
    "piece-strip",
    HEIGHT,
    attributes,
    words,
    stretched(
      HEIGHT,
      ...runs.flatMap((run) => fillOf(run, heights)),
      data.wanted === undefined ? "" : line("goal", `M0,${TOP}H${WIDE}`),
      line("best", tempoLine(runs, heights)),
      line(
        "foot",
        `M0,${FOOT + 0.5}H${WIDE}${numbered.map((at) => `M${tenth((at - 1) * heights.bar)},${FOOT}v${TICK}`).join("")}`,
      ),
    ),
    ...numbered.map((at) => label(String(at), { x: at === 1 ? 0 : share((at - 1) * heights.bar), y: BARS })),
    ...numbers(data.wanted, tempos, wanted),
  );
  return { ok: true, svg, text };
}

function noStrip(bars: number): string {
  return bars > MOST_BARS ? pieceStripTexts.tooManyBars(bars, MOST_BARS) : pieceStripTexts.barsUnknown;
}

const STEPS = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];

/** The first bar, and every so many so that their numbers, each at the beginning of its bar, stand apart. */
function numberedBars(bars: number): number[] {
  const pixels = (count: number) => (count / bars) * LEAST_WIDTH;
  const widest = textWidth(String(bars));
  const step = STEPS.find((each) => pixels(each) >= widest + APART) ?? bars;
  const every = Array.from({ length: Math.floor(bars / step) }, (_, at) => (at + 1) * step);
  const fits = (bar: number) =>
    pixels(bar - 1) >= textWidth("1") + APART && pixels(bar - 1) + textWidth(String(bar)) <= LEAST_WIDTH + BESIDE;
  return [1, ...every.filter((bar) => bar > 1 && fits(bar))];
}

interface Heights {
  /** In beats a minute. */
  readonly wanted: number;
  /** How wide a bar is. */
  readonly bar: number;
}

/** Where a tempo is, in pixels from the top. */
function heightOf(tempo: number, wanted: number): number {
  const share = (tempo / wanted - FOOT_SHARE) / (1 - FOOT_SHARE);
  return Math.min(Math.max(FOOT - share * (FOOT - TOP), TOP + BELOW_TOP), FOOT - BELOW_TOP);
}

function fillOf({ from, to, reached, recency }: BarRun, { wanted, bar }: Heights): string[] {
  if (reached === null || recency === null) return [];
  const y = heightOf(reached, wanted);
  const place = { x: (from - 1) * bar, y, width: (to - from + 1) * bar, height: FOOT - y };
  return [element("rect", { class: `chart-age-${recency}`, ...place })];
}

function line(ink: string, d: string): string {
  return d === "" ? "" : element("path", { class: `chart-${ink}`, d, "vector-effect": "non-scaling-stroke" });
}

function tempoLine(runs: readonly BarRun[], { wanted, bar }: Heights): string {
  return runs
    .map(({ from, to, reached }, at) => {
      if (reached === null) return "";
      const y = tenth(heightOf(reached, wanted));
      const goesOn = at > 0 && runs[at - 1]!.reached !== null;
      return `${goesOn ? `V${y}` : `M${tenth((from - 1) * bar)},${y}`}H${tenth(to * bar)}`;
    })
    .join("");
}

/** At the side the tempo that is wanted, and the lowest that was reached. */
function numbers(wanted: number | undefined, tempos: readonly number[], top: number): string[] {
  const at = (tempo: number, y: number) =>
    label(String(Math.round(tempo)), { x: -BESIDE, y: y + HALF_TEXT, "text-anchor": "end" });
  const lowest = Math.min(...tempos);
  const highest = wanted === undefined ? [] : [at(wanted, TOP)];
  if (tempos.length === 0 || lowest >= (wanted ?? Number.POSITIVE_INFINITY)) return highest;
  const y = heightOf(lowest, top);
  return [...highest, at(lowest, wanted === undefined ? y : Math.max(y, TOP + NUMBERS_APART))];
}

/** The most stretches to name one by one. */
const MOST_STRETCHES = 8;

/** What a strip shows, in sentences. */
function describeStrip({ bars, wanted }: PieceStrip, runs: readonly BarRun[]): string {
  const stretches = runs
    .filter(({ recency }) => recency !== null)
    .map(({ from, to, reached, recency }) => {
      const where = from === to ? pieceStripTexts.bar(from) : pieceStripTexts.fromTo(from, to);
      const when = pieceStripTexts.recencies[recency!]!;
      return reached === null
        ? pieceStripTexts.workedWithoutTempo(where, when)
        : pieceStripTexts.worked(where, Math.round(reached), when);
    });
  const more = stretches.length - MOST_STRETCHES;
  const named = stretches.slice(0, MOST_STRETCHES).join("; ");
  const told = more > 0 ? pieceStripTexts.andMore(named, more) : named;
  return [
    wanted === undefined ? pieceStripTexts.bars(bars) : pieceStripTexts.barsWanted(bars, Math.round(wanted)),
    told === "" ? pieceStripTexts.noneWorked : `${told[0]!.toUpperCase()}${told.slice(1)}.`,
  ].join(" ");
}
