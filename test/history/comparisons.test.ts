import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Comparison, comparisonsOf } from "../../server/history/comparisons.ts";
import type { AttemptRecord } from "../../server/history/record.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { attempt, pieceAttempt } from "./attempt.ts";

const MONDAY = parseIsoDate("2026-01-05")!;
const TODAY = parseIsoDate("2026-12-31")!;

/** One attempt a week from the first week of 2026 on; `0` is a week without. */
function weekly(bests: readonly number[], way: Partial<AttemptRecord>): AttemptRecord[] {
  return bests.flatMap((rate, week) => (rate === 0 ? [] : [attempt({ day: MONDAY + 7 * week, rate, ...way })]));
}

const SLURRED = weekly([72, 72, 76, 76, 80, 80, 84, 84], { tonguing: "slurred" });
const TONGUED = weekly([66, 69, 69, 72, 72, 76, 76, 80], { tonguing: "single" });

/** The same pace, a tenth slower. */
const FAST = new Array(8).fill(80);
const SLOW = new Array(8).fill(72);

function pairs(...records: AttemptRecord[][]): string[] {
  return comparisonsOf(records.flat(), TODAY).map((each) => `${each.of} below ${each.with}`);
}

describe("ways of playing", () => {
  // The ratios of the weeks: 0.917, 0.958, 0.908, 0.947, 0.9, 0.95, 0.905, 0.952; the middle of 0.917 and 0.947 is 0.932.
  test("a worked example: tongued is below slurred in eight weeks of eight, by about 7 %", () => {
    const [only, ...more] = comparisonsOf([...SLURRED, ...TONGUED], TODAY);
    expect(more).toEqual([]);
    expect(only).toMatchObject({ of: "tongued", with: "slurred", weeks: 8, lower: 8, higher: 0, chance: 1 / 128 });
    expect(only!.ratio).toBeCloseTo((66 / 72 + 72 / 76) / 2, 12);
  });

  test("are articulations, rhythms, directions, and by heart or not", () => {
    expect(pairs(weekly(FAST, {}), weekly(SLOW, { evenness: "uneven", rhythm: "dotted" }))).toEqual([
      "dotted below even",
    ]);
    expect(pairs(weekly(FAST, { direction: "up" }), weekly(SLOW, { direction: "down and up" }))).toEqual([
      "top down below up",
    ]);
    expect(pairs(weekly(FAST, { byHeart: true }), weekly(SLOW, {}))).toEqual(["with the music below by heart"]);
  });

  test("are compared only where all else is equal", () => {
    expect(pairs(weekly(FAST, { direction: "up" }), weekly(SLOW, { direction: "down", byHeart: true }))).toEqual([]);
    expect(pairs(weekly(FAST, {}), weekly(SLOW, { tonguing: "slurred", reach: "wide" }))).toEqual([]);
    expect(pairs(weekly(FAST, { direction: "up" }), weekly(SLOW, {}))).toEqual([]); // no direction is none of the three
    expect(pairs(weekly(FAST, { tonguing: "mixed" }), weekly(SLOW, {}))).toEqual([]);
    const rhythms = ["dotted", "long short"].map((rhythm) => ({ evenness: "uneven", rhythm }) as const);
    expect(pairs(weekly(FAST, rhythms[0]!), weekly(SLOW, rhythms[1]!))).toEqual([]);
  });

  test("of a piece in one place alone", () => {
    const at = (rate: number, way: Partial<AttemptRecord>) =>
      FAST.map((_, week) => pieceAttempt({ day: MONDAY + 7 * week, rate, ...way }));
    expect(pairs(at(60, { byHeart: true }), at(72, {}))).toEqual(["by heart below with the music"]);
    expect(pairs(at(60, { byHeart: true, where: "bars 1-8" }), at(72, {}))).toEqual([]);
  });

  test("differ in six weeks at least, of the last 52", () => {
    const [five, six] = [5, 6].map((weeks) => weekly(SLOW.slice(0, weeks), { tonguing: "slurred" }));
    expect(pairs(weekly(FAST, {}), five!)).toEqual([]);
    expect(pairs(weekly(FAST, {}), six!)).toEqual(["slurred below tongued"]);
    const later = comparisonsOf([...weekly(FAST, {}), ...six!], TODAY + 7 * 30);
    expect(later).toEqual([]);
  });

  test("by three per cent at least, and further one way than by chance", () => {
    const against = (bests: readonly number[]) => pairs(weekly(FAST, {}), weekly(bests, { tonguing: "slurred" }));
    expect(against(new Array(8).fill(77.6))).toEqual(["slurred below tongued"]);
    expect(against(new Array(8).fill(77.7))).toEqual([]);
    expect(against([72, 72, 72, 72, 72, 72, 72, 84])).toEqual([]); // 7 of 8: 18 / 256
    expect(against([72, 72, 72, 72, 72, 72, 80, 80])).toEqual(["slurred below tongued"]); // 6 of the 6 that differ
  });

  test("the least likely by chance comes first, then what is furthest apart", () => {
    const dotted = weekly(SLOW, { evenness: "uneven", rhythm: "dotted" });
    const slurred = weekly(new Array(8).fill(66), { tonguing: "slurred" });
    expect(pairs(weekly(FAST, {}), dotted, slurred)).toEqual(["slurred below tongued", "dotted below even"]);
    expect(pairs(weekly(FAST, {}), dotted, slurred.slice(1))).toEqual(["dotted below even", "slurred below tongued"]);
  });

  test("the same in whatever order they come, and in whatever unit", () => {
    const records = [...SLURRED, ...TONGUED];
    const figures = (found: readonly Comparison[]) => found.map(({ ratio, strands, ...rest }) => rest);
    const expected = figures(comparisonsOf(records, TODAY));
    fc.assert(
      fc.property(
        fc.shuffledSubarray(records, { minLength: records.length }),
        fc.constantFrom(2, 1.1, 1 / 3),
        (shuffled, times) => {
          const scaled = shuffled.map((record) => attempt({ ...record, rate: record.rate! * times }));
          expect(figures(comparisonsOf(scaled, TODAY))).toEqual(expected);
        },
      ),
      { seed: 52, numRuns: 100 },
    );
  });
});
