import fc from "fast-check";
import { expect, test } from "vitest";
import { CHORDS } from "../../../server/music/chords/chord-kinds.ts";
import { INSTRUMENTS, instrumentById } from "../../../server/music/instruments/instruments.ts";
import { LETTERS, type Note, parseNote, printNote, sameName } from "../../../server/music/notes/note.ts";
import { fnv1a, shuffled, xorshift32 } from "../../../server/music/patterns/draw.ts";
import { leapOrder } from "../../../server/music/patterns/leaps.ts";
import { notesToPlay, type WhatToPlay } from "../../../server/music/patterns/notes-to-play.ts";
import { lengthFormula } from "../../../server/music/patterns/pattern-forms.ts";
import type { Direction, Reach } from "../../../server/music/patterns/reach.ts";
import { KINDS, kindById } from "../../../server/music/scales/kinds.ts";

const note = (text: string): Note => ({ octave: 4, ...parseNote(text)! });
const scale = (tonic: string, kind: string) =>
  ({ type: "scale", tonic: parseNote(tonic)!, kind: kindById(kind)! }) as const;
const arpeggio = (root: string, chord: string, inversion = 0) =>
  ({ type: "chord", root: parseNote(root)!, chord, inversion, broken: false }) as const;
const alto = instrumentById("alto recorder")!;

/** The degrees of `leaps` on a day, one octave unless told otherwise. */
function leaps(input: Omit<WhatToPlay, "pattern">): string {
  return notesToPlay({ ...input, pattern: "leaps" }).degrees.join(" ");
}

/** Neighbours of the scale that follow each other. */
const steps = (order: readonly number[]): number =>
  order.slice(1).filter((degree, i) => Math.abs(degree - order[i]!) === 1).length;

test("the numbers that orders are drawn from are those of the published methods", () => {
  // draft-eastlake-fnv, "FNV Test Vectors", as Boost.Hash2's tests have them.
  expect(["", "a", "foobar"].map(fnv1a)).toEqual([0x811c9dc5, 0xe40c292c, 0xbf9cf968]);
  // Marsaglia's xorshift 13, 17, 5 from 1, as the documentation of the Rust crate prrng prints it.
  const draw = xorshift32(1);
  expect([draw(), draw(), draw(), draw()]).toEqual([270369, 67634689, 2647435461, 307599695]);
  expect(xorshift32(0)()).toBe(270369);
  expect(shuffled([1, 2, 3, 4, 5], draw).toSorted()).toEqual([1, 2, 3, 4, 5]);
});

test("from the tonic by leaps through each other degree, and back to it; the same all day", () => {
  expect(leaps({ subject: scale("C", "major"), day: 20514 })).toBe(leaps({ subject: scale("C", "major"), day: 20514 }));
  const { notes } = notesToPlay({ subject: scale("D", "harmonic minor"), pattern: "leaps", day: 20514 });
  expect([notes[0]!, notes.at(-1)!].map(printNote)).toEqual(["D4", "D4"]);
  expect(notes.map(printNote).toSorted()).toEqual("A4 Bb4 C#5 D4 D4 D5 E4 F4 G4".split(" "));
});

// 20514 is 2026-03-02. So that no day's order changes from one version to the next; the orders are this project's own.
test("orders that stay as they are", () => {
  expect(leaps({ subject: scale("C", "major"), day: 20514 })).toBe("1 6 4 2 7 5 8 3 1");
  expect(leaps({ subject: scale("C", "major"), day: 20515 })).toBe("1 5 7 3 8 2 4 6 1");
  expect(leaps({ subject: scale("D", "natural minor"), reach: { type: "octaves", count: 2 }, day: 20514 })).toBe(
    "1 10 4 6 12 3 11 15 2 13 9 14 7 5 8 1",
  );
  expect(leaps({ subject: arpeggio("C", "major"), reach: { type: "octaves", count: 2 }, day: 20514 })).toBe(
    "1 7 2 4 6 3 5 1",
  );
});

test("another day, another scale or another span has another order; another instrument or a direction has not", () => {
  const subject = scale("C", "major");
  const orders = new Set(Array.from({ length: 365 }, (_, day) => leaps({ subject, day: 20454 + day })));
  expect(orders.size).toBeGreaterThan(200); // of 490 that there are
  const C = leaps({ subject, day: 20514 });
  expect(leaps({ subject: scale("D", "major"), day: 20514 })).not.toBe(C);
  expect(leaps({ subject: scale("C", "dorian"), day: 20514 })).not.toBe(C);
  for (const instrument of INSTRUMENTS) expect(leaps({ subject, instrument, day: 20514 })).toBe(C);
  for (const direction of ["up", "down", "up and down", "down and up", "back and forth"] as const)
    expect(leaps({ subject, direction, day: 20514 })).toBe(C);
  expect(leaps({ subject: { ...subject, octave: 5 }, day: 20514 })).toBe(C);
});

test("where the span does not begin on the tonic it is still home; where it has none, its lowest note is", () => {
  const home = (input: Omit<WhatToPlay, "pattern">) => {
    const { notes } = notesToPlay({ ...input, pattern: "leaps" });
    return [notes[0], notes.at(-1)].map((end) => end && printNote(end));
  };
  const between = (from: string, to: string): Reach => ({ type: "between", from: note(from), to: note(to) });
  expect(home({ subject: scale("D", "major"), instrument: alto, reach: { type: "full range" } })).toEqual(["D5", "D5"]);
  expect(home({ subject: scale("C", "major"), reach: between("A4", "G5") })).toEqual(["C5", "C5"]);
  expect(home({ subject: scale("C", "major"), reach: between("D4", "A4") })).toEqual(["D4", "D4"]);
  expect(home({ subject: arpeggio("C", "major", 1) })).toEqual(["E4", "E4"]);
  expect(home({ subject: scale("C", "major"), reach: between("C#4", "Db4") })).toEqual([undefined, undefined]);
});

test("a scale that falls otherwise leaps in its rising notes", () => {
  const { notes } = notesToPlay({ subject: scale("D", "melodic minor"), pattern: "leaps", direction: "down" });
  expect(notes.map(printNote)).toEqual(expect.arrayContaining(["B4", "C#5"]));
  expect(notes.map(printNote)).not.toEqual(expect.arrayContaining(["Bb4"]));
});

test("spans of few notes", () => {
  expect([0, 1, 2].map((T) => leapOrder(T, 1, "any"))).toEqual([[], [1], [1, 2, 1]]);
  for (let seed = 0; seed < 50; seed++) {
    expect([3, 4, 5].map((T) => steps(leapOrder(T, 1, `${seed}`)))).toEqual([2, 1, 0]);
  }
});

// OEIS A242522: cyclic arrangements of 1 to n whose neighbours differ by at least 2; each may be played either way
// round.
test.each([
  [5, 1],
  [6, 5],
  [7, 33],
])("over %i degrees each of the orders without a step is drawn, and no other", (T, arrangements) => {
  const orders = new Set(Array.from({ length: 3000 }, (_, seed) => leapOrder(T, 1, `${seed}`).join(" ")));
  expect(orders.size).toBe(2 * arrangements);
});

test("an order has each degree once between home and home, and no step from five degrees on", () => {
  const input = fc.integer({ min: 1, max: 60 }).chain((T) => fc.tuple(fc.constant(T), fc.integer({ min: 1, max: T })));
  fc.assert(
    fc.property(input, fc.string(), ([T, home], drawnFor) => {
      const order = leapOrder(T, home, drawnFor);
      expect(order).toHaveLength(lengthFormula("leaps", T));
      expect([order[0], order.at(-1)]).toEqual([home, home]);
      expect(new Set(order)).toEqual(new Set(Array.from({ length: T }, (_, i) => i + 1)));
      expect(order.slice(1).every((degree, i) => degree !== order[i])).toBe(true);
      if (T >= 5) expect(steps(order)).toBe(0);
      expect(leapOrder(T, home, drawnFor)).toEqual(order);
    }),
    { seed: 71 },
  );
});

const anyInput: fc.Arbitrary<WhatToPlay> = fc.record({
  subject: fc.oneof(
    fc.record({
      type: fc.constant("scale" as const),
      tonic: fc.record({ letter: fc.constantFrom(...LETTERS), alter: fc.integer({ min: -2, max: 2 }) }),
      kind: fc.constantFrom(...KINDS),
    }),
    fc.record({
      type: fc.constant("chord" as const),
      root: fc.record({ letter: fc.constantFrom(...LETTERS), alter: fc.integer({ min: -2, max: 2 }) }),
      chord: fc.constantFrom(...CHORDS.map(({ id }) => id)),
      inversion: fc.integer({ min: 0, max: 2 }),
      broken: fc.boolean(),
    }),
  ),
  reach: fc.option(
    fc.oneof(
      fc.constant<Reach>({ type: "full range" }),
      fc.constant<Reach>({ type: "twelfth" }),
      fc.record({ type: fc.constant("octaves" as const), count: fc.integer({ min: 1, max: 3 }) }),
    ),
    { nil: undefined },
  ),
  direction: fc.constantFrom<Direction | undefined>(undefined, "up", "down", "down and up"),
  instrument: fc.option(fc.constantFrom(...INSTRUMENTS), { nil: undefined }),
  day: fc.integer({ min: -40_000, max: 40_000 }),
});

test("whatever the exercise, it leaps through each of the notes that it has going up, from home to home", () => {
  fc.assert(
    fc.property(anyInput, (input) => {
      const { notes, up } = notesToPlay({ ...input, pattern: "leaps" });
      expect([...new Set(notes.map(printNote))].toSorted()).toEqual(up.map(printNote).toSorted());
      if (notes.length === 0) return;
      expect(notes.at(-1)).toEqual(notes[0]);
      const { subject } = input;
      if (subject.type === "scale") expect(sameName(notes[0]!, subject.tonic)).toBe(true);
    }),
    { seed: 72 },
  );
});
