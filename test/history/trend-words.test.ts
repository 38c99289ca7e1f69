import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { trendOf, type Verdict } from "../../server/history/trend.ts";
import {
  bestWithNote,
  metronomeOf,
  type Notation,
  shown,
  trendInBrief,
  trendInColumn,
  trendInRates,
  trendInWords,
  weekRows,
} from "../../server/history/trend-words.ts";
import { weeksFrom } from "../../server/history/week-span.ts";
import { everyWeek, weeksOf } from "../../server/history/weeks.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { attempt, practised } from "./attempt.ts";

const EIGHTH = { numerator: 1, denominator: 8 };
const TRIPLET = { numerator: 1, denominator: 12 };
const HALF = { numerator: 1, denominator: 2 };
const DOTTED_QUARTER = { numerator: 3, denominator: 8 };

const monday = parseIsoDate("2026-01-05")!;

function weekly(bests: readonly number[]) {
  return weeksOf(bests.flatMap((rate, week) => (rate === 0 ? [] : attempt({ day: monday + 7 * week, rate }))));
}

/** Weekly bests from the first week of 2026 on are told like this, in brief and in a sentence. */
function check(bests: readonly number[], brief: string, sentence = brief, notation?: Notation): void {
  const weeks = weekly(bests);
  expect(trendInBrief(trendOf(weeks), weeks, notation)).toBe(brief);
  expect(trendInWords(trendOf(weeks), weeks, notation)).toBe(sentence);
}

/** A trend of this slope and interval, that ends at 80, is told like this. */
function checkTrend(verdict: Verdict, [low, slope, high]: readonly number[], brief: string, sentence = brief): void {
  const trend = { slope: slope!, low: low!, high: high!, level: 0.95, verdict, weeks: 5 } as const;
  expect(trendInBrief(trend, weekly([80]))).toBe(brief);
  expect(trendInWords(trend, weekly([80]))).toBe(sentence);
}

describe("a rate as the player writes it", () => {
  // format.md's own cases and the arithmetic of reference/tempo-cases.tsv, read backwards.
  test.each([
    [144, "8ths at a quarter", EIGHTH, undefined, "72"],
    [180, "triplets at a quarter", TRIPLET, undefined, "60"],
    [120, "8ths at an eighth", EIGHTH, EIGHTH, "120"],
    [180, "8ths at a dotted quarter", EIGHTH, DOTTED_QUARTER, "60"],
    [30, "halves at a quarter", HALF, undefined, "60"],
    [84, "one note a beat", null, undefined, "84"],
    [100, "triplets at a quarter", TRIPLET, undefined, "33.3"],
  ] as const)("%d notes a minute in %s", (rate, _, noteValue, beat, expected) => {
    expect(shown(rate, noteValue, beat)).toBe(expected);
  });

  test("unrounded, for counting on", () => {
    expect(metronomeOf(100, { noteValue: TRIPLET })).toBeCloseTo(100 / 3, 12);
  });
});

describe("the trend in words", () => {
  test("too early, and no clear change", () => {
    check([], "too early to say");
    check([60, 66, 69], "too early to say");
    check([72, 76, 72, 76, 72], "no clear change");
  });

  test("in notches of the metronome, which lie 4 apart around 80", () => {
    checkTrend("rising", [0.4, 0.5, 0.6], "up half a notch in four weeks", "up about half a notch in four weeks");
    checkTrend("rising", [0.5, 1, 1.5], "up a notch in four weeks", "up about a notch in four weeks (½ to 1½)");
    checkTrend("rising", [1, 1.5, 2], "up 1½ notches in four weeks", "up about 1½ notches in four weeks (1 to 2)");
    checkTrend("falling", [-2, -1, -0.5], "down a notch in four weeks", "down about a notch in four weeks (½ to 2)");
  });

  test("to the nearest half, from three on to a whole", () => {
    checkTrend("rising", [2.4, 2.4, 2.4], "up 2½ notches in four weeks", "up about 2½ notches in four weeks");
    checkTrend("falling", [-4, -4, -4], "down 4 notches in four weeks", "down about 4 notches in four weeks");
  });

  test("where the interval holds no change there is no lower end", () => {
    checkTrend("rising", [0, 0.6, 1], "up half a notch in four weeks", "up by at most about a notch in four weeks");
    checkTrend("rising", [-0.2, 1, 2], "up a notch in four weeks", "up by at most about 2 notches in four weeks");
    checkTrend(
      "falling",
      [-1, -0.5, 0.1],
      "down half a notch in four weeks",
      "down by at most about a notch in four weeks",
    );
  });

  test("what moves never moves by nothing", () => {
    const little = "less than half a notch in four weeks";
    checkTrend("rising", [0.1, 0.2, 0.24], `up ${little}`);
    checkTrend("falling", [-0.24, -0.2, -0.1], `down ${little}`);
    checkTrend("rising", [0.1, 0.2, 0.6], `up ${little}`, "up by at most about half a notch in four weeks");
  });

  test("counted back from the latest usual tempo, over notches of different widths", () => {
    // 3 apart from 66 to 72, 4 from there to 76.
    checkEndsAt(76, 2.5, "up 3 notches in four weeks");
    checkEndsAt(69, 1.5, "up 2 notches in four weeks");
    checkEndsAt(132, 1.5, "up a notch in four weeks");
  });

  test("beyond the metronome's scale its last notch goes on", () => {
    checkEndsAt(36, 1, "up 2 notches in four weeks");
    checkEndsAt(232, 4, "up 2 notches in four weeks");
  });

  test("in the player's note value: 8 notes a minute are 4 beats in 8ths", () => {
    const rates = Array.from({ length: 8 }, (_, week) => 144 + 2 * week);
    const words = ["up a notch in four weeks", "up about a notch in four weeks"] as const;
    check(rates, ...words, { noteValue: EIGHTH });
  });

  test("the worked example of the format reference's rule", () => {
    check(
      [66, 69, 66, 0, 72, 72, 0, 76, 76, 76, 72, 76, 72, 76],
      "up half a notch in four weeks",
      "up by at most about a notch in four weeks",
    );
  });
});

function checkEndsAt(tempo: number, slope: number, brief: string): void {
  const trend = { slope, low: slope, high: slope, level: 0.95, verdict: "rising", weeks: 5 } as const;
  expect(trendInBrief(trend, weekly([tempo]))).toBe(brief);
}

test("where a break cut off what came before, it says since when it is told", () => {
  const weeks = weekly([80, 80, 80, 80, 0, 0, 0, 0, 68, 70, 72, 74, 76]);
  const back = parseIsoDate("2026-03-02")!;
  const trend = trendOf(weeks, back);
  expect(trend).toMatchObject({ verdict: "rising", weeks: 5, slope: 2, since: back });
  expect(trendInWords(trend, weeks)).toBe("up about 2½ notches in four weeks, since the return on 2 March");
  expect(trendInBrief(trend, weeks)).toBe("up 2½ notches in four weeks since 2 Mar");
  expect(trendInColumn(trend, weeks)).toBe("up 2½ notches since 2 Mar");
  expect(trendInRates(trend, weeks)).toBe("up 8 since 2 Mar");
  // Where nothing was cut off there is nothing to say; a year is named where it is another.
  expect(trendOf(weeks.slice(4), back)).not.toHaveProperty("since");
  const nextYear = weekly([...new Array(52).fill(80), 72]);
  expect(trendInColumn(trendOf(nextYear, back), nextYear)).toMatch(/ since 2 Mar 2026$/);
});

test("any trend that rises or falls says so, and its numbers agree", () => {
  const number = fc.double({ min: -6, max: 6, noNaN: true });
  fc.assert(
    fc.property(number, number, number, fc.integer({ min: 30, max: 240 }), (a, b, c, tempo) => {
      const [low, slope, high] = [a, b, c].sort((x, y) => x - y) as [number, number, number];
      const trend = { slope, low, high, level: 0.95, verdict: slope > 0 ? "rising" : "falling", weeks: 9 } as const;
      const weeks = weekly([tempo]);
      for (const words of [trendInBrief(trend, weeks), trendInWords(trend, weeks)]) {
        expect(words.startsWith(slope > 0 ? "up " : "down ")).toBe(true);
        expect(words).not.toMatch(/\b0\b|\bNaN|mark|step/);
      }
      const range = /(\S+) notch(?:es)? in four weeks \((\S+) to (\S+)\)/.exec(trendInWords(trend, weeks));
      if (!range) return;
      const [middle, least, most] = range
        .slice(1)
        .map(
          (text) =>
            (/^\d/.test(text) ? Number.parseInt(text, 10) : 0) + (text.endsWith("½") || text === "half" ? 0.5 : 0),
        );
      expect(least!).toBeLessThan(most!);
      if (range[1] !== "a") {
        expect(least!).toBeLessThanOrEqual(middle!);
        expect(most!).toBeGreaterThanOrEqual(middle!);
      }
    }),
    { seed: 4 },
  );
});

test("the weekly table", () => {
  const practice = practised(
    `2026-03-02  144
     2026-03-16  120
     2026-03-18  108
     2026-03-23  160x`,
  );
  const shared = practised("2026-03-17  -", { minutes: 3.4, about: true, reached: null, got: 0 });
  const span = weeksFrom(parseIsoDate("2026-03-02")!, parseIsoDate("2026-03-23")!);
  const weeks = everyWeek(weeksOf([...practice, ...shared]), span);
  const day = (date: string) => parseIsoDate(date)!;
  expect(weekRows(weeks, { noteValue: EIGHTH })).toEqual([
    {
      week: "2026-W10",
      monday: day("2026-03-02"),
      best: "72",
      usual: "72",
      reached: "1 of 1",
      note: "tested",
      attempts: "1",
      minutes: "5",
    },
    {
      week: "2026-W11",
      monday: day("2026-03-09"),
      best: "–",
      usual: "–",
      reached: "–",
      note: "",
      attempts: "0",
      minutes: "0",
    },
    {
      week: "2026-W12",
      monday: day("2026-03-16"),
      best: "60",
      usual: "57",
      reached: "2 of 2",
      note: "slow work",
      attempts: "3",
      minutes: "about 15",
    },
    {
      week: "2026-W13",
      monday: day("2026-03-23"),
      best: "–",
      usual: "–",
      reached: "0 of 1",
      note: "",
      attempts: "1",
      minutes: "5",
    },
  ]);
  expect(weekRows(weeks, { noteValue: EIGHTH }).map(bestWithNote)).toEqual(["72", "–", "60 (slow work)", "–"]);
});
