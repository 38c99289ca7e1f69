import fc from "fast-check";
import { Interval, Note as Tonal } from "tonal";
import { describe, expect, test } from "vitest";
import { isInRange, soundingNote } from "../../../server/music/instruments/instrument.ts";
import { INSTRUMENTS, instrumentById, namesShortenedTo } from "../../../server/music/instruments/instruments.ts";
import { transpositionWords } from "../../../server/music/instruments/transposition.ts";
import { midi, parseNote, printNote } from "../../../server/music/notes/note.ts";
import reference from "../../reference/instrument-ranges.json" with { type: "json" };
import more from "../../reference/instrument-ranges-more.json" with { type: "json" };
import { MANY } from "../../support/random-runs.ts";
import { recorderId } from "../fingering/recorder-reference.ts";

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
  test.each(reference.recorders)("$name", ({ name, lowest, full }) => {
    const instrument = instrumentById(recorderId(name))!;
    const low = printNote(soundingNote(instrument, instrument.low));
    const high = printNote(soundingNote(instrument, instrument.high));
    expect(low).toBe(lowest);
    if (full) expect(`${low}-${high}`).toBe(full.replace(" (from memory)", ""));
    else expect(instrument.soft).toBeDefined();
  });
});

/** `M2 lower` of the references, in tonal's words: `-2M`. */
function asTonal(sounds: string | undefined): string {
  const [, quality, size, way] = /^([PMm])(\d+) (lower|higher)$/.exec(sounds ?? "P1 higher")!;
  return `${way === "lower" ? "-" : ""}${size}${quality}`;
}

describe("the others as written (`professional_written`), and sounding as told there, by letter and semitones", () => {
  test.each([...reference.others, ...more.others])("$instrument", (row) => {
    const sounds = "sounds" in row ? row.sounds : undefined;
    const { semitones } = Interval.get(asTonal(sounds));
    // Of the harp, the reference gives the key that sounds; its lowest and highest strings are C and G.
    if (row.instrument === "harp") check("harp", "Cb1-G#7", 0);
    else check(row.instrument, row.professional_written, semitones!);
    const { low, high, sounding } = instrumentById(row.instrument)!;
    const [lowest, highest] = row.professional_written.split("-");
    expect([midi(low), midi(high)]).toEqual([Tonal.midi(lowest!), Tonal.midi(highest!)]);
    expect(printNote(soundingNote({ sounding }, low))).toBe(Tonal.transpose(printNote(low), asTonal(sounds)));
  });

  test("every instrument stands in a reference, or says that it is from memory", () => {
    const named = [...reference.others, ...more.others].map(({ instrument }) => instrument);
    const others = INSTRUMENTS.filter(({ id, family }) => family !== "recorder" && !named.includes(id));
    expect(others.map(({ id, soft }) => [id, soft])).toEqual([["organ", expect.stringContaining("from memory")]]);
  });
});

/**
 * A second opinion on the lowest note and the transposition: the musicology toolkit music21, as far as it has both.
 * Where it says something else, this is why we side with the data set.
 */
describe("music21 agrees on lowest note and transposition (test/reference/instrument-ranges-more.json)", () => {
  const otherwise: Readonly<Record<string, string>> = {
    "bass clarinet": "it takes the common instrument down to Eb3, we the one that goes to C3, and say so",
    contrabassoon: "it leaves the octave out, which orchestral parts have (common practice, no source)",
    "bass trombone": "it takes Bb1, without valves; with them it reaches the data set's Eb1, and ours says so",
    tuba: "it takes D1; tubas differ, and ours says so",
    guitar: "it gives the lowest string as it sounds; written, it is an octave higher",
    "bass guitar": "it gives the lowest string as it sounds; written, it is an octave higher",
    harp: "it gives the string C, and the lowest note is that string with its pedal up: Cb",
  };

  test.each(more.others.filter((row) => "music21" in row))("$instrument", ({ instrument, music21 }) => {
    const { low, high, sounding, soft } = instrumentById(instrument)!;
    const theirs = music21!.transposition?.replace(/^([PMm])(-?)(\d+)$/, "$2$3$1") ?? "1P";
    const agrees =
      printNote(low) === music21!.lowest &&
      sounding.semitones === Interval.get(theirs).semitones &&
      (!("highest" in music21!) || printNote(high) === music21!.highest);
    expect(agrees, instrument).toBe(!(instrument in otherwise));
    if (/ours says so|and say so/.test(otherwise[instrument] ?? "")) expect(soft).toBeDefined();
  });

  test("the four that sound lower than a string's name, or than music21 says, do so by an octave", () => {
    for (const id of ["guitar", "bass guitar", "double bass", "contrabassoon"])
      expect(instrumentById(id)!.sounding).toEqual({ steps: -7, semitones: -12 });
    const strings = { guitar: "E2", "bass guitar": "E1", "double bass": "E1" };
    for (const [id, string] of Object.entries(strings)) {
      const { low, sounding } = instrumentById(id)!;
      expect(printNote(soundingNote({ sounding }, low))).toBe(string);
    }
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

test("what sounds is what is written, moved by the instrument's transposition, and moving back gives what was written", () => {
  const anyNote = fc.record({
    letter: fc.constantFrom("C", "D", "E", "F", "G", "A", "B"),
    alter: fc.integer({ min: -2, max: 2 }),
    octave: fc.integer({ min: 0, max: 8 }),
  });
  fc.assert(
    fc.property(fc.constantFrom(...INSTRUMENTS), anyNote, ({ sounding }, written) => {
      const sounds = soundingNote({ sounding }, written);
      expect(midi(sounds) - midi(written)).toBe(sounding.semitones);
      const steps = (note: typeof sounds) => 7 * note.octave + "CDEFGAB".indexOf(note.letter);
      expect(steps(sounds) - steps(written)).toBe(sounding.steps);
      const back = { steps: -sounding.steps, semitones: -sounding.semitones };
      expect(soundingNote({ sounding: back }, sounds)).toEqual(written);
    }),
    { seed: 20261128, numRuns: MANY },
  );
});

test("a name with its key is the instrument that is in it", () => {
  const named = (name: string) => INSTRUMENTS.find(({ names }) => names.includes(name))?.id;
  expect(
    ["alto recorder in F", "treble recorder in F", "descant", "treble", "descant recorder in C"].map(named),
  ).toEqual(["alto recorder", "alto recorder", "soprano recorder", "alto recorder", "soprano recorder"]);
  // The key is what a written C sounds; of a recorder and a crumhorn it is the lowest note (common practice).
  for (const { names, low, sounding, family, id } of INSTRUMENTS)
    for (const [, key] of names.map((name) => / in ([A-G]b?)$/.exec(name)).filter((match) => match !== null)) {
      const lowest = family === "recorder" || id.includes("crumhorn") || id === "lute";
      const note = lowest ? low : soundingNote({ sounding }, { letter: "C", alter: 0, octave: 4 });
      expect(printNote(note).replace(/\d/, ""), id).toBe(key);
    }
});

test("how an instrument sounds, in words (common practice, no source)", () => {
  const words = (id: string) => transpositionWords(instrumentById(id)!.sounding);
  expect(words("alto recorder")).toBeUndefined();
  expect(words("garklein recorder")).toBe("two octaves higher");
  expect(words("soprano recorder")).toBe("an octave higher");
  expect(words("double bass")).toBe("an octave lower");
  expect(words("clarinet in Bb")).toBe("a major second lower");
  expect(words("clarinet in A")).toBe("a minor third lower");
  expect(words("clarinet in Eb")).toBe("a minor third higher");
  expect(words("alto flute")).toBe("a perfect fourth lower");
  expect(words("cor anglais")).toBe("a perfect fifth lower");
  expect(words("tenor saxophone")).toBe("an octave and a major second lower");
  expect(words("baritone saxophone")).toBe("an octave and a major sixth lower");
});

describe("a word that several instruments share names none of them", () => {
  const check = (word: string, names: readonly string[]) => expect(namesShortenedTo(word), word).toEqual(names);

  test("it is short for each name that it begins or ends", () => {
    check("soprano", ["soprano recorder", "soprano saxophone", "soprano crumhorn", "soprano voice"]);
    check("viol", ["treble viol", "tenor viol", "bass viol"]);
    check("baritone", ["baritone saxophone", "baritone horn", "baritone horn in treble clef", "baritone voice"]);
    check("sax", ["soprano sax", "alto sax", "tenor sax", "baritone sax"]);
    expect(namesShortenedTo("alto").slice(0, 2)).toEqual(["alto recorder", "alto recorder in G"]);
    expect(namesShortenedTo("alto")).toContain("alto voice");
    expect(namesShortenedTo("tenor")).toEqual(
      expect.arrayContaining(["tenor recorder", "tenor saxophone", "tenor voice"]),
    );
    expect(namesShortenedTo("bass")).toEqual(expect.arrayContaining(["bass recorder", "double bass", "bass voice"]));
    expect(namesShortenedTo("recorder")).toHaveLength(9); // all but the voice flute
    check(
      "crumhorn",
      ["great bass crumhorn", "bass crumhorn", "tenor crumhorn", "alto crumhorn", "soprano crumhorn"].toReversed(),
    );
  });

  test("or what several are called besides", () => {
    check("contrabass", ["contrabass recorder", "double bass"]);
    check("keyboard", ["piano", "harpsichord", "organ"]);
  });

  test("a name, a key and what no name has are short for nothing", () => {
    for (const word of [
      "horn",
      "clarinet",
      "sopranino",
      "descant",
      "treble",
      "a",
      "bb",
      "c",
      "",
      "kazoo",
      "constructor",
    ])
      check(word, []);
  });

  test("every name that is offered is an instrument's", () => {
    const names = INSTRUMENTS.flatMap((instrument) => instrument.names);
    for (const word of names.flatMap((name) => name.toLowerCase().split(" ")))
      for (const offered of namesShortenedTo(word)) expect(names).toContain(offered);
  });
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
    expect(midi(high) - midi(low)).toBeGreaterThanOrEqual(16); // a tenth: crumhorns have no second register
  }
});
