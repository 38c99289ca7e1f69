import { describe, expect, test } from "vitest";
import type { AttemptRecord } from "../../server/history/record.ts";
import { type Trend, trendOf, weeksWithin } from "../../server/history/trend.ts";
import { weeksOf } from "../../server/history/weeks.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { attempt, practised } from "./attempt.ts";
import { playerAround, randomFrom } from "./random.ts";

const MONDAY = parseIsoDate("2026-01-05")!;

/** One attempt a week, from the first week of 2026 on; `0` is a week without. */
function weekly(bests: readonly number[], since?: number) {
  const played = bests.map((rate, week) => attempt({ day: MONDAY + 7 * week, rate })).filter(({ rate }) => rate !== 0);
  return weeksOf(played, since);
}

/**
 * Bests of one week after another have this trend; of the last weeks where it says how many, or of those since a day.
 */
function check(
  bests: readonly number[],
  expected: Partial<Trend>,
  { lastWeeks = bests.length, since }: { readonly lastWeeks?: number; readonly since?: number } = {},
): void {
  expect(trendOf(weeksWithin(weekly(bests, since), { lastWeeks }))).toMatchObject(expected);
}

describe("the verdict", () => {
  test("rises when the interval lies above zero", () => {
    check([60, 62, 64, 66], { verdict: "rising", slope: 2, low: 2, high: 2, level: 0.95, weeks: 4 });
    check([60, 63, 66, 66, 72, 76], { verdict: "rising", weeks: 6 });
  });

  test("falls when it lies below", () => check([80, 79, 77, 76, 74], { verdict: "falling", weeks: 5 }));

  test("is level when it holds zero", () => {
    check([72, 76, 72, 76, 72, 76], { verdict: "level" });
    check([72, 72, 72, 72], { verdict: "level", slope: 0, low: 0, high: 0 });
  });

  test("is too early under four tested weeks, however steep", () => {
    check([60, 80, 100], { verdict: "too early", slope: 20, weeks: 3 });
    check([60, 66], { verdict: "too early", slope: 6, low: 6, high: 6, weeks: 2 });
    check([60], { verdict: "too early", slope: null, low: null, high: null, weeks: 1 });
    check([], { verdict: "too early", slope: null, low: null, high: null, weeks: 0 });
  });
});

describe("what is fitted", () => {
  // Sen (1968), JASA 63, 1379: weeks 1, 2, 3, 4, 10, 12, 18; slope 4, interval 26/7 to 35/8 by SciPy's test.
  test("weeks count as time, so that a gap stays a gap", () => {
    const sen = [9, 15, 19, 20, 0, 0, 0, 0, 0, 45, 0, 55, 0, 0, 0, 0, 0, 78];
    const trend = trendOf(weekly(sen));
    expect(trend).toMatchObject({ verdict: "rising", slope: 4, weeks: 7 });
    expect(trend.low).toBeCloseTo(26 / 7, 9);
    expect(trend.high).toBeCloseTo(35 / 8, 9);
  });

  test("weeks worked below best are left out", () => {
    const lines = `2026-01-05  100
                   2026-01-12  60
                   2026-01-19  102
                   2026-01-26  60
                   2026-02-02  104
                   2026-02-09  106`;
    expect(trendOf(weeksOf(practised(lines)))).toMatchObject({ verdict: "rising", weeks: 4 });
  });

  test("the last weeks, empty ones counted", () => {
    check([60, 64, 68, 72, 72, 72, 72, 72], { verdict: "level", weeks: 4 }, { lastWeeks: 4 });
    check([60, 64, 68, 72, 0, 0, 72], { verdict: "too early", weeks: 2 }, { lastWeeks: 4 });
    check([60, 64, 68, 72], { weeks: 4 }, { lastWeeks: 26 });
  });

  test("the weeks since a day, from its Monday on", () => {
    check([60, 64, 68, 72, 72], { weeks: 3 }, { since: MONDAY + 2 * 7 + 6 });
    check([60, 64, 68, 72, 72], { weeks: 2 }, { since: MONDAY + 3 * 7 });
    check([60, 64], { weeks: 0, slope: null }, { since: MONDAY + 70 });
  });
});

// Invented players who neither gain nor lose: each week three attempts on neighbouring metronome steps, around a level
// of their own. The interval is one of 95 %, so at most some 2.5 % of level players should be called rising; 5 % is the
// bound. Ties on metronome steps make it fewer.
describe("a level player with good and bad weeks", () => {
  const risingOf = (runs: number, weeks: number, player: (random: () => number) => AttemptRecord[]) => {
    const random = randomFrom(weeks);
    const verdicts = Array.from({ length: runs }, () => trendOf(weeksOf(player(random))).verdict);
    return verdicts.filter((verdict) => verdict === "rising").length;
  };

  test.each([
    { weeks: 4, steps: 4 },
    { weeks: 6, steps: 1 },
    { weeks: 12, steps: 3 },
    { weeks: 26, steps: 2 },
    { weeks: 52, steps: 2 },
  ])("of $weeks weeks, who swings by $steps steps, is called rising in at most 5 %", ({ weeks, steps }) => {
    const rising = risingOf(400, weeks, (random) => playerAround(20, steps, weeks, random));
    expect(rising).toBeLessThanOrEqual(20);
  });

  test("so is one who notes no failures, and swings by one step", () => {
    const onlyReached = (random: () => number) => playerAround(20, 1, 26, random).filter(({ reached }) => reached);
    expect(risingOf(400, 26, onlyReached)).toBeLessThanOrEqual(20);
  });

  test("while one who gains half a step a week is called rising in nearly all runs of 26 weeks", () => {
    const rising = risingOf(200, 26, (random) => playerAround(12, 1.5, 26, random, 0.5));
    expect(rising).toBeGreaterThanOrEqual(190);
  });
});
