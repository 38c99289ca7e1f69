import { describe, expect, test } from "vitest";
import { type Look, WIDE } from "../../server/charts/look.ts";
import { monthAxis, tempoChart, tempoRow } from "../../server/charts/tempo-chart.ts";
import type { TempoChart } from "../../server/charts/tempo-data.ts";
import reference from "../reference/trend-statistics.json";
import {
  cornersOf,
  dotsOf,
  number,
  ofClass,
  pictureOf,
  readSvg,
  type SvgElement,
  textsOf,
  within,
} from "./svg-reader.ts";
import { aimAt, MONDAY, tempos, weekly } from "./tempo-sample.ts";

const LOOK: Look = { kind: "page", id: "d-minor" };

function draw(data: TempoChart, look: Look = LOOK): SvgElement {
  return pictureOf(tempoChart(data, look));
}

/** The tempos that are written at the left, with the middle of the number's height. */
function gridOf(picture: SvgElement): { readonly tempo: number; readonly y: number }[] {
  const labels = within(picture).filter(({ name, text }) => name === "text" && /^\d+(\.\d)?$/.test(text));
  return labels.map((label) => ({ tempo: Number(label.text), y: number(label, "y") - 4 }));
}

const reached = (picture: SvgElement) => dotsOf(picture, "chart-reached");
const other = (picture: SvgElement) => dotsOf(picture, "chart-other");
const stepsOf = (picture: SvgElement) => cornersOf(picture, "chart-best");
const WEEK = WIDE / 26;

describe("the ratio scale", () => {
  // A logarithmic scale: places are as far apart as the logarithms of their values. Common mathematics.
  test("a dot stands where the logarithm of its tempo says, between two tempos that are written", () => {
    const rates = [48, 60, 72, 84, 96, 108, 120];
    const picture = draw(tempos(weekly(...rates)));
    const [low, ...others] = gridOf(picture);
    const high = others.at(-1)!;
    const perLogarithm = (high.y - low!.y) / Math.log(high.tempo / low!.tempo);
    const expected = rates.map((rate) => low!.y + perLogarithm * Math.log(rate / low!.tempo));
    const places = reached(picture).map(({ y }) => y);
    expect(places).toHaveLength(rates.length);
    for (const [at, y] of places.entries()) expect(Math.abs(y - expected[at]!)).toBeLessThan(0.1);
  });

  test("ten per cent is as high everywhere", () => {
    const [a, b, c, d] = reached(draw(tempos(weekly(50, 55, 100, 110)))).map(({ y }) => y);
    expect(Math.abs(a! - b! - (c! - d!))).toBeLessThan(0.15);
    expect(a! - b!).toBeGreaterThan(4);
  });

  test("tempos are written as the player counts them: 144 notes a minute in 8ths are 72", () => {
    const notation = { noteValue: { numerator: 1, denominator: 8 } };
    const notes = draw(tempos(weekly(120, 144, 168), { notation, axis: "tempo, 8ths" }));
    const beats = draw(tempos(weekly(60, 72, 84)));
    expect(gridOf(notes)).toEqual(gridOf(beats));
    expect(reached(notes)).toEqual(reached(beats));
    expect(textsOf(notes)).toContain("tempo, 8ths");
  });

  test("one tempo throughout is one level line, with a round number beside it", () => {
    const picture = draw(tempos(weekly(70, 70, 70, 70)));
    expect(new Set(reached(picture).map(({ y }) => y)).size).toBe(1);
    expect(gridOf(picture).map(({ tempo }) => tempo)).toContain(70);
  });
});

describe("the weeks", () => {
  test("the last one ends at the right edge, and each is a 26th of the width", () => {
    const [corners] = stepsOf(draw(tempos(weekly(60, 66, 72))));
    const [start, end] = [corners![0]![0], corners!.at(-1)![0]];
    expect(end).toBe(WIDE);
    expect(Math.abs(end - start - 3 * WEEK)).toBeLessThan(0.1);
  });

  test("an attempt is at its day within the week", () => {
    const [monday, sunday, next] = reached(draw(tempos("2026-01-05 60\n2026-01-11 60\n2026-01-12 60")));
    expect(Math.abs(sunday!.x - monday!.x - (6 / 7) * WEEK)).toBeLessThan(0.2);
    expect(Math.abs(next!.x - monday!.x - WEEK)).toBeLessThan(0.2);
  });

  test("what went before the span is left out, and so is what lies ahead of it", () => {
    const data = tempos(weekly(40, 60, 66, 72), { wide: 3 });
    const ahead = { day: MONDAY + 4 * 7, rate: 400, reached: true };
    const picture = draw({ ...data, attempts: [...data.attempts, ahead] });
    expect(reached(picture)).toHaveLength(3);
    expect(stepsOf(picture)).toHaveLength(1);
  });

  test("a line is level through its week and steps to the next", () => {
    const [corners] = stepsOf(draw(tempos(weekly(60, 66))));
    const [a, b, c, d] = corners!;
    expect([b![1], c![0], d![1]]).toEqual([a![1], b![0], c![1]]);
    expect(c![1]).toBeLessThan(b![1]);
  });

  test("weeks without a figure are a gap, which a thin line joins over at most eight of them", () => {
    expect(stepsOf(draw(tempos(weekly(60, 63, 66))))).toHaveLength(1);
    const gaps = (...rates: number[]) => {
      const picture = draw(tempos(weekly(...rates)));
      return [stepsOf(picture).length, cornersOf(picture, "chart-join").length];
    };
    expect(gaps(60, 63, 0, 0, 66, 0, 69)).toEqual([3, 2]);
    expect(gaps(60, ...new Array(8).fill(0), 66)).toEqual([2, 1]);
    expect(gaps(60, ...new Array(9).fill(0), 66)).toEqual([2, 0]);
    const picture = draw(tempos(weekly(60, 0, 66)));
    const [before, after] = stepsOf(picture);
    const [join] = cornersOf(picture, "chart-join");
    expect([join![0], join!.at(-1)]).toEqual([before!.at(-1), after![0]]);
  });

  test("a week of slow work has a tick at its foot", () => {
    const ticks = (lines: string) =>
      ofClass(draw(tempos(lines)), "chart-tick").flatMap(({ attributes }) => attributes["d"]!.match(/M/g)!);
    expect(ticks(weekly(80, 82, 60, 84))).toHaveLength(1);
    expect(ticks(weekly(80, 82, 84))).toHaveLength(0);
  });
});

describe("the months", () => {
  const named = (picture: SvgElement) => textsOf(picture).filter((text) => /^(?:[A-Z][a-z]{2}|\d{4})$/.test(text));

  // 26 weeks up to that of Monday 2026-01-05 begin on Monday 2025-07-14.
  test("the first and the last are named, and between them as many as stand apart in equal steps", () => {
    const data = tempos(weekly(60));
    expect(named(draw(data))).toEqual(["Aug", "Sep", "Oct", "Nov", "Dec", "Jan"]);
    expect(named(readSvg(monthAxis(data)))).toEqual(["Jul", "Sep", "Nov", "Jan"]);
    expect(named(readSvg(monthAxis(tempos(weekly(60), { wide: 52 }))))).toEqual(["Jan", "May", "Sep", "Jan"]);
    const lines = ofClass(draw(data), "chart-month")[0]!.attributes["d"]!.matchAll(/M([\d.]+),/g);
    const places = within(draw(data)).filter(({ text }) => /^[A-Z][a-z]{2}$/.test(text));
    const firsts = Array.from(lines, ([, x]) => `${(Number(x) / 10).toFixed(1)}%`);
    // January, of which there are eleven days, has its name at the axis' end.
    expect(places.map(({ attributes }) => attributes["x"])).toEqual([...firsts.slice(0, places.length - 1), "100%"]);
  });

  test("an axis on which one begins, or none, begins with its date", () => {
    const first = (wide: number) => textsOf(readSvg(monthAxis(tempos(weekly(60), { wide }))));
    expect(first(3)).toEqual(["22 Dec", "Jan"]);
    expect(first(1)).toEqual(["Jan"]);
    expect(first(5)).toEqual(["8 Dec", "Jan"]);
  });

  test("a hairline at the first of each", () => {
    const d = ofClass(draw(tempos(weekly(60))), "chart-month")[0]!.attributes["d"]!;
    const days = [...d.matchAll(/M([\d.]+),/g)].map(([, x]) => (Number(x) / WIDE) * 26 * 7);
    const start = Date.UTC(2025, 6, 14);
    const firsts = [1, 2, 3, 4, 5, 6].map((month) => (Date.UTC(2025, 6 + month, 1) - start) / 86_400_000);
    expect(days.map(Math.round)).toEqual(firsts);
  });

  test("over years the axis has years", () => {
    expect(named(draw(tempos(weekly(60), { wide: 520 })))).toEqual(["2017", "2020", "2023", "2026"]);
  });
});

describe("the attempts", () => {
  test("are filled where they were reached, open where not", () => {
    const picture = draw(tempos("2026-01-05 60 66 72x\n2026-01-06 66x"));
    expect(reached(picture)).toHaveLength(2);
    expect(other(picture)).toHaveLength(2);
    expect(dotsOf(picture, "chart-inside")).toEqual(other(picture));
  });

  test("without one that was reached there is no line", () => {
    const picture = draw(tempos("2026-01-05 60x 66x\n2026-01-12 60x"));
    expect(other(picture)).toHaveLength(3);
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
    const dots = [...reached(picture), ...other(picture)];
    expect(dots.length).toBeLessThanOrEqual(350);
    expect(dots.length).toBeGreaterThan(200);
    expect(drawing).toHaveProperty("text", expect.stringMatching(/5000 attempts, 3333 reached, \d+ without a dot/));
    const highest = Math.min(...dots.map(({ y }) => y));
    const [grid] = gridOf(picture).filter(({ tempo }) => tempo === 100);
    expect(Math.abs(highest - grid!.y)).toBeLessThan(0.5);
  });
});

describe("in a row of the page", () => {
  const row = (data: TempoChart) => readSvg(tempoRow(data)!);

  test("of each day the best, and the nearest tempo above it that was not reached", () => {
    const picture = row(tempos("2026-01-05 60 66 72x 80x\n2026-01-06 50x"));
    expect(reached(picture)).toHaveLength(1);
    expect(other(picture)).toHaveLength(2);
    expect(gridOf(picture).map(({ tempo }) => tempo)).toEqual([50, 72]);
  });

  test("an open dot is left out where it would touch a filled one, or the open one of a later day", () => {
    const others = (lines: string) => other(row(tempos(lines))).map(({ x }) => x);
    const [latest] = others("2026-01-09 60 90x");
    expect(others("2026-01-08 60 90x\n2026-01-09 60 90x")).toEqual([latest]);
    expect(others("2025-12-01 60 90x\n2026-01-09 60 61x")).toHaveLength(1);
    expect(others("2025-12-01 60 90x\n2026-01-09 60 90x")).toHaveLength(2);
  });

  test("a week of slow work is its tick alone: its tempo is neither drawn nor in the range", () => {
    const picture = row(tempos(weekly(80, 82, 40, 84)));
    expect(reached(picture)).toHaveLength(3);
    expect(gridOf(picture).map(({ tempo }) => tempo)).toEqual([80, 84]);
    expect(ofClass(picture, "chart-tick")).toHaveLength(1);
  });

  test("nothing is told to a screen reader, as the row says it in words; without a tempo there is none", () => {
    expect(row(tempos(weekly(60))).attributes["aria-hidden"]).toBe("true");
    expect(tempoRow(tempos("2026-01-05 -"))).toBeUndefined();
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
  test("its middle is SciPy's line through the medians", () => {
    const { x, y, "theil_sen_0.95": scipy } = reference.cases.sen1968;
    const rates = Array.from({ length: 18 }, (_, week) => y[x.indexOf(week + 1)] ?? 0);
    const trend = { ...scipy, level: 0.95, verdict: "rising", weeks: 7 } as const;
    const data = tempos(weekly(...rates), { wide: 18, trend });
    const tested = { ...data, weeks: data.weeks.map((week) => ({ ...week, tested: true, usual: week.bestClean })) };
    // Two that were not reached make room for the whole band.
    const beside = [4, 120].map((rate) => ({ day: MONDAY, rate, reached: false }));
    const picture = draw({ ...tested, attempts: [...data.attempts, ...beside] });
    const dots = reached(picture).map((dot) => dot.y);
    const perLogarithm = (dots.at(-1)! - dots[0]!) / Math.log(y.at(-1)! / y[0]!);
    const tempoAt = (place: number) => y[0]! * Math.exp((place - dots[0]!) / perLogarithm);
    const edges = edgesOf(picture);
    const near = (at: number, week: number) => {
      const { upper, lower } = edges.at(at)!;
      expect(Math.abs(tempoAt((upper + lower) / 2) / (scipy.intercept_separate + scipy.slope * week) - 1)).toBeLessThan(
        0.01,
      );
    };
    near(0, 1);
    near(6, 4);
    near(-1, 18);
  });

  test("half of the weeks lie within it, and it is never thinner than four pixels", () => {
    const [edge] = edgesOf(draw(tempos(weekly(60, 62, 64, 66, 68))));
    expect(edge!.lower - edge!.upper).toBeCloseTo(4, 0);
    const rates = [70, 76, 71, 80, 73, 86, 79, 83, 90, 88];
    const picture = draw(tempos(weekly(...rates)));
    const [band, dots] = [edgesOf(picture), reached(picture)];
    const within = dots.filter(({ y }, at) => y >= band[at * 2]!.upper && y <= band[at * 2]!.lower);
    expect(within).toHaveLength(5);
  });

  test("a slope that is none has no band", () => {
    for (const slope of [Number.NaN, Number.NEGATIVE_INFINITY, null]) {
      const trend = { slope, low: 1, high: 3, level: 0.95, verdict: "rising", weeks: 5 } as const;
      expect(ofClass(draw(tempos(weekly(60, 62, 64, 66, 68), { trend })), "chart-band")).toEqual([]);
    }
  });

  test("a band that would fall below nothing ends at the foot of the chart", () => {
    const trend = { slope: -40, low: -90, high: -5, level: 0.95, verdict: "falling", weeks: 5 } as const;
    for (const { lower } of edgesOf(draw(tempos(weekly(90, 88, 86, 84, 82), { trend }))))
      expect(lower).toBeLessThanOrEqual(96);
  });
});

describe("an aim", () => {
  const markOf = (data: TempoChart) => ofClass(draw(data), "chart-aim")[0]?.attributes["d"];

  test("is a short level mark at its date", () => {
    const data = tempos(weekly(60, 66, 72, 96, 72), { aim: aimAt(96, "2026-01-29") });
    const [, start, y, end] = /^M([\d.]+),([\d.]+)H([\d.]+)$/.exec(markOf(data)!)!.map(Number);
    const dot = reached(draw(data))[3]!;
    expect(Math.abs(y! - dot.y)).toBeLessThan(0.1);
    // Thursday's middle lies three days after Monday's.
    expect(Math.abs((start! + end!) / 2 - (dot.x + (3 / 7) * WEEK))).toBeLessThan(0.2);
    expect(textsOf(draw(data))).toContain("aim");
  });

  test("that lies ahead of the weeks shown, or has no day, is at the axis' end", () => {
    expect(markOf(tempos(weekly(60, 66), { aim: aimAt(96, "2027-02-09") }))).toMatch(/H1000$/);
    expect(markOf(tempos(weekly(60, 66), { aim: { rate: 96 } }))).toMatch(/H1000$/);
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
        "There is no tempo in these 26 weeks. Write one and how it went on the exercise's line, such as `at 60 clean`, and its chart begins.",
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

describe("as a picture in a hover", () => {
  const palette = { foreground: "#3a3a3a", background: "#f8f8f8", amount: "#1b6a86" };

  test("it is 72 px high, with colours of its own, the slowest and the fastest tempo, and its months", () => {
    const picture = draw(tempos(weekly(60, 66, 72)), { kind: "picture", palette, id: "x" });
    expect(number(picture, "height")).toBe(72);
    expect(ofClass(picture, "chart-reached")[0]!.attributes).toMatchObject({
      stroke: "#3a3a3a",
      "stroke-linecap": "round",
    });
    expect(ofClass(picture, "chart-best")[0]!.attributes["stroke"]).toBe("#1b6a86");
    expect(gridOf(picture).map(({ tempo }) => tempo)).toEqual([60, 72]);
    expect(textsOf(picture)).toEqual(expect.arrayContaining(["Aug", "Sep"]));
  });
});
