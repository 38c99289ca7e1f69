import { describe, expect, test } from "vitest";
import { WIDE } from "../../server/charts/look.ts";
import { axisWithin, placeOfDay, placeOfWeek } from "../../server/charts/time-axis.ts";
import { weekBars } from "../../server/charts/week-bars.ts";
import { weekCount } from "../../server/history/week-span.ts";
import { mondayOf, parseIsoDate, weekIndex } from "../../server/journal/calendar.ts";
import { readSvg, textsOf, within } from "./svg-reader.ts";

// Our own rule, no source: how a chart spends its width on weeks. Monday 2026-01-05 is in 2026-W02 (ISO 8601).

const FIRST = weekIndex(parseIsoDate("2026-01-05")!);

/** The axis of 26 weeks from `FIRST` on, of which those with a letter were practised. */
function axisOf(weeks: string) {
  const practised = [...weeks].flatMap((sign, at) => (sign === "x" ? [FIRST + at] : []));
  return axisWithin({ first: FIRST, last: FIRST + weeks.length - 1 }, practised);
}

/** Its first and last week and its pauses, as running numbers from 0. */
function told(weeks: string) {
  const { first, last, pauses = [] } = axisOf(weeks);
  return [first, last, ...pauses.flatMap((pause) => [pause.first, pause.last])].map((week) => week - FIRST);
}

describe("a chart's weeks", () => {
  test("begin with the first that was practised", () => {
    expect(told("..........x.xx..x.xxxxxxxx")).toEqual([10, 25]);
  });

  test("are eight at least: those that are still to come are left empty", () => {
    expect(told(".........................x")).toEqual([25, 32]);
    expect(told("...x")).toEqual([3, 6]); // of four that were chosen, four
  });

  test("have a pause in them narrow where pauses are half of them or more", () => {
    expect(told("xxxxx..........xx")).toEqual([0, 16, 5, 14]);
    expect(told("xxxxxxxxxxx..........xxxx")).toEqual([0, 24]);
    expect(told("xxx........x.......xx")).toEqual([0, 20]); // shorter than nine weeks each
  });

  test("and one that goes on today", () => {
    expect(told("xxxxxx....................")).toEqual([0, 25, 6, 25]);
  });
});

describe("on an axis with a pause", () => {
  const axis = axisOf("xxxxx..........xx");

  test("every week with practice is as wide as any other, and the pause as wide as two", () => {
    const each = WIDE / (5 + 2 + 2);
    const starts = [0, 1, 5, 15, 16, 17].map((week) => placeOfWeek(FIRST + week, axis));
    expect(starts.map((x) => Math.round((x / each) * 1e6) / 1e6)).toEqual([0, 1, 5, 7, 8, 9]);
  });

  test("days keep their order", () => {
    const days = Array.from({ length: weekCount(axis) * 7 }, (_, day) => placeOfDay(mondayOf(FIRST) + day, axis));
    expect(days).toEqual([...days].sort((a, b) => a - b));
  });

  test("a jagged line says so, months in it have none, and what comes after begins with its date", () => {
    const weeks = Array.from({ length: 17 }, (_, at) => new Map(at < 5 || at > 14 ? [["", 20]] : []));
    const drawing = weekBars({ title: "Minutes", span: axis, weeks }, "weeks");
    const picture = readSvg(drawing.ok ? drawing.svg : "");
    expect(within(picture).filter(({ attributes }) => attributes["class"] === "chart-pause")).toHaveLength(1);
    expect(textsOf(picture).filter((text) => /[A-Z][a-z]{2}$/.test(text))).toEqual(["Jan", "Feb", "20 Apr"]);
  });
});
