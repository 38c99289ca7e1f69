import { readFileSync } from "node:fs";
import fc from "fast-check";
import { Temporal } from "temporal-polyfill";
import { describe, expect, test } from "vitest";
import {
  civil,
  dayNumber,
  daysInMonth,
  isoDate,
  isoWeek,
  mondayOf,
  parseIsoDate,
  parseWeekLabel,
  weekday,
  weekIndex,
  weekLabel,
  weekLabelOf,
  weekLabels,
  weekStart,
  weeksInYear,
} from "../../server/journal/calendar.ts";
import { MANY } from "../support/random-runs.ts";

const EPOCH = Temporal.PlainDate.from("1970-01-01");

/** Everything we say of a day, against temporal-polyfill's PlainDate. */
function check(day: number): void {
  const date = EPOCH.add({ days: day });
  expect(civil(day)).toEqual({ year: date.year, month: date.month, day: date.day });
  expect(isoDate(day)).toBe(date.toString());
  expect(dayNumber(date.year, date.month, date.day)).toBe(day);
  expect(parseIsoDate(date.toString())).toBe(day);
  expect(weekday(day)).toBe(date.dayOfWeek);
  expect(isoWeek(day)).toEqual({ year: date.yearOfWeek, week: date.weekOfYear });
  expect(daysInMonth(date.year, date.month)).toBe(date.daysInMonth);
  expect(weekStart(date.yearOfWeek!, date.weekOfYear!)).toBe(day - date.dayOfWeek + 1);
}

const FIRST_DAY = parseIsoDate("0001-01-01")!;
const LAST_DAY = parseIsoDate("9999-12-31")!;
const anyDay = fc.integer({ min: FIRST_DAY, max: LAST_DAY });

describe("dates", () => {
  test("day 0 is 1 January 1970, a Thursday", () => {
    expect(dayNumber(1970, 1, 1)).toBe(0);
    expect(isoDate(0)).toBe("1970-01-01");
    expect(weekday(0)).toBe(4);
  });

  test("every day from 1600 to 2400, near the turns of months and years", () => {
    for (let year = 1600; year <= 2400; year++) {
      for (const text of [`${year}-01-01`, `${year}-02-28`, `${year}-03-01`, `${year}-12-28`, `${year}-12-31`]) {
        check(parseIsoDate(text)!);
      }
    }
  });

  test("any day of the years 1 to 9999", () => {
    check(FIRST_DAY);
    check(LAST_DAY);
    fc.assert(fc.property(anyDay, check), { seed: 1970, numRuns: MANY });
  });

  test.each(["2026-02-29", "2026-02-30", "1900-02-29", "2026-04-31", "2026-13-01", "2026-00-10", "2026-01-00"])(
    "%s does not exist",
    (text) => {
      expect(parseIsoDate(text)).toBeUndefined();
      expect(() => Temporal.PlainDate.from(text, { overflow: "reject" })).toThrow();
    },
  );

  test.each(["2026-3-2", "02.03.2026", "2026-03-02 Mon", "26-03-02", "", "0000-01-01"])("%j is not read", (text) => {
    expect(parseIsoDate(text)).toBeUndefined();
  });

  test("a date exists here exactly when PlainDate accepts it", () => {
    const parts = [
      fc.integer({ min: 1, max: 9999 }),
      fc.integer({ min: -1, max: 14 }),
      fc.integer({ min: -1, max: 33 }),
    ];
    fc.assert(
      fc.property(...(parts as [(typeof parts)[0], (typeof parts)[0], (typeof parts)[0]]), (year, month, day) => {
        let expected: string | undefined;
        try {
          expected = Temporal.PlainDate.from({ year, month, day }, { overflow: "reject" }).toString();
        } catch {
          expected = undefined;
        }
        const number = dayNumber(year, month, day);
        expect(number === undefined ? undefined : isoDate(number)).toBe(expected);
      }),
      { seed: 2, numRuns: MANY },
    );
    expect(dayNumber(2026.5, 1, 1)).toBeUndefined();
    expect(dayNumber(10_000, 1, 1)).toBeUndefined();
  });
});

describe("ISO 8601 weeks", () => {
  // Dates around New Year and leap days; every row agrees with GNU date's `+%G-W%V-%u`.
  const rows = readFileSync(new URL("../reference/iso-weeks.tsv", import.meta.url), "utf8")
    .trim()
    .split("\n")
    .slice(1)
    .map((line) => line.split("\t") as [string, string]);

  test("the table has its rows", () => expect(rows.length).toBeGreaterThan(100));

  test.each(rows)("%s is %s", (date, expected) => {
    const day = parseIsoDate(date)!;
    expect(`${weekLabel(day)}-${weekday(day)}`).toBe(expected);
    const label = expected.slice(0, 8);
    expect(parseWeekLabel(label)).toBe(day - weekday(day) + 1);
    expect(weekLabelOf(weekIndex(day))).toBe(label);
  });

  test("a running week number grows by one every Monday", () => {
    fc.assert(
      fc.property(anyDay, (day) => {
        expect(weekIndex(day + 1) - weekIndex(day)).toBe(weekday(day) === 7 ? 1 : 0);
        expect(mondayOf(weekIndex(day))).toBe(day - weekday(day) + 1);
      }),
      { seed: 3, numRuns: MANY },
    );
  });

  test("years with 53 weeks: Thursday on 1 January, or on 31 December (ISO 8601)", () => {
    for (let year = 1600; year <= 2400; year++) {
      const long = weekday(dayNumber(year, 1, 1)!) === 4 || weekday(dayNumber(year, 12, 31)!) === 4;
      expect(weeksInYear(year)).toBe(long ? 53 : 52);
    }
  });

  test.each(["2026-W54", "2025-W53", "2026-W00", "2026-W1", "2026W10", "0000-W01"])("%s is no week", (text) => {
    expect(parseWeekLabel(text)).toBeUndefined();
  });

  test("a run of labels is each label in turn", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1000, max: 5000 }), fc.integer({ min: -1, max: 300 }), (first, length) => {
        const expected = Array.from({ length: Math.max(0, length) }, (_, i) => weekLabelOf(first + i));
        expect(weekLabels(first, first + length - 1)).toEqual(expected);
      }),
      { seed: 4 },
    );
  });
});
