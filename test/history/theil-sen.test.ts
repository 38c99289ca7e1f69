import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { normalQuantile } from "../../server/history/normal-quantile.ts";
import { theilSen } from "../../server/history/theil-sen.ts";

function reference(name: string) {
  return JSON.parse(readFileSync(new URL(`../reference/${name}`, import.meta.url), "utf8"));
}

interface Slopes {
  slope: number | null;
  low: number | null;
  high: number | null;
}

/** The fit of these points at this confidence is this one, to 1e-9. */
function check(x: number[], y: number[], confidence: number, expected: Slopes): void {
  const fit = theilSen(x, y, confidence);
  expect(fit.count).toBe(x.length);
  for (const figure of ["slope", "low", "high"] as const) {
    const value = expected[figure];
    if (value === null) expect(fit[figure]).toBeNull();
    else expect(Math.abs(fit[figure]! - value), `${figure} ${fit[figure]} against ${value}`).toBeLessThanOrEqual(1e-9);
  }
}

describe("against SciPy", () => {
  // trend-statistics.json: SciPy 1.10.1, on Sen's own data of 1968, Little's worked example (Holy Cross), degenerates.
  const published: [string, number, number[], number[], Slopes][] = Object.entries<Record<string, never>>(
    reference("trend-statistics.json").cases,
  ).flatMap(([name, points]) =>
    Object.keys(points)
      .filter((key) => key.startsWith("theil_sen_"))
      .map((key) => [name, Number(key.slice("theil_sen_".length)), points["x"]!, points["y"]!, points[key]!] as never),
  );

  test("there are cases", () => expect(published.length).toBe(9));

  test.each(published)("%s at %d", (_name, confidence, x, y, expected) => check(x, y, confidence, expected));

  // theil-sen-scipy.json: SciPy 1.17.1 on invented points, with ties in x and in y, gaps and degenerates.
  const drawn: { name: string; x: number[]; y: number[]; fits: Record<string, Slopes> }[] =
    reference("theil-sen-scipy.json").cases;

  test("there are drawn cases", () => expect(drawn.length).toBe(27));

  test.each(drawn)("$name", ({ x, y, fits }) => {
    for (const [confidence, expected] of Object.entries(fits)) check(x, y, Number(confidence), expected);
  });

  test("the confidence is 0.95 unless said", () => {
    const { x, y } = drawn[8]!;
    expect(theilSen(x, y)).toEqual(theilSen(x, y, 0.95));
  });
});

describe("too little to fit", () => {
  test("no point, one point and one x give no slope", () => {
    check([], [], 0.95, { slope: null, low: null, high: null });
    check([3], [60], 0.95, { slope: null, low: null, high: null });
    check([3, 3, 3], [60, 66, 72], 0.95, { slope: null, low: null, high: null });
  });

  test("all equal is a slope of nought, without doubt", () => {
    check([0, 1, 2, 3], [72, 72, 72, 72], 0.95, { slope: 0, low: 0, high: 0 });
  });

  test("two points are their own interval", () => {
    check([0, 4], [60, 72], 0.95, { slope: 3, low: 3, high: 3 });
  });
});

describe("what must always hold", () => {
  const points = fc.array(fc.tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 40, max: 240 })), {
    minLength: 2,
    maxLength: 40,
  });
  const fitOf = (all: [number, number][]) =>
    theilSen(
      all.map(([x]) => x),
      all.map(([, y]) => y),
    );

  test("the slope lies in its interval, and the order of the points does not matter", () => {
    fc.assert(
      fc.property(points, (all) => {
        const fit = fitOf(all);
        const reversed = [...all].reverse();
        check(
          reversed.map(([x]) => x),
          reversed.map(([, y]) => y),
          0.95,
          fit,
        );
        if (fit.low === null) return;
        expect(fit.low).toBeLessThanOrEqual(fit.slope!);
        expect(fit.high).toBeGreaterThanOrEqual(fit.slope!);
      }),
      { seed: 1968 },
    );
  });

  test("the slope is the middle one of all slopes, sorted", () => {
    fc.assert(
      fc.property(points, (all) => {
        const slopes = all
          .flatMap(([x, y], i) => all.slice(i + 1).map(([x2, y2]) => (y2 - y) / (x2 - x)))
          .filter(Number.isFinite)
          .sort((a, b) => a - b);
        if (slopes.length === 0) return;
        const middle = (slopes[Math.floor((slopes.length - 1) / 2)]! + slopes[Math.ceil((slopes.length - 1) / 2)]!) / 2;
        expect(fitOf(all).slope).toBeCloseTo(middle, 9);
      }),
      { seed: 1950 },
    );
  });
});

describe("the normal quantile", () => {
  // normal-quantiles.json: SciPy 1.17.1, norm.ppf, which computes it by another algorithm.
  const quantiles: { p: number; z: number }[] = reference("normal-quantiles.json").quantiles;

  test.each(quantiles)("of $p is $z", ({ p, z }) => {
    expect(Math.abs(normalQuantile(p) - z)).toBeLessThanOrEqual(1e-13 * Math.max(1, Math.abs(z)));
  });

  test("1.959963984540054 leaves two and a half per cent on either side", () => {
    expect(normalQuantile(0.975)).toBeCloseTo(1.959963984540054, 14);
    expect(normalQuantile(0.025)).toBeCloseTo(-1.959963984540054, 14);
  });

  test("certainty is infinite", () => {
    expect(normalQuantile(1)).toBe(Number.POSITIVE_INFINITY);
    expect(normalQuantile(0)).toBe(Number.NEGATIVE_INFINITY);
  });
});
