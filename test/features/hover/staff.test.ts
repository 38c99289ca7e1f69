import { describe, expect, test } from "vitest";
import { hoverAt } from "../../../server/features/hover/hover.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import * as drawer from "../../../server/notation/drawing/draw-staff.ts";
import { Drawing, readSystem, withClass } from "../../notation/read-drawing.ts";
import { journalOf, URI } from "../journal-text.ts";

const TODAY = parseIsoDate("2026-04-06")!;
const PALETTE = { foreground: "#cccccc", background: "#202020", amount: "#6fb7cf" };

/** The hover at the mark `‸` for a client that shows pictures: its words, and the last picture in it. */
function hover(
  marked: string,
  declared = "",
): { readonly markdown: string; readonly alt?: string; readonly svg?: string } {
  const text = `${declared}2026-04-01 Wed\n  ${marked.replace("‸", "")}`;
  const line = text.split("\n").length - 1;
  const position = { line, character: 2 + marked.indexOf("‸") };
  const options = { today: TODAY, palette: PALETTE, staves: drawer };
  const markdown = hoverAt(journalOf(text), URI, position, options)?.markdown ?? "";
  const [, alt, address] = [...markdown.matchAll(/!\[([^\]]*)\]\(data:image\/svg\+xml,([^\s()]+)\)/g)].at(-1) ?? [];
  return { markdown, ...(address && { alt, svg: decodeURIComponent(address) }) };
}

function read(svg: string) {
  const drawing = new Drawing(svg);
  return drawing.systems.map((system) => readSystem(drawing, system));
}

function names(svg: string): readonly string[] {
  return read(svg).map(({ notes }) => notes.map(({ letter, octave }) => letter + octave).join(" "));
}

describe("the hover on an exercise", () => {
  test("has its staff in place of the list of notes, in the picture's own colour, at most 90 pixels high", () => {
    const { markdown, alt, svg } = hover("E‸b major, 8ths, slurred", "instrument alto recorder\n");
    expect(alt).toBe("Eb major. Treble clef, 3 flats, 8ths, slurred. Eb F G Ab Bb C D Eb D C Bb Ab G F Eb.");
    expect(names(svg!)).toEqual(["E5 F5 G5 A5 B5 C6 D6 E6 D6 C6 B5 A5 G5 F5 E5"]);
    expect(Number(/height="(\d+)"/.exec(svg!)![1])).toBeLessThanOrEqual(90);
    expect(svg).toContain('color="#cccccc"');
    expect(markdown).not.toContain("Eb F G Ab Bb C D Eb; three flats");
  });

  test("a pattern that is too long for a line rises only; one that still is, is left out", () => {
    const asked = (term: string) =>
      names(hover(`C‸ major, ${term}8ths`).svg!)[0]!
        .split(" ")
        .slice(0, 4)
        .join(" ");
    expect(asked("up, thirds, ")).toBe("C4 E4 D4 F4");
    expect(names(hover("C‸ major, thirds, 8ths").svg!)).toEqual(["C4 E4 D4 F4 E4 G4 F4 A4 G4 B4 A4 C5"]);
    expect(asked("sixes, ")).toBe("C4 D4 E4 F4");
  });

  test("what falls otherwise than it rises is not cut: a long one keeps its notes in words", () => {
    expect(names(hover("D‸ melodic minor").svg!)[0]).toBe("D4 E4 F4 G4 A4 B4 C5 D5 C5 B4 A4 G4 F4 E4 D4");
    const { markdown, svg } = hover("D‸ melodic minor, 2 octaves");
    expect(svg).toBeUndefined();
    expect(markdown).toContain("D E F G A B C# D E F G A B C# D, down");
  });

  test("hidden notes stay hidden, and pieces and activities have none", () => {
    expect(hover("E‸b major, hide notes").svg).toBeUndefined();
    expect(hover("l‸ong tones").svg).toBeUndefined();
  });

  test("the first ten lines stay in sight: the staff takes the place of one", () => {
    expect(
      hover("E‸b major, 8ths")
        .markdown.split("\n\n")
        .findIndex((each) => each.startsWith("![")),
    ).toBeLessThan(6);
  });
});

describe("the hover on a note of a list", () => {
  test("shows the list above the right notes where it is not right, the wrong one marked by a ring and a word", () => {
    const { markdown, alt, svg } = hover("F# major: F# G# A# B C# D# F‸ F#");
    expect(markdown).toContain("F should be E#, the seventh degree of F# major.");
    expect(names(svg!)).toEqual(["F4 G4 A4 B4 C5 D5 F5 F5", "F4 G4 A4 B4 C5 D5 E5 F5"]);
    expect(withClass(new Drawing(svg!).root, "staff-mark")).toHaveLength(2);
    expect(svg).toContain(">written F</text>");
    expect(svg).toContain(">here E#</text>");
    expect(alt).toContain("F (written F)");
  });

  test("the marks are those of the right list in the writer's names", () => {
    const { svg } = hover("fis-Moll: fis gis a h cis d e‸s fis", "names german\n");
    expect(svg).toContain(">written Es</text>");
    expect(svg).toContain(">here E</text>");
  });

  test("a right list has no picture, nor has one whose notes are hidden", () => {
    expect(hover("G major: G A B C D E F#‸ G").svg).toBeUndefined();
    expect(hover("G major: G A B C D E F‸ G, hide notes").svg).toBeUndefined();
  });
});
