import { describe, expect, test } from "vitest";
import { dayBars } from "../../server/charts/day-bars.ts";
import type { DayBars } from "../../server/charts/day-data.ts";
import { minutesInWords } from "../../server/charts/day-words.ts";
import type { Look } from "../../server/charts/look.ts";
import { number, ofClass, pictureOf, type SvgElement, textsOf, within } from "./svg-reader.ts";

// The weeks are invented.

const LOOK: Look = { kind: "classes", width: 320, height: 150, id: "week" };
const NAMES = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

/** A week from the minutes of each day, by phase; a day given as a word has that to say. */
function week(days: readonly (readonly number[] | string)[], different: Partial<DayBars> = {}): DayBars {
  return {
    title: "Week 10",
    phases: ["warm-up", "pieces"],
    days: NAMES.map((label, at) => {
      const day = days[at] ?? [];
      return typeof day === "string" ? { label, minutes: [], note: day } : { label, minutes: day };
    }),
    ...different,
  };
}

function draw(data: DayBars): SvgElement {
  return pictureOf(dayBars(data, LOOK));
}

/** The bars of each day, the lowest part first. */
function barsOf(picture: SvgElement): SvgElement[][] {
  return ofClass(picture, "chart-day").map(({ children }) => children.filter(({ name }) => name === "rect"));
}

function bottomOf(rect: SvgElement): number {
  return number(rect, "y") + number(rect, "height");
}

describe("the bars", () => {
  const picture = draw(week([[10, 20], [], [10, 0], "rest", [5, 55]]));

  test("are as high as the minutes of their phases, each on the one before", () => {
    const bars = barsOf(picture);
    const perMinute = number(bars[0]![0]!, "height") / 10;
    expect(bars.map((day) => day.length)).toEqual([2, 0, 1, 0, 2, 0, 0]);
    for (const [rect, minutes] of [
      [bars[0]![1]!, 20],
      [bars[2]![0]!, 10],
      [bars[4]![0]!, 5],
      [bars[4]![1]!, 55],
    ] as const)
      expect(number(rect, "height") / perMinute).toBeCloseTo(minutes, 1);
    expect(bottomOf(bars[0]![1]!)).toBeCloseTo(number(bars[0]![0]!, "y"), 1);
    expect(bottomOf(bars[2]![0]!)).toBeCloseTo(bottomOf(bars[0]![0]!), 1);
  });

  test("say their minutes, and what there is to say of a day without", () => {
    expect(textsOf(picture)).toEqual([
      "30",
      "Mon",
      "Tue",
      "10",
      "Wed",
      "rest",
      "Thu",
      "60",
      "Fri",
      "Sat",
      "Sun",
      "warm-up",
      "pieces",
    ]);
  });

  test("phases differ by more than their shade: only one fill is plain", () => {
    const phases = ["warm-up", "groundwork", "fluency", "studies", "pieces"];
    const fills = barsOf(draw(week([[1, 2, 3, 4, 5]], { phases })))[0]!.map(({ attributes }) => attributes["fill"]!);
    expect(new Set(fills).size).toBe(5);
    expect(fills.filter((fill) => fill.startsWith("url(#"))).toHaveLength(3);
    const patterns = within(draw(week([[1]]))).filter(({ name }) => name === "pattern");
    expect(new Set(patterns.map(({ children }) => children[1]!.attributes["d"])).size).toBe(3);
  });

  test("too many phases: those with least are one, and the words say so", () => {
    const phases = ["a", "b", "c", "d", "e", "f"];
    const texts = textsOf(draw(week([[9, 1, 8, 7, 6, 2]], { phases })));
    expect(texts.slice(-5)).toEqual(["a", "c", "d", "e", "other"]);
    expect(dayBars(week([[9, 1, 8, 7, 6, 2]], { phases }), LOOK)).toHaveProperty(
      "text",
      expect.stringContaining("Mon 33 (a 9, c 8, d 7, e 6, other 3)"),
    );
  });
});

describe("last week", () => {
  const marksOf = (data: DayBars) =>
    ofClass(draw(data), "chart-last-week").flatMap(({ attributes }) => attributes["d"] ?? []);

  test("stands across the same weekday, on the same scale", () => {
    const data = week(
      [
        [0, 40],
        [0, 20],
      ],
      { lastWeek: [20, 0, 40] },
    );
    const marks = marksOf(data).map((d) => Number(/^M[\d.]+,([\d.]+)h/.exec(d)![1]));
    const bars = barsOf(draw(data));
    expect(marks).toEqual([number(bars[1]![0]!, "y"), number(bars[0]![0]!, "y")]);
    expect(textsOf(draw(data)).at(-1)).toBe("same day last week");
  });

  test("without one there is neither mark nor key", () => {
    expect(marksOf(week([[0, 40]]))).toEqual([]);
    expect(textsOf(draw(week([[0, 40]])))).not.toContain("same day last week");
  });
});

describe("in words", () => {
  const check = (data: DayBars, expected: string) => expect(minutesInWords(data)).toBe(expected);

  test("a week and the one before", () => {
    check(
      week([[20, 10], [0, 25], [], [0, 30], [10, 0]], { lastWeek: [30, 0, 30, 0, 20, 0, 0] }),
      "95 minutes on 4 days; last week 80 on 3.",
    );
    check(week([[1, 0]]), "1 minute on 1 day.");
  });

  test("minutes that were shared out are about", () => {
    const data = week([[20, 10]]);
    check({ ...data, days: data.days.map((day) => ({ ...day, about: true })) }, "About 30 minutes on 1 day.");
  });

  test("day by day", () =>
    expect(dayBars(week([[20, 10], "rest", [0, 25]]), LOOK)).toMatchObject({
      ok: true,
      text: "55 minutes on 2 days. Mon 30 (warm-up 20, pieces 10); Tue rest; Wed 25 (pieces 25); Thu none; Fri none; Sat none; Sun none.",
    }));
});

test("a week without minutes, after another, has nothing to draw", () => {
  const reason =
    "No minutes are written this week or last. Write them behind a date, such as `2026-03-02 Mon, 20 min`, or on the line of an exercise.";
  expect(dayBars(week([]), LOOK)).toEqual({ ok: false, reason });
  expect(dayBars(week(["rest", [Number.NaN, -5]], { lastWeek: [0, Number.NaN] }), LOOK)).toEqual({ ok: false, reason });
  expect(dayBars(week([], { lastWeek: [5] }), LOOK).ok).toBe(true);
});
