import fc from "fast-check";
import { expect, test } from "vitest";
import { chordNames } from "../../../server/music/chords/chord.ts";
import { CHORDS } from "../../../server/music/chords/chord-kinds.ts";
import {
  fifthsOf,
  type Interval,
  LETTERS,
  letterIndex,
  midi,
  modulo,
  type NoteName,
  nameAtFifths,
  pitchClass,
  printName,
  staffStep,
  transposed,
} from "../../../server/music/notes/note.ts";
import { notesToPlay, type WhatToPlay } from "../../../server/music/patterns/notes-to-play.ts";
import { PATTERNS } from "../../../server/music/patterns/pattern.ts";
import { lengthFormula } from "../../../server/music/patterns/pattern-forms.ts";
import type { Direction, Reach } from "../../../server/music/patterns/reach.ts";
import { declaredKind } from "../../../server/music/scales/declared-kind.ts";
import type { ScaleKind } from "../../../server/music/scales/kind.ts";
import { KINDS } from "../../../server/music/scales/kinds.ts";
import { chromaticSpellings, degreesOf, scaleNames } from "../../../server/music/scales/scale.ts";
import { keySignature } from "../../../server/music/scales/signature.ts";
import { MANY } from "../../support/random-runs.ts";

// What must hold for the spelling of every scale, chord and pattern, on every tonic that may be typed.

const TONICS: readonly NoteName[] = LETTERS.flatMap((letter) => [-2, -1, 0, 1, 2].map((alter) => ({ letter, alter })));
const anyTonic = fc.constantFrom(...TONICS);

/** Scales that a journal may declare: of the degrees 1 to 7 some, each lowered, raised or as it is. */
const declared: fc.Arbitrary<ScaleKind> = fc
  .array(fc.constantFrom("b", "", "#", "-"), { minLength: 6, maxLength: 6 })
  .map((signs) => ["1", ...signs.flatMap((sign, i) => (sign === "-" ? [] : [`${sign}${i + 2}`]))].join(" "))
  .map((text) => declaredKind("own", text))
  .filter((reading) => reading.ok)
  .map(({ kind }) => kind);
const anyKind = fc.oneof({ weight: 3, arbitrary: fc.constantFrom(...KINDS) }, { weight: 1, arbitrary: declared });
/** Those that are spelled alike on every tonic: chromatic and whole-tone scales go by what is usual on each. */
const spelledAlike = anyKind.filter(({ family }) => family !== "chromatic" && family !== "whole-tone");
const anyWay = fc.constantFrom<"up" | "down">("up", "down");

/**
 * Up to two octaves either way, with letters and semitones that go together: from double diminished to double
 * augmented.
 */
const anyInterval: fc.Arbitrary<Interval> = fc
  .tuple(fc.integer({ min: -14, max: 14 }), fc.integer({ min: -2, max: 2 }))
  .map(([steps, more]) => ({
    steps,
    semitones: [0, 2, 4, 5, 7, 9, 11][modulo(steps, 7)]! + 12 * Math.floor(steps / 7) + more,
  }));

const lettersOf = (names: readonly NoteName[]) => names.map(({ letter }) => letter).join("");

test("a scale's notes have the letters that its rule asks", () => {
  const runs = fc.property(anyTonic, anyKind, anyWay, (tonic, kind, way) => {
    const names = scaleNames(tonic, kind, way);
    const degrees = degreesOf(kind, way, tonic);
    // Seven notes: each letter once, in their order from the tonic.
    const fromTonic = [...LETTERS, ...LETTERS].slice(letterIndex(tonic.letter), letterIndex(tonic.letter) + 7);
    if (kind.family === "seven") expect(lettersOf(names)).toBe(fromTonic.join(""));
    // Any scale: as many letters above the tonic as the degree says, and never back.
    for (const [i, { step, semitones }] of degrees.entries()) {
      expect(names[i]!.letter).toBe(fromTonic[modulo(step, 7)]);
      expect(modulo(pitchClass(names[i]!) - pitchClass(tonic), 12)).toBe(semitones);
      // The chromatic scale keeps its white keys natural: on Cbb, which sounds as Bb, the next is B.
      const mayTurnBack = kind.family === "chromatic" && Math.abs(tonic.alter) > 1;
      if (i > 0 && !mayTurnBack) expect(step).toBeGreaterThanOrEqual(degrees[i - 1]!.step);
    }
    // Of whole tones six letters, of octatonic scales all seven, of pentatonic ones five: none twice but where it must
    // be.
    const most = { "whole-tone": 6, octatonic: 7, pentatonic: 5, blues: 5 } as Record<string, number>;
    if (most[kind.family]) expect(new Set(lettersOf(names)).size).toBe(most[kind.family]);
  });
  fc.assert(runs, { seed: 81, numRuns: MANY });
});

test("transposing and spelling commute: the notes of a scale moved are the scale of the note moved", () => {
  fc.assert(
    fc.property(anyTonic, spelledAlike, anyWay, anyInterval, (tonic, kind, way, interval) => {
      const moved = scaleNames(tonic, kind, way).map((name) => transposed(name, interval));
      expect(scaleNames(transposed(tonic, interval), kind, way)).toEqual(moved);
    }),
    { seed: 82, numRuns: MANY },
  );
  fc.assert(
    fc.property(anyTonic, fc.constantFrom(...CHORDS), anyInterval, (root, chord, interval) => {
      const moved = chordNames(root, chord).map((name) => transposed(name, interval));
      expect(chordNames(transposed(root, interval), chord)).toEqual(moved);
    }),
    { seed: 83 },
  );
});

test("so they do for both spellings of the chromatic scale, and for signatures on the line of fifths", () => {
  fc.assert(
    fc.property(anyTonic, anyInterval, fc.constantFrom(...KINDS), (tonic, interval, kind) => {
      const there = transposed(tonic, interval);
      for (const convention of ["harmonic", "melodic"] as const) {
        for (const way of ["up", "down"] as const) {
          const moved = chromaticSpellings(tonic)[convention][way].map((name) => transposed(name, interval));
          expect(chromaticSpellings(there)[convention][way]).toEqual(moved);
        }
      }
      const [from, to] = [keySignature(tonic, kind), keySignature(there, kind)];
      expect(to && to.fifths - fifthsOf(there)).toBe(from && from.fifths - fifthsOf(tonic));
    }),
    { seed: 84 },
  );
});

const anyReach: fc.Arbitrary<Reach> = fc.oneof(
  fc.record({ type: fc.constant("octaves" as const), count: fc.integer({ min: 1, max: 3 }) }),
  fc.record({ type: fc.constant("degrees" as const), count: fc.integer({ min: 1, max: 30 }) }),
  fc.constant<Reach>({ type: "twelfth" }),
);
const anyFigure = fc.constantFrom(
  ...PATTERNS.flatMap(({ id, variants }) => [undefined, ...variants].map((variant) => ({ pattern: id, variant }))),
);

test("so they do for whole exercises in every pattern and span, note by note", () => {
  fc.assert(
    fc.property(
      anyTonic,
      spelledAlike,
      anyFigure,
      anyReach,
      anyInterval,
      fc.constantFrom<Direction>("up", "down", "up and down", "down and up"),
      (tonic, kind, figure, reach, interval, direction) => {
        fc.pre(figure.pattern !== "leaps"); // whose order is the tonic's own
        const on = (name: NoteName, octave: number): WhatToPlay => ({
          subject: { type: "scale", tonic: name, octave, kind },
          ...figure,
          reach,
          direction,
        });
        const there = transposed({ ...tonic, octave: 4 }, interval);
        const moved = notesToPlay(on(tonic, 4)).notes.map((note) => transposed(note, interval));
        expect(notesToPlay(on(there, there.octave)).notes).toEqual(moved);
      },
    ),
    { seed: 85 },
  );
});

test("the length formulas of patterns.json hold for every span of every scale, in each of the forms", () => {
  fc.assert(
    fc.property(anyTonic, anyKind, anyFigure, anyReach, (tonic, kind, { pattern, variant }, reach) => {
      const subject = { type: "scale", tonic, kind } as const;
      const third = Math.max(
        1,
        kind.degrees.findIndex(({ step }) => step >= 2),
      );
      for (const direction of ["up", "down"] as const) {
        const { notes, up } = notesToPlay({ subject, pattern, variant, reach, direction });
        expect(notes).toHaveLength(lengthFormula(pattern, up.length, variant, { octave: kind.degrees.length, third }));
      }
    }),
    { seed: 86 },
  );
});

test("what falls is the mirror of what rises, in a scale that is its own mirror", () => {
  // The whole-tone and the chromatic scale look alike from both ends, so that the notes mirror as the degrees do.
  const mirrorable = KINDS.filter(({ id }) => id === "whole-tone" || id === "chromatic");
  fc.assert(
    fc.property(fc.constantFrom(...mirrorable), anyFigure, anyReach, (kind, figure, reach) => {
      fc.pre(figure.pattern !== "leaps");
      const subject = { type: "scale", tonic: nameAtFifths(0), kind } as const;
      const keys = (direction: Direction) => notesToPlay({ subject, ...figure, reach, direction }).notes.map(midi);
      const { up } = notesToPlay({ subject, reach });
      const ends = midi(up[0]!) + midi(up.at(-1)!);
      expect(keys("down").map((key) => ends - key)).toEqual(keys("up"));
    }),
    { seed: 87 },
  );
});

test("notes lie on the staff as their degrees do: an octave further is seven steps and twelve semitones", () => {
  fc.assert(
    fc.property(anyTonic, anyKind, (tonic, kind) => {
      const reach: Reach = { type: "octaves", count: 2 };
      const { up } = notesToPlay({ subject: { type: "scale", tonic, kind }, reach });
      const size = kind.degrees.length;
      for (const [i, note] of up.slice(0, size + 1).entries()) {
        expect(staffStep(up[i + size]!) - staffStep(note), printName(note)).toBe(7);
        expect(midi(up[i + size]!) - midi(note)).toBe(12);
      }
    }),
    { seed: 88 },
  );
});
