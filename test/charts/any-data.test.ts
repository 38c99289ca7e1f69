import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { barStrip } from "../../server/charts/bar-strip.ts";
import { dayBars } from "../../server/charts/day-bars.ts";
import type { Look } from "../../server/charts/look.ts";
import type { Drawing } from "../../server/charts/svg.ts";
import { tempoChart } from "../../server/charts/tempo-chart.ts";
import { weeksUpTo } from "../../server/history/week-span.ts";
import { mondayOf, weekLabelOf } from "../../server/journal/calendar.ts";
import { FEW } from "../support/random-runs.ts";
import { number, ofClass, pictureOf, type SvgElement, within } from "./svg-reader.ts";

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
const pixels = fc.oneof(fc.integer({ min: 0, max: 1200 }), fc.double());
const look: fc.Arbitrary<Look> = fc.oneof(
  fc.record({ kind: fc.constant("classes" as const), width: pixels, height: pixels, id: text }),
  fc.record({ kind: fc.constant("palette" as const), palette, width: pixels, height: pixels, id: text }),
);

/** A week of 2026. */
const WEEK = 2925;
const index = fc.integer({ min: WEEK, max: WEEK + 60 });
const week = fc.record({
  week: text,
  index,
  bestClean: fc.option(rate),
  tested: fc.boolean(),
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
    aim: fc.record({ day, rate, date: text }),
    span: fc.record({ first: index, last: index }),
  },
  { requiredKeys: ["title", "axis", "weeks", "attempts", "trend", "span"] },
);

const minutes = fc.oneof(fc.nat(300), fc.double());
const dayData = fc.record(
  {
    title: text,
    phases: fc.array(text, { maxLength: 8 }),
    days: fc.array(
      fc.record(
        { label: text, minutes: fc.array(minutes, { maxLength: 8 }), about: fc.boolean(), note: text },
        { requiredKeys: ["label", "minutes"] },
      ),
      { maxLength: 7 },
    ),
    lastWeek: fc.array(minutes, { maxLength: 7 }),
  },
  { requiredKeys: ["title", "phases", "days"] },
);

const bar = fc.oneof(fc.integer({ min: -2, max: 300 }), fc.double());
const barData = fc.record(
  {
    title: text,
    bars: bar,
    worked: fc.array(
      fc.record({ from: bar, to: bar, daysAgo: fc.oneof(fc.integer({ min: -5, max: 400 }), fc.double()) }),
      {
        maxLength: 12,
      },
    ),
  },
  { requiredKeys: ["title", "worked"] },
);

const ELEMENTS = ["svg", "title", "desc", "g", "defs", "pattern", "path", "rect", "circle", "text"];
const GEOMETRY = ["x", "y", "cx", "cy", "r", "width", "height"];

/** What holds for the picture of any data: it is one, or a sentence stands for it. */
function holds(drawing: Drawing, also: (picture: SvgElement) => void = () => {}): void {
  if (!drawing.ok) {
    expect(drawing.reason).toMatch(/^[A-Z].*[.?]$/);
    return;
  }
  const picture = pictureOf(drawing);
  for (const each of within(picture)) isHarmless(each);
  isWithin(picture);
  also(picture);
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

/** Every mark outside the key, which stands in rows of its own, lies in the picture. */
function isWithin(picture: SvgElement): void {
  const [, , width, height] = picture.attributes["viewBox"]!.split(" ").map(Number) as [number, number, number, number];
  expect([width, height].every((side) => Number.isFinite(side) && side > 0)).toBe(true);
  const near = (value: number, most: number) => value >= -0.01 && value <= most + 0.01;
  for (const each of within(picture)) {
    for (const key of GEOMETRY) if (key in each.attributes) expect(Number.isFinite(number(each, key))).toBe(true);
    if (each.name === "circle") expect(near(number(each, "cx"), width) && near(number(each, "cy"), height)).toBe(true);
    if (each.name === "rect") expect(near((number(each, "x") || 0) + number(each, "width"), width)).toBe(true);
    if (each.name === "text") expect(near(number(each, "x"), width) && near(number(each, "y"), height)).toBe(true);
  }
  for (const line of [...ofClass(picture, "chart-line"), ...ofClass(picture, "chart-band")]) {
    const corners = [...line.attributes["d"]!.matchAll(/([\d.-]+),([\d.-]+)/g)];
    expect(corners.length).toBeGreaterThan(0);
    for (const [, x, y] of corners) expect(near(Number(x), width) && near(Number(y), height)).toBe(true);
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

  test("a week of bars is", () => {
    fc.assert(
      fc.property(dayData, look, (data, how) => holds(dayBars(data, how))),
      RUNS,
    );
  });

  test("a strip of a piece's bars is", () => {
    fc.assert(
      fc.property(barData, look, (data, how) => holds(barStrip(data, how))),
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
      tested: false,
      attempts: 0,
      minutes: 0,
      about: false,
    }));
    const level = { slope: null, low: null, high: null, level: 0.95, verdict: "level", weeks: 0 } as const;
    const how = { kind: "classes", width: 320, height: 92, id: "" } as const;
    const picture = pictureOf(
      tempoChart({ title: "", axis: "", weeks, attempts, trend: level, span: weeksUpTo(WEEK + 2, 26) }, how),
    );
    const heights = ofClass(picture, "chart-reached")[0]!.children.map((dot) => number(dot, "cy"));
    for (const [a, rateA] of played.entries())
      for (const [b, rateB] of played.entries())
        if (rateA > rateB) expect(heights[a]!).toBeLessThanOrEqual(heights[b]!);
  });
  fc.assert(check, RUNS);
});
