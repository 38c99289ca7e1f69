import { describe, expect, test } from "vitest";
import { checkListInRange, checkNotesInRange } from "../../../server/checks/notes/range.ts";
import type { Instrument } from "../../../server/music/instruments/instrument.ts";
import { INSTRUMENTS, instrumentById } from "../../../server/music/instruments/instruments.ts";
import { type Note, parseNote, printNote } from "../../../server/music/notes/note.ts";
import { ENGLISH_NAMES, namesById } from "../../../server/music/notes/note-names.ts";
import { listed, underlined } from "./claims.ts";

const notes = (text: string) => text.split(" ").map((word) => parseNote(word) as Note);

/** Notes on an instrument, and what is said of them. */
function check(instrument: string | Instrument, text: string, message?: string): void {
  const on = typeof instrument === "string" ? instrumentById(instrument)! : instrument;
  const found = checkNotesInRange(notes(text), on, { text, start: 0, end: text.length }, ENGLISH_NAMES);
  const expected = message === undefined ? [] : [`${"^".repeat(text.length)} out-of-range: ${message}`];
  expect(underlined(text, found)).toBe([text, ...expected].join("\n"));
}

// F4 to G6 is the alto's range in test/reference/instrument-ranges.json, which test/music/instruments/instrument.test.ts holds to.
test("names the notes that are not there, and the range", () => {
  check("alto recorder", "F4 G6");
  check("alto recorder", "E4 F4 G6", "The alto recorder has no E4 (F4 to G6 as written).");
  check("alto recorder", "E4 D4", "The alto recorder has no E4 or D4 (F4 to G6 as written).");
});

test("names three at most, each key once", () => {
  check(
    "alto recorder",
    "E4 D4 E4 Fb4 C4 B3 A6",
    "The alto recorder has no E4, D4, C4 and 2 more (F4 to G6 as written).",
  );
});

// Common practice, no source, and from memory; what of it has a source is told in the instrument's row.
test("beyond an end that is not firm nothing is said of the next few notes", () => {
  check("garklein recorder", "C6 D6");
  check(
    "garklein recorder",
    "E6",
    "The garklein recorder has no E6 (C4 to C6 as written). Its range varies: some reach D6 (from memory).",
  );
  check("bass recorder", "G4");
  check("horn in F", "C2");
  check("alto clarinet", "Eb3 C7");
  check("double bass", "C2");
  check("soprano voice", "Bb3 D6");
  check(
    "soprano voice",
    "A3",
    "Beyond the usual range of the soprano voice: A3 (C4 to C6 as written). Its range varies: voices differ: you can declare a range of your own.",
  );
});

test("names octaves as they are typed, in the journal's language", () => {
  const german = namesById("german")!;
  const found = checkNotesInRange(
    notes("E4 D4"),
    instrumentById("alto recorder")!,
    { ...PLACE, text: "e' d'" },
    german,
  );
  expect(found.map(({ message }) => message)).toEqual(["The alto recorder has no e' or d' (f' to g''' as written)."]);
});

describe("a list of notes behind a colon", () => {
  const beside = (list: string): string =>
    underlined(list, checkListInRange(listed(list), instrumentById("alto recorder")!, ENGLISH_NAMES));

  test("is held against the range as far as it names octaves", () => {
    const list = "D4 E4 F#4 G4 A4 B4 C#5 D5";
    expect(beside(list)).toBe(`${list}\n^^^^^ out-of-range: The alto recorder has no D4 or E4 (F4 to G6 as written).`);
    expect(beside("D E F# G")).toBe("D E F# G");
  });

  test("notes in a row are one finding, others another", () => {
    const list = "E4 F4 E4 D4";
    expect(beside(list).split("\n").slice(1)).toEqual([
      "^^ out-of-range: The alto recorder has no E4 (F4 to G6 as written).",
      "      ^^^^^ out-of-range: The alto recorder has no E4 or D4 (F4 to G6 as written).",
    ]);
  });
});

test("goes by the key that sounds, not by the letter", () => {
  check("alto recorder", "E#4 F##6");
  check("alto recorder", "Fb4", "The alto recorder has no Fb4 (F4 to G6 as written).");
});

test("says where the range is not firm", () => {
  check(
    "contrabass recorder",
    "A4",
    "The contrabass recorder has no A4 (F2 to F4 as written). Its range varies: read here as written at pitch; some parts are written an octave lower.",
  );
});

const PLACE = { start: 3, end: 5, text: "E4" };

test("every instrument has its ends, with what is left open beyond them, and not the next semitones", () => {
  for (const instrument of INSTRUMENTS) {
    const [low, high] = [printNote(instrument.low), printNote(instrument.high)];
    check(instrument, `${low} ${high}`);
    const { below = 0, above = 0 } = instrument.leeway ?? {};
    const semitones = (note: Note, by: number): Note => ({ ...note, alter: note.alter + by });
    expect(checkNotesInRange([semitones(instrument.low, -below)], instrument, PLACE, ENGLISH_NAMES)).toEqual([]);
    expect(checkNotesInRange([semitones(instrument.high, above)], instrument, PLACE, ENGLISH_NAMES)).toEqual([]);
    for (const beyond of [semitones(instrument.low, -below - 1), semitones(instrument.high, above + 1)]) {
      const found = checkNotesInRange([beyond], instrument, PLACE, ENGLISH_NAMES);
      expect(
        found.map(({ code, start, end }) => [code, start, end]),
        instrument.id,
      ).toEqual([["out-of-range", 3, 5]]);
    }
  }
});
