import fc from "fast-check";
import { Interval, Note as Tonal } from "tonal";
import { expect, test } from "vitest";
import {
  fifthsOf,
  LETTERS,
  midi,
  type NoteName,
  nameAtFifths,
  parseNote,
  pitchClass,
  printName,
  printNote,
  samePitch,
  staffStep,
  transposed,
} from "../../../server/music/notes/note.ts";

/** What is typed, and what it is read as; an empty text where it is no note. */
function check(typed: string, read: string): void {
  const note = parseNote(typed);
  expect(note ? printName(note) + (note.octave ?? "") : "", typed).toBe(read);
}

/** Every letter with up to two accidentals. */
const TONICS: readonly NoteName[] = LETTERS.flatMap((letter) => [-2, -1, 0, 1, 2].map((alter) => ({ letter, alter })));

test("a note is a letter of either case, accidentals, and perhaps an octave", () => {
  check("C", "C");
  check("f#", "F#");
  check("F♯4", "F#4");
  check("Gx", "G##");
  check("G##", "G##");
  check("G♯♯5", "G##5");
  check("g𝄪", "G##");
  check("eb", "Eb");
  check("Ebb", "Ebb");
  check("E♭♭", "Ebb");
  check("A𝄫3", "Abb3");
});

test("a lower-case b flattens, so bb is B flat", () => {
  check("b", "B");
  check("bb", "Bb");
  check("bbb", "Bbb");
  check("Bb4", "Bb4");
  check("BB", "");
});

test("three accidentals, a mixture, H, and other words are no notes", () => {
  for (const word of ["", "#", "H", "F###", "Fbbb", "F#b", "Fx#", "Fxx", "C10", "C-1", "2b", "FX", "Fis", " C", "C "]) {
    check(word, "");
  }
});

test("MIDI numbers, staff places and key of every name are those of tonal (oracle, npm `tonal`)", () => {
  for (const name of TONICS) {
    const note = { ...name, octave: 4 };
    const oracle = Tonal.get(printNote(note));
    expect(midi(note), printNote(note)).toBe(oracle.midi);
    expect(pitchClass(name)).toBe(oracle.chroma);
    expect(staffStep(note)).toBe(28 + oracle.step!);
  }
});

test("middle C is C4 and 60, and Cb4 sounds as B3 (MIDI 1.0 note numbers)", () => {
  const [c, flat, b] = ["C4", "Cb4", "B3"].map((text) => ({ octave: 0, ...parseNote(text)! }));
  expect(midi(c!)).toBe(60);
  expect(midi(flat!)).toBe(59);
  expect(samePitch(flat!, b!)).toBe(true);
  expect(samePitch(flat!, { letter: "B", alter: 0, octave: 4 })).toBe(false);
  expect(samePitch({ letter: "E", alter: 1 }, { letter: "F", alter: 0 })).toBe(true);
});

test("the line of fifths runs F C G D A E B, then sharps, and back through flats", () => {
  const names = Array.from({ length: 15 }, (_, index) => printName(nameAtFifths(index - 7)));
  expect(names.join(" ")).toBe("Cb Gb Db Ab Eb Bb F C G D A E B F# C#");
});

test("a place on the line of fifths and a name are two ways to say one thing", () => {
  fc.assert(
    fc.property(fc.integer({ min: -40, max: 40 }), (fifths) => {
      const name = nameAtFifths(fifths);
      expect(fifthsOf(name)).toBe(fifths);
      expect(pitchClass(name)).toBe((((7 * fifths) % 12) + 12) % 12);
    }),
    { seed: 11 },
  );
});

test("what is printed is read again", () => {
  fc.assert(
    fc.property(fc.constantFrom(...TONICS), fc.integer({ min: 0, max: 9 }), (name, octave) => {
      expect(parseNote(printNote({ ...name, octave }))).toEqual({ ...name, octave });
      expect(parseNote(printName(name))).toEqual(name);
    }),
    { seed: 12 },
  );
});

test("moving by an interval is what tonal does (oracle), and moving back undoes it", () => {
  const intervals = ["2m", "2M", "3m", "3M", "4P", "4A", "5d", "5P", "6m", "6M", "7m", "7M", "8P", "9M", "-3m", "-10M"];
  for (const name of TONICS) {
    for (const text of intervals) {
      const note = { ...name, octave: 4 };
      const { semitones, step, oct, dir } = Interval.get(text);
      const interval = { steps: dir! * (step! + 7 * Math.abs(oct!)), semitones: semitones! };
      const moved = transposed(note, interval);
      expect(printNote(moved), `${printNote(note)} by ${text}`).toBe(Tonal.transpose(printNote(note), text));
      expect(transposed(moved, { steps: -interval.steps, semitones: -interval.semitones })).toEqual(note);
    }
  }
});
