import { Key, Mode, Note } from "tonal";
import { describe, expect, test } from "vitest";
import { chordById, chordNames } from "../../../server/music/chords/chord.ts";
import { collectionOfChord } from "../../../server/music/chords/chord-collection.ts";
import { CHORDS } from "../../../server/music/chords/chord-kinds.ts";
import {
  LETTERS,
  type NoteName,
  parseNote,
  pitchClass,
  printName,
  sameName,
} from "../../../server/music/notes/note.ts";
import { type Collection, collectionOfScale } from "../../../server/music/scales/collection.ts";
import { declaredKind } from "../../../server/music/scales/declared-kind.ts";
import type { ScaleKind } from "../../../server/music/scales/kind.ts";
import { KINDS, kindById } from "../../../server/music/scales/kinds.ts";
import {
  otherSignature,
  parallelOf,
  type RelatedScale,
  relativeOf,
} from "../../../server/music/scales/related-keys.ts";
import { scaleNames } from "../../../server/music/scales/scale.ts";
import { keySignature } from "../../../server/music/scales/signature.ts";
import modes from "../../reference/modes.json" with { type: "json" };
import reference from "../../reference/scales-other-and-arpeggios.json" with { type: "json" };

const TONICS: readonly NoteName[] = LETTERS.flatMap((letter) => [-1, 0, 1].map((alter) => ({ letter, alter })));
const shown = (found: RelatedScale | null): string => (found ? `${printName(found.tonic)} ${found.kind.id}` : "none");

/** The relative and the parallel scale, in words. */
function check(tonic: string, kind: string, relative: string, parallel: string): void {
  const [name, of] = [parseNote(tonic)!, kindById(kind)!];
  expect([shown(relativeOf(name, of)), shown(parallelOf(name, of))], `${tonic} ${kind}`).toEqual([relative, parallel]);
}

describe("relative and parallel keys", () => {
  // Against npm `tonal` (6.4.3), packages "key" and "mode".
  test("the relative minor of every major key, and the relative major of every minor one", () => {
    for (const tonic of TONICS) {
      const name = printName(tonic);
      expect(shown(relativeOf(tonic, kindById("major")!))).toBe(`${Key.majorKey(name).minorRelative} natural minor`);
      for (const minor of ["natural minor", "harmonic minor", "melodic minor", "jazz minor", "aeolian"])
        expect(shown(relativeOf(tonic, kindById(minor)!))).toBe(`${Key.minorKey(name).relativeMajor} major`);
    }
  });

  test("of the other modes, the major key with the same notes", () => {
    for (const mode of ["dorian", "phrygian", "lydian", "mixolydian", "locrian"])
      for (const tonic of TONICS)
        expect(shown(relativeOf(tonic, kindById(mode)!))).toBe(
          `${Mode.relativeTonic("major", mode, printName(tonic))} major`,
        );
  });

  test("parallel: the other key on the same tonic", () => {
    check("D", "major", "B natural minor", "D natural minor");
    check("D", "harmonic minor", "F major", "D major");
    check("D", "dorian", "C major", "D natural minor");
    check("F", "lydian", "C major", "F major");
    check("C", "ionian", "A natural minor", "C natural minor");
  });

  test("pentatonic and blues scales have their own pairs, with the same notes", () => {
    check("C", "major pentatonic", "A minor pentatonic", "C minor pentatonic");
    check("C", "blues", "Eb major blues", "C major blues");
    for (const [major, minor] of [
      ["major pentatonic", "minor pentatonic"],
      ["major blues", "blues"],
    ] as const)
      for (const tonic of TONICS) {
        const relative = relativeOf(tonic, kindById(minor)!)!;
        expect(relative.kind.id).toBe(major);
        expect(pitches(scaleNames(relative.tonic, relative.kind, "up"))).toEqual(
          pitches(scaleNames(tonic, kindById(minor)!, "up")),
        );
      }
  });

  test("what belongs to no key has none", () => {
    for (const id of ["whole-tone", "half-whole", "whole-half", "octatonic", "chromatic"])
      check("D", id, "none", "none");
  });

  test("a relative of a relative is the scale itself, or its natural form", () => {
    for (const kind of ["major", "natural minor", "major pentatonic", "minor pentatonic", "blues", "major blues"])
      for (const tonic of TONICS) {
        const there = relativeOf(tonic, kindById(kind)!)!;
        const back = relativeOf(there.tonic, there.kind)!;
        expect([sameName(back.tonic, tonic), back.kind.id]).toEqual([true, kind]);
      }
  });

  test("a declared scale with the notes of a major key has that key", () => {
    const reading = declaredKind("own", "1 2 b3 4 5 6 b7");
    if (!reading.ok) throw new Error(reading.reason);
    expect(shown(relativeOf(parseNote("D")!, reading.kind))).toBe("C major");
  });
});

// test/reference/modes.json: "lydian, mixolydian: write the parallel major signature …; dorian, phrygian, (locrian):
// parallel minor".
test("both signatures of a mode: its own, and that of its parallel key", () => {
  for (const { mode, tonic, fifths_modal } of modes.modes) {
    const [name, kind] = [parseNote(tonic)!, kindById(mode)!];
    const parallel = ["lydian", "mixolydian"].includes(mode) ? "ionian" : "aeolian";
    const expected = modes.modes.find((each) => each.mode === parallel && each.tonic === tonic)!.fifths_modal;
    expect(keySignature(name, kind)!.fifths).toBe(fifths_modal);
    if (["ionian", "aeolian"].includes(mode)) expect(otherSignature(name, kind)).toBeNull();
    else expect(otherSignature(name, kind)!.fifths, `${tonic} ${mode}`).toBe(expected);
  }
});

function pitches(names: readonly NoteName[]): number[] {
  return [...new Set(names.map(pitchClass))].sort((a, b) => a - b);
}

/** As the reference writes them: `{0,2,4,6,8,10}`. */
const asSet = ({ pitchClasses }: Collection): string => `{${pitchClasses.join(",")}}`;

describe("collections, against test/reference/scales-other-and-arpeggios.json", () => {
  const { collections } = reference;
  test.each([
    ["whole-tone", collections.whole_tone],
    ["half-whole", collections.octatonic],
    ["whole-half", collections.octatonic],
    ["octatonic", collections.octatonic],
  ] as const)("%s: on every tonic one of the few, by its number there", (id, sets) => {
    for (const tonic of TONICS) {
      const found = collectionOfScale(tonic, kindById(id)!)!;
      expect(asSet(found), printName(tonic)).toBe(sets[found.number - 1]);
      expect(found.of).toBe(sets.length);
      checkSameFrom(tonic, found, (each) => scaleNames(each, kindById(id)!, "up"));
    }
  });

  test("the diminished sevenths", () => {
    const chord = chordById("diminished seventh")!;
    for (const tonic of TONICS) {
      const found = collectionOfChord(tonic, chord)!;
      expect(asSet(found), printName(tonic)).toBe(collections.diminished_seventh[found.number - 1]);
      checkSameFrom(tonic, found, (each) => chordNames(each, chord));
    }
  });

  /**
   * Every other tonic that is named has the same notes, each is written as in the scale, and there is no further one.
   */
  function checkSameFrom(tonic: NoteName, found: Collection, notesOn: (tonic: NoteName) => readonly NoteName[]): void {
    for (const other of found.sameFrom) expect(pitches(notesOn(other))).toEqual(found.pitchClasses);
    const all = Array.from({ length: 12 }, (_, pitch) => parseNote(Note.fromMidiSharps(60 + pitch).slice(0, -1))!);
    const same = all.filter((each) => asText(notesOn(each)) === asText(notesOn(tonic)));
    expect(found.sameFrom).toHaveLength(same.length - 1);
    for (const mark of found.with) expect(found.pitchClasses).toContain(pitchClass(mark));
  }

  test("what marks one is in no other", () => {
    for (const id of ["whole-tone", "half-whole"]) {
      const all = TONICS.map((tonic) => collectionOfScale(tonic, kindById(id)!)!);
      for (const { number, with: marks } of all)
        for (const other of all.filter((each) => each.number !== number))
          expect(marks.every((mark) => other.pitchClasses.includes(pitchClass(mark)))).toBe(false);
    }
  });

  test("scales and chords that are not symmetrical are in none", () => {
    const others = (kinds: readonly ScaleKind[]) =>
      kinds.filter(({ family }) => family !== "whole-tone" && family !== "octatonic");
    for (const kind of others(KINDS)) expect(collectionOfScale(parseNote("D")!, kind)).toBeNull();
    for (const chord of CHORDS.filter(({ id }) => id !== "diminished seventh"))
      expect(collectionOfChord(parseNote("D")!, chord)).toBeNull();
  });
});

function asText(names: readonly NoteName[]): string {
  return pitches(names).join(" ");
}
