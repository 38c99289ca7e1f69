import { describe, expect, test } from "vitest";
import { parseNote, pitchClass, printName, printNote } from "../../../server/music/notes/note.ts";
import { kindById } from "../../../server/music/scales/kinds.ts";
import {
  acceptsName,
  chromaticSpellings,
  degreeNote,
  degreeReason,
  scaleNames,
  sensibleSpelling,
} from "../../../server/music/scales/scale.ts";
import modes from "../../reference/modes.json" with { type: "json" };
import scales from "../../reference/scales.json" with { type: "json" };
import other from "../../reference/scales-other-and-arpeggios.json" with { type: "json" };

const kind = (id: string) => kindById(id)!;
const tonic = (text: string) => parseNote(text)!;
const names = (text: string) => text.split(" ").map(tonic);

/** `F# major` and its notes, low to high: `check("F#", "major", "up", "F# G# …")`. */
function check(on: string, id: string, direction: "up" | "down", expected: string): void {
  expect(scaleNames(tonic(on), kind(id), direction).map(printName).join(" "), `${on} ${id} ${direction}`).toBe(
    expected,
  );
}

describe("major and minor scales of test/reference/scales.json, with octaves, up and down", () => {
  const rows = [...scales.major, ...scales.minor].flatMap((key) =>
    Object.entries(key.scales).map(([form, notes]) => ({ key, form, notes })),
  );
  test.each(rows)("$key.tonic $form", ({ key, form, notes }) => {
    const id = form === "major" ? "major" : `${form} minor`;
    const from = { ...tonic(key.tonic), octave: 4 };
    const degrees = [1, 2, 3, 4, 5, 6, 7, 8];
    const print = (degree: number, falling: boolean) => printNote(degreeNote(from, kind(id), degree, falling));
    expect(degrees.map((degree) => print(degree, false))).toEqual(notes.up);
    expect(degrees.toReversed().map((degree) => print(degree, true))).toEqual(notes.down);
    check(
      key.tonic,
      id,
      "up",
      notes.up
        .slice(0, 7)
        .map((note) => note.slice(0, -1))
        .join(" "),
    );
  });
  test("all of them are there: 8 major keys, 8 minor keys in three forms", () => expect(rows).toHaveLength(8 + 24));
});

test("every mode of test/reference/modes.json", () => {
  for (const row of modes.modes) check(row.tonic, row.mode, "up", row.up.join(" "));
  expect(modes.modes).toHaveLength(49);
});

describe("every other scale of test/reference/scales-other-and-arpeggios.json", () => {
  const forms: Readonly<Record<string, readonly [id: string, direction: "up" | "down"]>> = {
    "major pentatonic": ["major pentatonic", "up"],
    "minor pentatonic": ["minor pentatonic", "up"],
    "minor blues flat5": ["blues", "down"],
    "minor blues sharp4": ["blues", "up"],
    "major blues": ["major blues", "up"],
    "octatonic half-whole": ["half-whole", "up"],
    "octatonic whole-half": ["whole-half", "up"],
  };
  const spelled = (on: string, custom: "harmonic" | "melodic", way: "up" | "down") =>
    chromaticSpellings(tonic(on))[custom][way].map(printName).join(" ");
  const chromatic: Readonly<Record<string, (on: string) => string>> = {
    "harmonic chromatic": (on) => spelled(on, "harmonic", "up"),
    "melodic chromatic up": (on) => spelled(on, "melodic", "up"),
    "melodic chromatic down (listed low to high)": (on) => spelled(on, "melodic", "down"),
  };
  const scaleRows = Object.entries(other.scales).filter(([name]) => !name.startsWith("arp "));
  test.each(scaleRows)("%s", (name, byTonic) => {
    for (const [on, expected] of Object.entries(byTonic)) {
      const form = forms[name];
      if (form) check(on, form[0], form[1], expected);
      else if (name !== "whole tone") expect(chromatic[name]!(on), `${on} ${name}`).toBe(expected);
    }
  });
  test("the whole-tone scale has the same pitches, and the same names unless they have a double accidental", () => {
    for (const [on, expected] of Object.entries(other.scales["whole tone"])) {
      const ours = scaleNames(tonic(on), kind("whole-tone"), "up");
      if (!expected.includes("##")) check(on, "whole-tone", "up", expected);
      expect(ours.map(pitchClass)).toEqual(names(expected).map(pitchClass));
    }
  });
  // Common practice, no source: the diminished third where a player need not read a double sharp.
  test("the whole-tone scale without double sharps (worked out by hand)", () => {
    check("A", "whole-tone", "up", "A B C# D# F G");
    check("E", "whole-tone", "up", "E F# G# A# C D");
    check("B", "whole-tone", "up", "B C# D# F G A");
    check("F#", "whole-tone", "up", "F# G# A# C D E");
    check("Db", "whole-tone", "up", "Db Eb F G A B");
  });
});

// As method books for winds print it: common practice, no source.
describe("the chromatic scale as it is shown: white keys natural, sharps up, flats down (worked out by hand)", () => {
  test("on the tonics of beginners' books", () => {
    check("C", "chromatic", "up", "C C# D D# E F F# G G# A A# B");
    check("C", "chromatic", "down", "C Db D Eb E F Gb G Ab A Bb B");
    check("F", "chromatic", "up", "F F# G G# A A# B C C# D D# E");
    check("F", "chromatic", "down", "F Gb G Ab A Bb B C Db D Eb E");
    check("D", "chromatic", "down", "D Eb E F Gb G Ab A Bb B C Db");
  });
  test("the tonic keeps its own name", () => {
    check("Bb", "chromatic", "up", "Bb B C C# D D# E F F# G G# A");
    check("F#", "chromatic", "down", "F# G Ab A Bb B C Db D Eb E F");
    check("Cb", "chromatic", "up", "Cb C C# D D# E F F# G G# A A#");
    check("B#", "chromatic", "up", "B# C# D D# E F F# G G# A A# B");
  });
  test("on all 35 tonics no other white key has an accidental, and no key a double one", () => {
    for (const letter of "CDEFGAB") {
      for (const alter of [-2, -1, 0, 1, 2]) {
        for (const way of ["up", "down"] as const) {
          const [, ...others] = scaleNames({ letter: letter as "C", alter }, kind("chromatic"), way).map(printName);
          const allowed = way === "up" ? /^([A-G]|[CDFGA]#)$/u : /^([A-G]|[DEGAB]b)$/u;
          for (const name of others) expect(name, `${letter} ${alter} ${way}`).toMatch(allowed);
        }
      }
    }
  });
});

test("keys and kinds that no table lists are spelled by the same rule (worked out by hand)", () => {
  check("G#", "major", "up", "G# A# B# C# D# E# F##");
  check("Fb", "lydian", "up", "Fb Gb Ab Bb Cb Db Eb");
  check("Fb", "major", "up", "Fb Gb Ab Bbb Cb Db Eb");
  check("Cbb", "major", "up", "Cbb Dbb Ebb Fbb Gbb Abb Bbb");
  check("E#", "harmonic minor", "up", "E# F## G# A# B# C# D##");
  check("B##", "major", "up", "B## C### D### E## F### G### A###");
});

test("degrees run on below the tonic and past the octave", () => {
  const d4 = { ...tonic("D"), octave: 4 };
  const at = (degree: number, falling: boolean) => printNote(degreeNote(d4, kind("melodic minor"), degree, falling));
  expect([at(0, false), at(0, true), at(-1, false), at(-1, true)]).toEqual(["C#4", "C4", "B3", "Bb3"]);
  expect([at(8, false), at(14, false), at(14, true), at(15, true)]).toEqual(["D5", "C#6", "C6", "D6"]);
  const pentatonic = (degree: number) => printNote(degreeNote(d4, kind("minor pentatonic"), degree, false));
  expect([0, 1, 5, 6, 11].map(pentatonic)).toEqual(["C4", "D4", "C5", "D5", "D6"]);
});

test("the reason for a name", () => {
  const reason = (on: string, id: string, degree: number, falling = false) =>
    degreeReason(tonic(on), kind(id), degree, { falling });
  expect(reason("F#", "major", 7)).toBe("its seventh degree takes the letter E");
  expect(reason("Fb", "lydian", 4)).toBe("its fourth degree takes the letter B");
  expect(reason("F#", "major", 14)).toBe("its seventh degree takes the letter E");
  expect(reason("D", "major pentatonic", 4)).toBe("its fourth note is the fifth of D major and takes the letter A");
  expect(reason("D", "blues", 4)).toBe("its fourth note is the raised fourth of D minor and takes the letter G");
  expect(reason("D", "blues", 4, true)).toBe("its fourth note is the lowered fifth of D minor and takes the letter A");
});

describe("sensible spellings (accept_rule of test/reference/scales-other-and-arpeggios.json)", () => {
  const verdict = (id: string, on: string, list: string) => sensibleSpelling(kind(id), tonic(on), names(list));
  const usual = { ok: true, usual: true };
  const unusual = { ok: true, usual: false };

  test("every spelling of the reference is usual", () => {
    const ids = {
      "whole tone": "whole-tone",
      "octatonic half-whole": "half-whole",
      "octatonic whole-half": "whole-half",
    };
    for (const [row, id] of Object.entries(ids)) {
      for (const [on, list] of Object.entries(other.scales[row as keyof typeof ids])) {
        expect(verdict(id, on, list), `${on} ${id}`).toEqual(usual);
        if (id !== "whole-tone") expect(verdict("octatonic", on, list), `${on} octatonic`).toEqual(usual);
      }
    }
  });
  test("whole-tone: six letters with one diminished third, wherever it lies", () => {
    expect(verdict("whole-tone", "C", "C D E Gb Ab Bb")).toEqual(usual);
    expect(verdict("whole-tone", "C", "C D E F# Ab Bb")).toEqual(usual);
    expect(verdict("whole-tone", "C", "C D Fb Gb G# Bb")).toEqual(unusual);
    expect(verdict("whole-tone", "C", "C Ebb D## F# G# A#")).toEqual(unusual);
    expect(verdict("whole-tone", "C", "C D E F G A")).toMatchObject({ ok: false, at: 3 });
  });
  test("octatonic: all seven letters, one of them twice", () => {
    expect(verdict("half-whole", "C", "C Db D# E F# G A Bb")).toEqual(usual);
    expect(verdict("half-whole", "C", "C C# Eb E F# G A Bb")).toEqual(unusual);
    expect(verdict("half-whole", "C", "C D Eb F Gb Ab A B")).toMatchObject({ ok: false, at: 1 });
    expect(verdict("octatonic", "C", "C D Eb F Gb Ab A B")).toEqual(usual);
  });
  test("blues: the raised fourth or the lowered fifth, and nothing else respelled", () => {
    expect(verdict("blues", "C", "C Eb F F# G Bb")).toEqual(usual);
    expect(verdict("blues", "C", "C Eb F Gb G Bb")).toEqual(usual);
    expect(verdict("blues", "C", "C D# F Gb G Bb")).toMatchObject({ ok: false, at: 1 });
    expect(verdict("major blues", "C", "C D D# E G A")).toMatchObject({ ok: false, at: 2 });
  });
  test("chromatic: three customs; any other spelling of the right keys is unusual", () => {
    for (const on of Object.keys(other.scales["harmonic chromatic"])) {
      const { harmonic, melodic, plain } = chromaticSpellings(tonic(on));
      for (const list of [plain.up, plain.down, harmonic.up, melodic.up, melodic.down]) {
        expect(sensibleSpelling(kind("chromatic"), tonic(on), list)).toEqual(usual);
      }
    }
    expect(verdict("chromatic", "C", "C C# D Eb E F Gb G G# A Bb B")).toEqual(unusual);
  });
  test("seven-note scales: one of each letter, so one spelling", () => {
    expect(verdict("major", "F#", "F# G# A# B C# D# E#")).toEqual(usual);
    expect(verdict("major", "F#", "F# G# A# B C# D# F")).toEqual({
      ok: false,
      reason: "F should be E#, the same key by another letter",
      at: 6,
    });
    expect(verdict("melodic minor", "D", "D E F G A Bb C")).toEqual(usual);
    expect(verdict("major", "F#", "F# G# A#")).toEqual({ ok: false, reason: "it has 7 notes, and 3 are given here" });
  });
  test("one note at a time", () => {
    expect(acceptsName(kind("whole-tone"), tonic("C"), 4, false, tonic("Gb"))).toBe(true);
    expect(acceptsName(kind("blues"), tonic("E"), 4, false, tonic("Bb"))).toBe(true);
    expect(acceptsName(kind("blues"), tonic("Eb"), 2, false, tonic("F#"))).toBe(false);
    expect(acceptsName(kind("melodic minor"), tonic("D"), 7, false, tonic("C"))).toBe(false);
    expect(acceptsName(kind("melodic minor"), tonic("D"), 7, true, tonic("C"))).toBe(true);
  });
});
