import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { kendallVariance, mannKendall } from "../../server/history/kendall.ts";

function reference(name: string) {
  return JSON.parse(readFileSync(new URL(`../reference/${name}`, import.meta.url), "utf8"));
}

/** Half a unit in the ninth place, or that part of what is larger. */
function expectNear(value: number, expected: number): void {
  expect(Math.abs(value - expected), `${value} against ${expected}`).toBeLessThanOrEqual(
    1e-9 * Math.max(1, Math.abs(expected)),
  );
}

// trend-statistics.json: J. Little's example by hand (Holy Cross: S = 54, V = (14·13·33 − 18) / 18, Z = 2.9058), Sen's data of
// 1968 and degenerates, each by the formula.
describe("against worked examples", () => {
  interface Worked {
    readonly y: number[];
    readonly mann_kendall: { readonly S: number; readonly var: number; readonly Z: number };
  }
  const cases: [string, Worked][] = Object.entries(reference("trend-statistics.json").cases);

  test("there are cases", () => expect(cases.length).toBe(4));

  test.each(cases)("%s", (_name, { y, mann_kendall: expected }) => {
    const { s, variance, z } = mannKendall(y);
    expect(s).toBe(expected.S);
    expectNear(variance, expected.var);
    expectNear(z, expected.Z);
  });
});

// mann-kendall-scipy.json: SciPy 1.17.1. Tau b is S / √((P − ties in x)(P − ties in y)) of the P pairs, and its p comes of
// S / √V, so both figures are told by the two.
describe("against SciPy", () => {
  const cases: { name: string; y: number[]; tauB: number; p: number }[] = reference("mann-kendall-scipy.json").cases;

  test("there are cases", () => expect(cases.length).toBe(14));

  test.each(cases)("$name", ({ y, tauB, p }) => {
    const { s, variance } = mannKendall(y);
    const pairs = (y.length * (y.length - 1)) / 2;
    const sizes = [...new Set(y)].map((each) => y.filter((other) => other === each).length);
    const tied = sizes.reduce((sum, size) => sum + (size * (size - 1)) / 2, 0);
    expectNear(s / Math.sqrt(pairs * (pairs - tied)), tauB);
    expectNear(twoSided(Math.abs(s) / Math.sqrt(variance)), p);
  });
});

/** The probability beyond ±z: erfc(z/√2) by its continued fraction or, near nought, its series (Abramowitz and Stegun 7.1.5, 7.1.14). */
function twoSided(z: number): number {
  const x = z / Math.SQRT2;
  if (x < 2) {
    let [sum, term] = [x, x];
    for (let n = 1; n < 100; n++) {
      term *= -(x * x) / n;
      sum += term / (2 * n + 1);
    }
    return 1 - (2 / Math.sqrt(Math.PI)) * sum;
  }
  let fraction = x;
  for (let n = 400; n > 0; n--) fraction = x + n / 2 / fraction;
  return Math.exp(-x * x) / Math.sqrt(Math.PI) / fraction;
}

describe("S and its variance", () => {
  test("by pairs counted by hand", () => {
    // 60 63, 60 66, 60 63, 63 66, 66 63 and the tie 63 63: four up, one down.
    expect(mannKendall([60, 63, 66, 63])).toMatchObject({ s: 3, variance: (4 * 3 * 13 - 2 * 9) / 18 });
    expect(mannKendall([60, 66, 72, 80])).toMatchObject({ s: 6, variance: (4 * 3 * 13) / 18 });
  });

  test("all equal is no trend and no doubt", () => {
    expect(mannKendall([72, 72, 72, 72])).toEqual({ s: 0, variance: 0, z: 0 });
    expect(mannKendall([])).toEqual({ s: 0, variance: 0, z: 0 });
  });

  test("figures that differ only by what a double cannot hold are equal", () => {
    const third = 1 / 3;
    expect(mannKendall([(66 * third + 72 * third) / 2, 69 * third, 69 * third]).s).toBe(0);
  });

  test("ties in the other figures count as well", () => {
    expect(kendallVariance([1, 1, 2], [5, 6, 6])).toBeCloseTo((3 * 2 * 11 - 18 - 18) / 18, 12);
  });
});
