import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { weeksOf } from "../../server/history/weeks.ts";
import { weekIndex } from "../../server/journal/calendar.ts";
import { forecastInWords } from "../../server/plan/aim-words.ts";
import { type Forecast, forecastOf, isOutOfSight, shortOf } from "../../server/plan/forecast.ts";
import { attempt } from "../history/attempt.ts";
import { day } from "./written.ts";

const MONDAY = day("2026-03-02");
const FIRST = weekIndex(MONDAY); // 2026-W10

/** Weekly tempos from 2026-W10 on, each reached; 0 is a week without. */
function weeks(tempos: readonly number[]) {
  const played = tempos.map((rate, week) => attempt({ day: MONDAY + 7 * week, rate })).filter(({ rate }) => rate !== 0);
  return weeksOf(played);
}

interface Asked {
  /** Weeks after the last of the tempos. */
  readonly later?: number;
  /** Which of the tempos is the first that counts. */
  readonly since?: number;
}

function forecast(tempos: readonly number[], wanted: number, { later = 0, since }: Asked = {}): Forecast {
  const asked = { present: FIRST + tempos.length - 1 + later };
  return forecastOf(weeks(tempos), wanted, since === undefined ? asked : { ...asked, since: FIRST + since });
}

/** What is said on the Monday of the last week. */
function said(tempos: readonly number[], wanted: number, asked: Asked = {}): string {
  const { later = 0 } = asked;
  return forecastInWords(forecast(tempos, wanted, asked), { today: MONDAY + 7 * (tempos.length - 1 + later) });
}

// The slope is 1.5 a week, its interval 1.2 to 1.5: SciPy 1.17.1, theilslopes(tempos, range(10), 0.95). From the middle of
// the last three weeks, one week ago, (84 - 72) / 1.5 - 1 = 7.0 weeks and (84 - 69) / 1.2 - 1 = 11.5, by hand.
const TEN = [60, 60, 63, 63, 66, 66, 69, 69, 72, 72];

describe("a range of weeks", () => {
  test("72 of 84 takes 7 to 12 weeks", () => {
    expect(forecast(TEN, 84)).toEqual({ type: "range", earliest: 7, latest: 12, testedWeeks: 10 });
    expect(said(TEN, 84)).toBe("If it goes on as in the last 10 tested weeks, in 7 to 12 weeks; it need not.");
  });

  test("counts from the week that is asked about", () => {
    expect(forecast(TEN, 84, { later: 1 })).toMatchObject({ earliest: 6, latest: 11 });
    expect(forecast(TEN, 84, { later: 4 })).toMatchObject({ earliest: 3, latest: 8 });
  });

  test("is a week at least", () => {
    expect(forecast(TEN, 73)).toMatchObject({ earliest: 1, latest: 3 });
  });

  test("with one end alone is about that many weeks", () => {
    const even = [60, 62, 64, 66, 68, 70, 72];
    expect(said(even, 73)).toBe("If it goes on as in the last 7 tested weeks, in 1 to 2 weeks; it need not.");
    expect(forecastInWords({ type: "range", earliest: 3, latest: 3, testedWeeks: 7 }, { today: MONDAY })).toContain(
      "in about 3 weeks;",
    );
    expect(forecastInWords({ type: "range", earliest: 1, latest: 1, testedWeeks: 7 }, { today: MONDAY })).toContain(
      "in about 1 week;",
    );
  });

  // The interval's lower end is 0.0 for these weeks, S = 33, Z = 2.344 (test/history/trend.test.ts holds both).
  test("has no latest week where the slower end does not lead there", () => {
    const tempos = [66, 69, 66, 0, 72, 72, 0, 76, 76, 76, 72, 76, 72, 76];
    expect(forecast(tempos, 84)).toMatchObject({ type: "range", latest: null, testedWeeks: 12 });
    expect(said(tempos, 84)).toMatch(
      /^If it goes on as in the last 12 tested weeks, in \d+ weeks or more; it need not\.$/,
    );
  });

  test("has none within a year either", () => {
    expect(forecast(TEN, 72 + 53 * 1.5)).toMatchObject({ type: "range", earliest: 52, latest: null });
    expect(said(TEN, 72 + 54 * 1.5)).toBe("At the pace of the last 10 tested weeks, over a year.");
  });
});

describe("no forecast", () => {
  test("under six tested weeks", () => {
    expect(said([60, 62, 64, 66, 68], 84)).toBe("Too early for a forecast: 5 of 6 tested weeks.");
    expect(forecast([60, 62, 64, 66, 68, 70], 84).type).toBe("range");
    expect(said([], 84)).toBe("Too early for a forecast: 0 of 6 tested weeks.");
  });

  test("where nothing clearly changes, or it falls", () => {
    expect(said([72, 76, 72, 76, 72, 76, 72, 76, 72], 84)).toBe("No forecast: no clear change over 9 tested weeks.");
    expect(said([80, 79, 77, 76, 74, 72], 84)).toBe("No forecast: slower over the last 6 tested weeks.");
  });

  test("four weeks after the last tested one, but not five", () => {
    expect(forecast(TEN, 84, { later: 4 }).type).toBe("range");
    expect(said(TEN, 84, { later: 5 })).toBe("No forecast: not tested since the week of 4 May.");
    expect(said(TEN, 84, { later: 60 })).toBe("No forecast: not tested since the week of 4 May 2026.");
  });

  test("while one goes easy", () => {
    expect(forecastInWords({ type: "something hurt", on: MONDAY - 3, testedWeeks: 9 }, { today: MONDAY })).toBe(
      "No forecast for now: something hurt on 27 February.",
    );
    expect(forecastInWords({ type: "back after a break", testedWeeks: 9 }, { today: MONDAY })).toBe(
      "No forecast in the first days after a break.",
    );
  });
});

describe("which weeks count", () => {
  test("those of the last half year", () => {
    const rest = Array.from({ length: 20 }, () => 0);
    expect(forecast([...TEN, ...rest, 60, 62, 64, 66, 68], 84)).toEqual({ type: "too early", testedWeeks: 5 });
  });

  test("from a week on, after a break", () => {
    const before = [70, 70, 70, 70, 0, 0, 0, 0];
    expect(forecast([...before, ...TEN], 100, { since: before.length })).toMatchObject({
      type: "range",
      testedWeeks: 10,
    });
    expect(forecast([...before, ...TEN], 100)).toMatchObject({ testedWeeks: 14 });
  });

  test("none after the week that is asked about", () => {
    const asked = { present: FIRST + 9 };
    expect(forecastOf(weeks([...TEN, 200, 300]), 84, asked)).toEqual(forecastOf(weeks(TEN), 84, asked));
  });
});

describe("an aim is not in sight", () => {
  const today = MONDAY + 63;
  const range = (latest: number | null): Forecast => ({ type: "range", earliest: 2, latest, testedWeeks: 8 });

  test("where its week comes before the latest of the range, or there is no range", () => {
    expect(isOutOfSight(range(4), today + 28, today)).toBe(false);
    expect(isOutOfSight(range(5), today + 28, today)).toBe(true);
    expect(isOutOfSight(range(null), today + 280, today)).toBe(true);
    expect(isOutOfSight({ type: "too early", testedWeeks: 3 }, today + 280, today)).toBe(true);
  });

  test("only if it has a day ahead", () => {
    expect(isOutOfSight(range(null), undefined, today)).toBe(false);
    expect(isOutOfSight(range(null), today - 1, today)).toBe(false);
  });
});

describe("an aim is far", () => {
  const present = FIRST + 9;

  test("where the earliest week of the range comes after that of its day", () => {
    expect(shortOf(weeks(TEN), 84, present + 7, { present })).toBeUndefined();
    expect(shortOf(weeks(TEN), 84, present + 6, { present })).toBeCloseTo(72 + 1.5 * 7, 9);
  });

  test("not while it is too early, nor where it is there", () => {
    expect(shortOf(weeks([60, 61, 62]), 200, FIRST + 3, { present: FIRST + 2 })).toBeUndefined();
    expect(shortOf(weeks(TEN), 72, present + 1, { present })).toBeUndefined();
  });
});

const tempo = fc.integer({ min: 40, max: 120 });
const course = fc.array(fc.oneof({ weight: 4, arbitrary: tempo }, { weight: 1, arbitrary: fc.constant(0) }), {
  maxLength: 30,
});
/** A rising one: the interesting forecasts are rare among any. */
const rising = fc
  .array(fc.integer({ min: -1, max: 3 }), { minLength: 6, maxLength: 20 })
  .map((steps) => steps.map((_, i) => steps.slice(0, i).reduce((sum, step) => sum + step, 60)));

describe("whatever the weeks", () => {
  test("the forecast is the same when all rates are multiplied", () => {
    fc.assert(
      fc.property(
        fc.oneof(course, rising),
        fc.integer({ min: 60, max: 200 }),
        fc.double({ min: 0.1, max: 9, noNaN: true }),
        (tempos, wanted, by) => {
          const scaled = tempos.map((each) => each * by);
          expect(forecast(scaled, wanted * by)).toEqual(forecast(tempos, wanted));
        },
      ),
    );
  });

  test("no sentence names a day ahead, a per cent or what will be", () => {
    fc.assert(
      fc.property(fc.oneof(course, rising), fc.integer({ min: 60, max: 200 }), fc.nat(8), (tempos, wanted, later) => {
        const sentence = said(tempos, wanted, { later });
        expect(sentence).not.toMatch(/%|\bwill\b|\d{4}-\d\d-\d\d|-W\d\d/);
        if (!sentence.includes("not tested since"))
          expect(sentence).not.toMatch(
            /January|February|March|April|May|June|July|August|September|October|November|December/,
          );
      }),
    );
  });

  test("a range begins at one, ends after it begins, and rests on six weeks", () => {
    fc.assert(
      fc.property(rising, fc.integer({ min: 100, max: 200 }), (tempos, wanted) => {
        const found = forecast(tempos, wanted);
        if (found.type !== "range") return;
        expect(found.earliest).toBeGreaterThanOrEqual(1);
        expect(found.latest ?? 52).toBeGreaterThanOrEqual(found.earliest);
        expect(found.testedWeeks).toBeGreaterThanOrEqual(6);
      }),
    );
  });
});
