import { describe, expect, test } from "vitest";
import { cleanShares, steadyRate, wilsonInterval } from "../../server/history/steady.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { attempt, practised } from "./attempt.ts";

const DAY = parseIsoDate("2026-04-06")!;

/** So many tries of a tempo on a day, and how many of them were reached. */
function tried(date: string, rate: number, got: number, count: number) {
  return attempt({ day: parseIsoDate(date)!, rate, got, count, reached: got * 2 >= count && got > 0 });
}

// statsmodels 0.13.5 (Debian 12), proportion_confint(method="wilson"), to four places.
describe("the interval of a share", () => {
  test.each([
    [5, 7, 0.3589, 0.9178],
    [14, 18, 0.5479, 0.91],
    [8, 8, 0.6756, 1],
    [0, 8, 0, 0.3244],
  ])("%d of %d is %d to %d", (reached, tries, low, high) => {
    const interval = wilsonInterval(reached, tries);
    expect(interval.low).toBeCloseTo(low, 4);
    expect(interval.high).toBeCloseTo(high, 4);
  });

  // wilson-scipy.json: SciPy 1.17.1, scipy.stats.binomtest(k, n).proportion_ci(method="wilson"), which is the same formula.
  test("equals SciPy's for every share of up to forty tries", async () => {
    const { cases } = (await import("../reference/wilson-scipy.json", { with: { type: "json" } })).default;
    expect(cases.length).toBe(860);
    for (const [reached, tries, low, high] of cases as [number, number, number, number][]) {
      const interval = wilsonInterval(reached, tries);
      expect(Math.abs(interval.low - low)).toBeLessThanOrEqual(1e-9);
      expect(Math.abs(interval.high - high)).toBeLessThanOrEqual(1e-9);
    }
  });
});

describe("the steady tempo", () => {
  test("is the fastest that was reached in four fifths of at least five tries", () => {
    const records = [
      tried("2026-03-23", 66, 6, 6),
      tried("2026-03-24", 72, 0, 1),
      tried("2026-03-30", 72, 1, 1),
      tried("2026-04-01", 72, 4, 5),
      tried("2026-04-01", 76, 0, 1),
    ];
    expect(steadyRate(records, DAY)).toBe(66); // 72 has 5 of 7
    expect(steadyRate([...records, tried("2026-04-02", 72, 3, 3)], DAY)).toBe(72); // 8 of 10
  });

  test("four tries are too few, and a slower one that fails undoes nothing", () => {
    expect(steadyRate([tried("2026-04-01", 72, 4, 4)], DAY)).toBeNull();
    expect(steadyRate([tried("2026-04-01", 66, 0, 5), tried("2026-04-02", 72, 4, 5)], DAY)).toBe(72);
  });

  test("looks back on twelve weeks, and not on the day itself", () => {
    expect(steadyRate([tried("2026-01-12", 72, 5, 5)], DAY)).toBe(72);
    expect(steadyRate([tried("2026-01-11", 72, 5, 5)], DAY)).toBeNull();
    expect(steadyRate([tried("2026-04-06", 72, 5, 5)], DAY)).toBeNull();
  });

  test("looks at nothing from before a return with a fresh baseline", () => {
    const records = [tried("2026-03-02", 80, 5, 5), tried("2026-03-30", 69, 5, 5), tried("2026-04-01", 69, 5, 5)];
    const back = parseIsoDate("2026-03-30")!;
    expect([steadyRate(records, DAY), steadyRate(records, DAY, back)]).toEqual([80, 69]);
    expect(cleanShares(records, DAY, back).map(({ rate }) => rate)).toEqual([69]);
  });

  test("what nothing is said of counts for nothing, nor does what has no tempo", () => {
    const silent = attempt({ day: DAY - 1, rate: 72, reached: null, got: 0, count: 5 });
    expect(steadyRate([silent, ...practised("2026-04-01  - - - - -")], DAY)).toBeNull();
  });
});

test("how often each tempo was reached, from five tries on two days on, the slowest first", () => {
  const records = [
    tried("2026-03-24", 72, 1, 2),
    tried("2026-04-01", 72, 4, 5),
    tried("2026-04-01", 66, 5, 5),
    tried("2026-04-02", 66, 1, 1),
    tried("2026-04-02", 60, 9, 9),
  ];
  expect(cleanShares(records, DAY)).toMatchObject([
    { rate: 66, reached: 6, tries: 6, days: 2 },
    { rate: 72, reached: 5, tries: 7, days: 2 },
  ]);
});
