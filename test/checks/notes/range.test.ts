import { Note as Tonal } from "tonal";
import { expect, test } from "vitest";
import { checkNotesInRange } from "../../../server/checks/notes/range.ts";
import type { Instrument } from "../../../server/music/instruments/instrument.ts";
import { INSTRUMENTS, instrumentById } from "../../../server/music/instruments/instruments.ts";
import { type Note, parseNote, printNote } from "../../../server/music/notes/note.ts";
import { ENGLISH_NAMES } from "../../../server/music/notes/note-names.ts";
import { underlined } from "./claims.ts";

const notes = (text: string) => text.split(" ").map((word) => parseNote(word) as Note);

/** Notes on an instrument, and what is said of them. */
function check(instrument: string | Instrument, text: string, message?: string): void {
  const on = typeof instrument === "string" ? instrumentById(instrument)! : instrument;
  const found = checkNotesInRange(notes(text), on, { start: 0, end: text.length }, ENGLISH_NAMES);
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

test("goes by the key that sounds, not by the letter", () => {
  check("alto recorder", "E#4 F##6");
  check("alto recorder", "Fb4", "The alto recorder has no Fb4 (F4 to G6 as written).");
});

test("says where the range is not firm", () => {
  check(
    "contrabass recorder",
    "A4",
    "The contrabass recorder has no A4 (F2 to F4 as written). Its range is not firm: read here as written at pitch; some parts are written an octave lower.",
  );
});

test("every instrument has its ends, and not the semitones beyond them (by npm `tonal`)", () => {
  for (const instrument of INSTRUMENTS) {
    const [low, high] = [printNote(instrument.low), printNote(instrument.high)];
    check(instrument, `${low} ${high}`);
    for (const beyond of [Tonal.transpose(low, "-2m"), Tonal.transpose(high, "2m")]) {
      const found = checkNotesInRange(notes(beyond), instrument, { start: 3, end: 5 }, ENGLISH_NAMES);
      expect(
        found.map(({ code, start, end }) => [code, start, end]),
        instrument.id,
      ).toEqual([["out-of-range", 3, 5]]);
    }
  }
});
