import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type FingerChange,
  fingerChanges,
  hardestSteps,
  WEIGHTS,
} from "../../../server/music/fingering/finger-change.ts";
import { printFingering } from "../../../server/music/fingering/fingering.ts";
import type { Instrument } from "../../../server/music/instruments/instrument.ts";
import { INSTRUMENTS, instrumentById } from "../../../server/music/instruments/instruments.ts";
import { midi, type Note, type NoteName, parseNote, printNote } from "../../../server/music/notes/note.ts";
import { notesToPlay } from "../../../server/music/patterns/notes-to-play.ts";
import { kindById } from "../../../server/music/scales/kinds.ts";
import { MANY } from "../../support/random-runs.ts";

const ALTO = instrumentById("alto recorder")!;

const notes = (text: string): Note[] => text.split(" ").map((word) => ({ octave: 4, ...parseNote(word)! }));

/** One step on an alto recorder, `E5 F5`. */
function step(text: string, instrument: Instrument = ALTO): FingerChange {
  const [change, ...more] = fingerChanges({ notes: notes(text) }, instrument);
  expect([change?.cost === undefined, more]).toEqual([false, []]);
  return change!;
}

const cost = (text: string): number => step(text).cost;

/** A step, what moves in it, and what that costs. */
function check(text: string, moves: Partial<FingerChange>, costs: number): void {
  const still = {
    fingers: 0,
    contrary: false,
    thumb: false,
    halfHoles: 0,
    register: false,
    thirdRegister: false,
    bell: false,
  };
  const [from, to] = notes(text);
  expect(step(text), text).toEqual({ from, to, ...still, ...moves, cost: costs });
}

function majorOverFullRange(tonic: NoteName) {
  return notesToPlay({
    subject: { type: "scale", tonic, kind: kindById("major")! },
    reach: { type: "full range" },
    instrument: ALTO,
  });
}

// Common practice, no source: which of two steps is the harder one on an alto recorder.
describe("what teachers agree on", () => {
  test("the change of fingers at the top of the hand, E5 to F5, is harder than lifting one, D5 to E5", () =>
    expect(cost("E5 F5")).toBeGreaterThan(cost("D5 E5")));

  test("over the thumb, G5 to A5, it is harder than F5 to G5, where only the thumb lifts", () =>
    expect(cost("G5 A5")).toBeGreaterThan(cost("F5 G5")));

  test("a forked fingering is harder to come to than a plain one: A4 to Bb4, A4 to G4", () =>
    expect(cost("A4 Bb4")).toBeGreaterThan(cost("A4 G4")));

  test("a half hole is harder than a whole one: F4 to F#4, F4 to G4", () =>
    expect(cost("F4 F#4")).toBeGreaterThan(cost("F4 G4")));

  test("the note with the bell is the hardest to come to: E6 to F#6, E6 to F6", () =>
    expect(cost("E6 F#6")).toBeGreaterThan(cost("E6 F6")));

  test("F# major is harder than F major over its full range: step for step, and at its hardest", () => {
    const [sharp, plain] = ["F#", "F"].map((tonic) => {
      const played = majorOverFullRange(parseNote(tonic)!);
      const costs = fingerChanges(played, ALTO).map((change) => change.cost);
      expect(costs).toHaveLength(played.notes.length - 1);
      return { mean: costs.reduce((a, b) => a + b) / costs.length, most: Math.max(...costs) };
    });
    expect(sharp!.mean).toBeGreaterThan(plain!.mean);
    expect(sharp!.most).toBeGreaterThan(plain!.most);
  });
});

// The fingerings are those of test/reference/recorder-fingerings.json; what moves is read off from them by hand.
test("what moves, and what it costs by the weights stated", () => {
  expect(WEIGHTS).toEqual({ finger: 1, contrary: 3, thumb: 1, halfHole: 2, register: 2, thirdRegister: 2, bell: 4 });
  check("D5 E5", { fingers: 1 }, 1); //               0 12- ----   0 1-- ----
  check("C5 F4", { fingers: 4 }, 4); //               0 123 ----   0 123 4567
  check("E5 F5", { fingers: 2, contrary: true }, 5); // 0 1-- ----   0 -2- ----
  check("F5 G5", { thumb: true }, 1); //              0 -2- ----   - -2- ----
  check("F5 F#5", { fingers: 1, contrary: true, thumb: true }, 5); // 0 -2- ----   - 12- ----: the thumb lifts, 1 closes
  check("G5 A5", { fingers: 4, thumb: true, register: true }, 7); // - -2- ----   Ø 123 45--
  check("C5 C6", { thumb: true, register: true }, 3); // 0 123 ----   Ø 123 ----: the thumb rolls
  check("F4 F#4", { fingers: 1, halfHoles: 1 }, 3); // 0 123 4567   0 123 4567/
  check("F#4 G#4", { fingers: 2, halfHoles: 2 }, 6); // 0 123 4567/  0 123 456/-
  check("D6 E6", { fingers: 2, thirdRegister: true }, 4); // Ø 12- ----  Ø 12- 45--
  check("F#6 G6", { bell: true }, 4); //              the same but for the bell
});

test("a movement that slides is no contrary one", () => {
  check("F4 G#4", { fingers: 2, halfHoles: 1 }, 4); // 0 123 4567   0 123 456/-: 7 lifts, 6 slides
});

describe("on every recorder", () => {
  const recorders = INSTRUMENTS.filter(({ family }) => family === "recorder");
  const anyStep = fc.tuple(fc.constantFrom(...recorders), fc.nat(31), fc.nat(31)).map(([instrument, a, b]) => ({
    instrument,
    from: { ...instrument.low, alter: instrument.low.alter + a },
    to: { ...instrument.low, alter: instrument.low.alter + b },
  }));
  const changeOf = (from: Note, to: Note, instrument: Instrument) =>
    fingerChanges({ notes: [from, to] }, instrument)[0]!;

  test("no step costs less than nothing, a note again costs nothing, and back costs what forth does", () => {
    fc.assert(
      fc.property(anyStep, ({ instrument, from, to }) => {
        const forth = changeOf(from, to, instrument);
        expect(forth.cost).toBeGreaterThanOrEqual(0);
        expect(changeOf(from, from, instrument).cost).toBe(0);
        expect({ ...changeOf(to, from, instrument), from, to }).toEqual(forth);
      }),
      { seed: 20260309, numRuns: MANY },
    );
  });

  test("within its range two notes are never fingered alike", () => {
    for (const instrument of recorders) {
      const within = midi(instrument.high) - midi(instrument.low);
      for (let a = 0; a <= within; a++)
        for (let b = 0; b < a; b++) {
          const at = (up: number) => ({ ...instrument.low, alter: instrument.low.alter + up });
          expect(changeOf(at(a), at(b), instrument).cost, `${instrument.id} ${a} ${b}`).toBeGreaterThan(0);
        }
    }
  });
});

describe("the hardest steps", () => {
  const hardest = (text: string, count: number, instrument: Instrument = ALTO) =>
    hardestSteps({ notes: notes(text) }, instrument, count).map(
      ({ from, to, cost }) => `${printNote(from)} ${printNote(to)} ${cost}`,
    );

  test("the hardest first, each pair once in whichever direction, of equals the one that comes first", () => {
    expect(hardest("D5 E5 F5 E5 D5 C5 D5", 9)).toEqual(["E5 F5 5", "D5 E5 1", "D5 C5 1"]);
    expect(hardest("F5 E5 F5 E5", 3)).toEqual(["F5 E5 5"]);
    expect(hardest("D5 E5 F5 G5 A5", 2)).toEqual(["G5 A5 7", "E5 F5 5"]);
  });

  test("a note again, or spelled otherwise, is no step", () => expect(hardest("E5 E5 Fb5", 3)).toEqual([]));

  test("both fingerings come along, and how far charts agree", () => {
    const { confidence, fingerings } = hardestSteps({ notes: notes("C6 D#6") }, ALTO, 1)[0]!;
    expect(confidence).toEqual(["high", "medium"]);
    expect(fingerings.map(printFingering)).toEqual(["Ø 123 ----", "Ø 12- -56-"]);
  });

  // The charts that have them: `alternatives` in test/reference/recorder-fingerings.json.
  test("with another fingering of a chart, where less moves with it", () => {
    const easier = (text: string) => {
      const step = hardestSteps({ notes: notes(text) }, ALTO, 1)[0]!;
      const { movement, instead = [] } = step.easier ?? {};
      return [
        movement?.cost,
        ...instead.map(
          ({ note, fingering }) => `${printNote(note)} ${printFingering(fingering)}: ${fingering.charts.join(", ")}`,
        ),
      ];
    };
    expect(easier("E5 F5")).toEqual([1, "E5 0 -23 ----: the Recorder Home Page, a blog's chart"]);
    expect(easier("G5 G#5")).toEqual([2, "G5 - 123 4567: the Recorder Home Page, a blog's chart"]);
    expect(easier("F5 E5")).toEqual([1, "E5 0 -23 ----: the Recorder Home Page, a blog's chart"]);
    expect(easier("A4 Bb4")).toEqual([undefined]);
    expect(easier("D5 E5")).toEqual([undefined]);
  });

  test("what is not on the instrument is left out, and the rest is told", () =>
    expect(hardest("E4 F4 G4 A6 C7 D7", 3)).toEqual(["F4 G4 1"]));

  test("where fingerings are not known there are none", () => {
    expect(hardest("E5 F5", 3, instrumentById("flute"))).toEqual([]);
    expect(hardest("E5 F5", 3, { ...ALTO, fingering: "german" })).toEqual([]);
  });
});
