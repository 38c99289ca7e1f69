import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Note, nameAtFifths, parseNote, printName } from "../../../server/music/notes/note.ts";
import { likelyScales } from "../../../server/music/scales/likely-scales.ts";
import { scaleNames } from "../../../server/music/scales/scale.ts";
import { keySignature } from "../../../server/music/scales/signature.ts";
import modes from "../../reference/modes.json" with { type: "json" };

/** The readings of a last note and a signature, as `D dorian`. */
function readingsOf(last: string, fifths: number): string[] {
  return likelyScales(parseNote(last)!, fifths).readings.map(({ tonic, kind }) => `${printName(tonic)} ${kind.id}`);
}

function check(last: string, fifths: number, ...expected: readonly string[]): void {
  expect(readingsOf(last, fifths), `${last} ${fifths}`).toEqual(expected);
}

function reasonsOf(last: string, fifths: number): string[] {
  return likelyScales(parseNote(last)!, fifths).readings.map(({ reason }) => reason);
}

// test/reference/keysignatures.tsv: the signatures of the Standard MIDI File meta event FF 59.
test("a last note on the tonic of a key with that signature: that key is the likeliest", () => {
  const [, ...rows] = readFileSync(new URL("../../reference/keysignatures.tsv", import.meta.url), "utf8")
    .trim()
    .split("\n");
  for (const row of rows) {
    const [tonic, mode, fifths] = row.split("\t");
    expect(readingsOf(tonic!, Number(fifths))[0], row).toBe(`${tonic} ${mode === "minor" ? "natural minor" : mode}`);
  }
  expect(rows).toHaveLength(30);
});

const KEY_MODES: Readonly<Record<string, string>> = { ionian: "major", aeolian: "natural minor" };

describe("modes, against test/reference/modes.json (LilyPond 2.24.1)", () => {
  test("a last note on the final of a mode with its own signature: that mode is the likeliest", () => {
    for (const { mode, tonic, fifths_modal } of modes.modes)
      expect(readingsOf(tonic, fifths_modal)[0], `${tonic} ${mode}`).toBe(`${tonic} ${KEY_MODES[mode] ?? mode}`);
    expect(modes.modes.length).toBeGreaterThan(40);
  });

  test("with the signature of the major or minor key on its tonic a mode is among what the piece may also be in", () => {
    const parallel = modes.modes.filter(({ mode }) => ["dorian", "phrygian", "lydian", "mixolydian"].includes(mode));
    for (const { mode, tonic } of parallel) {
      const key = ["lydian", "mixolydian"].includes(mode) ? "ionian" : "aeolian";
      const { fifths_modal } = modes.modes.find((each) => each.mode === key && each.tonic === tonic)!;
      expect(readingsOf(tonic, fifths_modal).slice(1), `${tonic} ${mode}`).toContain(`${tonic} ${mode}`);
    }
    expect(parallel.length).toBeGreaterThan(20);
  });

  test("the note that a reason says has accidentals is in the scale, and the one that the signature has not", () => {
    let seen = 0;
    for (const { mode, tonic, up } of modes.modes) {
      for (const { fifths_modal } of modes.modes.filter((each) => each.tonic === tonic)) {
        const reading = likelyScales(parseNote(tonic)!, fifths_modal).readings.find(
          ({ kind }) => kind.id === (KEY_MODES[mode] ?? mode),
        );
        const named = /, ([A-G][#b]*), has accidentals/.exec(reading?.reason ?? "")?.[1];
        if (!named) continue;
        expect(up).toContain(named);
        const letters = modes.modes.find((each) => each.tonic === tonic && each.fifths_modal === fifths_modal)!.up;
        expect(letters).not.toContain(named);
        seen++;
      }
    }
    expect(seen).toBeGreaterThan(40);
  });
});

describe("what else it may be (common practice, no source)", () => {
  test("a minor signature: the dorian and the phrygian written with it", () =>
    check("D", -1, "D natural minor", "D dorian", "D phrygian"));
  test("a major signature: the mixolydian and the lydian written with it", () =>
    check("F", -1, "F major", "F mixolydian", "F lydian"));
  test("a dorian signature: minor, as older music often writes it", () =>
    check("G", -1, "G dorian", "G natural minor"));
  test("a mixolydian signature: major as older music writes it, or the key that ends open", () =>
    check("A", 2, "A mixolydian", "A major", "D major"));
  test("a lydian signature: major with its fourth lowered by accidentals", () =>
    check("Bb", -1, "Bb lydian", "Bb major"));
  test("a phrygian signature: the minor key that ends open, on its fifth degree", () =>
    check("E", 0, "E phrygian", "A natural minor"));
  test("a seventh degree last: locrian is seldom meant", () => {
    check("B", 0, "B locrian", "C major", "A natural minor");
    expect(reasonsOf("B", 0)[1]).toContain("A whole piece is seldom in locrian");
  });
  test("the raised third of a minor key", () => {
    check("F#", -1, "D natural minor", "F major");
    expect(reasonsOf("F#", -1)[0]).toBe(
      "F# is the raised third of D minor, whose signature this is: older pieces in minor often close on the major third.",
    );
  });
  test("a note that is not in the signature does not tell: both keys of the signature", () => {
    check("Eb", 2, "D major", "B natural minor");
    expect(reasonsOf("Eb", 2)[0]).toBe(
      "Eb is not among the notes of 2 sharps. So the ending does not decide. D major has this signature.",
    );
  });
});

test("reasons name the notes", () => {
  expect(reasonsOf("D", -1)).toEqual([
    "1 flat is the signature of D minor, and it ends on its tonic. Where C# comes with an accidental it is harmonic, with B as well melodic minor.",
    "It is often written with the signature of D minor; then its major sixth, B, has accidentals throughout.",
    "It is often written with the signature of D minor; then its lowered second, Eb, has accidentals throughout.",
  ]);
  expect(reasonsOf("D", 0)).toEqual([
    "Without sharps or flats the notes from D to D are those of D dorian.",
    "Older music often writes D minor with this signature; then its sixth, Bb, has accidentals before it.",
  ]);
  expect(reasonsOf("A", 2)[0]).toBe("With 2 sharps (F# C#) the notes from A to A are those of A mixolydian.");
});

test("whatever the note and the signature, there is a reading, and those on the last note hold it", () => {
  for (let place = -15; place <= 19; place++) {
    for (let fifths = -7; fifths <= 7; fifths++) {
      const last = nameAtFifths(place);
      const { readings, ambitus } = likelyScales(last, fifths);
      const [first] = readings;
      const isFinal = printName(first.tonic) === printName(last);
      expect(ambitus !== undefined).toBe(isFinal);
      if (isFinal) expect(keySignature(first.tonic, first.kind)!.fifths).toBe(fifths);
      expect(new Set(readings.map(({ tonic, kind }) => printName(tonic) + kind.id)).size).toBe(readings.length);
      for (const { tonic, kind } of readings) expect(scaleNames(tonic, kind, "up")).toHaveLength(7);
    }
  }
});

describe("authentic and plagal (bounds of the church modes: common practice, no source)", () => {
  const ambitus = (last: string, low?: string, high?: string) => {
    const compass = low && high ? { from: parseNote(low) as Note, to: parseNote(high) as Note } : undefined;
    return likelyScales(parseNote(last)!, 0, compass).ambitus!;
  };
  test("from the last note to its octave: authentic, with a note below or above at will", () => {
    expect(ambitus("D", "D4", "D5").form).toBe("authentic");
    expect(ambitus("D", "C4", "E5").form).toBe("authentic");
    expect(ambitus("D", "D4", "D5").sentence).toBe(
      "Its range, D4 to D5, goes from D4 to an octave above it: authentic, as it lies above its last note.",
    );
  });
  test("from a fourth below to a fifth above: plagal, by its name", () => {
    expect(ambitus("D", "A3", "A4").form).toBe("plagal");
    expect(ambitus("D", "A3", "B4").form).toBe("plagal");
    expect(ambitus("D", "A3", "A4").sentence).toBe(
      "Its range, A3 to A4, goes from a fourth below D4 to a fifth above it: plagal (hypodorian), as it lies about its last note.",
    );
  });
  test("both ranges together", () => {
    expect(ambitus("D", "G4", "F6").form).toBe("mixed");
    expect(ambitus("D", "G4", "F6").sentence).toContain("goes from a fifth below D5 to a tenth above it: both");
  });
  test("what both share does not tell", () => expect(ambitus("D", "D4", "A4").form).toBe("undecided"));
  test("without a range both are possible", () => {
    expect(ambitus("E").form).toBe("undecided");
    expect(ambitus("E").sentence).toBe(
      "It may be authentic, going up to the octave of its last note, or plagal (hypophrygian), from a fourth below it to a fifth above: a declared range says which.",
    );
  });
  test("the octave of the last note decides where a range has several", () => {
    expect(ambitus("D", "C4", "E6")).toEqual({
      form: "undecided",
      sentence:
        "Its range, C4 to E6, has more than one D: the octave of the last note, as in `last note D4`, says whether it is authentic or plagal (hypodorian).",
    });
    expect(ambitus("D4", "C4", "E6").sentence).toContain("goes from a second below D4 to a 16th above it: authentic");
    expect(ambitus("D5", "C4", "E6").form).toBe("mixed");
    expect(ambitus("D", "C4", "D5").form).toBe("authentic");
    expect(ambitus("D5", "C4", "D5").form).toBe("plagal");
    expect(ambitus("D5", "E4", "C5").sentence).toContain("does not have its last note");
  });
  test("the range may be given from the top", () => expect(ambitus("D", "A4", "A3")).toEqual(ambitus("D", "A3", "A4")));
});
