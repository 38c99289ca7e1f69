import { describe, expect, test } from "vitest";
import { type BarStrip, barRuns } from "../../server/charts/bar-data.ts";
import { barStrip } from "../../server/charts/bar-strip.ts";
import type { Look } from "../../server/charts/look.ts";
import { number, ofClass, pictureOf, type SvgElement, textsOf } from "./svg-reader.ts";

// The pieces are invented.

const LOOK: Look = { kind: "classes", width: 320, height: 70, id: "ground" };

/** A strip from lines such as `17-32 2`: the bars, and how many days ago. */
function strip(lines: string, bars?: number): BarStrip {
  const worked = lines.split(", ").flatMap((line) => {
    const stretch = /^(\d+)-(\d+) (-?\d+)$/.exec(line);
    return stretch ? [{ from: Number(stretch[1]), to: Number(stretch[2]), daysAgo: Number(stretch[3]) }] : [];
  });
  return { title: "Ground", worked, bars };
}

function barsOf(data: BarStrip): SvgElement[] {
  return ofClass(pictureOf(barStrip(data, LOOK)), "chart-bars").flatMap(({ children }) => children);
}

describe("which bars, how lately", () => {
  const check = (data: BarStrip, bars: number, expected: string) =>
    expect(
      barRuns(data, bars)
        .map(({ from, to, recency }) => `${from}-${to}:${recency}`)
        .join(" "),
    ).toBe(expected);

  test("the latest time counts", () => {
    check(strip("1-20 12, 17-32 2, 60-70 50, 80-84 200"), 96, "1-16:1 17-32:0 60-70:2 80-84:3");
    check(strip("5-8 1, 1-16 100"), 16, "1-4:3 5-8:0 9-16:3");
  });

  test("stretches that touch and are as late are one", () => check(strip("1-8 0, 9-16 6"), 16, "1-16:0"));

  test("seven days, four weeks, twelve weeks, each to its last day", () =>
    check(strip("1-1 6, 2-2 7, 3-3 27, 4-4 28, 5-5 83, 6-6 84"), 6, "1-1:0 2-3:1 4-5:2 6-6:3"));

  test("what lies ahead, or is no stretch, counts for nothing", () => {
    check(strip("1-4 -1, 8-5 0"), 8, "");
    check({ title: "", worked: [{ from: 1.5, to: Number.NaN, daysAgo: 0 }] }, 8, "");
  });

  test("bars beyond the last are left out", () => check(strip("90-120 1"), 96, "90-96:0"));
});

describe("the strip", () => {
  test("holds the bars from left to right, in even widths", () => {
    const [first, second] = barsOf(strip("17-32 2, 49-64 2", 128));
    expect([number(first!, "x"), number(first!, "width")]).toEqual([40, 40]);
    expect([number(second!, "x"), number(second!, "width")]).toEqual([120, 40]);
  });

  test("the later, the taller and the darker", () => {
    const bars = barsOf(strip("1-1 0, 2-2 10, 3-3 40, 4-4 400"));
    const heights = bars.map((bar) => number(bar, "height"));
    const shades = bars.map((bar) => number(bar, "fill-opacity"));
    expect(heights).toEqual([...heights].sort((a, b) => b - a));
    expect(shades).toEqual([...shades].sort((a, b) => b - a));
    expect(new Set(heights).size).toBe(4);
  });

  test("bars that are wide enough stand apart", () => {
    expect(barsOf(strip("1-4 0", 16))).toHaveLength(4);
    expect(barsOf(strip("1-4 0", 160))).toHaveLength(1);
  });

  test("is numbered at its ends and between", () => {
    const numbers = textsOf(pictureOf(barStrip(strip("1-4 0", 96), LOOK))).filter((text) => /^\d+$/.test(text));
    expect(numbers).toEqual(["1", "16", "32", "48", "64", "80", "96"]);
  });

  test("has a key", () =>
    expect(textsOf(pictureOf(barStrip(strip("1-4 0"), LOOK))).slice(-4)).toEqual([
      "last 7 days",
      "4 weeks",
      "12 weeks",
      "longer ago",
    ]));
});

describe("in words", () => {
  const check = (data: BarStrip, text: string) => expect(barStrip(data, LOOK)).toMatchObject({ ok: true, text });

  test("what was worked and when, and what was not", () => {
    check(
      strip("17-32 2, 1-8 12", 96),
      "96 bars. Worked within 7 days: 17–32; within 4 weeks: 1–8. Not yet: 9–16, 33–96.",
    );
    check(strip("3-3 90", 4), "4 bars. Worked longer ago: 3. Not yet: 1–2, 4.");
    check(strip("1-16 0"), "16 bars. Worked within 7 days: 1–16.");
    check(strip("", 32), "32 bars. None worked yet.");
  });

  test("bars beyond the last are told", () =>
    check(
      strip("90-120 1", 96),
      "96 bars. Worked within 7 days: 90–96. Not yet: 1–89. Bars as far as 120 were worked, beyond the last.",
    ));

  test("many stretches are cut short", () => {
    const lines = Array.from({ length: 10 }, (_, at) => `${at * 4 + 1}-${at * 4 + 2} 0`).join(", ");
    check(
      strip(lines),
      "38 bars. Worked within 7 days: 1–2, 5–6, 9–10, 13–14, 17–18, 21–22, 25–26, 29–30 and 2 more. Not yet: 3–4, 7–8, 11–12, 15–16, 19–20, 23–24, 27–28, 31–32 and 1 more.",
    );
  });
});

test("without bars, or with too many, the reason says what to write", () => {
  expect(barStrip(strip(""), LOOK)).toEqual({
    ok: false,
    reason:
      "No bars are written for this piece. Say how many it has where it is declared, such as `96 bars`, or which were worked, such as `bars 17-32`.",
  });
  expect(barStrip(strip("1-99999 0"), LOOK)).toEqual({
    ok: false,
    reason: "Bar 99999 is further than a strip can show, which ends at bar 10000. Is a figure too many in it?",
  });
});
