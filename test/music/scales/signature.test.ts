import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chordById } from "../../../server/music/chords/chord.ts";
import { chordSignature, isTheoreticalChord, usualRoot } from "../../../server/music/chords/chord-signature.ts";
import {
  fifthsOf,
  LETTERS,
  type NoteName,
  parseNote,
  pitchClass,
  printName,
} from "../../../server/music/notes/note.ts";
import { declaredKind } from "../../../server/music/scales/declared-kind.ts";
import type { ScaleKind } from "../../../server/music/scales/kind.ts";
import { KINDS, kindById } from "../../../server/music/scales/kinds.ts";
import { scaleNames } from "../../../server/music/scales/scale.ts";
import {
  describeFifths,
  isTheoretical,
  keySignature,
  parallelSignature,
  signatureAccidentals,
  usualKey,
} from "../../../server/music/scales/signature.ts";
import modes from "../../reference/modes.json" with { type: "json" };
import scales from "../../reference/scales.json" with { type: "json" };

const tonic = (text: string) => parseNote(text)!;
const kind = (id: string) => kindById(id)!;
const TONICS: readonly NoteName[] = LETTERS.flatMap((letter) => [-2, -1, 0, 1, 2].map((alter) => ({ letter, alter })));

/** A key and its signature as one line: `2 sharps: F# C#`. */
function check(on: string, of: string | ScaleKind, expected: string): void {
  const signature = keySignature(tonic(on), typeof of === "string" ? kind(of) : of);
  const shown =
    signature &&
    `${describeFifths(signature.fifths)}: ${signature.accidentals.map(printName).join(" ")}`.replace(/: $/u, "");
  expect(shown ?? "none", `${on} ${typeof of === "string" ? of : of.id}`).toBe(expected);
}

test("the thirty keys of test/reference/keysignatures.tsv", () => {
  const text = readFileSync(new URL("../../reference/keysignatures.tsv", import.meta.url), "utf8");
  const rows = text.trim().split("\n").slice(1);
  for (const row of rows) {
    const [on, mode, fifths, accidentals] = row.split("\t");
    const signature = keySignature(tonic(on!), kind(mode === "major" ? "major" : "natural minor"));
    expect(signature?.fifths, row).toBe(Number(fifths));
    expect(signature?.accidentals.map(printName).join(" ") || "-", row).toBe(accidentals);
  }
  expect(rows).toHaveLength(30);
});

test("the keys of test/reference/scales.json, in each form of minor", () => {
  for (const { tonic: on, mode, fifths, signature } of [...scales.major, ...scales.minor]) {
    for (const id of mode === "major" ? ["major"] : ["natural minor", "harmonic minor", "melodic minor"]) {
      const found = keySignature(tonic(on), kind(id))!;
      const told = { fifths: found.fifths, accidentals: found.accidentals.map(printName) };
      expect(told, `${on} ${id}`).toEqual({ fifths, accidentals: signature });
    }
  }
});

test("every mode of test/reference/modes.json, and its parallel by the convention told there", () => {
  for (const { tonic: on, mode, fifths_modal } of modes.modes) {
    expect(keySignature(tonic(on), kind(mode))?.fifths, `${on} ${mode}`).toBe(fifths_modal);
    const majorSide = ["ionian", "lydian", "mixolydian"].includes(mode);
    const parallel = keySignature(tonic(on), kind(majorSide ? "major" : "natural minor"));
    expect(parallelSignature(tonic(on), kind(mode)), `${on} ${mode}`).toEqual(parallel);
  }
});

describe("signatures of other scales", () => {
  test("pentatonic and blues scales have their parent key's", () => {
    check("D", "major pentatonic", "2 sharps: F# C#");
    check("D", "minor pentatonic", "1 flat: Bb");
    check("C", "blues", "3 flats: Bb Eb Ab");
    check("C", "major blues", "no accidentals");
  });
  test("chromatic, whole-tone and octatonic scales have none", () => {
    for (const id of ["chromatic", "whole-tone", "half-whole", "whole-half", "octatonic"]) check("D", id, "none");
  });
  test("beyond seven, doubles take their letter's place", () => {
    check("G#", "major", "8 sharps: F## C# G# D# A# E# B#");
    check("Fb", "major", "8 flats: Bbb Eb Ab Db Gb Cb Fb");
    check("Fb", "lydian", "7 flats: Bb Eb Ab Db Gb Cb Fb");
    check("B##", "major", "19 sharps: F### C### G### D### A### E## B##");
  });
  test("a declared scale has one when its seven notes are those of a major key", () => {
    const declared = (text: string) => {
      const reading = declaredKind("own", text);
      if (!reading.ok) throw new Error(reading.reason);
      return reading.kind;
    };
    check("D", declared("1 2 b3 4 5 6 b7"), "no accidentals");
    check("D", declared("1 2 3 #4 5 6 7"), "3 sharps: F# C# G#");
    check("D", declared("1 b2 3 4 5 b6 7"), "none");
    check("D", declared("1 2 3 5 6"), "none");
  });
});

test("a signature turns the letters of a major, natural minor or modal scale into its notes", () => {
  const raised = ["harmonic minor", "melodic minor", "jazz minor"];
  const kinds = KINDS.filter(
    ({ id, family, otherSignatures: others }) => family === "seven" && !others && !raised.includes(id),
  );
  fc.assert(
    fc.property(fc.constantFrom(...TONICS), fc.constantFrom(...kinds), (on, of) => {
      const altered = scaleNames(on, of, "up").filter(({ alter }) => alter !== 0);
      const { fifths, accidentals } = keySignature(on, of)!;
      expect(new Set(accidentals.map(printName))).toEqual(new Set(altered.map(printName)));
      expect(altered.reduce((sum, { alter }) => sum + alter, 0)).toBe(fifths);
      expect(signatureAccidentals(fifths)).toEqual(accidentals);
    }),
    { seed: 31 },
  );
});

describe("theoretical keys and the usual ones (common practice: at most seven accidentals)", () => {
  const usual = (on: string, id: string, expected: string, theoretical = true) => {
    expect(printName(usualKey(tonic(on), kind(id))), `${on} ${id}`).toBe(expected);
    expect(isTheoretical(tonic(on), kind(id)), `${on} ${id}`).toBe(theoretical);
  };
  test("of major, minor and modes", () => {
    usual("G#", "major", "Ab");
    usual("Fb", "major", "E");
    usual("Db", "natural minor", "C#");
    usual("D#", "major", "Eb");
    usual("E#", "harmonic minor", "F");
    usual("Fb", "lydian", "E", false);
    usual("C#", "major", "Db", false);
    usual("Cb", "major", "B", false);
    usual("F#", "major", "F#", false);
    usual("Gb", "major", "Gb", false);
    usual("E##", "major", "F#");
    usual("Abb", "major", "G");
  });
  test("of scales without a key, judged by their tonic", () => {
    usual("C#", "chromatic", "Db", false);
    usual("E#", "chromatic", "F");
    usual("Fb", "whole-tone", "E");
    usual("B#", "octatonic", "C");
  });
  test("for all 35 tonics the usual key sounds the same, is not theoretical, and is its own usual key", () => {
    for (const on of TONICS) {
      for (const of of KINDS) {
        const better = usualKey(on, of);
        const label = `${printName(on)} ${of.id} to ${printName(better)}`;
        expect(pitchClass(better), label).toBe(pitchClass(on));
        expect(isTheoretical(better, of), label).toBe(false);
        expect(usualKey(better, of), label).toEqual(better);
        if (of.signature) {
          expect(Math.abs(fifthsOf(better) + of.signature.own), label).toBeLessThanOrEqual(6);
        }
      }
    }
  });
});

test("an arpeggio carries its key's signature; the even chords have none (common practice, no source)", () => {
  const fifths = (root: string, id: string, key?: string) =>
    chordSignature(tonic(root), chordById(id)!, key === undefined ? undefined : tonic(key))?.fifths;
  expect(fifths("D", "minor")).toBe(-1);
  expect(fifths("D", "major")).toBe(2);
  expect(fifths("A", "dominant seventh")).toBe(2);
  expect(fifths("A", "dominant seventh", "D")).toBe(2);
  expect(fifths("B", "diminished")).toBe(0);
  expect(fifths("B", "half-diminished seventh")).toBe(0);
  expect(fifths("F", "major seventh")).toBe(-1);
  expect(fifths("E", "minor seventh")).toBe(1);
  expect(fifths("C", "augmented")).toBeUndefined();
  expect(fifths("C", "diminished seventh")).toBeUndefined();
});

test("a theoretical arpeggio has a usual root", () => {
  const usual = (root: string, id: string) => {
    const chord = chordById(id)!;
    return [isTheoreticalChord(tonic(root), chord), printName(usualRoot(tonic(root), chord))];
  };
  expect(usual("G#", "major")).toEqual([true, "Ab"]);
  expect(usual("D#", "dominant seventh")).toEqual([true, "Eb"]);
  expect(usual("G#", "dominant seventh")).toEqual([false, "Ab"]);
  expect(usual("Fb", "diminished seventh")).toEqual([true, "E"]);
});

test("how many accidentals, in words", () => {
  expect([6, 1, 0, -1, -3].map(describeFifths)).toEqual(["6 sharps", "1 sharp", "no accidentals", "1 flat", "3 flats"]);
});
