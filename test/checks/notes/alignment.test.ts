import fc from "fast-check";
import { distance } from "fastest-levenshtein";
import { expect, test } from "vitest";
import { type Alignment, align } from "../../../server/checks/notes/alignment.ts";
import { FEW, MANY } from "../../support/random-runs.ts";

/** Two words laid side by side, a letter being a note: `-` is missing above or too many below. */
function laid(
  typed: string,
  expected: string,
  mayLeaveOutLast = false,
): { readonly alignment: Alignment; readonly text: string } {
  const alignment = align(typed.length, expected.length, mayLeaveOutLast, (i, j) => {
    if (typed[i] === expected[j]) return "same";
    return typed[i]!.toLowerCase() === expected[j]!.toLowerCase() ? "spelling" : "wrong";
  });
  const above = alignment.steps.map((step) => (step.type === "missing" ? "-" : typed[step.typed]));
  const below = alignment.steps.map((step) => (step.type === "extra" ? "-" : expected[step.expected]));
  return { alignment, text: `${above.join("")} ${below.join("")}` };
}

function check(typed: string, expected: string, text: string, differences: number, mayLeaveOutLast = false): void {
  const found = laid(typed, expected, mayLeaveOutLast);
  expect([found.text, found.alignment.differences], `${typed} ${expected}`).toEqual([text, differences]);
}

test("a wrong thing is one difference, never one missing and one too many", () => {
  check("cdefgabc", "cdefgabc", "cdefgabc cdefgabc", 0);
  check("cdxfgabc", "cdefgabc", "cdxfgabc cdefgabc", 1);
  check("cdEfgabc", "cdefgabc", "cdEfgabc cdefgabc", 1);
  check("cdfgabc", "cdefgabc", "cd-fgabc cdefgabc", 1);
  check("cdexfgabc", "cdefgabc", "cdexfgabc cde-fgabc", 1);
});

test("the last may be left out for nothing, where that is allowed", () => {
  check("cdefgab", "cdefgabc", "cdefgab cdefgab", 0, true);
  check("cdefgab", "cdefgabc", "cdefgab- cdefgabc", 1);
  check("cdefgax", "cdefgabc", "cdefgax cdefgab", 1, true);
  check("cdefgac", "cdefgabc", "cdefga-c cdefgabc", 1, true);
});

test("what is missing in one piece stays in one piece", () => {
  check("abc", "abccdefgc", "abc------ abccdefgc", 6);
  check("abcd", "abcdabcd", "abcd---- abcdabcd", 4);
});

const letters = fc.string({ unit: fc.constantFrom(..."abcdefg"), minLength: 1, maxLength: 40 });

test("the differences are the Levenshtein distance (npm fastest-levenshtein), and the steps go through both lists", () => {
  fc.assert(
    fc.property(letters, letters, fc.boolean(), (typed, expected, mayLeaveOutLast) => {
      const { alignment, text } = laid(typed, expected, mayLeaveOutLast);
      const shorter =
        expected.length > 1 && mayLeaveOutLast ? distance(typed, expected.slice(0, -1)) : Number.POSITIVE_INFINITY;
      expect(alignment.differences).toBe(Math.min(distance(typed, expected), shorter));
      const [above, below] = text.split(" ").map((row) => row.replaceAll("-", ""));
      expect(above).toBe(typed);
      expect([expected, mayLeaveOutLast ? expected.slice(0, -1) : expected]).toContain(below);
      expect(alignment.steps.filter(({ type }) => type !== "same")).toHaveLength(alignment.differences);
    }),
    { seed: 61, numRuns: MANY },
  );
});

test("long lists that go astray a little are aligned as well as by the whole table", () => {
  const long = fc.string({ unit: fc.constantFrom(..."abcdefg"), minLength: 300, maxLength: 400 });
  const edits = fc.array(fc.tuple(fc.nat(299), fc.constantFrom("", "x", "ax")), { maxLength: 20 });
  fc.assert(
    fc.property(long, edits, (expected, changes) => {
      const typed = changes.reduce((now, [at, by]) => now.slice(0, at) + by + now.slice(at + 1), expected);
      expect(laid(typed, expected).alignment.differences).toBe(distance(typed, expected));
    }),
    { seed: 62, numRuns: FEW },
  );
});
