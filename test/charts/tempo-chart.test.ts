import { describe, expect, test } from "vitest";
import type { Look } from "../../server/charts/look.ts";
import { tempoChart } from "../../server/charts/tempo-chart.ts";
import type { TempoChart } from "../../server/charts/tempo-data.ts";
import reference from "../reference/trend-statistics.json";
import { number, ofClass, pictureOf, type SvgElement, textsOf, within } from "./svg-reader.ts";
import { aimAt, MONDAY, tempos, weekly } from "./tempo-sample.ts";

const LOOK: Look = { kind: "classes", width: 320, height: 92, id: "d-minor" };

function draw(data: TempoChart, look: Look = LOOK): SvgElement {
  return pictureOf(tempoChart(data, look));
}

function circles(
  picture: SvgElement,
  name: "chart-reached" | "chart-other",
): { readonly x: number; readonly y: number }[] {
  return ofClass(picture, name).flatMap(({ children }) =>
    children.map((circle) => ({ x: number(circle, "cx"), y: number(circle, "cy") })),
  );
}

/** The tempos that are written at the left, with the middle of the figure's height. */
function gridOf(picture: SvgElement): { readonly tempo: number; readonly y: number }[] {
  const labels = within(picture).filter(({ name, text }) => name === "text" && /^\d+(\.\d)?$/.test(text));
  return labels.map((label) => ({ tempo: Number(label.text), y: number(label, "y") - 3.5 }));
}

/** The corners of each unbroken part of the weekly best. */
function stepsOf(picture: SvgElement): [number, number][][] {
  const d = ofClass(picture, "chart-line")[0]?.attributes["d"] ?? "";
  const parts = d.split("M").slice(1);
  return parts.map((part) => part.split("L").map((corner) => corner.split(",").map(Number) as [number, number]));
}

describe("the ratio scale", () => {
  // A logarithmic scale: places are as far apart as the logarithms of their values. Common mathematics.
  test("a dot stands where the logarithm of its tempo says, between two tempos that are written", () => {
    const rates = [48, 60, 72, 84, 96, 108, 120];
    const picture = draw(tempos(weekly(...rates)));
    const [low, ...others] = gridOf(picture);
    const high = others.at(-1)!;
    const perLogarithm = (high.y - low!.y) / Math.log(high.tempo / low!.tempo);
    const expected = rates.map((rate) => low!.y + perLogarithm * Math.log(rate / low!.tempo));
    const places = circles(picture, "chart-reached").map(({ y }) => y);
    expect(places).toHaveLength(rates.length);
    for (const [at, y] of places.entries()) expect(Math.abs(y - expected[at]!)).toBeLessThan(0.1);
  });

  test("ten per cent is as high everywhere", () => {
    const [a, b, c, d] = circles(draw(tempos(weekly(50, 55, 100, 110))), "chart-reached").map(({ y }) => y);
    expect(Math.abs(a! - b! - (c! - d!))).toBeLessThan(0.15);
    expect(a! - b!).toBeGreaterThan(4);
  });

  test("tempos are written as the player counts them: 144 notes a minute in 8ths are 72", () => {
    const notation = { noteValue: { numerator: 1, denominator: 8 } };
    const notes = draw(tempos(weekly(120, 144, 168), { notation, axis: "8ths at" }));
    const beats = draw(tempos(weekly(60, 72, 84)));
    expect(gridOf(notes)).toEqual(gridOf(beats));
    expect(circles(notes, "chart-reached")).toEqual(circles(beats, "chart-reached"));
    expect(textsOf(notes)).toContain("8ths at");
  });

  test("one tempo throughout stands in the middle, with a round one beside it", () => {
    const picture = draw(tempos(weekly(72, 72, 72, 72)));
    const heights = circles(picture, "chart-reached").map(({ y }) => y);
    expect(new Set(heights).size).toBe(1);
    expect(heights[0]).toBeCloseTo((16 + 74) / 2, 0);
    expect(gridOf(picture).length).toBeGreaterThan(0);
  });
});

describe("the weeks", () => {
  test("the last one ends at the right edge, and each is a 26th of the width", () => {
    const picture = draw(tempos(weekly(60, 66, 72)));
    const [[first, ...rest]] = stepsOf(picture) as [[[number, number], ...[number, number][]]];
    const [right] = rest.at(-1)!;
    const [grid] = ofClass(picture, "chart-grid")[0]!.children;
    const [, left, edge] = /M([\d.]+),[\d.]+H([\d.]+)/.exec(grid!.attributes["d"]!)!.map(Number);
    expect(right).toBe(edge);
    expect(right - first[0]).toBeCloseTo((3 * (edge! - left!)) / 26, 1);
  });

  test("an attempt stands at its day within the week", () => {
    const [monday, sunday, next] = circles(
      draw(tempos("2026-01-05 60\n2026-01-11 60\n2026-01-12 60")),
      "chart-reached",
    );
    expect(sunday!.x - monday!.x).toBeCloseTo(6 * (next!.x - sunday!.x), 0);
  });

  test("the first and the last are named; where both have no room, the last", () => {
    expect(textsOf(draw(tempos(weekly(60, ...new Array(24).fill(0), 70))))).toEqual(
      expect.arrayContaining(["2026-W02", "2026-W27"]),
    );
    const young = textsOf(draw(tempos(weekly(60, 66))));
    expect(young).toContain("2026-W03");
    expect(young).not.toContain("2026-W02");
  });

  test("what went before the span is left out, and so is what lies ahead of it", () => {
    const data = tempos(weekly(40, 60, 66, 72), { wide: 3 });
    const ahead = { day: MONDAY + 4 * 7, rate: 400, reached: true };
    const picture = draw({ ...data, attempts: [...data.attempts, ahead] });
    expect(circles(picture, "chart-reached")).toHaveLength(3);
    expect(stepsOf(picture)).toHaveLength(1);
  });

  test("a week without a figure is a gap in the line", () => {
    expect(stepsOf(draw(tempos(weekly(60, 63, 66))))).toHaveLength(1);
    const parts = stepsOf(draw(tempos(weekly(60, 63, 0, 0, 66, 0, 69))));
    expect(parts).toHaveLength(3);
    const [before, after] = [parts[0]!.at(-1)![0], parts[1]![0]![0]];
    expect(after - before).toBeCloseTo(2 * (parts[1]!.at(-1)![0] - after), 1);
  });

  test("a line is level through its week and steps to the next", () => {
    const [corners] = stepsOf(draw(tempos(weekly(60, 66))));
    const [a, b, c, d] = corners!;
    expect([b![1], c![0], d![1]]).toEqual([a![1], b![0], c![1]]);
    expect(c![1]).toBeLessThan(b![1]);
  });

  test("a week worked below best has a tick at its foot", () => {
    const ticks = (lines: string) =>
      ofClass(draw(tempos(lines)), "chart-tick").flatMap(({ attributes }) => attributes["d"]!.match(/M/g)!);
    expect(ticks(weekly(80, 82, 60, 84))).toHaveLength(1);
    expect(ticks(weekly(80, 82, 84))).toHaveLength(0);
  });
});

describe("the attempts", () => {
  test("are filled where they were reached, open where not", () => {
    const picture = draw(tempos("2026-01-05 60 66 72x\n2026-01-06 66x"));
    expect(circles(picture, "chart-reached")).toHaveLength(2);
    expect(circles(picture, "chart-other")).toHaveLength(2);
    expect(ofClass(picture, "chart-reached")[0]!.attributes).toMatchObject({ fill: "currentColor" });
    expect(ofClass(picture, "chart-other")[0]!.attributes).toMatchObject({ stroke: "currentColor" });
  });

  test("without one that was reached there is no line", () => {
    const picture = draw(tempos("2026-01-05 60x 66x\n2026-01-12 60x"));
    expect(circles(picture, "chart-other")).toHaveLength(3);
    expect(ofClass(picture, "chart-best")).toEqual([]);
  });

  test("thousands are thinned to the highest of each kind, and the words say how many have no dot", () => {
    const data = tempos(weekly(60, ...new Array(24).fill(60)));
    const many = Array.from({ length: 5000 }, (_, at) => ({
      day: MONDAY + (at % 170),
      rate: 40 + (at % 61),
      reached: at % 3 > 0,
    }));
    const drawing = tempoChart({ ...data, attempts: many }, LOOK);
    const picture = pictureOf(drawing);
    const dots = [...circles(picture, "chart-reached"), ...circles(picture, "chart-other")];
    expect(dots.length).toBeLessThanOrEqual(300);
    expect(dots.length).toBeGreaterThan(200);
    expect(drawing).toHaveProperty("text", expect.stringMatching(/5000 attempts, 3333 reached, \d+ without a dot/));
    const highest = Math.min(...dots.map(({ y }) => y));
    const [grid] = gridOf(picture).filter(({ tempo }) => tempo === 100);
    expect(highest).toBeCloseTo(grid!.y, 0);
  });
});

describe("the trend", () => {
  test("has a band where it rises or falls, and none else", () => {
    const bands = (...rates: number[]) => ofClass(draw(tempos(weekly(...rates))), "chart-band").length;
    expect(bands(60, 62, 64, 66, 68)).toBe(1);
    expect(bands(80, 79, 78, 77, 75)).toBe(1);
    expect(bands(72, 76, 72, 76, 72, 76)).toBe(0);
    expect(bands(60, 80, 100)).toBe(0);
  });

  /** The band's upper and lower edge at each place, from its closed path. */
  function edgesOf(picture: SvgElement): { readonly x: number; readonly upper: number; readonly lower: number }[] {
    const d = ofClass(picture, "chart-band")[0]!.attributes["d"]!;
    const points = d
      .slice(1, -1)
      .split("L")
      .map((point) => point.split(",").map(Number) as [number, number]);
    const there = points.slice(0, points.length / 2);
    const back = points.slice(points.length / 2).reverse();
    return there.map(([x, y], at) => ({ x, upper: Math.min(y, back[at]![1]), lower: Math.max(y, back[at]![1]) }));
  }

  // Sen (1968), JASA 63, 1379: weeks 1, 2, 3, 4, 10, 12, 18; SciPy's `theilslopes`, its intercept by the method
  // "separate".
  test("it goes through the medians, as SciPy's line does, and opens by the slopes of the interval", () => {
    const { x, y, "theil_sen_0.95": scipy } = reference.cases.sen1968;
    const rates = Array.from({ length: 18 }, (_, week) => y[x.indexOf(week + 1)] ?? 0);
    const data = tempos(weekly(...rates), { wide: 18 });
    // Two that were not reached make room for the whole band.
    const beside = [4, 120].map((rate) => ({ day: MONDAY, rate, reached: false }));
    const picture = draw({ ...data, attempts: [...data.attempts, ...beside] });
    const dots = circles(picture, "chart-reached").map((dot) => dot.y);
    const perLogarithm = (dots.at(-1)! - dots[0]!) / Math.log(y.at(-1)! / y[0]!);
    const tempoAt = (place: number) => y[0]! * Math.exp((place - dots[0]!) / perLogarithm);
    const near = (place: number, tempo: number) => expect(Math.abs(tempoAt(place) / tempo - 1)).toBeLessThan(0.006);
    const edges = edgesOf(picture);
    const pinch = edges.filter(({ upper, lower }) => upper === lower);
    expect(pinch).toHaveLength(1);
    const [first, middle, last] = [1, 4, 18];
    const bestThere = scipy.intercept_separate + scipy.slope * middle;
    near(pinch[0]!.upper, bestThere);
    near(edges.at(-1)!.upper, bestThere + scipy.high * (last - middle));
    near(edges.at(-1)!.lower, bestThere + scipy.low * (last - middle));
    near(edges[0]!.upper, bestThere + scipy.low * (first - middle));
    near(edges[0]!.lower, bestThere + scipy.high * (first - middle));
  });

  test("an interval that is none has no band", () => {
    for (const low of [Number.NaN, Number.NEGATIVE_INFINITY, null]) {
      const trend = { slope: 2, low, high: 3, level: 0.95, verdict: "rising", weeks: 5 } as const;
      expect(ofClass(draw(tempos(weekly(60, 62, 64, 66, 68), { trend })), "chart-band")).toEqual([]);
    }
  });

  test("a band that would fall below nothing ends at the foot of the chart", () => {
    const trend = { slope: -40, low: -90, high: -5, level: 0.95, verdict: "falling", weeks: 5 } as const;
    for (const { lower } of edgesOf(draw(tempos(weekly(90, 88, 86, 84, 82), { trend }))))
      expect(lower).toBeLessThanOrEqual(74);
  });
});

describe("an aim", () => {
  const aim = aimAt(96, "2026-01-29");
  const markOf = (data: TempoChart) => ofClass(draw(data), "chart-aim")[0]?.attributes["d"];

  test("is a short level mark at its date, and is named with it", () => {
    const data = tempos(weekly(60, 66, 72, 96, 72), { aim });
    const [, start, y, end] = /^M([\d.]+),([\d.]+)H([\d.]+)$/.exec(markOf(data)!)!.map(Number);
    const reached = circles(draw(data), "chart-reached")[3]!;
    expect(Math.abs(y! - reached.y)).toBeLessThan(0.1);
    expect(end! - start!).toBeCloseTo(14, 5);
    // Thursday's middle lies three days after Monday's.
    const day = (circles(draw(data), "chart-reached")[4]!.x - reached.x) / 7;
    expect(Math.abs((start! + end!) / 2 - (reached.x + 3 * day))).toBeLessThan(0.2);
    expect(textsOf(draw(data))).toContain("aim 96 by 2026-01-29");
  });

  test("that lies ahead of the weeks shown points there from the edge", () => {
    expect(markOf(tempos(weekly(60, 66), { aim: aimAt(96, "2027-02-09") }))).toMatch(/H316M312,[\d.]+L316,[\d.]+L312,/);
  });

  test("that lies before them is left out", () => {
    expect(markOf(tempos(weekly(60, 66, 72), { wide: 2, aim: aimAt(96, "2026-01-08") }))).toBeUndefined();
  });
});

describe("nothing to draw", () => {
  const check = (data: TempoChart) =>
    expect(tempoChart(data, LOOK)).toEqual({
      ok: false,
      reason:
        "No tempo is written in these 26 weeks. Write one and how it went on the exercise's line, such as `at 60 clean`, and its chart begins.",
    });

  test("without a week, and without a tempo in any", () => {
    const data = tempos("2026-01-05 60");
    check({ ...data, weeks: [], attempts: [] });
    check(tempos("2026-01-05 -\n2026-01-12 -"));
    check({
      ...data,
      weeks: data.weeks.map((week) => ({ ...week, bestClean: Number.NaN })),
      attempts: [{ day: MONDAY, rate: 0, reached: true }],
    });
  });

  test("a rate that nobody plays is none", () => {
    const data = tempos("2026-01-05 -");
    for (const rate of [-60, 0, 1e9, Number.POSITIVE_INFINITY, Number.NaN])
      check({ ...data, attempts: [{ day: MONDAY, rate, reached: true }] });
  });

  test("one week with one tempo is enough", () => expect(tempoChart(tempos("2026-01-05 60"), LOOK).ok).toBe(true));
});
