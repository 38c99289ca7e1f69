import { Note as TonalNote } from "tonal";
import { describe, expect, test } from "vitest";
import { soundAt } from "../../server/features/sound/sound.ts";
import type { Passage } from "../../shared/sound.ts";
import { journalOf, URI } from "../features/journal-text.ts";
import { TODAY } from "../features/marked-text.ts";
import reference from "../reference/temperaments.json" with { type: "json" };

// Frequencies in equal temperament are held against tonal's (Note.freq), others against the tables of test/reference;
// times against the definition of a tempo, beats in 60 seconds.

/** What a line sounds like beside an entry, the last line of the journal. */
function heard(head: string, entry: string, text: string): readonly Passage[] {
  const journal = journalOf(`${head}\n2026-03-08\n  ${entry}`);
  const line = journal.files.get(URI)!.lineCount - 1;
  const sound = soundAt(journal, URI, line, { text, today: TODAY });
  if (!sound.ok) throw new Error(sound.reason);
  return sound.passages;
}

const cents = (a: number, b: number): number => 1200 * Math.log2(a / b);

/** When each sound of a passage begins, all rounds, in seconds. */
function onsets({ tones, round, rounds }: Passage): readonly number[] {
  return Array.from({ length: rounds }, (_, i) => tones.map(({ at }) => i * round + at)).flat();
}

describe("clicks", () => {
  test("come so many a minute as the tempo says, for each tempo in turn", () => {
    const passages = heard("", "D minor, at 52", "click at 52, 60, 66");
    expect(passages.map(({ bpm }) => bpm)).toEqual([52, 60, 66]);
    for (const passage of passages) {
      const times = onsets(passage);
      expect(times).toHaveLength(passage.bpm!); // a minute, where nothing else is said
      for (const [i, time] of times.entries()) expect(time).toBeCloseTo((60 * i) / passage.bpm!, 9);
    }
  });

  test("within a beat are softer, and as many as fill it", () => {
    for (const [value, count] of Object.entries({ "8ths": 2, triplets: 3, "16ths": 4, "4ths": 1 })) {
      const [passage] = heard("", "D minor", `click at 60, ${value.replace("4ths", "quarters")}`);
      const [first, ...within] = passage!.tones;
      expect(passage!.tones.map(({ at }) => at)).toEqual(Array.from({ length: count }, (_, i) => i / count));
      for (const { level } of within) expect(level).toBeLessThan(first!.level);
    }
  });

  test("the first of a bar stands out, where the line says a metre", () => {
    const [passage] = heard("", "D minor", "click at 60 in 3/4");
    expect(passage!.tones.map(({ hertz }) => hertz === passage!.tones[0]!.hertz)).toEqual([true, false, false]);
    expect(heard("", "D minor", "click eighth=90 in 6/8")[0]!.tones).toHaveLength(6);
  });

  test("two bars on, two off", () => {
    const [passage] = heard("", "D minor", "click at 60, 2 bars on, 2 off");
    expect([passage!.tones.length, passage!.round]).toEqual([8, 16]);
  });

  test("never longer than ten minutes", () => {
    const [passage] = heard("", "D minor", "click at 60, 500 min");
    expect(onsets(passage!).at(-1)).toBeLessThanOrEqual(600);
  });
});

describe("an exercise", () => {
  test("sounds note by note as it is written, in equal temperament", () => {
    const [passage] = heard("instrument alto recorder", "F major, slurred, up, 8ths", "play at 60");
    const written = ["F4", "G4", "A4", "Bb4", "C5", "D5", "E5", "F5"];
    expect(passage!.tones).toHaveLength(written.length);
    for (const [i, { hertz, at }] of passage!.tones.entries()) {
      expect(cents(hertz, TonalNote.freq(written[i]!)!)).toBeCloseTo(0, 6);
      expect(at).toBeCloseTo(i / 2, 9);
    }
  });

  // A dotted note is three times as long as the one behind it, a swung one twice, the long one of LSS too: common
  // practice, no source.
  test.each([
    ["dotted", [0, 3, 4, 7, 8, 11, 12, 15], 4],
    ["reverse dotted", [0, 1, 4, 5, 8, 9, 12, 13], 4],
    ["swung", [0, 8 / 3, 4, 20 / 3, 8, 32 / 3, 12, 44 / 3], 4],
    ["LSS", [0, 4, 6, 8, 12, 14, 16, 20], 6],
    ["even", [0, 2, 4, 6, 8, 10, 12, 14], 4],
  ])("in its rhythm: %s", (rhythm, sixteenths, seconds) => {
    const [passage] = heard("instrument alto recorder", `F major, up, ${rhythm}, 8ths`, "play at 60");
    const at = passage!.tones.map((tone) => tone.at);
    expect(at).toHaveLength(8);
    for (const [i, each] of sixteenths.entries()) expect(at[i]).toBeCloseTo(each / 4, 9);
    expect(passage!.round).toBe(seconds);
  });

  test("some bars of it in its rhythm", () => {
    const [passage] = heard("instrument alto recorder", "F major, up, dotted, 8ths", "play bars 2-2 in 2/4 at 60");
    expect(passage!.tones.map((tone) => tone.at)).toEqual([0, 0.75, 1, 1.75]);
    expect(passage!.round).toBe(2);
  });

  test("sounds where the instrument sounds", () => {
    const [soprano] = heard("instrument soprano recorder", "C major, up", "play at 60"); // an octave above what is written
    expect(cents(soprano!.tones[0]!.hertz, TonalNote.freq("C5")!)).toBeCloseTo(0, 6);
    const [clarinet] = heard("instrument clarinet", "C major, up", "play at 60"); // in B flat
    expect(cents(clarinet!.tones[0]!.hertz, TonalNote.freq("Bb3")!)).toBeCloseTo(0, 6);
  });

  test("some of its bars, again", () => {
    const [passage] = heard("", "C major, 2 octaves, 8ths", "play bars 2-2 at 60, 3 times");
    expect([passage!.rounds, passage!.round, passage!.tones.length]).toEqual([3, 4, 8]);
    expect(cents(passage!.tones[0]!.hertz, TonalNote.freq("D5")!)).toBeCloseTo(0, 6); // the ninth note
  });

  test("in the journal's temperament", () => {
    const [passage] = heard("pitch A=415, Vallotti", "C major, up", "play at 60");
    const keys = [0, 2, 4, 5, 7, 9, 11];
    const vallotti = reference.temperaments.Vallotti;
    const a = vallotti.cents[9]!;
    for (const [i, key] of keys.entries()) {
      const expected = vallotti.cents[key]! - a;
      expect(cents(passage!.tones[i]!.hertz, 415)).toBeCloseTo(expected, 2);
    }
  });
});

describe("a drone", () => {
  test.each([
    ["D minor", "drone on the tonic", ["D4"]],
    ["D minor", "drone on 3 5", ["F4", "A4"]],
    ["A major arpeggio", "drone on 3", ["C#4"]],
    ["D minor", "drone on D5", ["D5"]],
  ])("%s: %s", (entry, text, notes) => {
    const [passage] = heard("", entry, text);
    const near = passage!.tones.map(({ hertz }, i) => cents(hertz, TonalNote.freq(notes[i]!)!));
    for (const each of near) expect(Math.abs(each - 1200 * Math.round(each / 1200))).toBeLessThan(1e-6); // of some octave
    expect(passage!.rounds * passage!.round).toBe(60);
  });
});

test("a third that is tempered, and then pure: 386.31 cents (5/4, A. J. Ellis's table of 1885)", () => {
  const [tuned, pure] = heard("", "D major", "compare F# against D");
  const interval = (passage: Passage) => cents(passage.tones[1]!.hertz, passage.tones[0]!.hertz);
  expect(interval(tuned!)).toBeCloseTo(400, 6);
  expect(interval(pure!)).toBeCloseTo(386.31, 2);
  expect(pure!.tones[0]!.hertz).toBe(tuned!.tones[0]!.hertz);
});
