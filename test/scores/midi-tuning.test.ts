import { Note as TonalNote } from "tonal";
import { describe, expect, test } from "vitest";
import type { Degree } from "../../server/music/notes/degree.ts";
import { CONCERT_TUNING, TEMPERAMENTS, type Temperament, type Tuning } from "../../server/music/tuning/temperament.ts";
import { keysInCents, keysInHertz, scaleInCents, scaleInHertz } from "../../server/scores/keyboard-tuning.ts";
import { bulkTuningDump, octaveTuning } from "../../server/scores/midi-tuning.ts";
import reference from "../reference/temperaments.json" with { type: "json" };

// Messages are held against the MIDI Tuning Standard (MIDI 1.0 Detailed Specification; CA-020 and CA-021), their
// frequencies against tonal's and the tables of test/reference.

const CENTS_OF_A_PART = 100 / 2 ** 14;

/** What a dump has in it, read by the standard's own description of its bytes. */
function dumped(bytes: Uint8Array) {
  const triples = Array.from({ length: 128 }, (_, key) => [...bytes.slice(22 + 3 * key, 25 + 3 * key)]);
  return {
    head: [...bytes.slice(0, 6)],
    name: String.fromCharCode(...bytes.slice(6, 22)),
    triples,
    hertz: triples.map(([xx, yy, zz]) => 440 * 2 ** ((xx! + (128 * yy! + zz!) / 2 ** 14 - 69) / 12)),
    checksum: bytes[406]!,
    end: [...bytes.slice(407)],
  };
}

function dumpOf(hertz: number): readonly number[] {
  return dumped(
    bulkTuningDump(
      "",
      Array.from({ length: 128 }, () => hertz),
    ),
  ).triples[0]!;
}

const cents = (a: number, b: number) => 1200 * Math.log2(a / b);

describe("a bulk tuning dump", () => {
  // The standard's own examples of frequency data. Its printed hertz are rounded ill in their last places, and 8.2104 for
  // 00 00 01 is a slip; these are the same examples by its formula, as the forum of the standard's publisher has them
  // ("MTS frequency data examples in spec", 2018 to 2019).
  test.each([
    [8.1758, "00 00 00"],
    [8.662, "01 00 00"],
    [16.3516, "0c 00 00"],
    [261.6256, "3c 00 00"],
    [277.18263, "3d 00 00"],
    [439.9984, "44 7f 7f"],
    [440, "45 00 00"],
    [8372.0181, "78 00 00"],
    [8372.0476, "78 00 01"],
    [12543.854, "7f 00 00"],
    [12543.8982, "7f 00 01"],
    [13289.6566, "7f 7f 7e"],
  ])("%d Hz is %s", (hertz, hex) => {
    const found = dumpOf(hertz);
    const [xx, yy, zz] = hex.split(" ").map((byte) => Number.parseInt(byte, 16));
    const parts = ([a, b, c]: readonly number[]) => 2 ** 14 * a! + 128 * b! + c!;
    // Four decimals of so low a frequency are coarser than a part.
    const slack = Math.ceil(cents(hertz + 0.00005, hertz) / CENTS_OF_A_PART);
    expect(Math.abs(Math.max(0, parts(found)) - parts([xx!, yy!, zz!]))).toBeLessThanOrEqual(slack);
  });

  test("leaves a key as it is, 7F 7F 7F, where its frequency cannot be said", () => {
    expect(dumpOf(8)).toEqual([0x7f, 0x7f, 0x7f]);
    expect(dumpOf(13_300)).toEqual([0x7f, 0x7f, 0x7f]);
  });

  test("has 408 bytes: head, name, 128 frequencies, checksum, end", () => {
    const bytes = bulkTuningDump("Vallotti 415", keysInHertz(CONCERT_TUNING));
    expect(bytes).toHaveLength(408);
    const { head, name, end, checksum } = dumped(bytes);
    expect(head).toEqual([0xf0, 0x7e, 0x7f, 0x08, 0x01, 0]);
    expect(name).toBe("Vallotti 415    ");
    expect(end).toEqual([0xf7]);
    // "XOR of all bytes excluding F0, F7, and chksum": with the checksum among them they come to nought.
    expect([...bytes.slice(1, 407)].reduce((sum, byte) => sum ^ byte, 0)).toBe(0);
    expect(checksum).toBeLessThan(128);
    expect([...bytes.slice(1, -1)].every((byte) => byte < 128)).toBe(true);
  });

  test("has a name in ASCII, whatever the journal calls it", () => {
    expect(dumped(bulkTuningDump("Örgel in Ré ♭ and more", keysInHertz(CONCERT_TUNING))).name).toBe("Orgel in Re ? an");
  });

  test("of equal temperament at A = 440 leaves every key at its own number", () => {
    const { triples } = dumped(bulkTuningDump("", keysInHertz(CONCERT_TUNING)));
    expect(triples).toEqual(Array.from({ length: 128 }, (_, key) => [key, 0, 0]));
  });

  test.each([392, 415, 430, 440, 442, 466])("has the frequencies of A = %d within the standard's resolution", (a) => {
    const { hertz, triples } = dumped(bulkTuningDump("", keysInHertz({ ...CONCERT_TUNING, a })));
    for (let key = 0; key < 128; key++) {
      const freq = (TonalNote.freq(TonalNote.fromMidi(key))! * a) / 440;
      if (triples[key]!.every((byte) => byte === 0x7f)) expect(freq < 8.1758 || freq > 13_289.6).toBe(true);
      else expect(Math.abs(cents(hertz[key]!, freq))).toBeLessThanOrEqual(CENTS_OF_A_PART / 2 + 1e-6);
    }
  });
});

const TABLES = Object.entries(reference.temperaments).flatMap(([name, { cents: ofC }]) => {
  const kind = TEMPERAMENTS.find(({ names }) => names.some((each) => each.toLowerCase() === name.toLowerCase()));
  return kind ? [[name, kind.id, ofC] as const] : [];
});

describe("temperaments", () => {
  test("there are tables of several", () => expect(TABLES.length).toBeGreaterThanOrEqual(3));

  test.each(TABLES)("%s, in every octave of a dump", (_, id, ofC) => {
    const tuning: Tuning = { a: 415, temperament: { id } as Temperament };
    const { hertz, triples } = dumped(bulkTuningDump("", keysInHertz(tuning)));
    for (let key = 12; key < 120; key++) {
      const wanted = 415 * 2 ** ((ofC[key % 12]! - ofC[9]! + 1200 * (Math.floor(key / 12) - 5)) / 1200);
      expect(triples[key]).not.toEqual([0x7f, 0x7f, 0x7f]);
      expect(Math.abs(cents(hertz[key]!, wanted)), `${key}`).toBeLessThan(0.01); // tables have three decimals of a cent
    }
  });

  test.each(TABLES)("%s, as an octave tuning", (_, id, ofC) => {
    const octave = octaveTuning(keysInCents({ a: 440, temperament: { id } as Temperament }));
    if (!octave.ok) throw new Error(octave.reason);
    const bytes = [...octave.content];
    expect(bytes.slice(0, 8)).toEqual([0xf0, 0x7e, 0x7f, 0x08, 0x09, 0x03, 0x7f, 0x7f]);
    expect(bytes).toHaveLength(33);
    expect(bytes.at(-1)).toBe(0xf7);
    for (let key = 0; key < 12; key++) {
      const [ss, tt] = bytes.slice(8 + 2 * key);
      const found = ((128 * ss! + tt! - 0x2000) * 100) / 0x2000;
      expect(Math.abs(found - (ofC[key]! - 100 * key - (ofC[9]! - 900)))).toBeLessThan(0.01);
    }
  });
});

describe("an octave tuning", () => {
  // CA-021, two-byte form: 00 00 is -100 cents, 40 00 is 0, 7F 7F is +100.
  test("of equal temperament is 40 00 for every key", () => {
    const octave = octaveTuning(keysInCents(CONCERT_TUNING));
    expect(octave.ok && [...octave.content.slice(8, -1)]).toEqual(Array.from({ length: 12 }, () => [0x40, 0]).flat());
  });

  test("ends at 100 cents either way", () => {
    const octave = octaveTuning([-100, 99.99, ...Array.from({ length: 10 }, () => 0)]);
    expect(octave.ok && [...octave.content.slice(8, 12)]).toEqual([0, 0, 0x7f, 0x7f]);
    expect(octaveTuning(keysInCents({ ...CONCERT_TUNING, a: 415 }))).toMatchObject({ ok: false }); // 101 cents
    expect(octaveTuning(keysInCents({ ...CONCERT_TUNING, a: 442 }))).toMatchObject({ ok: true });
  });
});

describe("a scale in cents", () => {
  const scale = (...ofTonic: readonly number[]): readonly Degree[] =>
    ofTonic.map((each, step) => ({ step: Math.min(step, 6), semitones: Math.round(each / 100), cents: each }));
  const D = { letter: "D", alter: 0 } as const;
  const key = (name: string) => TonalNote.midi(name)!;

  test("has the keys nearest to its notes, in every octave; the others stay", () => {
    const hertz = scaleInHertz({ tonic: D, degrees: scale(0, 204, 347, 498, 702, 906, 1049) }, CONCERT_TUNING);
    const from = (name: string, tonic: string) => cents(hertz[key(name)]!, TonalNote.freq(tonic)!);
    expect(["D4", "E4", "F4", "G4", "A4", "B4", "C5", "D5"].map((name) => Math.round(from(name, "D4")))).toEqual([
      0, 204, 347, 498, 702, 906, 1049, 1200,
    ]);
    expect(from("E2", "D2")).toBeCloseTo(204, 6);
    expect(hertz[key("F#4")]).toBeCloseTo(TonalNote.freq("F#4")!, 9);
    expect(cents(hertz[0]!, TonalNote.freq("D-2")! || 440 * 2 ** ((-10 - 69) / 12))).toBeCloseTo(1049, 6); // C below D
  });

  test("of more notes than keys has the keys in turn, from the tonic nearest to middle C", () => {
    const fifths = Array.from({ length: 17 }, (_, i) => (1200 * i) / 17);
    const hertz = scaleInHertz({ tonic: D, degrees: scale(...fifths) }, CONCERT_TUNING);
    const d4 = key("D4");
    expect(hertz[d4]).toBeCloseTo(TonalNote.freq("D4")!, 9);
    for (const i of [-20, -1, 1, 16, 17, 40]) expect(cents(hertz[d4 + i]!, hertz[d4]!)).toBeCloseTo((1200 * i) / 17, 6);
    expect(scaleInCents({ tonic: D, degrees: scale(...fifths) }, CONCERT_TUNING)).toBeUndefined();
  });

  test("fits an octave tuning where each note has a key of its own", () => {
    const found = scaleInCents({ tonic: D, degrees: scale(0, 204, 347, 498, 702, 906, 1049) }, CONCERT_TUNING)!;
    expect(found.map(Math.round)).toEqual([49, 0, 0, 0, 4, 47, 0, -2, 0, 2, 0, 6]);
  });
});
