import { describe, expect, test } from "vitest";
import { signTest } from "../../server/history/sign-test.ts";
import { CHANCE_OF_A_DIFFERENCE } from "../../server/history/thresholds.ts";
import reference from "../reference/sign-test-scipy.json" with { type: "json" };

/** The most that may go the rarer way for it to be worth saying. */
function mostOf(count: number): number {
  let most = 0;
  while (signTest(most + 1, count) <= CHANCE_OF_A_DIFFERENCE) most++;
  return most;
}

describe("the sign test", () => {
  // By hand: 2 · (1 + 8) / 2⁸ = 18 / 256, and 2 · 1 / 2⁶ = 1 / 32.
  test("by hand", () => {
    expect(signTest(1, 8)).toBe(18 / 256);
    expect(signTest(0, 6)).toBe(1 / 32);
    expect(signTest(3, 6)).toBe(1); // as even as can be
  });

  // sign-test-scipy.json: SciPy 1.17.1, scipy.stats.binomtest(c, m, 0.5).pvalue.
  test("equals SciPy's exact binomial test for up to 52 weeks", () => {
    expect(reference.cases.length).toBe(728);
    for (const [fewer, count, chance] of reference.cases as [number, number, number][])
      expect(Math.abs(signTest(fewer, count) - chance)).toBeLessThanOrEqual(1e-9);
  });

  // The same file: worked out in exact fractions.
  test("how many may go the rarer way, from 6 to 52 weeks", () => {
    expect(reference.most.map(([count]) => [count, mostOf(count!)])).toEqual(reference.most);
    expect(reference.most.map(([count]) => count)).toEqual(Array.from({ length: 47 }, (_, i) => 6 + i));
    expect([6, 8, 9, 11, 12, 14, 15, 16, 17, 19, 20].map(mostOf)).toEqual([0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 5]);
  });
});
