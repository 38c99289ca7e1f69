import { Note } from "tonal";
import { describe, expect, test } from "vitest";
import type { NotesReport } from "../../../server/cli/notes/notes-report.ts";
import reference from "../../reference/temperaments.json" with { type: "json" };
import archive from "../../reference/temperaments-scala.json" with { type: "json" };
import type { Files } from "../../support/temporary-folder.ts";
import { daystave } from "../command-line.ts";

async function report(exercise: string, options: string[] = [], files: Files = {}): Promise<NotesReport> {
  const { status, stdout, stderr } = await daystave(["notes", exercise, "--json", ...options], { files });
  expect([status, stderr], exercise).toEqual([0, ""]);
  return JSON.parse(stdout);
}

/** Cents from equal temperament with A as the anchor, from cents above C to three decimals. */
function fromEqual(cents: readonly number[], key: number): number {
  return cents[key]! - 100 * key - (cents[9]! - 900);
}

describe("frequencies and cents", () => {
  // test/reference/temperaments.json and temperaments-scala.json, each to three decimals.
  const named = [
    ["Vallotti", reference.temperaments.Vallotti.cents],
    ["Werckmeister III", reference.temperaments["Werckmeister III"].cents],
    ["quarter-comma meantone", reference.temperaments["quarter-comma meantone"].cents],
    ["just on C", reference.temperaments["just (5-limit on C)"].cents],
    ...archive.temperaments.map(({ temperament, cents }) => [temperament, cents] as const),
  ] as const;

  test.each(named)("in %s are those of the reference", async (name, cents) => {
    const { sounding, ...found } = await report("chromatic from C4 to C5, up", ["--pitch", `A=415,${name}`]);
    expect([found.pitch, found.temperament, sounding.length]).toEqual([415, name, 13]);
    for (const [i, note] of sounding.entries()) {
      const expected = fromEqual(cents, Note.chroma(note)!);
      expect(Math.abs(found.cents[i]! - expected), note).toBeLessThan(0.0011); // two figures to three decimals
      expect(found.frequencies[i], note).toBeCloseTo(Note.freq(note)! * (415 / 440) * 2 ** (expected / 1200), 2);
    }
  });

  test("agree with each other", async () => {
    const { sounding, frequencies, cents } = await report("B major, 2 octaves", ["--pitch", "A=392, Kirnberger 3"]);
    for (const [i, note] of sounding.entries())
      expect(1200 * Math.log2(frequencies[i]! / (Note.freq(note)! * (392 / 440))), note).toBeCloseTo(cents[i]!, 2);
  });

  test("of a scale in cents are its own, up and down", async () => {
    const files = { "journal.practice": 'scale "even": cents 0 150 300, down 300 100 0\n' };
    const { notes, cents } = await report('"even" on A, up and down', [], files);
    expect(notes).toEqual(["A4", "B𝄳4", "C5", "A5", "C5", "Bb4", "A4"]);
    expect(cents).toEqual([0, -50, 0, 0, 0, 0, 0]);
  });

  test("follow what sounds: C major on a clarinet in B flat is B flat major", async () => {
    const options = ["--pitch", "A=440, quarter-comma meantone"];
    const clarinet = await report("C major", [...options, "--instrument", "clarinet in Bb"]);
    const concert = await report("Bb major", options);
    expect(clarinet.notes[0]).toMatch(/^C/);
    expect(clarinet.cents).toEqual(concert.cents);
  });

  test("a declared scale in cents keeps its distances from its tonic, which is tempered", async () => {
    const files = {
      "journal.practice": 'pitch A=415, Vallotti\nscale "even seven": cents 0 150 300 500 700 850 1000\n',
    };
    const { frequencies, cents } = await report('"even seven" on D, up', [], files);
    expect(cents[0]).toBeCloseTo(fromEqual(reference.temperaments.Vallotti.cents, 2), 2);
    for (const [i, above] of [0, 150, 300, 500, 700, 850, 1000, 1200].entries())
      expect(1200 * Math.log2(frequencies[i]! / frequencies[0]!)).toBeCloseTo(above, 2);
  });
});

describe("the tuning is that of", () => {
  const files = { "journal.practice": "pitch A=415, Young 2\n" };

  test("the journal", async () => {
    const { pitch, temperament } = await report("D major", [], files);
    expect([pitch, temperament]).toEqual([415, "Young II"]);
  });

  test("the option, which stands in place of all that the journal says", async () => {
    const { pitch, temperament, cents } = await report("D major", ["--pitch", "A=430"], files);
    expect([pitch, temperament]).toEqual([430, "equal"]);
    expect(new Set(cents)).toEqual(new Set([0]));
  });

  test("neither: A=440, equal", async () => {
    const { pitch, temperament } = await report("D major");
    expect([pitch, temperament]).toEqual([440, "equal"]);
  });
});

describe("as text", () => {
  /** The rows from the frequencies on, each on one line. */
  async function rows(exercise: string, pitch: string): Promise<readonly string[]> {
    const { stdout } = await daystave(["notes", exercise, "--pitch", pitch]);
    expect(stdout.split("\n").every((line) => line.length <= 80)).toBe(true);
    const [, told] = stdout.replace(/\n {15}/g, " ").split("  frequencies  ");
    return told!.trimEnd().split("\n");
  }

  // The distances follow from the definitions: 1/6 of the Pythagorean comma is 3.9 cents, a fifth of the circle for
  // each.
  test("the tuning stands behind the frequencies, and thirds and fifths are told by their distance from pure", async () => {
    expect(await rows("C major arpeggio", "A=415, Vallotti")).toEqual([
      "  C4 247.6, E4 310.5, G4 370.6, C5 495.2 Hz (A=415, Vallotti)",
      "  thirds         C–E 5.9 wide, E–G 9.8 narrow, in cents from pure",
      "  fifths         C–G 3.9 narrow, in cents from pure",
    ]);
  });

  test("a wolf is named, and pure is pure", async () => {
    expect((await rows("Ab major arpeggio", "A=415, 1/4-comma meantone")).slice(1)).toEqual([
      "  thirds         Ab–C 41.1 wide, C–Eb 5.4 narrow, in cents from pure",
      "  fifths         Ab–Eb 35.7 wide (wolf), in cents from pure",
    ]);
    expect((await rows("D arpeggio", "A=415, just on D")).slice(1)).toEqual([
      "  thirds         D–F# pure, F#–A pure, in cents from pure",
      "  fifths         D–A pure, in cents from pure",
    ]);
    expect((await rows("C whole-tone", "A=415, Pythagorean")).at(-1)).toBe("  fifths         none in it");
  });

  test("in equal temperament they are not told, as every key has the same", async () => {
    expect(await rows("C major arpeggio", "A=415")).toEqual([
      "  C4 246.8, E4 310.9, G4 369.7, C5 493.5 Hz (A=415, equal   temperament)",
    ]);
  });
});
