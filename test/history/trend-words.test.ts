import { describe, expect, test } from "vitest";
import { trendOf } from "../../server/history/trend.ts";
import {
  metronomeOf,
  type Notation,
  shown,
  trendInWords,
  WEEK_HEADINGS,
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

/** Weekly bests from the first week of 2026 on are told like this. */
function check(bests: number[], expected: string, notation?: Notation): void {
  const monday = parseIsoDate("2026-01-05")!;
  const weeks = weeksOf(bests.map((rate, week) => attempt({ day: monday + 7 * week, rate })));
  expect(trendInWords(trendOf(weeks), weeks, notation)).toBe(expected);
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
  test("too early says how many weeks there are and how many it takes", () => {
    check([], "too early to say: no tested week yet, it takes four");
    check([60], "too early to say: one tested week, it takes four");
    check([60, 66], "too early to say: two tested weeks, it takes four");
    check([60, 66, 72], "too early to say: three tested weeks, it takes four");
  });

  test("level is level", () => check([72, 76, 72, 76, 72], "level"));

  test("rising and falling are told in the metronome's marks, which lie 4 apart around 80", () => {
    check([76, 84, 88, 96, 104, 108], "rising by about 1.5 metronome marks a week, 1 to 2");
    check([120, 116, 112, 108], "falling by about 1 metronome mark a week");
  });

  test("in the player's note value: 16 notes a minute are 8 beats in 8ths", () => {
    check([160, 176, 192, 208], "rising by about 2 metronome marks a week", { noteValue: EIGHTH });
  });

  test("a slow trend is told over four weeks or thirteen, so that it is a whole mark", () => {
    check([80, 81, 82, 83, 84, 85], "rising by about 1 metronome mark in four weeks");
    check(
      Array.from({ length: 26 }, (_, week) => 80 + week / 4),
      "rising by about 1 metronome mark in 13 weeks",
    );
    check(
      Array.from({ length: 26 }, (_, week) => 80 + week / 20),
      "rising by less than 1 metronome mark in 13 weeks",
    );
  });

  test("beyond the metronome's scale its last step goes on", () => {
    check([30, 32, 34, 36], "rising by about 1 metronome mark a week");
    check([208, 216, 224, 232], "rising by about 1 metronome mark a week");
  });
});

test("the weekly table", () => {
  const practice = practised(
    `2026-03-02  144
     2026-03-16  120
     2026-03-23  160x`,
  );
  const shared = practised("2026-03-17  -", { minutes: 3.4, about: true });
  expect(WEEK_HEADINGS).toHaveLength(5);
  const span = weeksFrom(parseIsoDate("2026-03-02")!, parseIsoDate("2026-03-23")!);
  const weeks = everyWeek(weeksOf([...practice, ...shared]), span);
  expect(weekRows(weeks, { noteValue: EIGHTH })).toEqual([
    { week: "2026-W10", best: "72", note: "tested", attempts: "1", minutes: "5" },
    { week: "2026-W11", best: "–", note: "", attempts: "0", minutes: "0" },
    { week: "2026-W12", best: "60", note: "worked below best", attempts: "2", minutes: "about 8" },
    { week: "2026-W13", best: "–", note: "", attempts: "1", minutes: "5" },
  ]);
});
