import { describe, expect, test } from "vitest";
import {
  firstDay,
  holdsDay,
  toldSpan,
  type WeekSpan,
  weekCount,
  weeksFrom,
  weeksIn,
  weeksUpTo,
} from "../../server/history/week-span.ts";
import { isoDate, parseIsoDate, weekIndex, weekLabelOf } from "../../server/journal/calendar.ts";

const day = (date: string) => parseIsoDate(date)!;
const week = (date: string) => weekIndex(day(date));

/** A span as it is told: its labels, and how many weeks it is. */
const told = (span: WeekSpan) => `${weekLabelOf(span.first)} to ${weekLabelOf(span.last)}, ${weekCount(span)}`;

// 2026 has 53 ISO weeks (reference/iso-weeks.tsv): the first of 2027 begins on 4 January.
describe("a span of weeks", () => {
  test("from the week of one day to that of another", () => {
    expect(told(weeksFrom(day("2026-12-21"), day("2027-01-04")))).toBe("2026-W52 to 2027-W01, 3");
    expect(told(weeksFrom(day("2026-12-28"), day("2027-01-03")))).toBe("2026-W53 to 2026-W53, 1");
  });

  test("so many up to a week", () => expect(told(weeksUpTo(week("2027-01-10"), 3))).toBe("2026-W52 to 2027-W01, 3"));

  test("begins on a Monday, and holds the days up to a Sunday", () => {
    const span = weeksFrom(day("2026-12-23"), day("2027-01-06"));
    expect(isoDate(firstDay(span))).toBe("2026-12-21");
    const held = ["2026-12-20", "2026-12-21", "2027-01-10", "2027-01-11"].map((date) => holdsDay(span, day(date)));
    expect(held).toEqual([false, true, true, false]);
  });
});

describe("weeks with a record in a span", () => {
  const weeks = ["2026-12-07", "2026-12-28", "2027-01-11"].map((date) => ({ index: week(date) }));
  const span = (first: string, last: string) => weeksFrom(day(first), day(last));

  test("those that lie in it", () => expect(weeksIn(weeks, span("2026-12-14", "2027-01-11"))).toEqual(weeks.slice(1)));

  test("it is told from the first with a record on, though that be before it", () => {
    expect(told(toldSpan(weeks, span("2026-11-02", "2026-12-28")))).toBe("2026-W50 to 2026-W53, 4");
    expect(told(toldSpan(weeks, span("2026-12-14", "2026-12-28")))).toBe("2026-W51 to 2026-W53, 3");
  });

  test("nothing is told of no weeks", () => expect(weekCount(toldSpan([], span("2026-11-02", "2026-12-28")))).toBe(0));
});
