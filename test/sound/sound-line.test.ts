import { describe, expect, test } from "vitest";
import { readSoundLine } from "../../server/sound/sound-line.ts";
import { journalOf } from "../features/journal-text.ts";

// What may be heard is written as a line. Tempos, note values and notes are read as in the journal; how they are put
// together is our own.

function read(text: string, head = "") {
  const found = readSoundLine(text, journalOf(head));
  return found.ok ? JSON.parse(JSON.stringify(found.line)) : found.reason;
}

const at = (...bpm: number[]) => bpm.map((each) => ({ bpm: each }));
const D = { type: "note", note: { letter: "D", alter: 0 } };

describe("a click", () => {
  test.each([
    ["click at 52, 60, 69, 66", { tempos: at(52, 60, 69, 66) }],
    ["Click 52 60", { tempos: at(52, 60) }],
    ["click at 60 in 8ths, 2 min", { tempos: at(60), division: { numerator: 1, denominator: 8 }, minutes: 2 }],
    ["click eighth=120", { tempos: [{ bpm: 120, beat: { numerator: 1, denominator: 8 } }] }],
    ["click at 60 in 3/4", { tempos: at(60), metre: { beats: 3, value: 4 } }],
    ["click at 72, 2 bars on, 2 off", { tempos: at(72), turns: { on: 2, off: 2 } }],
    ["click at 72, 1 bar on, 3 bars off", { tempos: at(72), turns: { on: 1, off: 3 } }],
    ["click at 72 on bars 1-2 of every 4", { tempos: at(72), turns: { on: 2, off: 2 } }],
  ])("%s", (text, line) => expect(read(text)).toEqual({ type: "click", ...line }));
});

describe("a drone", () => {
  test.each([
    ["drone on D", { notes: [D] }],
    ["drone D A", { notes: [D, { type: "note", note: { letter: "A", alter: 0 } }] }],
    [
      "drone on D and Bb4, 2 min",
      { notes: [D, { type: "note", note: { letter: "B", alter: -1, octave: 4 } }], minutes: 2 },
    ],
    ["drone on the tonic and the fifth", { notes: [1, 5].map((degree) => ({ type: "degree", degree })) }],
    ["drone on 5", { notes: [{ type: "degree", degree: 5 }] }],
  ])("%s", (text, line) => expect(read(text)).toEqual({ type: "drone", ...line }));

  test("on notes as the journal names them", () => {
    const B = { type: "note", note: { letter: "B", alter: 0 } };
    expect(read("drone on H", "names german\n")).toEqual({ type: "drone", notes: [B] });
    expect(read("drone on si", "names french\n")).toEqual({ type: "drone", notes: [B] });
  });
});

describe("an exercise", () => {
  test.each([
    ["play through at 52, 60", { tempos: at(52, 60), times: 1 }],
    ["play at 60 in 16ths", { tempos: at(60), times: 1, noteValue: { numerator: 1, denominator: 16 } }],
    ["play bars 1-2 at 60, 3 times", { tempos: at(60), times: 3, bars: { from: 1, to: 2 } }],
    ["play bar 3 at 60, 900 times", { tempos: at(60), times: 20, bars: { from: 3, to: 3 } }], // nothing goes on without end
  ])("%s", (text, line) => expect(read(text)).toEqual({ type: "play", ...line }));
});

test.each(["compare F# against D", "compare F# over D", "compare F# with D"])("%s", (text) => {
  expect(read(text)).toEqual({ type: "compare", upper: { type: "note", note: { letter: "F", alter: 1 } }, lower: D });
});

describe("what cannot be heard is said", () => {
  test.each([
    ["", /^Begin with what is to sound/],
    ["clicking at 60", /^Begin with what is to sound/],
    ["click", /^Say at which tempos/],
    ["click at 40, 42, 44, 46, 48, 50, 52, 54, 56", /^Say at which tempos, up to eight/],
    ["click at 60 clean", "Nothing here is heard of “clean”: say tempos, a note value, bars, or minutes."],
    ["click bars 1-2 at 60", /^Of a click say how many bars have it/],
    ["drone", /^Say on which notes/],
    ["drone on banana", /^Say on which notes/],
    ["drone on C D E F G", /^Say on which notes, up to four/],
    ["compare F#", /^Say which note against which/],
  ])("%s", (text, reason) => expect(read(text)).toMatch(reason));
});
