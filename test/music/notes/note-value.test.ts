import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  METRONOME_STEPS,
  type NoteValue,
  nearestSteps,
  notchesBetween,
  notesPerMinute,
} from "../../../server/music/notes/note-value.ts";
import reference from "../../reference/metronome-steps.json" with { type: "json" };

function fraction(text: string): NoteValue {
  const [numerator, denominator] = text.split("/").map(Number);
  return { numerator: numerator!, denominator: denominator! };
}

/** A tempo, its beat, the notes played, and how many a minute: `check(72, "1/4", "1/8", 144)`. */
function check(bpm: number, beat: string, note: string, rate: number): void {
  expect(notesPerMinute(bpm, fraction(beat), fraction(note)), `${beat}=${bpm} in ${note}`).toBe(rate);
}

test("every row of test/reference/tempo-cases.tsv", () => {
  const text = readFileSync(new URL("../../reference/tempo-cases.tsv", import.meta.url), "utf8");
  const rows = text.trim().split("\n").slice(1);
  for (const row of rows) {
    const [bpm, beat, note, rate, perSecond, seconds] = row.split("\t");
    check(Number(bpm), beat!, note!, Number(rate));
    const measured = notesPerMinute(Number(bpm), fraction(beat!), fraction(note!)) / 60;
    expect(measured.toFixed(4)).toBe(perSecond);
    expect((28 / measured).toFixed(4)).toBe(seconds);
  }
  expect(rows).toHaveLength(13);
});

test("a beat's own value is counted (format page): an eighth at 120 is a quarter at 60", () => {
  check(120, "1/8", "1/8", 120);
  check(60, "1/4", "1/8", 120);
});

test("the steps of the metronome are the list and the rule of test/reference/metronome-steps.json", () => {
  expect(METRONOME_STEPS).toEqual(reference.steps);
  expect(METRONOME_STEPS).toHaveLength(reference.count);
  const ruled = reference.rule.split(", ").flatMap((part) => {
    const [, from, to, by] = /^(\d+)-(\d+) by (\d+)$/u.exec(part)!.map(Number);
    return Array.from({ length: (to! - from!) / by! }, (_, index) => from! + index * by!);
  });
  expect([...ruled, 208]).toEqual(METRONOME_STEPS);
});

test("the steps around a tempo", () => {
  expect(nearestSteps(72)).toEqual({ below: 69, at: 72, above: 76 });
  expect(nearestSteps(61)).toEqual({ below: 60, above: 63 });
  expect(nearestSteps(40)).toEqual({ at: 40, above: 42 });
  expect(nearestSteps(208)).toEqual({ below: 200, at: 208 });
  expect(nearestSteps(20)).toEqual({ above: 40 });
  expect(nearestSteps(300)).toEqual({ below: 208 });
});

test("the step below is below, the step above is above, and none lies between but the tempo itself", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1600 }), (quarters) => {
      const bpm = quarters / 4;
      const { below = 0, at, above = 1000 } = nearestSteps(bpm);
      expect(below).toBeLessThan(bpm);
      expect(above).toBeGreaterThan(bpm);
      expect(METRONOME_STEPS.filter((step) => step > below && step < above)).toEqual(at === undefined ? [] : [bpm]);
    }),
    { seed: 71 },
  );
});

test("notches between two tempos, parts of one counted", () => {
  expect(notchesBetween(72, 76)).toBe(1);
  expect(notchesBetween(76, 66)).toBe(-3);
  expect(notchesBetween(72, 74)).toBe(0.5);
  expect(notchesBetween(40, 208)).toBe(METRONOME_STEPS.length - 1);
  expect(notchesBetween(36, 40)).toBe(2);
  expect(notchesBetween(208, 212)).toBe(0.5);
});
