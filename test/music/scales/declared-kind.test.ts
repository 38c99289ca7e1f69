import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseNote, printName } from "../../../server/music/notes/note.ts";
import { ENGLISH_NAMES, type NoteNames, namesById, noteText } from "../../../server/music/notes/note-names.ts";
import { declaredKind } from "../../../server/music/scales/declared-kind.ts";
import { KINDS, kindById } from "../../../server/music/scales/kinds.ts";
import { degreeNote, scaleNames } from "../../../server/music/scales/scale.ts";
import { MANY } from "../../support/random-runs.ts";

/** A declared scale on D, or the reason why it cannot be read and the word to blame. */
function check(text: string, expected: string, at?: number): void {
  const reading = declaredKind("own", text);
  if (reading.ok) {
    expect(scaleNames(parseNote("D")!, reading.kind, "up").map(printName).join(" "), text).toBe(expected);
  } else {
    expect(reading.reason, text).toContain(expected);
    expect(reading.at, text).toBe(at);
  }
}

test("degrees of the major scale, lowered or raised", () => {
  check("1 b2 3 4 5 b6 7", "D Eb F# G A Bb C#");
  check("1 ♭2 3 ♯4 5 6 b7", "D Eb F# G# A B C");
  check("1, 2, b3, 3, 5, 6, 8", "D E F F# A B");
  check("1 2 b3 4 b5 b6 bb7 7", "D E F G Ab Bb Cb C#");
  check("1 #1 2", "D D# E");
});

test("cents: a letter for each of seven notes, and the nearest key", () => {
  check("cents 0 150 300 500 700 850 1000 1200", "D E F G A B C");
  check("cents 0 204 386 498 702 884 1088", "D E F# G A B C#");
  check("cents 0 240 480 720 960", "D E G A C");
  const reading = declaredKind("own", "cents 0 150.5 300");
  expect(reading.ok && reading.kind.degrees[1]).toEqual({ step: 1, semitones: 2, cents: 150.5 });
});

describe("another form on the way down", () => {
  const forms = (text: string): unknown => {
    const reading = declaredKind("own", text);
    if (!reading.ok) return `${reading.at}: ${reading.reason}`;
    const { kind } = reading;
    return (["up", "down"] as const).map((way) => scaleNames(parseNote("D")!, kind, way).map(printName).join(" "));
  };

  // The melodic minor, by its formula in test/reference/scales.json.
  test("in degrees, typed from below or as it falls", () => {
    const melodic = ["D E F G A B C#", "D E F G A Bb C"];
    for (const text of [
      "1 2 b3 4 5 6 7, down 1 2 b3 4 5 b6 b7",
      "up 1 2 b3 4 5 6 7 8 down 8 b7 b6 5 4 b3 2 1",
      "1 2 b3 4 5 6 7 Down: b7 b6 5 4 b3 2 1".replace(":", ""),
    ])
      expect(forms(text), text).toEqual(melodic);
    const reading = declaredKind("own", "1 2 b3 4 5 6 7, down 1 2 b3 4 5 b6 b7");
    expect(reading.ok && reading.kind.signature).toEqual(kindById("melodic minor")!.signature);
  });

  test("in cents", () => {
    const reading = declaredKind("own", "cents 0 200 350 500 700 900 1050, down 1200 1000 900 700 500 350 200 0");
    expect(reading.ok && reading.kind.falling?.map(({ cents }) => cents)).toEqual([0, 200, 350, 500, 700, 900, 1000]);
    expect(declaredKind("own", "cents 0 150 300, down cents 0 140 300").ok).toBe(true);
  });

  test("what cannot be read stands on its word", () => {
    expect(forms("1 2 3, down 1 2")).toBe("3: 3 notes go up and 2 down: both ways have as many");
    expect(forms("1 2 3, down")).toBe("3: 3 notes go up and 0 down: both ways have as many");
    expect(forms("1 2 3, down 1 x 3")).toContain("5: `x` is not a degree");
    expect(forms("1 2 3, down 8 x 1")).toContain("5: `x` is not a degree");
    expect(forms("cents 0 100 200, down 0 100 1300")).toContain("7: `1300` reaches the octave");
  });
});

// Quarter tones to the nearest: 150 cents above D is halfway from Eb to E (arithmetic).
test("notes between the keys are named with a half-sharp or half-flat", () => {
  const named = (text: string, tonic = "D", language: NoteNames = ENGLISH_NAMES): string => {
    const reading = declaredKind("own", text);
    if (!reading.ok) throw new Error(reading.reason);
    const from = { ...parseNote(tonic)!, octave: 4 };
    return reading.kind.degrees
      .map((_, i) => noteText(degreeNote(from, reading.kind, i + 1, false), language))
      .join(" ");
  };
  expect(named("cents 0 150 300 500 700 850 1000")).toBe("D4 E𝄳4 F4 G4 A4 B𝄳4 C5");
  expect(named("cents 0 204 355 498 702 906 1059")).toBe("D4 E4 F𝄲4 G4 A4 B4 C𝄲5");
  expect(named("cents 0 151 300 500 700 850 1000", "D", namesById("german")!)).toBe("D4 E𝄳4 F4 G4 A4 H𝄳4 C5");
  expect(named("cents 0 50 100", "Bb")).toBe("Bb4 Cb𝄳5 Cb5");
  expect(named("cents 0 20 1140", "D")).toBe("D4 D4 C#𝄲5");
});

test("what cannot be read says where and why", () => {
  check("2 3 4", "starts on `1`", 0);
  check("b1 2", "starts on `1`", 0);
  check("1 x9 3", "`x9` is not a degree", 1);
  check("1 #b2", "`#b2` is not a degree", 1);
  check("1 9", "`9` is not a degree", 1);
  check("1 ###4 5", "write 1 to 7, up to two # or b before", 1);
  check("1 bbb3", "write 1 to 7, up to two # or b before", 1);
  check("1 2 3 4 5 6 7 1", "the closing tonic is written `8`, or left out", 7);
  check("1 #1 2 #2 3 4 #4 5 #5 6 #6 7 #7", "`#7` is one degree too many: an octave has 12 keys", 12);
  check("1 #1 2 #2 3 4 #4 5 #5 6 #6 7 8", "D D# E E# F# G G# A A# B B# C#");
  check("1 #1 2 #2 3 b4 4 #4 5 #5 6 #6 7", "not higher than", 5);
  check("1 3 2", "degrees go upward", 2);
  check("1 2 b2", "not higher than", 2);
  check("1 8 3", "only a closing `8`", 1);
  check("1 #7", "reaches the octave", 1);
  check("1", "at least two notes", 1);
  check("", "at least two notes", 0);
  check("cents", "at least two notes", 1);
  check("cents 10 200", "cents start with `0`", 1);
  check("cents 0 300 200", "not higher than", 3);
  check("cents 0 300 1300", "reaches the octave", 3);
  check("cents 0 100 200 300 400 500 600 700 800 900 1000 1100 1150", "D Eb E F F# G G# A Bb B C C# C#");
  check(`cents ${Array.from({ length: 54 }, (_, i) => 20 * i).join(" ")}`, "at most 53 notes", 53);
  check("cents 0 1e3", "`1e3` is not a number of cents", 2);
});

test("every kind's own degrees, written out, are read as that kind", () => {
  const major = [0, 2, 4, 5, 7, 9, 11];
  for (const kind of KINDS) {
    const text = kind.degrees.map(({ step, semitones }) => {
      const change = semitones - major[step]!;
      return (change < 0 ? "b".repeat(-change) : "#".repeat(change)) + (step + 1);
    });
    const reading = declaredKind(kind.id, text.join(" "));
    expect(reading.ok && reading.kind.degrees, kind.id).toEqual(kind.degrees);
  }
});

test("any text is read or refused, never an exception; what is read rises within the octave", () => {
  const word = fc.stringMatching(/^[#bx♯♭]{0,2}[0-9]{1,4}$|^cents$|^\S{0,5}$/u);
  fc.assert(
    fc.property(fc.array(word, { maxLength: 9 }), (words) => {
      const reading = declaredKind("own", words.join(" "));
      if (!reading.ok) return;
      const sizes = reading.kind.degrees.map(({ semitones, cents }) => cents ?? 100 * semitones);
      expect(sizes[0]).toBe(0);
      expect(sizes.every((size, index) => index === 0 || size > sizes[index - 1]!)).toBe(true);
      expect(sizes.at(-1)).toBeLessThan(1200);
    }),
    { seed: 61, numRuns: MANY },
  );
});
