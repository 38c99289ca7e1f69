import fc from "fast-check";
import { Note, Scale } from "tonal";
import { describe, expect, test } from "vitest";
import { noteStretchesIn } from "../../../server/features/commands/note-stretches.ts";
import { respell, respellIn } from "../../../server/features/commands/respell.ts";
import { parseLine } from "../../../server/syntax/line/parse-line.ts";
import { times } from "../../support/random-runs.ts";
import { edited, journalOf, URI } from "../journal-text.ts";
import { run } from "../marked-text.ts";

const DAY = "2026-03-09 Mon\n";

/** An entry spelled otherwise, or why it is not. */
function otherwise(entry: string, head = ""): string {
  const after = run(respell, `${head}${DAY}‸${entry}`);
  return after.replace("‸", "").replace(head + DAY, "");
}

function check(entry: string, after: string, head = ""): void {
  expect(otherwise(entry, head)).toBe(after);
}

/** One to the other and back. */
function checkBoth(one: string, other: string, head = ""): void {
  check(one, other, head);
  check(other, one, head);
}

describe("a key becomes the one that sounds the same", () => {
  // The notes of both keys are those of `tonal` 6.4.3. Six keys of up to seven accidentals come in pairs.
  test("with its notes", () => {
    const written = (key: string): string => `${key}: ${Scale.get(key).notes.join(" ")}`;
    for (const [sharp, flat] of [
      ["F#", "Gb"],
      ["C#", "Db"],
      ["B", "Cb"],
    ])
      checkBoth(written(`${sharp} major`), written(`${flat} major`));
    for (const [sharp, flat] of [
      ["D#", "Eb"],
      ["G#", "Ab"],
      ["A#", "Bb"],
    ])
      checkBoth(written(`${sharp} harmonic minor`), written(`${flat} harmonic minor`));
  });

  // Eight sharps and more are called theoretical keys: common practice, no source.
  test("out of one that nobody writes, and never into one", () => {
    check("D# major, slow", "Eb major, slow");
    check("Fb major: Fb Gb Ab Bbb Cb Db Eb", "E major: E F# G# A B C# D#");
    check("C major", "There is no other usual spelling for this line.");
    check("Eb major, thirds", "There is no other usual spelling for this line.");
  });

  test("with its signature, its span and how it was typed", () => {
    checkBoth(
      "F# major, 6 sharps, from F#4 to F#5, slurred, at 60 clean",
      "Gb major, 6 flats, from Gb4 to Gb5, slurred, at 60 clean",
    );
    checkBoth("F♯ major: F♯ G♯ A♯ B", "G♭ major: G♭ A♭ B♭ C♭");
    checkBoth("F sharp major, slow", "G flat major, slow");
  });

  test("octaves go with the letters: B#3 is C4, and Cb4 is B3", () => {
    checkBoth("C# major: B#3 C#4 D#4 E#4", "Db major: C4 Db4 Eb4 F4");
    checkBoth("B major: A#3 B3 C#4", "Cb major: Bb3 Cb4 Db4");
  });

  test("arpeggios, chord symbols, modes, and several keys one by one", () => {
    checkBoth("F# arpeggio, slow", "Gb arpeggio, slow");
    checkBoth("Bbm7 arpeggio: Bb Db F Ab", "A#m7 arpeggio: A# C# E# G#");
    checkBoth("dominant seventh in F#", "dominant seventh in Gb");
    checkBoth("G# dorian", "Ab dorian");
    check("C major > F# major > B major", "C major > Gb major > Cb major");
    check("C, F# and D major", "C, Gb and D major");
  });

  test("a chromatic scale keeps its sharps going up and its flats coming down", () => {
    checkBoth("F# chromatic: F# G G# A A# B C C# D D# E F F#", "Gb chromatic: Gb G G# A A# B C C# D D# E F Gb");
  });
});

describe("notes without a key", () => {
  test("in flats where one has a sharp, else in sharps", () => {
    checkBoth("notes F#4 G#4, back and forth, slow", "notes Gb4 Ab4, back and forth, slow");
    checkBoth("trill F#5 with G5", "trill Gb5 with G5");
    checkBoth("long tones on Bb3 Eb4, with drone F", "long tones on A#3 D#4, with drone F");
    check("notes B#3 C4", "notes C4 C4");
    check("notes C4 D4", "There is no other usual spelling for this line.");
  });

  test("in small letters with strokes", () => checkBoth("trill f#''/g''", "trill gb''/g''"));
});

test("in the journal's own names", () => {
  checkBoth("Fis-Dur: Fis Gis Ais H Cis Dis Eis", "Ges-Dur: Ges As B Ces Des Es F", "names german\n");
  checkBoth("es-Moll, at 60", "dis-Moll, at 60", "names german\n");
  checkBoth("fa dièse majeur", "sol bémol majeur", "names french\n");
});

test("where there are no notes a sentence says so, and remarks and titles stay as they are", () => {
  check("Courante, bars 1-8, at 60", "There are no notes and no key on this line that could be spelled otherwise.");
  check("F# major -- F# is flat on the low string", "Gb major -- F# is flat on the low string");
});

test("as an action on what is about notes, and nowhere else", () => {
  const text = `${DAY}F# major, slow -- at last`;
  const offered = (character: number, only?: string[]) => {
    const at = { line: 1, character };
    return respellIn(journalOf(text), URI, { start: at, end: at }, only);
  };
  expect(offered(3).map(({ title }) => title)).toEqual(['Respell as "Gb major"']);
  expect(edited(text, offered(3)[0]!.edits)).toBe(`${DAY}Gb major, slow -- at last`);
  expect(offered(16)).toEqual([]);
  expect(offered(3, ["quickfix"])).toEqual([]);
});

const NOTES = fc.constantFrom(..."C C# Db D D# Eb E E# Fb F F# Gb G G# Ab A A# Bb B B# Cb F## Bbb Dbb".split(" "));
const line = fc.oneof(
  fc
    .tuple(
      NOTES,
      fc.constantFrom("major", "harmonic minor", "dorian", "whole-tone", "chromatic", "arpeggio", "dominant seventh"),
      fc.array(NOTES, { minLength: 3, maxLength: 8 }),
    )
    .map(([tonic, kind, notes]) => `${tonic} ${kind}: ${notes.join(" ")}`),
  fc
    .array(fc.tuple(NOTES, fc.nat({ max: 8 })), { minLength: 2, maxLength: 6 })
    .map((notes) => `notes ${notes.map(([note, octave]) => `${note}${octave}`).join(" ")}, slow`),
);

/** The notes of an entry by their sound, as `tonal` 6.4.3 has it: MIDI numbers, or keys within the octave. */
function sounds(entry: string): readonly unknown[] {
  const journal = journalOf(DAY + entry);
  const read = parseLine(entry, { ...journal.partContext, head: false });
  const stretches = read.type === "entry" ? noteStretchesIn(entry, read, journal.names) : [];
  return stretches.map(({ text }) => Note.midi(text) ?? Note.chroma(text));
}

test("whatever is respelled sounds the same, and twice is where it was wherever the first spelling is in use", () => {
  let [changed, back] = [0, 0];
  fc.assert(
    fc.property(line, (entry) => {
      const after = otherwise(entry);
      if (/ (?:spelling|otherwise)/.test(after)) return;
      changed++;
      expect(sounds(entry).length).toBeGreaterThan(1);
      expect(sounds(after)).toEqual(sounds(entry));
      const again = otherwise(after);
      if (/ (?:spelling|otherwise)/.test(again)) return;
      expect(sounds(again)).toEqual(sounds(entry));
      if (again === entry) back++;
    }),
    { seed: 20260309, numRuns: times(60) },
  );
  expect(changed).toBeGreaterThan(times(20));
  expect(back).toBeGreaterThan(times(4));
});
