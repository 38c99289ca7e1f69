import { expect, test } from "vitest";
import { declaredTemperament } from "../../../server/music/tuning/declared-temperament.ts";
import { centsFromEqual, wolves } from "../../../server/music/tuning/temperament.ts";
import reference from "../../reference/temperaments.json" with { type: "json" };

/** The cents above C of a declared temperament, to three decimals, or why it is none and at which word. */
function read(text: string): readonly number[] | string {
  const reading = declaredTemperament("Chapel organ", text);
  if (!reading.ok) return `${reading.at}: ${reading.reason}`;
  const keys = centsFromEqual(reading.temperament);
  return keys.map((cents, key) => Math.round(1000 * (100 * key + cents - keys[0]!)) / 1000 + 0);
}

const { "quarter-comma meantone": meantone, "just (5-limit on C)": just } = reference.temperaments;

test("the cents of test/reference/temperaments.json, typed out, are that temperament", () => {
  const typed = meantone.cents.join(" ");
  for (const text of [typed, `cents ${typed}`, `${typed} 1200`, meantone.cents.join(", ")])
    expect(read(text)).toEqual(meantone.cents);
  const declared = declaredTemperament("Chapel organ", typed);
  expect(declared.ok && wolves(declared.temperament)).toMatchObject([
    { lower: { letter: "G", alter: 1 }, upper: { letter: "E", alter: -1 } },
  ]);
});

test("as ratios, those of its just intonation", () => {
  const ratios = /ratios ([\d/ ]+);/.exec(just.definition)![1]!;
  for (const text of [ratios, `ratios ${ratios} 2`, `${ratios.replace(/^1/, "1/1")} 2/1`, ratios.replace(/^1/, "0")])
    expect(read(text)).toEqual(just.cents);
});

test("what is no temperament is told on the word that does not fit", () => {
  const eleven = "100 200 300 400 500 600 700 800 900 1000 1100";
  expect(read(`0 ${eleven}`)).toHaveLength(12);
  expect(read("")).toContain("0: a temperament needs twelve keys, C to B, in cents or ratios, and none are given");
  expect(read("0 100 200")).toContain(
    "3: a temperament needs twelve keys, C to B, in cents or ratios, and 3 are given",
  );
  expect(read(`50 ${eleven}`)).toContain("0: the first of the twelve is C, `0` in cents or `1` as a ratio, not `50`");
  expect(read(`0 ${eleven} 1150`)).toContain("12: `1150` is one too many: there are twelve keys");
  expect(read(`0 ${eleven} 1200 1300`)).toContain("12: `1200` is one too many");
  expect(read("0 100 90")).toBe("2: `90` is not higher than `100` before it: the keys rise");
  expect(read("0 1200 1300")).toBe("1: `1200` reaches the octave, and belongs below it");
  expect(read("0 C# 200")).toBe("1: `C#` is neither a number of cents nor a ratio");
  expect(read("1 1.5 2")).toBe("1: `1.5` is not a ratio");
  expect(read("1 9/0 2")).toBe("1: `9/0` is not a ratio");
});
