import { describe, expect, test } from "vitest";
import type { Ceiling } from "../../server/history/ceiling.ts";
import { notchAtOrBelow, type Standing, standingOf, startTempo } from "../../server/history/start-tempo.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { practised } from "./attempt.ts";

const DAY = parseIsoDate("2026-04-06")!;
const USUAL: Ceiling = { kind: "usual" };

function check(standing: Partial<Standing>, expected: number | undefined, ceiling = USUAL, ago = 3): void {
  const { steady = null, reached = null } = standing;
  const whole = { steady, reached, reachedOn: DAY - ago, sure: steady ?? reached, practisedOn: DAY - ago, ...standing };
  expect(startTempo(whole, DAY, 1, ceiling)).toBe(expected);
}

describe("how a strand stands before a day", () => {
  const standing = (lines: string) => {
    const { steady, reached, reachedOn, practisedOn } = standingOf(practised(lines), DAY);
    return [steady, reached, reachedOn && DAY - reachedOn, practisedOn && DAY - practisedOn];
  };

  test("the best of the latest day on which a tempo was reached, whatever was played after it", () => {
    expect(standing("2026-03-30 100\n2026-04-01  72 76 60 80x\n2026-04-03  76x")).toEqual([null, 76, 5, 3]);
  });

  test("the day itself and those after it do not count", () => {
    expect(standing("2026-04-01 72\n2026-04-06 76\n2026-04-07 80")).toEqual([null, 72, 5, 5]);
    expect(standing("2026-04-06 76")).toEqual([null, null, null, null]);
  });
});

describe("what counts after something hurt, and after a break", () => {
  const sure = (lines: string) => standingOf(practised(lines), DAY).sure;

  test.each([
    ["what is steady", "2026-03-30 66 66 66 66 66\n2026-04-01 72", 66],
    ["or else what two days reached", "2026-03-28 60\n2026-03-30 72\n2026-04-01 69", 69],
    ["or else the lowest of the one day", "2026-03-30 60 66 72 80x", 60],
    ["not above what was reached last", "2026-03-28 72\n2026-03-30 72\n2026-04-01 56", 56],
    ["two days within twelve weeks", "2025-12-01 72\n2026-03-30 66", 66],
    ["nothing where nothing was reached", "2026-03-30 66x", null],
  ])("%s", (_, lines, expected) => expect(sure(lines)).toBe(expected));
});

describe("the tempo to begin with", () => {
  test("is the notch at or below four fifths of the steady one", () => {
    check({ steady: 92, reached: 100 }, 72); // 73.6
    check({ steady: 90, reached: 90 }, 72); // 72 exactly
    check({ steady: 66, reached: 72 }, 52); // 52.8
  });

  test("where none is steady, a notch below the last reached", () => {
    check({ reached: 92 }, 88);
    check({ reached: 73 }, 72);
  });

  test("none where none was reached", () => check({}, undefined));

  test("below the metronome's scale a whole number", () => {
    check({ steady: 44, reached: 44 }, 35); // 35.2
    check({ reached: 40 }, 38);
    check({ reached: 31.5 }, 30);
    check({ reached: 1 }, 1);
    expect(notchAtOrBelow(0.4)).toBe(1);
  });

  test("a notch lower after two weeks without it, two after four", () => {
    check({ reached: 92 }, 88, USUAL, 13);
    check({ reached: 92 }, 84, USUAL, 14);
    check({ reached: 92 }, 84, USUAL, 27);
    check({ reached: 92 }, 80, USUAL, 28);
  });

  test("never above the ceiling of the day", () => {
    check({ reached: 92 }, 72, { kind: "sparing", share: 0.8 });
    check({ steady: 92, reached: 96 }, 72, { kind: "sparing", share: 0.8 });
    check({ reached: 92 }, 72, { kind: "return", share: 0.8 }, 30); // 80 by itself
    check({ reached: 92 }, 88, { kind: "easing", share: 1 });
    check({ steady: 92, reached: 96 }, undefined, { kind: "without instrument", share: 0 });
  });

  test("in the player's count", () => {
    const standing = { steady: 184, reached: 200, reachedOn: DAY - 1, sure: 184, practisedOn: DAY - 1 };
    expect(startTempo(standing, DAY, 2, USUAL)).toBe(72);
  });
});
