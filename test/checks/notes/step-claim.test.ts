import { Note } from "tonal";
import { describe, expect, test } from "vitest";
import { checkSteps } from "../../../server/checks/notes/step-claim.ts";
import { ENGLISH_NAMES } from "../../../server/music/notes/note-names.ts";
import { KINDS } from "../../../server/music/scales/kinds.ts";
import { stepsOf } from "../../../server/music/scales/steps.ts";
import scales from "../../reference/scales.json" with { type: "json" };
import others from "../../reference/scales-other-and-arpeggios.json" with { type: "json" };
import { mended, subject, underlined } from "./claims.ts";

/** Steps after `steps ` or alone, and what is said of them; after the fix nothing is. */
function check(on: string, text: string, message?: string, after?: string): void {
  const words = text.replace(/^steps /u, "");
  const found = checkSteps({ start: 0, end: text.length, words }, subject(on), on, ENGLISH_NAMES);
  const expected = message === undefined ? [] : [`${"^".repeat(text.length)} step-formula: ${message}`];
  const fix = after === undefined ? [] : [`-> Change to ${after.replace(/^steps /u, "")}`];
  expect(underlined(text, found)).toBe([text, ...expected, ...fix].join("\n"));
  if (after === undefined) return;
  expect(mended(text, found[0]!.fixes[0]!)).toBe(after);
  check(on, after);
}

const LETTERS = { TS: ["", "S", "T", "A"], WH: ["", "H", "W", "3"], digits: ["0", "1", "2", "3"] };

/** Semitones between neighbours, by the MIDI numbers of npm `tonal`. */
function semitones(notes: readonly string[]): number[] {
  const keys = notes.map((note) => Note.midi(note)!);
  return keys.slice(1).map((key, index) => key - keys[index]!);
}

/** The steps in every style; and each step wrong by a semitone is a finding. */
function checkFormula(on: string, steps: readonly number[]): void {
  expect(
    steps.reduce((sum, step) => sum + step, 0),
    on,
  ).toBe(12);
  for (const letters of Object.values(LETTERS)) {
    check(on, steps.map((step) => letters[step]!).join(" "));
    check(on, steps.map((step) => letters[step]!).join(""));
    check(on, steps.map((step) => letters[step]!).join("-"));
  }
  for (const [at, step] of steps.entries()) {
    const words = steps.with(at, step === 1 ? 2 : step - 1).join(" ");
    const found = checkSteps({ start: 0, end: words.length, words }, subject(on), on, ENGLISH_NAMES);
    expect(
      found.map(({ code }) => code),
      `${on}: ${words}`,
    ).toEqual(["step-formula"]);
    check(on, mended(words, found[0]!.fixes[0]!));
  }
}

describe("against references", () => {
  test("major and the forms of minor in test/reference/scales.json", () => {
    for (const { tonic, scales: forms } of scales.major) checkFormula(`${tonic} major`, semitones(forms.major.up));
    for (const { tonic, scales: forms } of scales.minor) {
      for (const [form, { up }] of Object.entries(forms)) checkFormula(`${tonic} ${form} minor`, semitones(up));
    }
  });
  test("other scales in test/reference/scales-other-and-arpeggios.json", () => {
    const kinds = {
      "major pentatonic": others.scales["major pentatonic"],
      "minor pentatonic": others.scales["minor pentatonic"],
      blues: others.scales["minor blues sharp4"],
      "major blues": others.scales["major blues"],
      "whole-tone": others.scales["whole tone"],
      "half-whole": others.scales["octatonic half-whole"],
      "whole-half": others.scales["octatonic whole-half"],
      chromatic: others.scales["melodic chromatic up"],
    };
    for (const [kind, byTonic] of Object.entries(kinds)) {
      for (const [tonic, names] of Object.entries(byTonic)) {
        const chromas = [...names.split(" "), tonic].map((name) => Note.chroma(name)!);
        const steps = chromas.slice(1).map((chroma, index) => (chroma - chromas[index]! + 12) % 12);
        checkFormula(`${tonic} ${kind}`, steps);
      }
    }
  });
});

describe("what is said", () => {
  test("the step that differs, and the two notes", () => {
    check(
      "D harmonic minor",
      "T S T T S T S",
      "The sixth step of D harmonic minor, Bb to C#, is three semitones, not a whole tone: T S T T S A S.",
      "T S T T S A S",
    );
  });
  test("the fix keeps the style", () => {
    const seventh = (steps: string) =>
      `The seventh step of D major, C# to D, is a semitone, not a whole tone: ${steps}.`;
    check("D major", "W W H W W W W", seventh("W W H W W W H"), "W W H W W W H");
    check("D major", "steps TTSTTTT", seventh("TTSTTTS"), "steps TTSTTTS");
    check("D major", "steps 2 2 1 2 2 2 2", seventh("2 2 1 2 2 2 1"), "steps 2 2 1 2 2 2 1");
    check("D major", "t-t-s-t-t-t-t", seventh("t-t-s-t-t-t-s"), "t-t-s-t-t-t-s");
    check("D major", "wwhwwww", seventh("wwhwwwh"), "wwhwwwh");
  });
  test("three semitones by any name, which the fix keeps", () => {
    for (const three of ["A", "3", "3S", "m3", "A2"]) check("D harmonic minor", `T S T T S ${three} S`);
    check("D harmonic minor", "tsttsas");
    check("A minor pentatonic", "m3 W W m3 W");
    check(
      "A minor pentatonic",
      "m3 T T T m3",
      "The fourth step of A minor pentatonic, E to G, is a minor third, not a whole tone: m3 T T m3 T.",
      "m3 T T m3 T",
    );
  });
  test("read downward where it is played down, in the falling form", () => {
    const down = (on: string, words: string) =>
      checkSteps({ start: 0, end: words.length, words }, subject(on), on, ENGLISH_NAMES, "down").map(
        ({ message }) => message,
      );
    expect(down("C major", "S T T T S T T")).toEqual([]);
    expect(down("C major", "T T S T T T S")).toEqual([]);
    expect(down("D melodic minor", "T T S T T S T")).toEqual([]);
    expect(down("D melodic minor", "S T T T T S T")).toHaveLength(1);
    expect(down("C major", "S T T T T T S")).toEqual([
      "The fifth step of C major, read downward, F to E, is a semitone, not a whole tone: S T T T S T T.",
    ]);
    check(
      "C major",
      "S T T T S T T",
      "The first step of C major, C to D, is a whole tone, not a semitone: T T S T T T S.",
      "T T S T T T S",
    );
  });
  test("a scale in cents has its own, and no semitones", () => {
    const on = "D (cents 0 150 300 500 700 850 1000)";
    check(on, "cents 150 150 200 200 150 150 200");
    check(on, "150 150 200 200 150 150 200");
    const message = `${on} has its steps in cents: 150 150 200 200 150 150 200.`;
    check(on, "2 1 2 2 1 2 2", message, "cents 150 150 200 200 150 150 200");
    check(on, "cents 150 150 200 200 150 200 150", message, "cents 150 150 200 200 150 150 200");
  });
  test("melodic minor is read rising", () => {
    check(
      "D melodic minor",
      "T S T T S T T",
      "The fifth step of D melodic minor, A to B, is a whole tone, not a semitone: T S T T T T S. Steps are those of the rising form.",
      "T S T T T T S",
    );
  });
  test("too few or too many", () => {
    check(
      "D major",
      "T T S T T T",
      "D major has 7 steps up to the octave, and 6 are given here: T T S T T T S.",
      "T T S T T T S",
    );
  });
  test("an octatonic scale goes either way, and nothing between", () => {
    check("C octatonic", "T S T S T S T S");
    check("C octatonic", "S T S T S T S T");
    check(
      "C octatonic",
      "T S T S T S T T",
      "The eighth step of C octatonic is a semitone, not a whole tone: T S T S T S T S.",
      "T S T S T S T S",
    );
  });
  test("words that are no steps", () => {
    check(
      "D major",
      "T W S T T T S",
      'Write steps as T and S, W and H, or semitones in digits (three are A, 3 or m3): "T W S T T T S" cannot be read. D major has W W H W W W H.',
      "W W H W W W H",
    );
  });
  test("a chord has none", () => {
    const message = "D minor arpeggio has no steps to check: a chord moves by thirds and more.";
    check("D minor arpeggio", "T T S T T", message);
  });
});

test("every kind has its own steps", () => {
  for (const kind of KINDS) check(`D ${kind.names[0]}`, stepsOf(kind).join(" "));
});
