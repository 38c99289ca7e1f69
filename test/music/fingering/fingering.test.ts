import { describe, expect, test } from "vitest";
import {
  type Cover,
  type FingeredNote,
  fingeringOf,
  hasHalfHole,
  printFingering,
} from "../../../server/music/fingering/fingering.ts";
import { INSTRUMENTS, instrumentById } from "../../../server/music/instruments/instruments.ts";
import { midi, type Note, parseNote } from "../../../server/music/notes/note.ts";
import reference from "../../reference/recorder-fingerings.json" with { type: "json" };

// test/reference/recorder-fingerings.json: charts of four sources, named there row by row, compared with each other.

const note = (text: string): Note => ({ octave: 4, ...parseNote(text)! });

function fingered(id: string, written: Note): FingeredNote {
  const found = fingeringOf(instrumentById(id)!, written);
  if (!found.known) throw new Error(`${id} has no fingering: ${found.because}`);
  return found;
}

/** A note on an instrument, and its fingering. */
function check(id: string, written: string, fingering: string): void {
  expect(printFingering(fingered(id, note(written)).fingering), `${written} on ${id}`).toBe(fingering);
}

describe("the table is that of the reference", () => {
  test("it goes as far", () => {
    expect(reference.notes.map((row) => row.semitones_above_lowest)).toEqual([...Array(32).keys()]);
    const alto = instrumentById("alto recorder")!;
    expect(fingeringOf(alto, note("C7")).known).toBe(true);
    expect(fingeringOf(alto, note("C#7"))).toEqual({ known: false, because: "beyond the table" });
    expect(fingeringOf(alto, note("E4"))).toEqual({ known: false, because: "beyond the table" });
  });

  // A slash in a name parts two spellings of one note: A#4/Bb4.
  test.each(reference.notes)("$alto on the alto: $compact", (row) => {
    for (const name of row.alto.split("/")) {
      const { fingering, confidence } = fingered("alto recorder", note(name));
      expect(fingering.thumb).toBe(row.thumb);
      expect(fingering.holes).toEqual([...row.holes_1_5, row.hole6, row.hole7]);
      expect(fingering.bell).toBe(row.bell === "closed");
      expect(confidence).toBe(row.confidence);
      // The reference writes the same without spaces.
      expect(printFingering(fingering).replaceAll(" ", "").replace("bell", " bell")).toBe(row.compact);
    }
  });

  test("and so are the notes of the tenor, and what sounds on the soprano and the bass", () => {
    for (const row of reference.notes) {
      for (const [id, names, octaves] of [
        ["tenor recorder", row.tenor, 0],
        ["soprano recorder", row.soprano_sounding, 1],
        ["bass recorder", row.bass_sounding, 1],
      ] as const) {
        const sounding = note(names.split("/")[0]!);
        const { fingering } = fingered(id, { ...sounding, octave: sounding.octave - octaves });
        expect(fingering, `${names} on ${id}`).toEqual(
          fingered("alto recorder", note(row.alto.split("/")[0]!)).fingering,
        );
      }
    }
  });
});

/** What the reference's `sources` say of each chart. */
const SOURCES: Readonly<Record<string, string>> = {
  "Dolmetsch Online": "Dolmetsch Online",
  "the CTAN recorder-fingering charts": "CTAN recorder-fingering",
  "the Recorder Home Page": "Recorder Home Page",
  "a blog's chart": "blog chart",
};

// The words of the reference's `alternatives`, as far as they name a whole fingering.
test.each([
  ["C#5", "same + 6 half", ["0 12- 456/-"]],
  ["E5", "0 23 (thumb,2,3)", ["0 -23 ----"]],
  ["F5", "thumb open 123", ["- 123 ----"]],
  ["G5", "thumb open, all closed", ["- 123 4567"]],
  ["A5", "thumb open 12345 7", ["- 123 45-7"]],
  ["D#6", "+7 closed", ["Ø 12- -567", "Ø 12- 456-"]],
  ["F#6", "thumb half + 1,3,4,5,6,7; 1,2half,3,4,5,6,7", ["Ø 1-3 4567", "Ø 12/3 4567"]],
  ["G6", "+7 closed", ["Ø 1-3 4-67"]],
])("other fingerings of %s on the alto: %s", (written, words, fingerings) => {
  const row = reference.notes.find(({ alto }) => alto.split("/").includes(written))!;
  expect(row.alternatives.join("; ")).toContain(words);
  const { alternatives } = fingered("alto recorder", note(written));
  expect(alternatives.map(printFingering)).toEqual(fingerings);
  // Each chart that is told of them stands in that row, by its letter.
  for (const chart of alternatives.flatMap(({ charts }) => charts)) {
    const [letter] = Object.entries(reference.sources).find(([, source]) => source.includes(SOURCES[chart]!))!;
    expect(`${row.alternatives.join("; ")}`, chart).toMatch(new RegExp(`\\b${letter}\\b`));
  }
});

test("no other note has alternatives", () => {
  const has = reference.notes.filter(
    (row) => fingered("alto recorder", note(row.alto.split("/")[0]!)).alternatives.length,
  );
  expect(has.map((row) => row.alto)).toEqual(
    reference.notes.filter((row) => row.alternatives.length).map((row) => row.alto),
  );
});

test("every recorder has a fingering for each note of its range, from all closed on", () => {
  const recorders = INSTRUMENTS.filter(({ family }) => family === "recorder");
  expect(recorders).toHaveLength(10);
  for (const { id, low, high } of recorders) {
    expect(printFingering(fingered(id, low).fingering)).toBe("0 123 4567");
    for (let up = 0; up <= midi(high) - midi(low); up++) {
      const { confidence } = fingered(id, { letter: low.letter, alter: low.alter + up, octave: low.octave });
      expect(confidence).not.toBe("uncertain"); // that is only above the ranges
    }
  }
});

test("instruments in other keys are fingered by the distance from their lowest note", () => {
  check("voice flute", "D4", "0 123 4567"); // test/reference/instrument-ranges.json: a C pattern a tone up
  check("voice flute", "G4", "0 123 4-67");
  check("alto recorder in G", "C5", "0 123 4-67"); // the same: an F pattern a tone up
  check("alto recorder in G", "B5", "Ø 123 45--");
  check("great bass recorder", "F2", "0 123 4-67");
});

test("a half hole is one of a finger's, and no pinched thumb", () => {
  const half = reference.notes.filter((row) =>
    hasHalfHole(fingered("tenor recorder", note(row.tenor.split("/")[0]!)).fingering),
  );
  expect(half.map((row) => row.tenor)).toEqual(["C#4/Db4", "D#4/Eb4"]);
  const isHalf = (cover: string) => (cover as Cover) === "half";
  expect(half).toEqual(reference.notes.filter((row) => [row.hole6, row.hole7].some(isHalf)));
});

test("where fingerings are not known, it says why", () => {
  const soprano = instrumentById("soprano recorder")!;
  expect(fingeringOf(instrumentById("oboe")!, note("A4"))).toEqual({ known: false, because: "no recorder" });
  expect(fingeringOf({ ...soprano, fingering: "german" }, note("G4"))).toEqual({
    known: false,
    because: "german fingering",
  });
  expect(fingeringOf({ ...soprano, fingering: "baroque" }, note("G4"))).toEqual(fingeringOf(soprano, note("G4")));
});
