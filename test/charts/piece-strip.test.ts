import { describe, expect, test } from "vitest";
import { WIDE } from "../../server/charts/look.ts";
import { barRuns, type PieceStrip } from "../../server/charts/piece-data.ts";
import { pieceStrip } from "../../server/charts/piece-strip.ts";
import { cornersOf, number, ofClass, pictureOf, type SvgElement, within } from "./svg-reader.ts";

/** Invented: a piece of 80 bars, wanted at 60. */
function piece(different: Partial<PieceStrip> = {}): PieceStrip {
  return { title: "Ground", bars: 80, wanted: 60, worked: [], ...different };
}

function draw(different: Partial<PieceStrip> = {}): SvgElement {
  return pictureOf(pieceStrip(piece(different), "ground"));
}

const bars = (from: number, to: number, daysAgo: number, reached: number | null = null) => ({
  from,
  to,
  daysAgo,
  reached,
});

describe("the stretches of a piece", () => {
  test("the latest time counts, for the tempo as for how lately", () => {
    const worked = [bars(1, 80, 100, 40), bars(17, 48, 20, 50), bars(17, 24, 2), bars(25, 30, 0, 54)];
    expect(barRuns(piece({ worked }))).toEqual([
      { from: 1, to: 16, reached: 40, recency: 3 },
      { from: 17, to: 24, reached: 50, recency: 0 },
      { from: 25, to: 30, reached: 54, recency: 0 },
      { from: 31, to: 48, reached: 50, recency: 1 },
      { from: 49, to: 80, reached: 40, recency: 3 },
    ]);
  });

  test("bars beyond the last, before the first and in days ahead count for nothing", () => {
    const worked = [bars(70, 90, 1, 50), bars(0, 2, 1, 50), bars(10, 12, -1, 50), bars(9, 3, 1, 50)];
    expect(barRuns(piece({ worked })).map(({ from, to, reached }) => [from, to, reached])).toEqual([
      [1, 2, 50],
      [3, 69, null],
      [70, 80, 50],
    ]);
  });
});

describe("the strip", () => {
  const line = (different: Partial<PieceStrip>) => cornersOf(draw(different), "chart-best");
  const goal = () => Number(/,([\d.]+)H/.exec(ofClass(draw(), "chart-goal")[0]!.attributes["d"]!)![1]);

  test("a line at the height of the latest tempo: halfway down is five sixths of the one that is wanted", () => {
    const [corners] = line({ worked: [bars(1, 40, 1, 50), bars(41, 80, 1, 59)] });
    const [[x0, y0], [x1], [, y1], [x2]] = corners as [
      [number, number],
      [number, number],
      [number, number],
      [number, number],
    ];
    expect([x0, x1, x2]).toEqual([0, WIDE / 2, WIDE]);
    const foot = Number(/,([\d.]+)H/.exec(ofClass(draw(), "chart-foot")[0]!.attributes["d"]!)![1]) - 0.5;
    expect(y0).toBeCloseTo((goal() + foot) / 2, 0);
    expect(y1).toBeLessThan(y0);
    expect(y1).toBeGreaterThan(goal());
  });

  test("at the tempo that is wanted, and above it, the line is just below the top", () => {
    for (const tempo of [60, 72])
      expect(line({ worked: [bars(1, 80, 1, tempo)] })[0]![0]![1]).toBeCloseTo(goal() + 0.75, 0);
  });

  test("where no tempo was reached there is nothing, and the line has a gap", () => {
    const worked = [bars(1, 20, 1, 50), bars(21, 40, 1), bars(61, 80, 1, 50)];
    expect(line({ worked })).toHaveLength(2);
    expect(within(draw({ worked })).filter(({ name }) => name === "rect")).toHaveLength(2);
  });

  test("the fill below is fuller the later a bar was worked", () => {
    const ages = [0, 7, 28, 84].map((daysAgo, at) => bars(at * 20 + 1, at * 20 + 20, daysAgo, 50));
    const rects = within(draw({ worked: ages })).filter(({ name }) => name === "rect");
    expect(rects.map(({ attributes }) => attributes["class"])).toEqual([0, 1, 2, 3].map((age) => `chart-age-${age}`));
    for (const rect of rects) expect(number(rect, "width")).toBe(WIDE / 4);
  });

  test("at the side the tempo that is wanted, and the lowest that was reached", () => {
    const aside = (different: Partial<PieceStrip>) =>
      within(draw(different)).flatMap(({ name, text, attributes }) =>
        name === "text" && attributes["text-anchor"] === "end" ? [text] : [],
      );
    expect(aside({ worked: [bars(1, 40, 1, 50), bars(41, 80, 1, 56)] })).toEqual(["60", "50"]);
    expect(aside({ worked: [bars(1, 80, 1, 60)] })).toEqual(["60"]);
    expect(aside({ wanted: undefined, worked: [bars(1, 80, 1, 44)] } as Partial<PieceStrip>)).toEqual(["44"]);
  });

  test("below its foot the numbers of bars, each at the beginning of its bar and apart from the next", () => {
    const numbered = (count: number) =>
      within(draw({ bars: count, wanted: undefined } as Partial<PieceStrip>)).flatMap(({ name, text, attributes }) =>
        name === "text" ? [[Number(text), Number.parseFloat(attributes["x"]!)] as const] : [],
      );
    expect(numbered(80).map(([bar]) => bar)).toEqual([1, 20, 40, 60]);
    for (const count of [1, 2, 4, 7, 12, 32, 80, 99, 144, 1000, 9999]) {
      const places = numbered(count);
      expect(places[0]).toEqual([1, 0]);
      for (const [bar, x] of places) expect(x).toBeCloseTo(((bar - 1) / count) * 100, 0);
      const pixels = places.map(([bar, x]) => ({ from: x * 1.12, to: x * 1.12 + String(bar).length * 6.6 }));
      for (const [at, { from }] of pixels.entries()) if (at > 0) expect(from).toBeGreaterThan(pixels[at - 1]!.to + 4);
      expect(pixels.at(-1)!.to).toBeLessThan(112 + 8);
    }
  });

  test("is told in words", () => {
    const words = (different: Partial<PieceStrip>) => within(draw(different)).find(({ name }) => name === "desc")!.text;
    expect(words({})).toBe("80 bars, wanted at 60. None worked yet.");
    expect(words({ worked: [bars(1, 40, 1, 50), bars(44, 44, 30)] })).toBe(
      "80 bars, wanted at 60. Bars 1–40: 50, worked within 7 days; bar 44: no tempo reached, worked within 12 weeks.",
    );
  });

  test("a piece that has too many bars, or none, has a sentence instead", () => {
    expect(pieceStrip(piece({ bars: 20_000 }), "x")).toMatchObject({
      ok: false,
      reason: /^Bar 20000 is further/ as never,
    });
    expect(pieceStrip(piece({ bars: 0 }), "x")).toMatchObject({ ok: false });
  });
});
