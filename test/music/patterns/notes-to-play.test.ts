import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { CHORDS } from "../../../server/music/chords/chord-kinds.ts";
import { isInRange } from "../../../server/music/instruments/instrument.ts";
import { INSTRUMENTS, instrumentById } from "../../../server/music/instruments/instruments.ts";
import { LETTERS, midi, type Note, parseNote, pitchClass, printNote } from "../../../server/music/notes/note.ts";
import { notesToPlay, type WhatToPlay } from "../../../server/music/patterns/notes-to-play.ts";
import { PATTERNS, parseCell } from "../../../server/music/patterns/pattern.ts";
import type { Direction, Reach } from "../../../server/music/patterns/reach.ts";
import { declaredKind } from "../../../server/music/scales/declared-kind.ts";
import { KINDS, kindById } from "../../../server/music/scales/kinds.ts";

const note = (text: string): Note => ({ octave: 4, ...parseNote(text)! });
const print = (notes: readonly Note[]) => notes.map(printNote).join(" ");
const scale = (tonic: string, kind: string) =>
  ({ type: "scale", tonic: parseNote(tonic)!, kind: kindById(kind)! }) as const;
const chord = (root: string, id: string, inversion = 0, broken = false) =>
  ({ type: "chord", root: parseNote(root)!, chord: id, inversion, broken }) as const;
const alto = instrumentById("alto recorder")!;
const fullRange: Reach = { type: "full range" };

/** An exercise and the notes it is played with. */
function check(input: WhatToPlay, notes: string): void {
  expect(print(notesToPlay(input).notes)).toBe(notes);
}

describe("where a span lies", () => {
  test("one octave up and down from octave 4, with nothing said", () => {
    check({ subject: scale("D", "major") }, "D4 E4 F#4 G4 A4 B4 C#5 D5 C#5 B4 A4 G4 F#4 E4 D4");
  });
  test("from the lowest tonic that the instrument has", () => {
    check({ subject: scale("D", "major"), instrument: alto, direction: "up" }, "D5 E5 F#5 G5 A5 B5 C#6 D6");
    check({ subject: scale("F", "major"), instrument: alto, direction: "up" }, "F4 G4 A4 Bb4 C5 D5 E5 F5");
    check({ subject: scale("E#", "major"), instrument: alto, reach: { type: "degrees", count: 1 } }, "E#4");
  });
  test("from the octave that the player names, also where the instrument has no such note", () => {
    const played = notesToPlay({ subject: { ...scale("D", "major"), octave: 4 }, instrument: alto, direction: "up" });
    expect(print(played.notes)).toBe("D4 E4 F#4 G4 A4 B4 C#5 D5");
    expect(print(played.outOfRange)).toBe("D4 E4");
  });
  test("five notes, two octaves, a twelfth", () => {
    check({ subject: scale("G", "major"), reach: { type: "degrees", count: 5 } }, "G4 A4 B4 C5 D5 C5 B4 A4 G4");
    const up = (kind: string, reach: Reach) =>
      notesToPlay({ subject: scale("C", kind), reach, direction: "up" }).degrees.length;
    expect([1, 2].map((count) => up("major", { type: "octaves", count }))).toEqual([8, 15]);
    expect([1, 2].map((count) => up("minor pentatonic", { type: "octaves", count }))).toEqual([6, 11]);
    expect(up("chromatic", { type: "octaves", count: 2 })).toBe(25);
    expect(up("major", { type: "twelfth" })).toBe(12);
    expect(up("locrian", { type: "twelfth" })).toBe(12);
    expect(up("chromatic", { type: "twelfth" })).toBe(20);
    check(
      { subject: scale("C", "major pentatonic"), reach: { type: "twelfth" }, direction: "up" },
      "C4 D4 E4 G4 A4 C5 D5 E5 G5",
    );
  });
  test("between two notes, which need not be tonics or notes of the scale, in either order", () => {
    const between = (from: string, to: string): Reach => ({ type: "between", from: note(from), to: note(to) });
    check({ subject: scale("C", "major"), reach: between("D4", "G4") }, "D4 E4 F4 G4 F4 E4 D4");
    expect(notesToPlay({ subject: scale("C", "major"), reach: between("D4", "G4"), direction: "up" }).degrees).toEqual([
      2, 3, 4, 5,
    ]);
    check({ subject: scale("C", "major"), reach: between("G4", "C#4"), direction: "down" }, "G4 F4 E4 D4");
    check({ subject: scale("C", "major"), reach: between("C#4", "Db4") }, "");
    expect(
      notesToPlay({ subject: scale("D", "natural minor"), reach: between("A4", "F5"), direction: "up" }).degrees,
    ).toEqual([-2, -1, 0, 1, 2, 3]);
  });
  test("full range: tonic, top, bottom, tonic (format page); patterns from the lowest to the highest note", () => {
    check(
      { subject: scale("F#", "major"), instrument: alto, reach: fullRange },
      "F#4 G#4 A#4 B4 C#5 D#5 E#5 F#5 G#5 A#5 B5 C#6 D#6 E#6 F#6 E#6 D#6 C#6 B5 A#5 G#5 F#5 E#5 D#5 C#5 B4 A#4 G#4 F#4 E#4 F#4",
    );
    const topDown = notesToPlay({
      subject: scale("D", "major"),
      instrument: alto,
      reach: fullRange,
      direction: "down and up",
    });
    expect([topDown.notes[0], topDown.notes.at(-1)].map((end) => printNote(end!))).toEqual(["G6", "G6"]);
    const thirds = notesToPlay({ subject: scale("D", "major"), instrument: alto, reach: fullRange, pattern: "thirds" });
    expect(thirds.degrees.slice(0, 4)).toEqual([-4, -2, -3, -1]);
    expect(thirds.range && [thirds.range.low, thirds.range.high].map(printNote)).toEqual(["F#4", "G6"]);
    expect(notesToPlay({ subject: scale("C", "major"), reach: fullRange }).degrees).toHaveLength(15);
  });
});

describe("scales that differ going down", () => {
  test("straight", () => {
    check({ subject: scale("D", "melodic minor") }, "D4 E4 F4 G4 A4 B4 C#5 D5 C5 Bb4 A4 G4 F4 E4 D4");
    const { up, down } = notesToPlay({ subject: scale("D", "melodic minor"), pattern: "thirds" });
    expect(print(up)).toBe("D4 E4 F4 G4 A4 B4 C#5 D5");
    expect(print(down)).toBe("D5 C5 Bb4 A4 G4 F4 E4 D4");
  });
  test("over the full range: falling notes on the way down, rising notes back to the tonic", () => {
    check(
      { subject: scale("D", "melodic minor"), instrument: alto, reach: fullRange },
      "D5 E5 F5 G5 A5 B5 C#6 D6 E6 F6 G6 F6 E6 D6 C6 Bb5 A5 G5 F5 E5 D5 C5 Bb4 A4 G4 F4 G4 A4 B4 C#5 D5",
    );
  });
  test("the full range ends where either form would leave the instrument: E#4 is there going up, E4 is not going down", () => {
    const { range, outOfRange } = notesToPlay({
      subject: scale("F#", "melodic minor"),
      instrument: alto,
      reach: fullRange,
    });
    expect(range && [range.low, range.high].map(printNote)).toEqual(["F#4", "F#6"]);
    expect(outOfRange).toEqual([]);
  });
  test("in thirds, top down: falling notes in the falling half, rising notes in the rising one", () => {
    check(
      { subject: scale("D", "melodic minor"), pattern: "thirds", direction: "down and up" },
      "D5 Bb4 C5 A4 Bb4 G4 A4 F4 G4 E4 F4 D4 D4 F4 E4 G4 F4 A4 G4 B4 A4 C#5 B4 D5",
    );
  });
  test("chromatic", () => {
    check(
      { subject: scale("G", "chromatic") },
      "G4 G#4 A4 A#4 B4 C5 C#5 D5 D#5 E5 F5 F#5 G5 Gb5 F5 E5 Eb5 D5 Db5 C5 B4 Bb4 A4 Ab4 G4",
    );
  });
});

describe("arpeggios count their chord's notes", () => {
  test("straight, two octaves, a twelfth", () => {
    check({ subject: chord("D", "minor") }, "D4 F4 A4 D5 A4 F4 D4");
    const { degrees, steps, signature } = notesToPlay({
      subject: chord("D", "minor"),
      reach: { type: "octaves", count: 2 },
    });
    expect(degrees).toEqual([1, 2, 3, 4, 5, 6, 7, 6, 5, 4, 3, 2, 1]);
    expect([steps, signature]).toEqual([[3, 4, 5], { fifths: -1, accidentals: [{ letter: "B", alter: -1 }] }]);
    check({ subject: chord("C", "major"), reach: { type: "twelfth" }, direction: "up" }, "C4 E4 G4 C5 E5 G5");
  });
  test("inversions start from their bass, the lowest that the instrument has", () => {
    check({ subject: chord("D", "minor", 1), instrument: alto }, "F4 A4 D5 F5 D5 A4 F4");
    expect(notesToPlay({ subject: chord("D", "minor", 1) }).degrees).toEqual([2, 3, 4, 5, 4, 3, 2]);
    const whole = notesToPlay({ subject: chord("G", "major", 1), instrument: alto, reach: fullRange });
    expect([whole.notes[0], whole.notes.at(-1)].map((end) => printNote(end!))).toEqual(["B4", "B4"]);
  });
  test("broken chords go in groups of three", () => {
    check({ subject: chord("C", "major", 0, true), direction: "up" }, "C4 E4 G4 E4 G4 C5");
  });
  test("a dominant seventh of a key", () => {
    const { notes, signature } = notesToPlay({
      subject: { ...chord("A", "dominant seventh"), key: parseNote("D")! },
      direction: "up",
    });
    expect(print(notes)).toBe("A4 C#5 E5 G5 A5");
    expect(signature?.fifths).toBe(2);
  });
  test("octaves and tenths by the letter", () => {
    check({ subject: chord("C", "major"), pattern: "octaves", direction: "up" }, "C4 C5 E4 E5 G4 G5 C5 C6");
    check({ subject: chord("C", "major"), pattern: "tenths", direction: "up" }, "C4 E5 E4 G5 G4 C6");
  });
});

test("octaves and tenths take two octaves when no span is named", () => {
  expect(notesToPlay({ subject: scale("C", "major"), pattern: "octaves", direction: "up" }).degrees).toEqual([
    1, 8, 2, 9, 3, 10, 4, 11, 5, 12, 6, 13, 7, 14, 8, 15,
  ]);
  const oneOctave: Reach = { type: "octaves", count: 1 };
  expect(
    notesToPlay({ subject: scale("C", "major"), pattern: "octaves", reach: oneOctave, direction: "up" }).degrees,
  ).toEqual([1, 8]);
});

test("declared cells and declared scales", () => {
  const cell = parseCell("1 3 5 4 2 1");
  const own = declaredKind("double harmonic", "1 b2 3 4 5 b6 7");
  if (!cell.ok || !own.ok) throw new Error("both can be read");
  const subject = { type: "scale", tonic: parseNote("D")!, kind: own.kind } as const;
  check(
    { subject, pattern: cell.cell, direction: "up", reach: { type: "degrees", count: 6 } },
    "D4 F#4 A4 G4 Eb4 D4 Eb4 G4 Bb4 A4 F#4 Eb4",
  );
});

test("what sounds is what the instrument makes of what is written", () => {
  const sounding = (instrument: string, direction: Direction = "up") =>
    print(
      notesToPlay({
        subject: scale("C", "major"),
        reach: { type: "degrees", count: 3 },
        direction,
        instrument: instrumentById(instrument)!,
      }).sounding,
    );
  expect(sounding("soprano recorder")).toBe("C5 D5 E5");
  expect(sounding("bass recorder")).toBe("C4 D4 E4");
  expect(sounding("clarinet in Bb")).toBe("Bb3 C4 D4");
  expect(sounding("alto saxophone")).toBe("Eb3 F3 G3");
});

test("out of range: each note once, in the order of playing", () => {
  const { outOfRange } = notesToPlay({
    subject: scale("G", "major"),
    reach: { type: "octaves", count: 3 },
    instrument: alto,
  });
  expect(print(outOfRange)).toBe("A6 B6 C7 D7 E7 F#7 G7");
});

const anyTonic = fc.record({ letter: fc.constantFrom(...LETTERS), alter: fc.integer({ min: -2, max: 2 }) });
const anySubject = fc.oneof(
  fc.record({ type: fc.constant("scale" as const), tonic: anyTonic, kind: fc.constantFrom(...KINDS) }),
  fc.record({
    type: fc.constant("chord" as const),
    root: anyTonic,
    chord: fc.constantFrom(...CHORDS.map(({ id }) => id)),
    inversion: fc.integer({ min: 0, max: 2 }),
    broken: fc.boolean(),
  }),
);
const anyInput: fc.Arbitrary<WhatToPlay> = fc.record({
  subject: anySubject,
  pattern: fc.option(fc.constantFrom(...PATTERNS.map(({ id }) => id)), { nil: undefined }),
  direction: fc.option(fc.constantFrom<Direction>("up", "down", "up and down", "down and up"), { nil: undefined }),
  reach: fc.option(
    fc.oneof(
      fc.constant(fullRange),
      fc.constant<Reach>({ type: "twelfth" }),
      fc.record({ type: fc.constant("octaves" as const), count: fc.integer({ min: 1, max: 3 }) }),
      fc.record({ type: fc.constant("degrees" as const), count: fc.integer({ min: 1, max: 20 }) }),
    ),
    { nil: undefined },
  ),
  instrument: fc.option(fc.constantFrom(...INSTRUMENTS), { nil: undefined }),
});

test("whatever is asked: notes belong to the subject, lie in the range told, and are out of range only when told so", () => {
  fc.assert(
    fc.property(anyInput, (input) => {
      const played = notesToPlay(input);
      const { notes, degrees, sounding, range, outOfRange, up, down } = played;
      expect(degrees).toHaveLength(notes.length);
      expect(sounding).toHaveLength(notes.length);
      expect(down).toHaveLength(up.length);
      const own = new Set([...up, ...down].map(printNote));
      const told = new Set(outOfRange.map(midi));
      for (const each of notes) {
        expect(own.has(printNote(each))).toBe(true);
        expect(range && isInRange(range, each)).toBe(true);
        expect(input.instrument ? !isInRange(input.instrument, each) : false).toBe(told.has(midi(each)));
      }
      if (input.reach?.type === "full range" && input.instrument) expect(outOfRange).toEqual([]);
      const first = input.subject.type === "scale" ? input.subject.tonic : input.subject.root;
      for (const [index, degree] of degrees.entries()) {
        if (degree === 1) expect(pitchClass(notes[index]!)).toBe(pitchClass(first));
      }
    }),
    { seed: 51 },
  );
});

test("an absurd reach is cut to what could ever be written", () => {
  const reach: Reach = { type: "octaves", count: 1e9 };
  expect(notesToPlay({ subject: scale("C", "major"), reach, pattern: "growing" }).notes.length).toBeLessThan(20_000);
});
