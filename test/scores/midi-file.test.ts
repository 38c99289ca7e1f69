import fc from "fast-check";
import { type MidiData, parseMidi } from "midi-file";
import { Note as TonalNote } from "tonal";
import { describe, expect, test } from "vitest";
import { INSTRUMENTS } from "../../server/music/instruments/instruments.ts";
import { PATTERNS } from "../../server/music/patterns/pattern.ts";
import { FEW } from "../support/random-runs.ts";
import { bytesOf, fileOf, playedBy } from "./exported.ts";

// Files are read back with the package `midi-file`, pitches told by `tonal` (middle C, C4, is 60 in both).

/** A key that goes down, when, and for how long, in quarters. */
interface Key {
  readonly key: number;
  readonly at: number;
  readonly length: number;
}

function parsed(line: string, head = ""): MidiData {
  return parseMidi(bytesOf(line, "midi", head));
}

function keysOf({ header, tracks }: MidiData): readonly Key[] {
  const down = new Map<number, number>();
  const keys: Key[] = [];
  let at = 0;
  for (const event of tracks[0]!) {
    at += event.deltaTime / header.ticksPerBeat!;
    if (event.type === "noteOn") {
      expect(down.has(event.noteNumber), "a key goes down that is up").toBe(false);
      down.set(event.noteNumber, at);
    }
    if (event.type !== "noteOff") continue;
    const from = down.get(event.noteNumber)!;
    down.delete(event.noteNumber);
    keys.push({ key: event.noteNumber, at: from, length: at - from });
  }
  expect(down.size, "every key comes up again").toBe(0);
  return keys;
}

function metaOf<T extends MidiData["tracks"][number][number]["type"]>({ tracks }: MidiData, type: T) {
  return tracks[0]!.find((event): event is Extract<typeof event, { type: T }> => event.type === type);
}

/** That a file has the notes of a line at concert pitch, as far apart as their value says. */
function holds(line: string, head: string, quarters: number): void {
  const { written, sounding } = playedBy(line, head);
  const keys = keysOf(parsed(line, head));
  expect(
    keys.map(({ key }) => key),
    `${head}: ${line}`,
  ).toEqual(written.map((name) => TonalNote.midi(name)! + sounding));
  for (const [i, { at, length }] of keys.entries()) {
    expect(Math.abs(at - i * quarters), line).toBeLessThan(0.002); // one tick of 480
    expect(length, line).toBeGreaterThan(0.8 * quarters);
    expect(length, line).toBeLessThanOrEqual(quarters + 0.002);
  }
}

describe("the file", () => {
  test("is of format 0, with one track, its name, instrument, tempo and key", () => {
    const file = parsed("D minor, thirds, 8ths at 72", "instrument alto recorder");
    expect(file.header).toMatchObject({ format: 0, numTracks: 1, ticksPerBeat: 480 });
    expect(metaOf(file, "trackName")?.text).toBe("D natural minor, thirds");
    expect(metaOf(file, "instrumentName")?.text).toBe("alto recorder");
    expect(metaOf(file, "setTempo")?.microsecondsPerBeat).toBe(Math.round(60_000_000 / 72));
    expect(metaOf(file, "keySignature")).toMatchObject({ key: -1, scale: 1 });
    expect(file.tracks[0]!.at(-1)!.type).toBe("endOfTrack");
  });

  // Beats and their parts of a whole note: common practice, no source.
  test.each([
    ["C major, quarters at 60", 60],
    ["C major, 8ths at eighth=120", 60],
    ["C major, quarters at half=60", 120],
    ["C major, 8ths at dotted quarter=60", 90],
    ["C major, 16ths at 60-72", 72],
  ])("%s is %d quarters a minute", (line, quarters) =>
    expect(metaOf(parsed(line), "setTempo")?.microsecondsPerBeat).toBe(Math.round(60_000_000 / quarters)),
  );

  test.each([
    ["quarters", 60],
    ["16ths", 15],
    ["wholes", 240],
  ])("without a tempo %s come a note a second", (value, quarters) => {
    expect(metaOf(parsed(`C major, ${value}`), "setTempo")?.microsecondsPerBeat).toBe(60_000_000 / quarters);
  });

  test("of a line with several tempos it has the first", () =>
    expect(metaOf(parsed("C major, at 60, 66, 72 clean"), "setTempo")?.microsecondsPerBeat).toBe(1_000_000));

  test("keys at concert pitch: D major for a clarinet in B flat is C major", () => {
    const [clarinet] = [parsed("D major", "instrument clarinet")];
    expect(metaOf(clarinet!, "keySignature")).toMatchObject({ key: 0, scale: 0 });
    expect(metaOf(parsed("Cb major", "instrument clarinet"), "keySignature")).toBeUndefined(); // nine flats
    expect(metaOf(parsed("F# major"), "keySignature")).toMatchObject({ key: 6, scale: 0 });
    expect(metaOf(parsed("C whole-tone"), "keySignature")).toBeUndefined();
  });

  test("a long delay is written in several bytes", () => {
    const keys = keysOf(parsed("C major, wholes, slurred"));
    expect(keys.slice(0, 3).map(({ at, length }) => [at, length])).toEqual([
      [0, 4],
      [4, 4],
      [8, 4],
    ]);
  });
});

describe("notes", () => {
  test.each(PATTERNS.map(({ id }) => id))("in %s, of a scale in two octaves", (pattern) => {
    holds(`D melodic minor, ${pattern}, 2 octaves, 8ths at 60`, "", 0.5);
  });

  test.each(INSTRUMENTS.map(({ id }) => id))("sound as on %s", (id) => {
    holds("G major, quarters", `instrument ${id}`, 1);
  });

  test.each(["C#", "Cb", "F#", "Gb", "G#", "D#", "A#", "Fb", "B#"])("in %s, up to double accidentals", (tonic) => {
    for (const kind of ["major", "harmonic minor", "melodic minor"]) holds(`${tonic} ${kind}, triplets`, "", 1 / 3);
  });

  // Parts of a quarter: common practice, no source.
  test.each([
    ["wholes", 4],
    ["halves", 2],
    ["quarters", 1],
    ["8ths", 0.5],
    ["triplets", 1 / 3],
    ["16ths", 0.25],
    ["sextuplets", 1 / 6],
    ["32nds", 0.125],
    ["crotchet 60 in 5s", 0.2],
  ])("in %s", (value, quarters) => holds(`E major, 2 octaves, ${value}`, "", quarters));

  test("under a slur are held until the next, its last one is not", () => {
    const lengths = keysOf(parsed("C major, quarters, slur 2+2")).map(({ length }) => Math.round(100 * length));
    expect(lengths.slice(0, 4)).toEqual([100, 85, 100, 85]);
  });

  test("are as written here in any exercise", () => {
    const line = fc.record({
      tonic: fc.constantFrom("C", "C#", "Db", "D", "Eb", "E", "F", "F#", "Gb", "G", "Ab", "A", "Bb", "B"),
      kind: fc.constantFrom("major", "harmonic minor", "melodic minor", "dorian", "arpeggio", "dominant seventh"),
      pattern: fc.constantFrom("", ...PATTERNS.map(({ id }) => id)),
      reach: fc.constantFrom("", "twelfth", "2 octaves", "full range"),
      direction: fc.constantFrom("", "up", "down", "down and up"),
      instrument: fc.constantFrom(...INSTRUMENTS.map(({ id }) => id)),
    });
    fc.assert(
      fc.property(line, ({ tonic, kind, pattern, reach, direction, instrument }) => {
        const text = [`${tonic} ${kind}`, pattern, reach, direction, "16ths"].filter((each) => each !== "").join(", ");
        const head = `instrument ${instrument}`;
        const { written } = playedBy(text, head);
        if (written.length > 0) return holds(text, head, 0.25);
        expect(fileOf(text, "midi", head)).toMatchObject({ ok: false, reason: "None of it fits in this span." });
      }),
      { seed: 19, numRuns: FEW },
    );
  });
});

describe("a scale in cents", () => {
  const HEAD = 'scale "thirteen": cents 0 150 300 450 600 750 900 1050';

  // MIDI 1.0 Detailed Specification: the pitch wheel at rest is 8192 (which the package counts from), and RPN 0 its range.
  test("is bent from the nearest keys, to a fraction of a cent", () => {
    const { tracks } = parsed('C "thirteen", up, quarters', HEAD);
    const controls = tracks[0]!.flatMap((event) =>
      event.type === "controller" ? [[event.controllerType, event.value]] : [],
    );
    expect(controls.slice(0, 4)).toEqual([
      [101, 0],
      [100, 0],
      [6, 2],
      [38, 0],
    ]);
    let bend = 0;
    const cents = tracks[0]!.flatMap((event) => {
      if (event.type === "pitchBend") bend = event.value;
      return event.type === "noteOn" ? [100 * (event.noteNumber - 60) + (200 * bend) / 8192] : [];
    });
    expect(cents.map((each) => Math.round(20 * each) / 20)).toEqual([0, 150, 300, 450, 600, 750, 900, 1050, 1200]);
  });
});

describe("there is none", () => {
  test("of a piece, of a line without an entry, of what no key has", () => {
    expect(fileOf('"Air", bars 1-8', "midi")).toMatchObject({ ok: false });
    expect(fileOf("", "midi")).toMatchObject({ ok: false });
    expect(fileOf("G major, 8 octaves, from G4", "midi")).toMatchObject({ ok: false });
  });

  test("that is slower than a file can say", () =>
    expect(fileOf("C major, 32nds at 32nd=20", "midi")).toMatchObject({
      ok: false,
      reason: expect.stringMatching(/slow/),
    }));
});

// What each rhythm is: common practice, no source.
test.each([
  ["dotted", [0, 0.75, 1, 1.75, 2, 2.75, 3, 3.75]],
  ["swung", [0, 2 / 3, 1, 5 / 3, 2, 8 / 3, 3, 11 / 3]],
  ["LSS", [0, 1, 1.5, 2, 3, 3.5, 4, 5]],
])("in its rhythm: %s", (rhythm, quarters) => {
  const keys = keysOf(parsed(`C major, up, ${rhythm}, 8ths`));
  expect(keys.map(({ key }) => key)).toEqual([60, 62, 64, 65, 67, 69, 71, 72]);
  for (const [i, { at }] of keys.entries()) expect(Math.abs(at - quarters[i]!)).toBeLessThan(0.002);
});
