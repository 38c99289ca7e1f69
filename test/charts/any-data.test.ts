import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Look, WIDE } from "../../server/charts/look.ts";
import { pieceStrip } from "../../server/charts/piece-strip.ts";
import type { Drawing } from "../../server/charts/svg.ts";
import { monthAxis, tempoChart, tempoRow } from "../../server/charts/tempo-chart.ts";
import { weekBars } from "../../server/charts/week-bars.ts";
import { weeksUpTo } from "../../server/history/week-span.ts";
import { mondayOf, weekLabelOf } from "../../server/journal/calendar.ts";
import { FEW } from "../support/random-runs.ts";
import { dotsOf, number, ofClass, pictureOf, readSvg, type SvgElement, within } from "./svg-reader.ts";

const HOSTILE = [
  "</svg><script>alert(1)</script>",
  '" onload="x',
  "]]>",
  "\u202Egnal\uD800",
  "url(https://example.org)",
  "",
];

const text = fc.oneof(fc.constantFrom(...HOSTILE), fc.string({ unit: "binary", maxLength: 30 }));
/** Tempos that are played, at the limits of what is (20 to 400 beats, up to 8 notes each), and anything at all. */
const rate = fc.oneof(fc.integer({ min: 20, max: 3200 }), fc.constantFrom(20, 3200), fc.double());
const palette = fc.record({ foreground: text, background: text, amount: text });
const look: fc.Arbitrary<Look> = fc.oneof(
  fc.record({ kind: fc.constant("page" as const), id: text }),
  fc.record({ kind: fc.constant("picture" as const), palette, id: text }),
);

/** A week of 2026. */
const WEEK = 2925;
const index = fc.integer({ min: WEEK, max: WEEK + 60 });
const week = fc.record({
  week: text,
  index,
  bestClean: fc.option(rate),
  usual: fc.option(rate),
  tested: fc.boolean(),
  tries: fc.nat(50),
  reached: fc.nat(50),
  attempts: fc.nat(9),
  minutes: fc.nat(99),
  about: fc.boolean(),
});
const weeks = fc
  .uniqueArray(week, { maxLength: 40, selector: (each) => each.index })
  .map((some) => some.sort((a, b) => a.index - b.index));
const day = fc.integer({ min: mondayOf(WEEK) - 30, max: mondayOf(WEEK) + 450 });
const trend = fc.record({
  slope: fc.option(fc.double()),
  low: fc.option(fc.double()),
  high: fc.option(fc.double()),
  level: fc.constant(0.95 as const),
  verdict: fc.constantFrom("rising", "falling", "level", "too early" as const),
  weeks: fc.nat(4),
});
const tempoData = fc.record(
  {
    title: text,
    axis: text,
    notation: fc.constantFrom(
      {},
      { noteValue: { numerator: 1, denominator: 32 } },
      { beat: { numerator: 3, denominator: 8 } },
    ),
    weeks,
    attempts: fc.array(fc.record({ day, rate: fc.option(rate), reached: fc.boolean() }), { maxLength: 60 }),
    trend,
    aim: fc.record({ day, rate }, { requiredKeys: ["rate"] }),
    span: fc.tuple(index, index).map(([a, b]) => ({ first: Math.min(a, b), last: Math.max(a, b) })),
  },
  { requiredKeys: ["title", "axis", "weeks", "attempts", "trend", "span"] },
);

const minutes = fc.oneof(fc.nat(300), fc.double());
const weekData = fc
  .record({
    first: index,
    weeks: fc.array(fc.dictionary(text, minutes, { maxKeys: 8 }), { minLength: 1, maxLength: 60 }),
  })
  .map(({ first, weeks: some }) => ({
    title: "Minutes",
    span: { first, last: first + some.length - 1 },
    weeks: some.map((each) => new Map(Object.entries(each))),
  }));

const bar = fc.oneof(fc.integer({ min: -2, max: 300 }), fc.double());
const stripData = fc.record(
  {
    title: text,
    bars: bar,
    wanted: fc.integer({ min: 20, max: 400 }),
    worked: fc.array(
      fc.record({
        from: bar,
        to: bar,
        daysAgo: fc.oneof(fc.integer({ min: -5, max: 400 }), fc.double()),
        reached: fc.option(rate),
      }),
      { maxLength: 12 },
    ),
  },
  { requiredKeys: ["title", "bars", "worked"] },
);

const ELEMENTS = ["svg", "title", "desc", "path", "rect", "text"];
const GEOMETRY = ["x", "y", "dx", "width", "height"];

/** What holds for the picture of any data: it is one, or a sentence stands for it. */
function holds(drawing: Drawing): void {
  if (!drawing.ok) {
    expect(drawing.reason).toMatch(/^[A-Z].*[.?]$/);
    return;
  }
  isSound(pictureOf(drawing));
}

function isSound(picture: SvgElement): void {
  for (const each of within(picture)) isHarmless(each);
  isWithin(picture);
}

/** Nothing that runs, that is fetched, or that a strict policy for styles would refuse. */
function isHarmless({ name, attributes }: SvgElement): void {
  expect(ELEMENTS).toContain(name);
  for (const [key, value] of Object.entries(attributes)) {
    expect(key).not.toMatch(/^(?:on|style$|href|xlink)/);
    expect(value.replace("http://www.w3.org/2000/svg", "")).not.toMatch(/:\/\/|NaN|Infinity|undefined|null|javascript/);
    if (GEOMETRY.includes(key) || key === "d") expect(value).not.toMatch(/e/);
    expect(value).not.toMatch(/url\((?!#chart-)/);
  }
}

/** Every mark lies in the space that it is drawn in; a number may hang out at the left. */
function isWithin(picture: SvgElement): void {
  const near = (value: number, most: number) => value >= -0.01 && value <= most + 0.01;
  for (const plot of ofClass(picture, "chart-plot")) {
    const height = number(plot, "height");
    expect(plot.attributes["viewBox"]).toBe(`0 0 ${WIDE} ${height}`);
    for (const each of plot.children) {
      if (each.name === "rect") {
        expect(near(number(each, "x") + number(each, "width"), WIDE)).toBe(true);
        expect(near(number(each, "y") + number(each, "height"), height)).toBe(true);
      }
      for (const [, x, y] of (each.attributes["d"] ?? "").matchAll(/([\d.-]+),([\d.-]+)/g))
        expect(near(Number(x), WIDE) && near(Number(y), height)).toBe(true);
    }
  }
  for (const { name, attributes } of within(picture)) {
    if (name !== "text") continue;
    expect(attributes["x"]).toMatch(/^(?:-?\d+|\d+(?:\.\d)?%)$/);
    expect(near(Number(attributes["y"]), 130)).toBe(true);
  }
}

const RUNS = { seed: 20260302, numRuns: FEW };

describe("whatever the data", () => {
  test("a tempo chart is well formed, harmless and within its picture", () => {
    fc.assert(
      fc.property(tempoData, look, (data, how) => holds(tempoChart(data, how))),
      RUNS,
    );
  });

  test("a small one in a row is, or there is none, and so are the months above", () => {
    const check = fc.property(tempoData, (data) => {
      const row = tempoRow(data);
      if (row !== undefined) isSound(readSvg(row));
      isSound(readSvg(monthAxis(data)));
    });
    fc.assert(check, RUNS);
  });

  test("the bars of weeks are", () => {
    fc.assert(
      fc.property(weekData, text, (data, id) => holds(weekBars(data, id))),
      RUNS,
    );
  });

  test("a strip of a piece's bars is", () => {
    fc.assert(
      fc.property(stripData, text, (data, id) => holds(pieceStrip(data, id))),
      RUNS,
    );
  });

  test("the same data gives the same bytes", () => {
    const check = fc.property(tempoData, look, (data, how) => {
      expect(tempoChart(structuredClone(data), structuredClone(how))).toEqual(tempoChart(data, how));
    });
    fc.assert(check, RUNS);
  });
});

test("faster is never lower", () => {
  const rates = fc.array(fc.integer({ min: 20, max: 3200 }), { minLength: 2, maxLength: 20 });
  const check = fc.property(rates, (played) => {
    const attempts = played.map((each, at) => ({ day: mondayOf(WEEK) + at, rate: each, reached: true }));
    const weeks = [0, 1, 2].map((at) => ({
      week: weekLabelOf(WEEK + at),
      index: WEEK + at,
      bestClean: null,
      usual: null,
      tested: false,
      attempts: 0,
      tries: 0,
      reached: 0,
      minutes: 0,
      about: false,
    }));
    const level = { slope: null, low: null, high: null, level: 0.95, verdict: "level", weeks: 0 } as const;
    const how = { kind: "page", id: "" } as const;
    const picture = pictureOf(
      tempoChart({ title: "", axis: "", weeks, attempts, trend: level, span: weeksUpTo(WEEK + 2, 26) }, how),
    );
    const heights = dotsOf(picture, "chart-reached").map(({ y }) => y);
    for (const [a, rateA] of played.entries())
      for (const [b, rateB] of played.entries())
        if (rateA > rateB) expect(heights[a]!).toBeLessThanOrEqual(heights[b]!);
  });
  fc.assert(check, RUNS);
});
