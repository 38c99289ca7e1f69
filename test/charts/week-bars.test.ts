import { describe, expect, test } from "vitest";
import { WIDE } from "../../server/charts/look.ts";
import { weekBars } from "../../server/charts/week-bars.ts";
import { tonedWeeks, type WeekBars } from "../../server/charts/week-data.ts";
import { number, pictureOf, textsOf, within } from "./svg-reader.ts";

/** Weeks from that of Monday 2026-01-05 (ISO 8601: 2026-W02) on; invented. */
function weeks(...each: readonly Readonly<Record<string, number>>[]): WeekBars {
  const first = 2923;
  return {
    title: "Minutes a week",
    span: { first, last: first + each.length - 1 },
    weeks: each.map((minutes) => new Map(Object.entries(minutes))),
  };
}

describe("the tones", () => {
  test("the three phases with most minutes by name, the others together, what is not divided", () => {
    const data = weeks({ pieces: 60, studies: 10, "": 5 }, { groundwork: 40, "warm-up": 15, fluency: 20 });
    const { tones, weeks: toned, most } = tonedWeeks(data);
    expect(tones.map(({ name, tone }) => `${tone} ${name}`)).toEqual([
      "0 pieces",
      "1 groundwork",
      "2 fluency",
      "3 others",
      "4 not divided",
    ]);
    expect(toned).toEqual([
      [60, 0, 0, 10, 5],
      [0, 40, 20, 15, 0],
    ]);
    expect(most).toBe(75);
  });

  test("what is no number of minutes counts for nothing", () => {
    expect(tonedWeeks(weeks({ pieces: Number.NaN, studies: -5, "": 20 })).tones.map(({ name }) => name)).toEqual([
      "not divided",
    ]);
  });
});

describe("the bars", () => {
  const draw = (data: WeekBars) => pictureOf(weekBars(data, "weeks"));
  const rects = (data: WeekBars) => within(draw(data)).filter(({ name }) => name === "rect");

  test("one for each week, split by phase from the foot up, as high as its minutes", () => {
    const [pieces, studies, next] = rects(weeks({ pieces: 60, studies: 30 }, { pieces: 30 }));
    expect(number(pieces!, "height")).toBeCloseTo(2 * number(studies!, "height"), 1);
    expect(number(next!, "height")).toBeCloseTo(number(studies!, "height"), 1);
    expect(number(studies!, "y") + number(studies!, "height")).toBeCloseTo(number(pieces!, "y"), 1);
    expect(number(next!, "x") - number(pieces!, "x")).toBe(WIDE / 2);
  });

  test("the height of the axis is the next round number of minutes", () => {
    const texts = textsOf(draw(weeks({ pieces: 244 }, {}, {}, {})));
    expect(texts).toEqual(expect.arrayContaining(["260", "0", "Jan"]));
  });

  test("are told in words", () => {
    const data = weeks({ pieces: 60, "": 10 }, {}, { pieces: 30 });
    expect(within(draw(data)).find(({ name }) => name === "desc")!.text).toBe(
      "100 minutes in 2 of 3 weeks, most in the week of 5 Jan: 70. pieces 90, not divided 10.",
    );
  });

  test("without minutes there are none", () => {
    expect(weekBars(weeks({}, {}), "x")).toMatchObject({ ok: false });
  });
});
