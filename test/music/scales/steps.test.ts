import { expect, test } from "vitest";
import { KINDS, kindById } from "../../../server/music/scales/kinds.ts";
import { parseSteps, printSteps, type StepStyle, stepsOf } from "../../../server/music/scales/steps.ts";

/** A kind and its steps, in words. The formulas are common practice, no source. */
function check(id: string, expected: string, style: StepStyle = "TS", direction: "up" | "down" = "up"): void {
  expect(printSteps(stepsOf(kindById(id)!, direction), style), id).toBe(expected);
}

test("of scales", () => {
  check("major", "T T S T T T S");
  check("major", "W W H W W W H", "WH");
  check("major", "2 2 1 2 2 2 1", "digits");
  check("natural minor", "T S T T S T T");
  check("harmonic minor", "T S T T S A S");
  check("melodic minor", "T S T T T T S");
  check("melodic minor", "T S T T S T T", "TS", "down");
  check("minor pentatonic", "A T T A T");
  check("blues", "3 2 1 1 3 2", "digits");
  check("whole-tone", "T T T T T T");
  check("half-whole", "H W H W H W H W", "WH");
  check("whole-half", "W H W H W H W H", "WH");
  check("chromatic", "S S S S S S S S S S S S");
});

test("every way of writing them is read", () => {
  const major = [2, 2, 1, 2, 2, 2, 1];
  for (const words of [
    "T T S T T T S",
    "TTSTTTS",
    "ttsttts",
    "W W H W W W H",
    "W-W-H-W-W-W-H",
    "2 2 1 2 2 2 1",
    "2,2,1,2,2,2,1",
  ]) {
    expect(parseSteps(words), words).toEqual(major);
  }
  for (const words of ["T S T T S A S", "T S T T S 3 S", "W H W W H A H", "2 1 2 2 1 3 1"]) {
    expect(parseSteps(words), words).toEqual([2, 1, 2, 2, 1, 3, 1]);
  }
});

test("mixed ways and other words are not", () => {
  for (const words of ["", " - ", "T W S", "T 2 S", "T X", "2 0 1", "tone"])
    expect(parseSteps(words), words).toBeUndefined();
});

test("what is printed is read again, for every kind and style", () => {
  for (const kind of KINDS) {
    for (const style of ["TS", "WH", "digits"] as const) {
      expect(parseSteps(printSteps(stepsOf(kind), style))).toEqual(stepsOf(kind));
    }
  }
});
