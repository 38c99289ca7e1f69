import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Settled, settledIn } from "../../server/history/settled.ts";
import { weeksOf } from "../../server/history/weeks.ts";
import { parseIsoDate, weekIndex } from "../../server/journal/calendar.ts";
import { attempt } from "./attempt.ts";

const MONDAY = parseIsoDate("2026-01-05")!;

/** One day a week from the first week of 2026 on, reached in so many tries; `0` is a week without. */
function weekly(bests: readonly number[], count = 2, times = 1) {
  return bests.flatMap((rate, week) =>
    rate === 0 ? [] : [attempt({ day: MONDAY + 7 * week, rate: rate * times, count })],
  );
}

function settled(bests: readonly number[], count?: number): Settled | null {
  return settledIn(weeksOf(weekly(bests, count)), weekIndex(MONDAY) + bests.length - 1);
}

describe("a tempo has settled", () => {
  // Best 76 and 76, medians 76 and 74.
  test("when six weeks go no higher than those before, in the middle or at their best", () => {
    expect(settled([76, 72, 76, 76, 72, 76, 72, 76, 76, 72, 76, 72])).toMatchObject({
      since: "2026-W02",
      best: 76,
      testedWeeks: 12,
      tries: 24,
    });
  });

  // Best 76 and 76, medians 67.5 and 76.
  test("not while the middle still goes up", () =>
    expect(settled([60, 63, 66, 69, 72, 76, 76, 72, 76, 76, 72, 76])).toBeNull());

  test("not while the best does", () => expect(settled([76, 72, 76, 76, 72, 76, 72, 80, 76, 72, 76, 72])).toBeNull());

  test("from ten tested weeks on, of which the last six have eight tries", () => {
    const ten = [76, 72, 76, 76, 72, 76, 72, 76, 76, 72];
    expect(settled(ten)).not.toBeNull();
    expect(settled(ten.slice(1))).toBeNull();
    expect(settled(ten, 1)).toBeNull();
  });

  test("not from weeks more than half a year ago", () => {
    const six = [76, 72, 76, 76, 72, 76];
    const apart = (weeks: number) => [...six, ...new Array(weeks).fill(0), ...six];
    expect(settled(apart(14))).not.toBeNull();
    expect(settled(apart(17))).toBeNull(); // nine of them are left
  });

  test("at what is reached now, since it was: not at a faster one of before", () => {
    expect(settled([72, 84, 72, 72, 69, 72, 72, 69, 72, 72, 69, 72])).toMatchObject({ best: 72, since: "2026-W04" });
  });

  test("not when it falls", () => {
    expect(settled([100, 98, 97, 96, 94, 93, 92, 91, 90, 88, 87, 86])).toBeNull();
  });

  test("the same in whatever unit tempos are told", () => {
    const rate = fc.integer({ min: 66, max: 80 });
    fc.assert(
      fc.property(fc.array(rate, { minLength: 10, maxLength: 26 }), fc.constantFrom(2, 1.1, 1 / 3), (bests, times) => {
        const now = weekIndex(MONDAY) + bests.length - 1;
        const [own, scaled] = [1, times].map((each) => settledIn(weeksOf(weekly(bests, 2, each)), now));
        expect(scaled?.since).toBe(own?.since);
        expect(scaled?.tries).toBe(own?.tries);
      }),
      { seed: 26, numRuns: 300 },
    );
  });
});
