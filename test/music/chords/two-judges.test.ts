import teoria, { type Note as TeoriaNote } from "teoria";
import { Chord, Interval, Key, Midi, Scale, Note as Tonal } from "tonal";
import { describe, expect, test } from "vitest";
import { chordNames } from "../../../server/music/chords/chord.ts";
import { CHORDS } from "../../../server/music/chords/chord-kinds.ts";
import {
  LETTERS,
  midi,
  type Note,
  type NoteName,
  printName,
  printNote,
  transposed,
} from "../../../server/music/notes/note.ts";
import { declaredKind } from "../../../server/music/scales/declared-kind.ts";
import type { ScaleKind } from "../../../server/music/scales/kind.ts";
import { kindById } from "../../../server/music/scales/kinds.ts";
import { chromaticSpellings, scaleNames } from "../../../server/music/scales/scale.ts";
import { keySignature } from "../../../server/music/scales/signature.ts";
import { hertz } from "../../../server/music/tuning/temperament.ts";
import { CHORD_SYMBOLS } from "./chord-symbols.ts";

/**
 * Our theory before two general-purpose libraries at once, npm `tonal` and npm `teoria`, which were written apart from
 * each other: wherever both cover a thing, all three say the same. Where they do not, the test says who says what, and
 * why we side as we do.
 */

/** Every letter with up to two accidentals: all that may be typed as a tonic. */
const TONICS: readonly NoteName[] = LETTERS.flatMap((letter) => [-2, -1, 0, 1, 2].map((alter) => ({ letter, alter })));

/** By its letter and its accidentals: written out, teoria knows no third accidental. */
function nameBy(note: TeoriaNote): string {
  return printName({ letter: note.name().toUpperCase() as NoteName["letter"], alter: note.accidentalValue() });
}

/** teoria writes a double sharp as `x`. */
function atTeoria(name: string): TeoriaNote {
  return teoria.note(name.replace("##", "x"));
}

interface Said {
  readonly ours: readonly string[];
  readonly tonal: readonly string[];
  readonly teoria: readonly string[];
}

/** What each says on all 35 tonics; the tonics on which they are not of one mind, with all three. */
function check(saidOn: (tonic: NoteName, name: string) => Said): readonly string[] {
  return TONICS.flatMap((tonic) => {
    const name = printName(tonic);
    const said = Object.entries(saidOn(tonic, name)).map(([who, names]) => [who, names.join(" ")] as const);
    expect(said[0]![1]).not.toBe("");
    return new Set(said.map(([, names]) => names)).size === 1 ? [] : [`${name}: ${said.join("; ")}`];
  });
}

function scaleSaid(kind: ScaleKind, tonal: string, named: string): (tonic: NoteName, name: string) => Said {
  return (tonic, name) => ({
    ours: scaleNames(tonic, kind, "up").map(printName),
    tonal: Scale.get(`${name} ${tonal}`).notes,
    teoria: atTeoria(name).scale(named).notes().map(nameBy),
  });
}

describe("scales on all 35 tonics", () => {
  test.each([
    ["major", "major", "major"],
    ["natural minor", "minor", "minor"],
    ["harmonic minor", "harmonic minor", "harmonicminor"],
    ["melodic minor", "melodic minor", "melodicminor"],
    ["ionian", "ionian", "ionian"],
    ["dorian", "dorian", "dorian"],
    ["phrygian", "phrygian", "phrygian"],
    ["lydian", "lydian", "lydian"],
    ["mixolydian", "mixolydian", "mixolydian"],
    ["aeolian", "aeolian", "aeolian"],
    ["locrian", "locrian", "locrian"],
    ["major pentatonic", "major pentatonic", "majorpentatonic"],
    ["minor pentatonic", "minor pentatonic", "minorpentatonic"],
  ])("%s", (id, tonal, named) => expect(check(scaleSaid(kindById(id)!, tonal, named))).toEqual([]));

  test("whole-tone: both put the diminished third below the octave; so do we where no double accidental comes of it, and elsewhere the same pitches with fewer", () => {
    const said = scaleSaid(kindById("whole-tone")!, "whole tone", "wholetone");
    const doubles = (names: readonly string[]) => names.filter((name) => /##|bb/u.test(name)).length;
    let moved = 0;
    for (const tonic of TONICS) {
      const { ours, tonal, teoria: third } = said(tonic, printName(tonic));
      expect(ours.map(Tonal.chroma)).toEqual(tonal.map(Tonal.chroma));
      expect(third).toEqual(tonal);
      if (doubles(tonal) === 0) expect(ours).toEqual(tonal);
      else if (doubles(ours) < doubles(tonal)) moved++;
      if (Math.abs(tonic.alter) <= 1) expect(doubles(ours), printName(tonic)).toBe(0);
    }
    expect(moved).toBeGreaterThan(10);
  });

  test("a declared one, the double harmonic", () => {
    const read = declaredKind("double harmonic", "1 b2 3 4 5 b6 7");
    if (!read.ok) throw new Error(read.reason);
    expect(check(scaleSaid(read.kind, "double harmonic major", "doubleharmonic"))).toEqual([]);
  });

  test("blues: both have the lowered fifth each way; ours is raised going up, as a note that goes on to the fifth is, and theirs coming down", () => {
    const blues = kindById("blues")!;
    expect(check(scaleSaid(blues, "blues", "blues"))).toHaveLength(35);
    const falling = (tonic: NoteName, name: string): Said => ({
      ...scaleSaid(blues, "blues", "blues")(tonic, name),
      ours: scaleNames(tonic, blues, "down").map(printName),
    });
    expect(check(falling)).toEqual([]);
  });

  test("chromatic: tonal has the lowered fifth (C: Gb), teoria the raised fourth (F#); we side with teoria, as the harmonic form keeps to the nearest keys, and the dominant's major scale has it", () => {
    const said = (tonic: NoteName, name: string): Said => ({
      ours: chromaticSpellings(tonic).harmonic.up.map(printName),
      tonal: Scale.get(`${name} chromatic`).notes,
      teoria: atTeoria(name).scale("harmonicchromatic").notes().map(nameBy),
    });
    expect(check(said)).toHaveLength(35);
    const withRaisedFourth = (tonic: NoteName, name: string): Said => {
      const { ours, tonal, teoria } = said(tonic, name);
      expect(tonal[6]).toBe(Tonal.transpose(name, "5d"));
      return { ours, teoria, tonal: tonal.with(6, Tonal.transpose(name, "4A")) };
    };
    expect(check(withRaisedFourth)).toEqual([]);
  });
});

describe("chords on all 35 roots", () => {
  test.each(CHORDS.filter(({ id }) => id in CHORD_SYMBOLS))("$id", (chord) => {
    const symbol = CHORD_SYMBOLS[chord.id]!;
    expect(
      check((root, name) => ({
        ours: chordNames(root, chord).map(printName),
        tonal: Chord.getChord(symbol, name).notes,
        teoria: atTeoria(name).chord(symbol).notes().map(nameBy),
      })),
    ).toEqual([]);
  });
  test("each of the nine is there", () =>
    expect(Object.keys(CHORD_SYMBOLS).every((id) => CHORDS.some((chord) => chord.id === id))).toBe(true));
});

/**
 * The intervals up to an octave, and compound ones that instruments are written at: `-2M` of tonal is teoria's `M-2`.
 */
const INTERVALS: readonly (readonly [tonal: string, teoria: string])[] = [
  ..."1P 2m 2M 3m 3M 4P 4A 5d 5P 6m 6M 7m 7M 8P 9M 13M".split(" "),
  ..."-2m -2M -3m -3M -4P -5P -6m -6M -7m -7M -8P -9M -13M".split(" "),
].map((name) => [name, name.replace(/^(-?)(\d+)(\w)$/, "$3$1$2")]);

/** Tonal's interval as our letters and semitones. */
function ourInterval(tonal: string) {
  const { semitones, step, oct, dir } = Interval.get(tonal);
  return { steps: dir! * (step! + 7 * Math.abs(oct!)), semitones: semitones! };
}

test("a note moved by an interval, up and down", () => {
  for (const [tonal, named] of INTERVALS) {
    const differing = check((tonic, name) => {
      const moved = atTeoria(`${name}4`).interval(named);
      return {
        ours: [printNote(transposed({ ...tonic, octave: 4 }, ourInterval(tonal)))],
        tonal: [Tonal.transpose(`${name}4`, tonal)],
        teoria: [nameBy(moved) + moved.octave()],
      };
    });
    expect(differing, tonal).toEqual([]);
  }
});

const OCTAVES = [...Array(9).keys()];

test("MIDI numbers, and frequencies in equal temperament at any pitch of A, to a millionth of a hertz", () => {
  for (const tonic of TONICS)
    for (const octave of OCTAVES) {
      const note: Note = { ...tonic, octave };
      const name = printNote(note);
      expect([Tonal.midi(name), atTeoria(name).midi()], name).toEqual([midi(note), midi(note)]);
      for (const a of [392, 415, 430, 440, 442, 466]) {
        expect(Midi.midiToFreq(midi(note), a), `${name} at ${a}`).toBeCloseTo(hertz(note, 0, a), 6);
        expect(atTeoria(name).fq(a), `${name} at ${a}`).toBeCloseTo(hertz(note, 0, a), 6);
      }
    }
});

test("key signatures: tonal counts their accidentals; by teoria they are the altered notes of the scale", () => {
  for (const [id, named] of [
    ["major", "major"],
    ["natural minor", "minor"],
  ] as const) {
    for (const tonic of TONICS) {
      const name = printName(tonic);
      const signature = keySignature(tonic, kindById(id)!)!;
      const counted = id === "major" ? Key.majorKey(name).alteration : Key.minorKey(name).alteration;
      const altered = atTeoria(name)
        .scale(named)
        .notes()
        .filter((note) => note.accidentalValue() !== 0)
        .map(nameBy);
      expect(signature.fifths, `${name} ${id}`).toBe(counted);
      expect(signature.accidentals.map(printName).sort(), `${name} ${id}`).toEqual(altered.sort());
    }
  }
});
