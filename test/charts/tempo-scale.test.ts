import { scaleLog } from "d3-scale";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tempoScale } from "../../server/charts/tempo-scale.ts";

// Held against the logarithmic scale of d3-scale 4 (its `ticks` and `clamp`), which is not in the program: its module
// brings the mixing of colours along.

const PIXELS = { bottom: 180, top: 12 };

const tempos = fc
  .tuple(fc.double({ min: 8, max: 1200, noNaN: true }), fc.double({ min: 1.02, max: 60, noNaN: true }))
  .map(([slowest, ratio]) => [slowest, slowest * ratio] as const);

describe("a ratio scale", () => {
  test("tempos are where that scale has them, also those outside", () => {
    fc.assert(
      fc.property(tempos, fc.double({ min: -100, max: 4000, noNaN: true }), (domain, tempo) => {
        const theirs = scaleLog().domain(domain).range([PIXELS.bottom, PIXELS.top]).clamp(true);
        expect(tempoScale(domain, PIXELS).y(tempo)).toBeCloseTo(theirs(tempo), 9);
      }),
      { seed: 17 },
    );
  });

  test("its round tempos are theirs", () => {
    fc.assert(
      fc.property(tempos, (domain) => {
        const theirs = scaleLog().domain(domain).ticks(5);
        const own = tempoScale(domain, PIXELS).round(5);
        expect(own).toHaveLength(theirs.length);
        for (const [i, tempo] of own.entries()) expect(tempo).toBeCloseTo(theirs[i]!, 9);
      }),
      { seed: 18, numRuns: 3000 },
    );
  });

  test.each([
    [
      [96, 160],
      [100, 110, 120, 130, 140, 150, 160],
    ],
    [
      [40, 208],
      [40, 50, 60, 70, 80, 90, 100, 200],
    ],
    [
      [60, 61.5],
      [60, 60.2, 60.4, 60.6, 60.8, 61, 61.2, 61.4],
    ],
    [
      [95, 99],
      [95, 96, 97, 98, 99],
    ],
  ] as const)("from %j: %j", (domain, round) => {
    expect(tempoScale(domain, PIXELS).round(5)).toEqual(round);
    expect(scaleLog().domain(domain).ticks(5)).toEqual(round);
  });
});
