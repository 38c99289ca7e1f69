import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { INSTRUMENTS } from "../../server/music/instruments/instruments.ts";
import { noteOnDegree } from "../../server/music/notes/degree.ts";
import { parseNote, printNote } from "../../server/music/notes/note.ts";
import { ENGLISH_NAMES, namesById } from "../../server/music/notes/note-names.ts";
import { kindById } from "../../server/music/scales/kinds.ts";
import { keySignature } from "../../server/music/scales/signature.ts";
import { drawnArticulation } from "../../server/notation/articulation.ts";
import { claimedStaves } from "../../server/notation/claimed-staves.ts";
import { drawStaves } from "../../server/notation/drawing/draw-staff.ts";
import { type ExerciseAsked, exerciseStaff } from "../../server/notation/exercise-staff.ts";
import type { Staff } from "../../server/notation/staff.ts";
import { Drawing, elementsIn, readSystem, withClass } from "./read-drawing.ts";

/** An exercise on a staff: `F major on bass recorder`. */
function staff(key: string, asked: Partial<ExerciseAsked> & Partial<ExerciseAsked["input"]> = {}, on?: string): Staff {
  const [tonic, ...kind] = key.split(" ");
  const instrument = INSTRUMENTS.find(({ id }) => id === on);
  const { direction = "up", pattern, reach, ...rest } = asked;
  const subject = { type: "scale", tonic: parseNote(tonic!)!, kind: kindById(kind.join(" "))! } as const;
  const input = { subject, direction, pattern, reach, instrument };
  const reading = exerciseStaff({ title: key, names: ENGLISH_NAMES, instrument, input, ...rest });
  if (!reading.ok) throw new Error(reading.reason);
  return reading.staff;
}

function svgOf(staves: readonly Staff[], width = 500): string {
  return drawStaves(staves, { width, scale: 1, id: "staff" }).svg;
}

function firstSystem(one: Staff) {
  const drawing = new Drawing(svgOf([one]));
  return readSystem(drawing, drawing.systems[0]!);
}

describe("clefs", () => {
  // The clefs of test/reference/instrument-ranges.json, by the line that they stand on.
  const ranges = JSON.parse(readFileSync("test/reference/instrument-ranges.json", "utf8")) as {
    readonly others: readonly { readonly instrument: string; readonly clef?: string }[];
  };
  const CLEFS: Readonly<Record<string, string>> = { G: "gClef2", F: "fClef4", "F/tenor": "fClef4", C3: "cClef3" };
  const sourced = ranges.others.filter(
    ({ clef, instrument }) => clef && INSTRUMENTS.some(({ id }) => id === instrument),
  );

  test.each(sourced)("$instrument is written in $clef", ({ instrument, clef }) => {
    expect(firstSystem(staff("C major", {}, instrument)).clef).toBe(CLEFS[clef!]);
  });

  test("there are sources for a dozen instruments", () => expect(sourced.length).toBeGreaterThanOrEqual(12));

  // Common practice, no source.
  test.each([
    ["alto recorder", "gClef2", 0],
    ["soprano recorder", "gClef2", 1],
    ["tenor recorder", "gClef2", 0],
    ["bass recorder", "fClef4", 1],
    ["guitar", "gClef2", -1],
    ["tenor voice", "gClef2", -1],
    ["bass voice", "fClef4", 0],
    ["tuba", "fClef4", 0],
  ])("%s: %s, and the 8 at it moves by %i octaves", (instrument, clef, octaves) => {
    expect(firstSystem(staff("F major", {}, instrument))).toMatchObject({ clef, octaves });
  });

  test("what lies high for a cello takes tenor clef, and treble", () => {
    const from = (letter: "C" | "G", octave: number) => {
      const reach = {
        type: "between",
        from: { letter, alter: 0, octave },
        to: { letter, alter: 0, octave: octave + 1 },
      } as const;
      return firstSystem(staff(`${letter} major`, { reach }, "cello")).clef;
    };
    expect([from("C", 2), from("C", 3), from("G", 3), from("C", 5)]).toEqual(["fClef4", "fClef4", "cClef4", "gClef2"]);
  });
});

describe("signatures", () => {
  // test/reference/keysignatures.tsv; where each accidental stands is common practice, no source.
  const rows = readFileSync("test/reference/keysignatures.tsv", "utf8").trim().split("\n").slice(1);
  const major = rows.map((row) => row.split("\t")).filter(([, mode]) => mode === "major");

  test.each(major)("%s %s has %s: %s", (tonic, _mode, _fifths, accidentals) => {
    const { signature } = firstSystem(staff(`${tonic} major`));
    const read = [...signature].map(([letter, alter]) => letter + (alter > 0 ? "#" : "b"));
    expect(read.join(" ")).toBe(accidentals === "-" ? "" : accidentals);
  });

  test("in treble clef sharps and flats stand where they are used to", () => {
    const places = (tonic: string) => firstSystem(staff(`${tonic} major`)).signatureSteps.map((step) => step - 30);
    expect(places("C#")).toEqual([8, 5, 9, 6, 3, 7, 4]); // F5 C5 G5 D5 A4 E5 B4
    expect(places("Cb")).toEqual([4, 7, 3, 6, 2, 5, 1]); // B4 E5 A4 D5 G4 C5 F4
  });

  test("beyond seven there is none, and every note has its own", () => {
    expect(keySignature({ letter: "G", alter: 1 }, kindById("major")!)!.fifths).toBe(8);
    const { signature, notes } = firstSystem(staff("G# major"));
    expect(signature.size).toBe(0);
    expect(notes.map(({ accidental }) => accidental)).toEqual([1, 1, 1, 1, 1, 1, 2, 1]);
  });
});

describe("accidentals", () => {
  const shown = (key: string, direction: "up" | "up and down" = "up") =>
    staff(key, { direction })
      .notes.map(({ name, accidental }) => (accidental === null ? name : `${name}!`))
      .join(" ");

  test("what the signature has not is shown, and what goes back to it", () => {
    expect(shown("D melodic minor", "up and down")).toBe("D E F G A B! C#! D C! Bb! A G F E D");
  });

  test("a major scale has none", () => expect(shown("E major")).toBe("E F# G# A B C# D# E"));
});

describe("how it is played", () => {
  const ups = (n: number) => Array.from({ length: n }, () => false);
  const spans = (text: string, falling = ups(8)) =>
    drawnArticulation(text, falling)
      .slurs.map(({ from, to }) => `${from}-${to}`)
      .join(" ");

  test.each([
    ["slurred", "0-7"],
    ["slur 2", "0-1 2-3 4-5 6-7"],
    ["slur 2+1+1", "0-1 4-5"],
    ["slur 3", "0-2 3-5 6-7"],
    ["slur 1+2", "1-2 4-5"],
    ["tongued", ""],
    ["t-k", ""],
  ])("%s: %s", (text, wanted) => expect(spans(text)).toBe(wanted));

  test("halves are slurred by themselves", () => {
    expect(spans("slurred up, tongued down", [false, false, false, true, true])).toBe("0-2");
    expect(spans("tongued up, slur 2 down", [false, false, false, true, true])).toBe("3-4");
  });

  test("several ways for the same notes are no one way", () => expect(spans("slurred, tongued")).toBe(""));

  // Common practice, no source: `8.` is a dotted eighth; the notes under one beam stand in brackets.
  test.each([
    ["8ths", "dotted", "[8. 16 8. 16] [8. 16 8. 16]"],
    ["8ths", "reverse dotted", "[16 8. 16 8.] [16 8. 16 8.]"],
    ["16ths", "dotted", "[16. 32 16. 32] [16. 32 16. 32]"],
    ["quarters", "dotted", "4. 8 4. 8 4. 8 4. 8"],
    ["8ths", "LSS", "4 [8 8] 4 [8 8] 4 8"],
    ["8ths", "SSL", "[8 8] 4 [8 8] 4 [8 8]"],
    ["16ths", "LSS", "[8 16 16] [8 16 16] [8 16]"],
    ["8ths", "swung", "[8 8 8 8] [8 8 8 8]"],
    ["triplets", "dotted", "[8 8 8] [8 8 8] [8 8]"],
  ])("%s, %s: %s", (name, rhythm, wanted) => {
    const noteValue = { numerator: 1, denominator: { quarters: 4, "8ths": 8, "16ths": 16, triplets: 12 }[name]! };
    const { notes, beams } = staff("C major", { noteValue, rhythm });
    const written = notes.map(({ value: { base, dots } }, i) => {
      const opens = beams.some(({ from }) => from === i) ? "[" : "";
      const closes = beams.some(({ to }) => to === i) ? "]" : "";
      return `${opens}${base}${dots ? "." : ""}${closes}`;
    });
    expect(written.join(" ")).toBe(wanted);
  });

  test.each([
    ["staccato", ["dot"]],
    ["tenuto", ["line"]],
    ["portato", ["dot", "line"]],
    ["marcato", ["accent"]],
    ["tongued", []],
  ])("%s has %j at its heads", (text, signs) => expect(drawnArticulation(text, ups(3)).signs).toEqual(signs));

  const beams = (asked: Parameters<typeof staff>[1]) =>
    staff("C major", asked)
      .beams.map(({ from, to }) => to - from + 1)
      .join(" ");
  const eighths = { numerator: 1, denominator: 8 };

  test("beams go by beats, and by the pattern's figures where those are longer than two notes", () => {
    expect(beams({ noteValue: eighths })).toBe("4 4");
    expect(beams({ noteValue: eighths, direction: "up and down" })).toBe("4 4 4 3");
    expect(beams({ noteValue: eighths, pattern: "threes" })).toBe("3 3 3 3 3 3");
    expect(beams({ noteValue: eighths, pattern: "thirds" })).toBe("4 4 4");
    expect(beams({ noteValue: { numerator: 1, denominator: 12 }, pattern: "fours" })).toBe("3 3 3 3 3 3 2");
    expect(beams({ noteValue: { numerator: 1, denominator: 4 } })).toBe("");
  });
});

describe("a claim that is not right", () => {
  const kind = kindById("major")!;
  const expected = [1, 2, 3, 4, 5, 6, 7, 8].map((degree) => ({
    note: noteOnDegree({ letter: "F", alter: 1, octave: 4 }, kind.degrees, degree),
    degree,
  }));
  const claimed = (text: string, types: readonly ("right" | "wrong" | "extra" | "missing")[]) => {
    let typed = 0;
    let at = 0;
    const steps = types.map((type) => ({
      type,
      typed: type === "missing" ? typed : typed++,
      expected: type === "extra" ? at : at++,
    }));
    const subject = { type: "scale", tonic: { letter: "F", alter: 1 }, kind } as const;
    const names = text.split(" ").map((name) => parseNote(name)!);
    return claimedStaves({
      title: "F# major",
      names: ENGLISH_NAMES,
      fifths: 6,
      subject,
      typed: names,
      expected,
      steps,
    });
  };
  const marks = ({ notes }: Staff) => notes.flatMap(({ mark, note }) => (mark ? [`${printNote(note)}: ${mark}`] : []));
  const all = (at: number, type: "wrong") =>
    Array.from({ length: 8 }, (_, i) => (i === at ? type : ("right" as const)));

  test("both are drawn, one above the other, and the wrong note is marked by a ring and a word", () => {
    const staves = claimed("F# G# A# B C# D# F F#", all(6, "wrong"));
    expect(staves.map(marks)).toEqual([["F5: written F"], ["E#5: here E#"]]);
    const drawing = new Drawing(svgOf(staves));
    expect(drawing.systems).toHaveLength(2);
    const [written, right] = drawing.systems.map((system) => {
      const [mark, ...others] = withClass(system, "staff-mark");
      expect(others).toEqual([]);
      const ring = [...elementsIn(mark!)].find(({ name }) => name === "ellipse")!.attributes;
      const { notes } = readSystem(drawing, system);
      return notes.filter(
        ({ head }) => Math.abs(Number(ring["cy"]) - head.y) < 1 && Math.abs(Number(ring["cx"]) - head.x - 3) < 14,
      );
    });
    expect(written!.map(({ letter, accidental }) => [letter, accidental])).toEqual([["F", 0]]);
    expect(right!.map(({ letter, accidental }) => [letter, accidental])).toEqual([["E", null]]);
    expect(svgOf(staves)).toContain(">written F</text>");
    expect(staves[0].text).toContain("F (written F)");
  });

  test("notes stand above each other, whatever accidentals they have", () => {
    const drawing = new Drawing(
      svgOf(claimed("F# G A B C# D# E# F#", ["right", "wrong", "wrong", "right", "right", "right", "right", "right"])),
    );
    const [written, right] = drawing.systems.map((system) =>
      readSystem(drawing, system).notes.map(({ head }) => head.x),
    );
    expect(written).toEqual(right);
  });

  test("a note too many and one left out are told", () => {
    const [written] = claimed("F# G# A# B C# D# E# E F#", [...all(8, "wrong").slice(0, 7), "extra", "right"]);
    expect(marks(written)).toEqual(["E5: one too many"]);
    const [, right] = claimed("F# G# B C# D# E# F#", [
      "right",
      "right",
      "missing",
      "right",
      "right",
      "right",
      "right",
      "right",
    ]);
    expect(marks(right)).toEqual(["A#4: left out"]);
  });
});

describe("the drawing", () => {
  test("has a name and says in words what it shows", () => {
    const { svg } = drawStaves([staff("D melodic minor", { way: "8ths, slurred" })], {
      width: 400,
      scale: 1,
      id: "one",
    });
    expect(svg).toContain('role="img" aria-labelledby="one-title" aria-describedby="one-desc"');
    expect(svg).toContain('<title id="one-title">D melodic minor</title>');
    expect(svg).toContain('<desc id="one-desc">Treble clef, 1 flat, 8ths, slurred. D E F G A B C# D.</desc>');
  });

  test("calls notes as the writer does", () => {
    expect(staff("F# minor".replace("minor", "natural minor"), { names: namesById("german")! }).text).toBe(
      "Treble clef, 3 sharps. Fis Gis A H Cis D E Fis.",
    );
  });

  test("shows a text and nothing else, whatever it holds", () => {
    const bad = `"><script>alert(1)</script>&`;
    const svg = svgOf([{ ...staff("C major"), title: bad, text: bad, label: bad }]);
    expect(svg).not.toContain("<script");
    expect(svg.match(/&lt;script&gt;/g)).toHaveLength(3);
  });

  test("has no colour but the one it stands in, fetches nothing and is the same each time", () => {
    const svg = svgOf([staff("E major", { fingerings: true, articulation: "portato" }, "alto recorder")]);
    expect(
      [...svg.matchAll(/(?:fill|stroke|color)="([^"]+)"/g)]
        .map(([, colour]) => colour)
        .filter((colour) => !["currentColor", "none"].includes(colour!)),
    ).toEqual([]);
    expect(svg.replace('xmlns="http://www.w3.org/2000/svg"', "")).not.toMatch(/https?:|url\(|@import|<image|<style/);
    expect(svgOf([staff("E major", { fingerings: true, articulation: "portato" }, "alto recorder")])).toBe(svg);
  });

  test("long exercises wrap, narrower ones more often", () => {
    const long = staff("D major", {
      noteValue: { numerator: 1, denominator: 16 },
      reach: { type: "octaves", count: 2 },
      direction: "up and down",
    });
    const lines = [320, 500, 1000].map((width) => drawStaves([long], { width, scale: 1, id: "x" }).lines);
    expect(lines).toEqual([4, 2, 1]);
  });

  test("holes are drawn beneath each note: filled, half filled, open", () => {
    const svg = svgOf([staff("F major", { fingerings: true }, "alto recorder")], 1000);
    const columns = withClass(new Drawing(svg).root, "staff-holes");
    expect(columns).toHaveLength(8);
    const covers = columns.map((column) =>
      column.children.filter(({ name }) => name === "circle").map(({ attributes }) => attributes["fill"]),
    );
    expect(covers.map((each) => each.length)).toEqual([8, 8, 8, 8, 8, 8, 8, 8]);
    // The lowest note closes all: test/reference/recorder-fingerings.json.
    expect(covers[0]!.every((fill) => fill === "currentColor")).toBe(true);
    expect(svg).toContain("<title>0 123 4567</title>");
  });
});
