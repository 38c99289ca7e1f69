import { describe, expect, test } from "vitest";
import { INSTRUMENTS, instrumentById, isInRange, soundingNote } from "../../server/music/instrument.ts";
import { midi, parseNote, printNote } from "../../server/music/note.ts";
import reference from "../reference/instrument-ranges.json" with { type: "json" };

const note = (text: string) => ({ octave: 4, ...parseNote(text)! });

/** An instrument, its written range, and how many semitones higher it sounds. */
function check(id: string, written: string, semitones: number): void {
  const { low, high, sounding } = instrumentById(id)!;
  expect(`${printNote(low)}-${printNote(high)}`, id).toBe(written);
  expect(sounding.semitones, id).toBe(semitones);
}

test("recorders as written", () => {
  check("garklein recorder", "C4-C6", 24);
  check("sopranino recorder", "F4-G6", 12);
  check("soprano recorder", "C4-D6", 12);
  check("alto recorder", "F4-G6", 0);
  check("tenor recorder", "C4-D6", 0);
  check("bass recorder", "F2-F4", 12);
  check("great bass recorder", "C2-C4", 12);
  check("contrabass recorder", "F2-F4", 0);
  check("voice flute", "D4-E6", 0);
  check("alto recorder in G", "G4-A6", 0);
});

describe("what sounds is the `full` range of test/reference/instrument-ranges.json", () => {
  const ids: Readonly<Record<string, string>> = {
    "soprano/descant": "soprano recorder",
    "alto/treble": "alto recorder",
    "voice flute (tenor in D)": "voice flute",
    "alto in G": "alto recorder in G",
  };
  test.each(reference.recorders)("$name", ({ name, lowest, full }) => {
    const instrument = instrumentById(ids[name] ?? `${name} recorder`)!;
    const low = printNote(soundingNote(instrument, instrument.low));
    const high = printNote(soundingNote(instrument, instrument.high));
    expect(low).toBe(lowest);
    if (full) expect(`${low}-${high}`).toBe(full.replace(" (from memory)", ""));
    else expect(instrument.soft).toBeDefined();
  });
});

describe("the others as written (`professional_written`), and sounding as told there", () => {
  const intervals: Readonly<Record<string, number>> = {
    "M2 lower": -2,
    "M6 lower": -9,
    "M9 lower": -14,
    "M13 lower": -21,
    "P5 lower": -7,
  };
  test.each(reference.others)("$instrument", ({ instrument, professional_written: written, sounds }) => {
    check(instrument, written, sounds ? intervals[sounds]! : 0);
  });
});

test("transposing instruments are spelled by their interval (common practice: a written C names the instrument)", () => {
  const c = (id: string) => printNote(soundingNote(instrumentById(id)!, note("C4")));
  expect(["clarinet in Bb", "clarinet in A", "trumpet in Bb", "horn in F", "baritone saxophone"].map(c)).toEqual([
    "Bb3",
    "A3",
    "Bb3",
    "F3",
    "Eb2",
  ]);
});

test("both ends belong to the range, by sound", () => {
  const alto = instrumentById("alto recorder")!;
  const inside = (text: string) => isInRange(alto, note(text));
  expect(["E4", "E#4", "F4", "Gbb4", "G6", "Abb6", "G#6"].map(inside)).toEqual([
    false,
    true,
    true,
    true,
    true,
    true,
    false,
  ]);
});

test("ids and names are distinct, and every range rises", () => {
  const names = INSTRUMENTS.flatMap((instrument) => instrument.names.map((name) => name.toLowerCase()));
  expect(new Set(names).size).toBe(names.length);
  for (const { id, names: own, low, high } of INSTRUMENTS) {
    expect(own[0]).toBe(id);
    expect(midi(high) - midi(low)).toBeGreaterThanOrEqual(23);
  }
});
