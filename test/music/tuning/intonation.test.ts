import { describe, expect, test } from "vitest";
import { type Interval, parseNote, pitchClass, printName } from "../../../server/music/notes/note.ts";
import type { WhatToPlay } from "../../../server/music/patterns/notes-to-play.ts";
import { declaredKind } from "../../../server/music/scales/declared-kind.ts";
import { kindById } from "../../../server/music/scales/kinds.ts";
import { intonationOf } from "../../../server/music/tuning/intonation.ts";
import { readTemperament } from "../../../server/music/tuning/read-temperament.ts";
import { centsOf, type FromPure, type Temperament } from "../../../server/music/tuning/temperament.ts";
import reference from "../../reference/temperaments.json" with { type: "json" };

function scale(tonic: string, kind: string): WhatToPlay["subject"] {
  return { type: "scale", tonic: parseNote(tonic)!, kind: kindById(kind)! };
}

function chord(root: string, id: string): WhatToPlay["subject"] {
  return { type: "chord", root: parseNote(root)!, chord: id, inversion: 0, broken: false };
}

function named(name: string): Temperament {
  const read = readTemperament(name);
  if (!read.ok) throw new Error(read.reason);
  return read.temperament;
}

function names(intervals: readonly FromPure[]): string {
  return intervals.map(({ lower, upper }) => printName(lower) + printName(upper)).join(" ");
}

/** The intervals that are looked at, thirds and then fifths. */
function check(subject: WhatToPlay["subject"], thirds: string, fifths: string): void {
  const found = intonationOf(subject, { id: "equal" })!;
  expect([names(found.thirds), names(found.fifths)]).toEqual([thirds, fifths]);
}

// Common practice, no source.
describe("the thirds and fifths of", () => {
  test("a major scale: a third on each degree, a fifth on all but the seventh", () =>
    check(scale("C", "major"), "CE DF EG FA GB AC BD", "CG DA EB FC GD AE"));

  test("a melodic minor scale: those of both its forms, once each", () =>
    check(scale("D", "melodic minor"), "DF EG FA GB GBb AC# AC BbD BD CE C#E", "DA EB FC GD AE BbF CG"));

  test("a harmonic minor scale: its augmented second is no third", () =>
    check(scale("F", "harmonic minor"), "FAb GBb AbC BbDb CE DbF EG", "FC BbF CG DbAb"));

  test("a pentatonic scale", () => check(scale("F", "major pentatonic"), "FA AC DF", "FC GD CG DA"));

  test("a whole-tone scale: no fifths", () => check(scale("C", "whole-tone"), "CE DF# EG# F#A#", ""));

  test("chords", () => {
    check(chord("G", "minor"), "GBb BbD", "GD");
    check(chord("A", "dominant seventh"), "AC# C#E EG", "AE");
    check(chord("B", "diminished seventh"), "BD DF FAb", "");
  });
});

test("a scale in cents does not keep to the keys, so nothing is told of it", () => {
  const read = declaredKind("even", "cents 0 150 300 500 700 850 1000");
  if (!read.ok) throw new Error(read.reason);
  expect(intonationOf({ type: "scale", tonic: parseNote("A")!, kind: read.kind }, { id: "equal" })).toBeUndefined();
});

describe("their distance from pure", () => {
  // Worked out from the cents of test/reference/temperaments.json, which are to three decimals.
  const RATIOS: Readonly<Record<number, number>> = { 3: 6 / 5, 4: 5 / 4, 7: 3 / 2 };
  const cases = [
    ["Vallotti", scale("E", "major")],
    ["Vallotti", scale("D", "melodic minor")],
    ["Werckmeister III", scale("Ab", "major")],
    ["quarter-comma meantone", scale("F", "harmonic minor")],
    ["quarter-comma meantone", chord("E", "dominant seventh")],
  ] as const;
  test.each(cases)("%s, case %#", (name, subject) => {
    const { cents } = reference.temperaments[name];
    const { thirds, fifths } = intonationOf(subject, named(name))!;
    expect(thirds.length + fifths.length).toBeGreaterThan(3);
    for (const { lower, upper, cents: found } of [...thirds, ...fifths]) {
      const semitones = (pitchClass(upper) - pitchClass(lower) + 12) % 12;
      const sounds = (cents[pitchClass(upper)]! - cents[pitchClass(lower)]! + 1200) % 1200;
      expect(found, printName(lower) + printName(upper)).toBeCloseTo(sounds - centsOf(RATIOS[semitones]!), 2);
    }
  });

  test("just intonation is pure on its own tonic's triad", () => {
    const { thirds, fifths } = intonationOf(chord("E", "major"), named("just on E"))!;
    for (const { cents } of [...thirds, ...fifths]) expect(cents).toBeCloseTo(0, 9);
  });

  test("a transposing instrument sounds other keys: C major on a clarinet in B flat is B flat major", () => {
    const down: Interval = { steps: -1, semitones: -2 };
    const written = intonationOf(scale("C", "major"), named("Vallotti"), down)!;
    const sounds = intonationOf(scale("Bb", "major"), named("Vallotti"))!;
    expect(names(written.fifths)).toBe("CG DA EB FC GD AE");
    expect(written.fifths.map(({ cents }) => cents)).toEqual(sounds.fifths.map(({ cents }) => cents));
    expect(written.thirds.map(({ cents }) => cents)).toEqual(sounds.thirds.map(({ cents }) => cents));
  });
});
