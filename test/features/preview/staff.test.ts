import { describe, expect, test } from "vitest";
import { staffUnderCursor } from "../../../server/features/preview/staff.ts";
import * as drawer from "../../../server/notation/drawing/draw-staff.ts";
import { Drawing, readSystem, withClass } from "../../notation/read-drawing.ts";
import { journalOf, URI } from "../journal-text.ts";

// Invented journals.

/** The staff of an entry, for a page so wide. */
function staff(entry: string, { head = "", width = 600, fingerings = false } = {}) {
  const text = `${head}2026-03-09\n  ${entry}`;
  return staffUnderCursor(journalOf(text), URI, text.split("\n").length - 1, { drawer, width, fingerings });
}

const ALTO = { head: "instrument alto recorder\n" };

test("the exercise under the cursor is drawn as its line says, and each note can be told", () => {
  const shown = staff("F major, thirds, up, 8ths, slurred, at 72 clean", ALTO)!;
  const drawing = new Drawing(shown.svg);
  const read = drawing.systems.flatMap((system) => readSystem(drawing, system).notes);
  expect(read.map(({ letter, octave }) => letter + octave).join(" ")).toBe("F4 A4 G4 B4 A4 C5 B4 D5 C5 E5 D5 F5");
  expect(read.map(({ index }) => index)).toEqual(shown.notes.map((_, i) => i));
  expect(shown.notes.slice(0, 2)).toEqual([
    {
      name: "F4",
      degree: "first degree",
      mark: "",
      fingering: "0 123 4567",
      fingeringWords: expect.stringMatching(/thumb/),
    },
    {
      name: "A4",
      degree: "third degree",
      mark: "",
      fingering: "0 123 45--",
      fingeringWords: expect.stringMatching(/thumb/),
    },
  ]);
  expect(shown.text).toBe("F major, thirds. Treble clef, 1 flat, 8ths, slurred. F A G Bb A C Bb D C E D F.");
});

test("notes that are not right stand above those that they should be, marked, and can be told", () => {
  const shown = staff("D minor natural: D E F G A B C D, 8ths at 60", ALTO)!;
  const drawing = new Drawing(shown.svg);
  const [written, right] = drawing.systems.map((system) => readSystem(drawing, system).notes);
  const read = (notes: typeof written) => notes!.map(({ letter, accidental }) => letter + (accidental ?? "")).join(" ");
  expect([read(written), read(right)]).toEqual(["D E F G A B0 C D", "D E F G A B C D"]); // B flat is in the signature
  expect([...written!, ...right!].map(({ index }) => index)).toEqual(shown.notes.map((_, i) => i));
  const marked = shown.notes.flatMap(({ name, mark }, i) => (mark === "" ? [] : [`${i} ${name} ${mark}`]));
  expect(marked).toEqual(["5 B5 written B", "13 Bb5 here Bb"]);
  expect(shown.text).toMatch(/as written\. .*as it should be\./);
});

test("fingerings stand beneath both, where they are asked for", () => {
  const { svg } = staff("C major: C D E F G A Bb C", { ...ALTO, fingerings: true })!;
  expect(withClass(new Drawing(svg).root, "staff-holes")).toHaveLength(16);
});

test("it wraps to the page's width", () => {
  const lines = (width: number) => {
    const { svg } = staff("C major, thirds, 2 octaves, 16ths", { width })!;
    expect(Number(/ width="(\d+)"/.exec(svg)![1])).toBeLessThanOrEqual(width);
    return new Drawing(svg).systems.length;
  };
  expect([320, 600, 1600].map(lines)).toEqual([5, 3, 1]);
});

test("fingerings are drawn when they are asked for, where they are known", () => {
  const columns = (asked: Parameters<typeof staff>[1]) =>
    withClass(new Drawing(staff("C major, up", asked)!.svg).root, "staff-holes").length;
  expect(columns({ ...ALTO, fingerings: true })).toBe(8);
  expect(columns(ALTO)).toBe(0);
  expect(columns({ head: "instrument violin\n", fingerings: true })).toBe(0);
  expect(staff("C major, up", { head: "instrument violin\n" })!.fingered).toBe(false);
});

describe("where there is none", () => {
  test("a line that is no scale and no arpeggio has none", () => {
    expect(staff("long tones, 5 min")).toBeNull();
    expect(staff("")).toBeNull();
  });

  test("a sentence says why", () => {
    expect(staff("C major, hide notes")).toMatchObject({
      svg: "",
      sentence: "Notes: hidden until you have them written out.",
    });
    expect(staff("C major, tenths, five notes")).toMatchObject({ svg: "", sentence: "None of it fits in this span." });
    const text = "2026-03-09\n  C major";
    const shown = { drawer: undefined, width: 500, fingerings: false };
    expect(staffUnderCursor(journalOf(text), URI, 1, shown)!.sentence).toBe("This server cannot draw staves.");
  });
});
