import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { breaksUpTo, practisedDays } from "../../server/history/break.ts";
import { baselineOf, type Return, returnsOf, returnToTell } from "../../server/history/return.ts";
import { weeksOf } from "../../server/history/weeks.ts";
import { isoDate, parseIsoDate } from "../../server/journal/calendar.ts";
import { attempt } from "./attempt.ts";

const MONDAY = parseIsoDate("2026-01-05")!;

/** One day a week from the first week of 2026 on, with a faster one that failed; `0` is a week without. */
function weekly(bests: readonly number[], times = 1) {
  return bests.flatMap((rate, week) => {
    const day = MONDAY + 7 * week;
    const tried = { day, rate: rate * times };
    return rate === 0 ? [] : [attempt(tried), attempt({ ...tried, rate: rate * times * 1.05, reached: false })];
  });
}

/** The returns of the only exercise that is played; or of one beside which another is played on these days as well. */
function returns(bests: readonly number[], others: readonly string[] = [], times = 1): readonly Return[] {
  const records = weekly(bests, times);
  const days = practisedDays([...records, ...others.map((date) => attempt({ day: parseIsoDate(date)! }))]);
  return returnsOf(weeksOf(records), breaksUpTo(days.get("alto recorder")!, Number.POSITIVE_INFINITY));
}

/** The day on which the baseline begins anew, if it does. */
function baseline(bests: readonly number[], others?: readonly string[]): string | undefined {
  const since = baselineOf(returns(bests, others));
  return since === undefined ? undefined : isoDate(since);
}

test("a break is three weeks or more without practice of the instrument", () => {
  const days = (...dates: string[]) => dates.map((date) => parseIsoDate(date)!);
  const breaks = (...dates: string[]) => breaksUpTo(days(...dates), parseIsoDate("2026-12-31")!);
  expect(breaks("2026-03-01", "2026-03-22")).toEqual([]); // 20 days
  expect(breaks("2026-03-01", "2026-03-23")).toEqual([{ since: parseIsoDate("2026-03-23"), days: 21 }]);
  expect(breaksUpTo(days("2026-03-01", "2026-03-23"), parseIsoDate("2026-03-22")!)).toEqual([]);
});

test("days are counted once, by instrument, whatever order they come in", () => {
  const played = [3, 1, 2, 3].map((day) => ({ day, instrument: day === 2 ? null : "alto recorder" }));
  expect([...practisedDays(played)]).toEqual([
    ["alto recorder", [1, 3]],
    [null, [2]],
  ]);
});

describe("after a break", () => {
  const OFF = [0, 0, 0, 0, 0, 0];

  test("it is too early to say what it cost, until four tested weeks have come", () => {
    const back = returns([80, 80, 80, 80, ...OFF, 76, 76]);
    expect(back).toEqual([{ since: MONDAY + 70, days: 48, before: 80, after: null, testedWeeks: 2, fresh: false }]);
  });

  test("the baseline begins anew where the middle of four weeks is a twentieth lower, or more", () => {
    expect(baseline([80, 80, 80, 80, ...OFF, 76, 76, 76, 76])).toBe("2026-03-16"); // 20 · 76 = 19 · 80
    expect(baseline([80, 80, 80, 80, ...OFF, 76, 76, 76.5, 76.5])).toBeUndefined();
    expect(baseline([80, 80, 80, ...OFF, 60, 60, 60, 60])).toBeUndefined(); // three weeks before
  });

  test("a strand that rests while others are played has none", () => {
    const others = ["2026-02-09", "2026-03-01"];
    expect(baseline([80, 80, 80, 80, ...OFF, 72, 72, 72, 72], others)).toBeUndefined();
  });

  test("one that was begun after it, or not taken up since, has not returned", () => {
    expect(returns([...OFF, 72, 72], ["2026-01-05"])).toEqual([]);
    expect(returns([72, 72, ...OFF], ["2026-03-16"])).toEqual([]);
  });

  test("a later break that costs nothing does not bring back what an earlier one cut off", () => {
    const twice = [80, 80, 80, 80, ...OFF, 72, 72, 72, 72, 72, 0, 0, 0, 72, 72, 72];
    expect(baseline(twice)).toBe("2026-03-16");
    expect(isoDate(returnToTell(returns(twice))!.since)).toBe("2026-05-11"); // what it cost is not known yet
    expect(baseline([...twice, 72])).toBe("2026-03-16");
    expect(isoDate(returnToTell(returns([...twice, 72]))!.since)).toBe("2026-03-16");
    expect(baseline([...twice.slice(0, 18), 66, 66, 66, 66])).toBe("2026-05-11");
  });

  test("it is the same in whatever unit tempos are told", () => {
    const tempo = fc.integer({ min: 70, max: 80 });
    const four = fc.array(tempo, { minLength: 4, maxLength: 5 });
    fc.assert(
      fc.property(four, four, fc.constantFrom(2, 1.1, 1 / 3, 0.7), (before, after, times) => {
        const bests = [...before, ...OFF, ...after];
        const fresh = (each: number) => returns(bests, [], each).map((back) => back.fresh);
        expect(fresh(times)).toEqual(fresh(1));
      }),
      { seed: 2026, numRuns: 300 },
    );
  });
});
