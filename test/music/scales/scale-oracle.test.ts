import fc from "fast-check";
import { Chord, Scale } from "tonal";
import { describe, expect, test } from "vitest";
import { chordNames } from "../../../server/music/chords/chord.ts";
import { CHORDS } from "../../../server/music/chords/chord-kinds.ts";
import { LETTERS, midi, type NoteName, pitchClass, printName, sameName } from "../../../server/music/notes/note.ts";
import { KINDS, kindById } from "../../../server/music/scales/kinds.ts";
import { chromaticSpellings, degreeNote, scaleNames } from "../../../server/music/scales/scale.ts";
import { stepsOf } from "../../../server/music/scales/steps.ts";
import { CHORD_SYMBOLS } from "../chords/chord-symbols.ts";

/** Every letter with up to two accidentals: all that may be typed as a tonic. */
const TONICS: readonly NoteName[] = LETTERS.flatMap((letter) => [-2, -1, 0, 1, 2].map((alter) => ({ letter, alter })));
const text = (names: readonly NoteName[]) => names.map(printName).join(" ");

/** Our notes for all 35 tonics against those of the oracle (npm `tonal`); the tonics on which they differ. */
function check(ours: (tonic: NoteName) => readonly NoteName[], oracle: (tonic: string) => readonly string[]): string[] {
  return TONICS.filter((tonic) => text(ours(tonic)) !== oracle(printName(tonic)).join(" ")).map(printName);
}

describe("scales on all 35 tonics agree with tonal", () => {
  const same = [
    "major",
    "harmonic minor",
    "ionian",
    "dorian",
    "phrygian",
    "lydian",
    "mixolydian",
    "aeolian",
    "locrian",
  ];
  const named: Readonly<Record<string, string>> = {
    "natural minor": "minor",
    "melodic minor": "melodic minor",
    "jazz minor": "melodic minor",
    "major pentatonic": "major pentatonic",
    "minor pentatonic": "minor pentatonic",
    "major blues": "major blues",
    "half-whole": "half-whole diminished",
    "whole-half": "diminished",
    "harmonic major": "harmonic major",
    "double harmonic": "double harmonic major",
    "lydian dominant": "lydian dominant",
    "phrygian dominant": "phrygian dominant",
    "hungarian minor": "hungarian minor",
    altered: "altered",
    "bebop dominant": "bebop",
    "bebop major": "bebop major",
  };
  const pairs = [...same.map((id) => [id, id] as const), ...Object.entries(named)];
  test.each(pairs)("%s", (id, oracleName) => {
    const kind = kindById(id)!;
    expect(Scale.get(`C ${oracleName}`).notes).toHaveLength(kind.degrees.length);
    expect(
      check(
        (tonic) => scaleNames(tonic, kind, "up"),
        (tonic) => Scale.get(`${tonic} ${oracleName}`).notes,
      ),
    ).toEqual([]);
  });
  test("whole-tone: ours is another one than tonal's only where that has a double accidental", () => {
    const differ = check(
      (tonic) => scaleNames(tonic, kindById("whole-tone")!, "up"),
      (tonic) => Scale.get(`${tonic} whole tone`).notes,
    );
    const doubled = TONICS.map(printName).filter((on) => /##|bb/u.test(Scale.get(`${on} whole tone`).notes.join(" ")));
    expect(doubled).toEqual(expect.arrayContaining(differ));
    expect(differ.length).toBeGreaterThan(10);
  });
  test("blues: tonal has the lowered fifth both ways, which is our falling form", () => {
    const blues = kindById("blues")!;
    expect(
      check(
        (tonic) => scaleNames(tonic, blues, "down"),
        (tonic) => Scale.get(`${tonic} blues`).notes,
      ),
    ).toEqual([]);
  });
  test("chromatic: tonal is harmonic but for one note, which it has as a lowered fifth", () => {
    const withLoweredFifth = (tonic: NoteName) => {
      const { harmonic, melodic } = chromaticSpellings(tonic);
      return harmonic.up.map((name, index) => (index === 6 ? melodic.down[6]! : name));
    };
    expect(check(withLoweredFifth, (tonic) => Scale.get(`${tonic} chromatic`).notes)).toEqual([]);
  });
});

describe("chords on all 35 roots agree with tonal", () => {
  test.each(CHORDS)("$id", (chord) => {
    expect(
      check(
        (root) => chordNames(root, chord),
        (root) => Chord.getChord(CHORD_SYMBOLS[chord.id]!, root).notes,
      ),
    ).toEqual([]);
  });
});

const anyTonic = fc.constantFrom(...TONICS);
const anyKind = fc.constantFrom(...KINDS);

test("every scale rises, repeats at the octave, and its steps add up to twelve semitones", () => {
  fc.assert(
    fc.property(anyTonic, anyKind, fc.integer({ min: -20, max: 20 }), fc.boolean(), (name, kind, degree, falling) => {
      const tonic = { ...name, octave: 4 };
      const here = degreeNote(tonic, kind, degree, falling);
      expect(midi(degreeNote(tonic, kind, degree + 1, falling))).toBeGreaterThan(midi(here));
      const octave = degreeNote(tonic, kind, degree + kind.degrees.length, falling);
      expect(octave).toEqual({ ...here, octave: here.octave + 1 });
      expect(stepsOf(kind, falling ? "down" : "up").reduce((sum, step) => sum + step, 0)).toBe(12);
    }),
    { seed: 21 },
  );
});

test("seven-note scales have each letter once, in order from the tonic", () => {
  fc.assert(
    fc.property(anyTonic, fc.constantFrom(...KINDS.filter(({ family }) => family === "seven")), (tonic, kind) => {
      const from = LETTERS.indexOf(tonic.letter);
      const letters = LETTERS.map((_, index) => LETTERS[(from + index) % 7]);
      expect(scaleNames(tonic, kind, "up").map(({ letter }) => letter)).toEqual(letters);
      expect(scaleNames(tonic, kind, "down").map(({ letter }) => letter)).toEqual(letters);
    }),
    { seed: 22 },
  );
});

test("modes are the major scale begun elsewhere", () => {
  const major = kindById("major")!;
  const order = ["ionian", "dorian", "phrygian", "lydian", "mixolydian", "aeolian", "locrian"];
  for (const tonic of TONICS) {
    const names = scaleNames(tonic, major, "up");
    for (const [index, id] of order.entries()) {
      const rotated = [...names.slice(index), ...names.slice(0, index)];
      expect(text(scaleNames(names[index]!, kindById(id)!, "up"))).toBe(text(rotated));
    }
  }
});

test("a scale that differs going down keeps the number of its notes, and its tonic", () => {
  for (const kind of KINDS.filter(({ falling }) => falling)) {
    expect(kind.falling).toHaveLength(kind.degrees.length);
    expect(kind.falling![0]).toEqual({ step: 0, semitones: 0 });
  }
});

test("kinds have distinct ids and names, and the chromatic scale both ways sounds all twelve keys", () => {
  const names = KINDS.flatMap((kind) => kind.names);
  expect(new Set(names).size).toBe(names.length);
  expect(new Set(KINDS.map(({ id }) => id)).size).toBe(KINDS.length);
  expect(KINDS.every(({ id, names: [first] }) => id === first)).toBe(true);
  for (const tonic of TONICS) {
    const { harmonic, melodic } = chromaticSpellings(tonic);
    for (const list of [harmonic.up, harmonic.down, melodic.up, melodic.down]) {
      expect(list.map((name) => (pitchClass(name) - pitchClass(tonic) + 12) % 12)).toEqual([...Array(12).keys()]);
      expect(sameName(list[0]!, tonic)).toBe(true);
    }
  }
});
