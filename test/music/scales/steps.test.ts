import { expect, test } from "vitest";
import { declaredKind } from "../../../server/music/scales/declared-kind.ts";
import { KINDS, kindById } from "../../../server/music/scales/kinds.ts";
import {
  centsOf,
  printLike,
  printSteps,
  readSteps,
  type StepStyle,
  stepsOf,
} from "../../../server/music/scales/steps.ts";

/** A kind and its steps, in words. The formulas are common practice, no source. */
function check(id: string, expected: string, style: StepStyle = "TS", direction: "up" | "down" = "up"): void {
  expect(printSteps(stepsOf(kindById(id)!, direction), style), id).toBe(expected);
}

const read = (words: string) => readSteps(words)?.steps;

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
    expect(read(words), words).toEqual(major);
  }
  for (const words of [
    "T S T T S m3 S",
    "t s t t s 3S s",
    "TSTTSm3S",
    "T S T T S A S",
    "T S T T S 3 S",
    "W H W W H A H",
    "2 1 2 2 1 3 1",
  ]) {
    expect(read(words), words).toEqual([2, 1, 2, 2, 1, 3, 1]);
  }
});

test("what is answered looks like what was asked", () => {
  const like = (words: string) => printLike(stepsOf(kindById("harmonic minor")!), readSteps(words)!);
  expect(like("TTSTTTS")).toBe("TSTTSAS");
  expect(like("t t s t t t s")).toBe("t s t t s a s");
  expect(like("W-W-H-W-W-m3-H")).toBe("W-H-W-W-H-m3-H");
  expect(like("2, 2, 1")).toBe("2, 1, 2, 2, 1, 3, 1");
});

test("in cents: of a scale that is declared so, and of the twelve keys", () => {
  const reading = declaredKind("own", "cents 0 150 300 500 700 850 1000");
  expect(reading.ok && centsOf(reading.kind)).toEqual([150, 150, 200, 200, 150, 150, 200]);
  expect(centsOf(kindById("major")!)).toEqual([200, 200, 100, 200, 200, 200, 100]);
  expect(readSteps("150 150 200")).toMatchObject({ style: "cents", steps: [150, 150, 200] });
  expect(readSteps("cents 105.5 150 200")).toMatchObject({ style: "cents", steps: [105.5, 150, 200] });
});

test("mixed ways and other words are not", () => {
  for (const words of ["", " - ", "T W S", "T 2 S", "T X", "2 0 1", "tone"]) expect(read(words), words).toBeUndefined();
});

test("what is printed is read again, for every kind and style", () => {
  for (const kind of KINDS) {
    for (const style of ["TS", "WH", "digits"] as const) {
      expect(read(printSteps(stepsOf(kind), style))).toEqual(stepsOf(kind));
    }
  }
});
