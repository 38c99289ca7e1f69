import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { mannKendall } from "../../server/history/kendall.ts";
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
  test("rises when more pairs of weeks go up than chance gives once in twenty", () => {
    check([60, 62, 64, 66, 68], { verdict: "rising", slope: 2, low: 2, high: 2, level: 0.95, weeks: 5 });
    check([60, 63, 66, 66, 72, 76], { verdict: "rising", weeks: 6 });
  });

  test("falls when more go down", () => check([80, 79, 77, 76, 74], { verdict: "falling", weeks: 5 }));

  test("is level when as many may go either way", () => {
    check([72, 76, 72, 76, 72, 76], { verdict: "level" });
    check([72, 72, 72, 72], { verdict: "level", slope: 0, low: 0, high: 0 });
  });

  test("four weeks are never more than level, however they lie", () => {
    check([69, 72, 75, 78], { verdict: "level", slope: 3, weeks: 4 });
    check([78, 75, 72, 69], { verdict: "level", slope: -3, weeks: 4 });
  });

  test("is level under a twenty-fifth of the last tempo, as that is less than a metronome's notch", () => {
    // Over seven weeks 4.13 of 104.13, and 4.2 of 104.2.
    const slowly = (gain: number) => Array.from({ length: 8 }, (_, week) => 100 + gain * week);
    check(slowly(0.59), { verdict: "level" });
    check(slowly(0.6), { verdict: "rising" });
    check(slowly(-0.53), { verdict: "level" }); // 3.71 of 96.29, and 3.92 of 96.08
    check(slowly(-0.56), { verdict: "falling" });
  });

  test("is too early under four tested weeks, however steep", () => {
    check([72, 80, 84], { verdict: "too early", slope: 6, weeks: 3 });
    check([60, 66], { verdict: "too early", slope: 6, low: 6, high: 6, weeks: 2 });
    check([60], { verdict: "too early", slope: null, low: null, high: null, weeks: 1 });
    check([], { verdict: "too early", slope: null, low: null, high: null, weeks: 0 });
  });
});

// Pairs counted by hand: 42 of the 66 go up, 9 down. The groups of equal figures are 66 66, 72 72 72 72 and 76 76 76 76 76,
// so V = (12·11·29 − 2·1·9 − 4·3·13 − 5·4·15) / 18 = 3354 / 18.
test("a worked example: ties are no reason to see no rise", () => {
  const figures = [66, 69, 66, 72, 72, 76, 76, 76, 72, 76, 72, 76];
  const weeks = [0, 1, 2, 4, 5, 7, 8, 9, 10, 11, 12, 13];
  expect(mannKendall(figures)).toMatchObject({ s: 33, variance: 3354 / 18 });
  expect(mannKendall(figures).z).toBeCloseTo(2.344, 3);
  const bests = Array.from({ length: 14 }, (_, week) => figures[weeks.indexOf(week)] ?? 0);
  check(bests, { verdict: "rising", slope: 0.6, low: 0, high: 1, weeks: 12 });
});

test("of several days a week the middle one counts, so who practises more often does not look faster", () => {
  const lines = `2026-01-05  72
                 2026-01-12  72
                 2026-01-19  72
                 2026-01-26  72
                 2026-02-02  76
                 2026-02-03  72
                 2026-02-04  69
                 2026-02-09  76
                 2026-02-10  69
                 2026-02-11  72
                 2026-02-16  69
                 2026-02-18  72
                 2026-02-20  76
                 2026-02-23  72
                 2026-02-25  76
                 2026-02-27  72`;
  const weeks = weeksOf(practised(lines));
  expect(weeks.map(({ bestClean }) => bestClean)).toEqual([72, 72, 72, 72, 76, 76, 76, 76]);
  expect(weeks.map(({ usual }) => usual)).toEqual([72, 72, 72, 72, 72, 72, 72, 72]);
  expect(trendOf(weeks)).toMatchObject({ verdict: "level", slope: 0 });
});

describe("what must always hold", () => {
  const rate = fc.integer({ min: 60, max: 90 });
  const played = fc.array(fc.tuple(fc.integer({ min: 0, max: 200 }), rate, fc.boolean()), {
    minLength: 4,
    maxLength: 60,
  });
  const recordsOf = (all: readonly [number, number, boolean][], times = 1, later = 0) =>
    all.map(([day, each, reached], order) =>
      attempt({ day: MONDAY + day + later, order, rate: each * times, reached }),
    );

  test("the verdict is the same in whatever unit tempos are told", () => {
    fc.assert(
      fc.property(played, fc.constantFrom(2, 3, 1.1, 1 / 3, 0.7), (all, times) => {
        const [own, scaled] = [trendOf(weeksOf(recordsOf(all))), trendOf(weeksOf(recordsOf(all, times)))];
        expect(scaled.verdict).toBe(own.verdict);
        expect(scaled.weeks).toBe(own.weeks);
      }),
      { seed: 1945, numRuns: 300 },
    );
  });

  test("the verdict and the figures are the same when all days of a week come twice", () => {
    const mornings = played.map((all) =>
      all.map(([day, ...rest]): [number, number, boolean] => [day - (day % 7) + (day % 3), ...rest]),
    );
    fc.assert(
      fc.property(mornings, (all) => {
        const twice = [...recordsOf(all), ...recordsOf(all, 1, 3)];
        expect(trendOf(weeksOf(twice))).toEqual(trendOf(weeksOf(recordsOf(all))));
      }),
      { seed: 1938, numRuns: 300 },
    );
  });

  test("backwards in time it is the other way round", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 60, max: 72 }), { minLength: 4, maxLength: 30 }), (figures) => {
        const [there, back] = [mannKendall(figures), mannKendall([...figures].reverse())];
        expect(back.s).toBe(0 - there.s);
        expect(back.variance).toBe(there.variance);
      }),
      { seed: 1968, numRuns: 200 },
    );
  });
});

describe("what is fitted", () => {
  // Sen (1968), JASA 63, 1379: weeks 1, 2, 3, 4, 10, 12, 18; slope 4, interval 26/7 to 35/8 by SciPy's test.
  test("weeks count as time, so that a gap stays a gap", () => {
    const sen = [9, 15, 19, 20, 0, 0, 0, 0, 0, 45, 0, 55, 0, 0, 0, 0, 0, 78];
    const played = sen.flatMap((rate, week) => {
      const day = MONDAY + 7 * week;
      // A faster one that fails makes every week a test.
      return rate === 0 ? [] : [attempt({ day, rate }), attempt({ day, rate: rate + 1, reached: false })];
    });
    const trend = trendOf(weeksOf(played));
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
    expect(trendOf(weeksOf(practised(lines)))).toMatchObject({ slope: 1.1, weeks: 4 });
  });

  test("the last weeks, empty ones counted", () => {
    check([66, 68, 70, 72, 72, 72, 72, 72], { verdict: "level", weeks: 4 }, { lastWeeks: 4 });
    check([66, 68, 70, 72, 0, 0, 72], { verdict: "too early", weeks: 2 }, { lastWeeks: 4 });
    check([66, 68, 70, 72], { weeks: 4 }, { lastWeeks: 26 });
  });

  test("the weeks since a day, from its Monday on", () => {
    check([66, 68, 70, 72, 72], { weeks: 3 }, { since: MONDAY + 2 * 7 + 6 });
    check([66, 68, 70, 72, 72], { weeks: 2 }, { since: MONDAY + 3 * 7 });
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
