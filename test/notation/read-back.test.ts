import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { soundingNote } from "../../server/music/instruments/instrument.ts";
import { INSTRUMENTS } from "../../server/music/instruments/instruments.ts";
import { type Note, nameAtFifths, printNote } from "../../server/music/notes/note.ts";
import { ENGLISH_NAMES } from "../../server/music/notes/note-names.ts";
import { notesToPlay, type WhatToPlay } from "../../server/music/patterns/notes-to-play.ts";
import { PATTERNS } from "../../server/music/patterns/pattern.ts";
import type { Direction, Reach } from "../../server/music/patterns/reach.ts";
import { KINDS } from "../../server/music/scales/kinds.ts";
import { drawStaves } from "../../server/notation/drawing/draw-staff.ts";
import { type ExerciseAsked, exerciseStaff } from "../../server/notation/exercise-staff.ts";
import type { Staff } from "../../server/notation/staff.ts";
import { FEW } from "../support/random-runs.ts";
import { Drawing, linesIn, type ReadNote, type ReadSystem, readSystem, withClass } from "./read-drawing.ts";

const NOTE_VALUES = [
  [1, 1],
  [1, 2],
  [1, 4],
  [3, 8],
  [1, 8],
  [1, 12],
  [1, 16],
  [1, 24],
  [1, 32],
].map(([numerator, denominator]) => ({ numerator: numerator!, denominator: denominator! }));
const ARTICULATIONS = [
  "slurred",
  "slur 2",
  "slur 2+1+1",
  "slur 3",
  "staccato",
  "tenuto",
  "portato",
  "marcato",
  "tongued",
];
const DIRECTIONS: readonly Direction[] = ["up", "down", "up and down", "down and up"];
const REACHES: readonly Reach[] = [
  { type: "octaves", count: 1 },
  { type: "octaves", count: 2 },
  { type: "twelfth" },
  { type: "degrees", count: 5 },
  { type: "full range" },
];

const asked: fc.Arbitrary<ExerciseAsked> = fc
  .record({
    fifths: fc.integer({ min: -8, max: 10 }),
    kind: fc.constantFrom(...KINDS.filter(({ degrees }) => degrees.every(({ cents }) => cents === undefined))),
    instrument: fc.constantFrom(undefined, ...INSTRUMENTS),
    pattern: fc.constantFrom(undefined, ...PATTERNS.map(({ id }) => id)),
    direction: fc.constantFrom(...DIRECTIONS),
    reach: fc.constantFrom(...REACHES),
    noteValue: fc.constantFrom(undefined, ...NOTE_VALUES),
    articulation: fc.constantFrom(undefined, ...ARTICULATIONS),
    fingerings: fc.boolean(),
  })
  .map(({ fifths, kind, pattern, direction, reach, ...rest }) => {
    const input: WhatToPlay = {
      subject: { type: "scale", tonic: nameAtFifths(fifths), kind },
      pattern,
      direction,
      reach,
      instrument: rest.instrument,
    };
    return { title: "an exercise", names: ENGLISH_NAMES, input, ...rest };
  });

const widths = fc.constantFrom(320, 500, 1000);

function drawn(staff: Staff, width: number): { readonly svg: string; readonly systems: readonly ReadSystem[] } {
  const { svg } = drawStaves([staff], { width, scale: 1, id: "staff" });
  const drawing = new Drawing(svg);
  return { svg, systems: drawing.systems.map((system) => readSystem(drawing, system)) };
}

/** What is read of notes by someone for whom an accidental holds for its note, or until another stands at its place. */
function readBy(systems: readonly ReadSystem[], holds: "for the note" | "for the line"): Note[] {
  return systems.flatMap(({ notes, signature }) => {
    const held = new Map<string, number>();
    return notes.map(({ letter, octave, accidental }) => {
      const place = `${letter}${octave}`;
      if (accidental !== null) held.set(place, accidental);
      const before = holds === "for the line" ? held.get(place) : undefined;
      return { letter, octave, alter: accidental ?? before ?? signature.get(letter) ?? 0 };
    });
  });
}

describe("what is read from a drawing", () => {
  test("is what the exercise is, note by note, however long accidentals hold", () => {
    fc.assert(
      fc.property(asked, widths, (exercise, width) => {
        const reading = exerciseStaff(exercise);
        fc.pre(reading.ok);
        if (!reading.ok) return;
        const { systems } = drawn(reading.staff, width);
        const { notes } = notesToPlay(exercise.input);
        const octaves = systems[0]!.octaves;
        // A figure at the clef makes it the clef of what sounds; without one it is that of what is written.
        const wanted = octaves === 0 ? notes : notes.map((note) => soundingNote(exercise.instrument!, note));
        for (const holds of ["for the note", "for the line"] as const) {
          const read = readBy(systems, holds).map((note) => ({ ...note, octave: note.octave + octaves }));
          expect(read.map(printNote)).toEqual(wanted.map((note) => printNote(note)));
        }
      }),
      { seed: 20260301, numRuns: 2 * FEW },
    );
  });

  test("is within its width, in order, and nothing stands in the way of anything", () => {
    fc.assert(
      fc.property(asked, widths, (exercise, width) => {
        const reading = exerciseStaff(exercise);
        fc.pre(reading.ok);
        if (!reading.ok) return;
        const { systems } = drawn(reading.staff, width);
        expect(systems.flatMap(({ notes }) => notes.map(({ index }) => index))).toEqual(
          reading.staff.notes.map((_, i) => i),
        );
        for (const { notes, right } of systems) {
          expect(right).toBeLessThanOrEqual(width);
          expect(collisions(notes, right)).toEqual([]);
        }
      }),
      { seed: 20260302, numRuns: FEW },
    );
  });

  test("has ledger lines as many as a head needs", () => {
    fc.assert(
      fc.property(asked, (exercise) => {
        const reading = exerciseStaff(exercise);
        fc.pre(reading.ok);
        if (!reading.ok) return;
        for (const { notes, top } of drawn(reading.staff, 1000).systems) {
          for (const { head, element } of notes) {
            const steps = Math.round((top + 40 - head.y) / 5); // above the bottom line
            const needed = Math.max(0, Math.floor((steps - 8) / 2), Math.floor(-steps / 2));
            expect(linesIn(element).filter(({ y1, y2 }) => y1 === y2)).toHaveLength(needed);
          }
        }
      }),
      { seed: 20260303, numRuns: FEW },
    );
  });
});

/** Heads closer than they are wide, and accidentals upon the head before them. */
function collisions(notes: readonly ReadNote[], right: number): string[] {
  return notes.flatMap(({ head, accidentalSign, index }, i) => {
    const before = notes[i - 1]?.head;
    const left = accidentalSign?.x ?? head.x;
    return [
      ...(before && left < before.x + 12 ? [`note ${index} stands upon the one before it`] : []),
      ...(head.x + 12 > right ? [`note ${index} stands beyond the staff`] : []),
    ];
  });
}

describe("beams and slurs", () => {
  test("there are as many as the exercise has, each from its first note to its last", () => {
    fc.assert(
      fc.property(asked, (exercise) => {
        const reading = exerciseStaff(exercise);
        fc.pre(reading.ok);
        if (!reading.ok) return;
        const { staff } = reading;
        const wide = 20_000; // one line
        const { svg, systems } = drawn(staff, wide);
        expect(systems).toHaveLength(1);
        const { root } = new Drawing(svg);
        const heads = systems[0]!.notes.map(({ head }) => head.x);
        const beams = withClass(root, "staff-beam").map((beam) =>
          spanOf(beam.children.map(({ attributes }) => attributes)),
        );
        expect(beams).toHaveLength(staff.beams.length);
        for (const [i, { from, to }] of staff.beams.entries()) {
          // A stem stands at one side of its head or at the other.
          expect(beams[i]!.left).toBeGreaterThanOrEqual(heads[from]! - 2);
          expect(beams[i]!.left).toBeLessThanOrEqual(heads[from]! + 14);
          expect(beams[i]!.right).toBeGreaterThanOrEqual(heads[to]! - 2);
          expect(beams[i]!.right).toBeLessThanOrEqual(heads[to]! + 14);
        }
        const slurs = withClass(root, "staff-slur").map((slur) =>
          spanOf(slur.children.map(({ attributes }) => attributes)),
        );
        expect(slurs).toHaveLength(staff.slurs.length);
        for (const [i, { from, to }] of staff.slurs.entries()) {
          expect(slurs[i]!.left).toBeCloseTo(heads[from]! + 6, -1);
          expect(slurs[i]!.right).toBeCloseTo(heads[to]! + 6, -1);
        }
      }),
      { seed: 20260304, numRuns: FEW },
    );
  });
});

describe("a slur", () => {
  test("goes through no head and no accidental", () => {
    const slurred = asked.map((exercise) => ({ ...exercise, articulation: "slurred" }));
    let curves = 0;
    fc.assert(
      fc.property(slurred, widths, (exercise, width) => {
        const reading = exerciseStaff(exercise);
        fc.pre(reading.ok);
        if (!reading.ok) return;
        const drawing = new Drawing(drawStaves([reading.staff], { width, scale: 1, id: "staff" }).svg);
        for (const system of drawing.systems) {
          const places = readSystem(drawing, system).notes.flatMap(placesOf);
          const points = withClass(system, "staff-slur").flatMap((slur) => pointsOn(slur.children[0]!.attributes));
          curves += Math.sign(points.length);
          expect(points.filter(({ x, y }) => places.some((place) => isWithin(place, x, y)))).toEqual([]);
        }
      }),
      { seed: 20260305, numRuns: FEW },
    );
    expect(curves).toBeGreaterThan(FEW / 2);
  });
});

interface Place {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** What a head covers, and its accidental: flats from two spaces above to under one below, sharps to one and a half. */
function placesOf({ head, accidentalSign, accidental }: ReadNote): Place[] {
  const covered = { left: head.x, right: head.x + 12, top: head.y - 4, bottom: head.y + 4 };
  if (!accidentalSign || accidental === null) return [covered];
  const [above, below] = accidental < 0 ? [17, 6] : accidental === 2 ? [4, 4] : [13, 13];
  const { x, y } = accidentalSign;
  return [covered, { left: x, right: head.x - 3, top: y - above, bottom: y + below }];
}

function isWithin({ left, right, top, bottom }: Place, x: number, y: number): boolean {
  return x > left && x < right && y > top && y < bottom;
}

/** Points on the two curves of a slur, which begin where the path is put. */
function pointsOn({
  transform,
  d,
}: Readonly<Record<string, string>>): readonly { readonly x: number; readonly y: number }[] {
  const [x0, y0] = /translate\((-?[\d.]+),(-?[\d.]+)\)/.exec(transform!)!.slice(1).map(Number) as [number, number];
  const numbers = d!.match(/-?\d+(?:\.\d+)?/g)!.map(Number);
  const points = Array.from({ length: numbers.length / 2 }, (_, i) => [numbers[2 * i]!, numbers[2 * i + 1]!] as const);
  return [points.slice(0, 4), points.slice(3, 7)].flatMap((curve) =>
    Array.from({ length: 101 }, (_, i) => {
      const t = i / 100;
      const shares = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t ** 2 * (1 - t), t ** 3];
      const along = (axis: 0 | 1): number => curve.reduce((sum, point, k) => sum + shares[k]! * point[axis], 0);
      return { x: x0 + along(0), y: y0 + along(1) };
    }),
  );
}

/** From where to where paths reach that begin at a place of their own, or at one of the drawing. */
function spanOf(paths: readonly Readonly<Record<string, string>>[]): { readonly left: number; readonly right: number } {
  const xs = paths.flatMap(({ transform, d, x }) => {
    const start = x !== undefined ? Number(x) : Number(/translate\((-?[\d.]+)/.exec(transform!)![1]);
    const numbers = (d ?? "M0 0").match(/-?\d+(?:\.\d+)?/g)!.map(Number);
    return numbers.filter((_, i) => i % 2 === 0).map((each) => start + each);
  });
  return { left: Math.min(...xs), right: Math.max(...xs) };
}
