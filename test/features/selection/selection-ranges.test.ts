import fc from "fast-check";
import { expect, test } from "vitest";
import { selectionRanges } from "../../../server/features/selection/selection-ranges.ts";
import type { Range } from "../../../server/features/types.ts";
import { createDocument, type Position } from "../../../server/syntax/document/document.ts";
import { anyText, journalOf, journalText, URI } from "../journal-text.ts";

/** What is selected around the mark `‸`, step by step: a text on one line as it stands, of several the first and last. */
function steps(marked: string): string[] {
  const text = marked.replace("‸", "");
  const lines = text.split("\n");
  const before = marked.split("‸")[0]!.split("\n");
  const position = { line: before.length - 1, character: before.at(-1)!.length };
  const [found] = selectionRanges(journalOf(text), URI, [position]);
  return found!.map(({ start, end }) => {
    const last = lines[end.line]!.slice(0, end.character);
    if (start.line === end.line) return last.slice(start.character);
    return `${lines[start.line]!.slice(start.character).trim()} … ${last.trim()}`;
  });
}

const YEAR = `player Noor
2026-02-27 Fri
  C major, slow

2026-03-02 Mon, 40 min
groundwork, 15 min
  D melodic minor, thirds bro‸ken, 8ths at 60 clean -- at last
    -- E to F is what breaks
    -- again
  G major, slow
pieces
  "Solo", slow

2026-03-03 Tue
  C major, slow
`;

test("from the word by the term, the piece, the line, the entry and what it stands in to the file", () => {
  expect(steps(YEAR)).toEqual([
    "broken",
    "thirds broken",
    "D melodic minor, thirds broken, 8ths at 60 clean",
    "D melodic minor, thirds broken, 8ths at 60 clean -- at last",
    "  D melodic minor, thirds broken, 8ths at 60 clean -- at last",
    "D melodic minor, thirds broken, 8ths at 60 clean -- at last … -- again",
    "groundwork, 15 min … G major, slow",
    '2026-03-02 Mon, 40 min … "Solo", slow',
    "2026-03-02 Mon, 40 min … C major, slow",
    "player Noor … ",
  ]);
});

test.each([
  [
    "between two words of a term",
    "2026-03-02\nD ‸melodic minor, slow",
    ["melodic", "melodic minor", "D melodic minor", "D melodic minor, slow"],
  ],
  ["in a quote", '2026-03-02\n"Courante ‸in F", slow', ["in", '"Courante in F"', '"Courante in F", slow']],
  ["a note of a claim", "2026-03-02\nD minor: D E ‸F G, slow", ["F", "D E F G", "D minor: D E F G, slow"]],
  ["at the date", "2026-‸03-02 Mon\nC major, slow", ["2026-03-02", "2026-03-02 Mon", "2026-03-02 Mon … C major, slow"]],
  ["in a remark", "2026-03-02\nC major -- left th‸umb", ["thumb", "-- left thumb", "C major -- left thumb"]],
  [
    "in a declaration",
    'piece "Solo" as ‸So: F major, due 2026-09-12',
    ["So", 'piece "Solo" as So', 'piece "Solo" as So: F major, due 2026-09-12'],
  ],
  [
    "on a remark of its own",
    "2026-03-02\nC major\n  -- le‸ft\n",
    ["left", "-- left", "  -- left", "C major … -- left"],
  ],
  [
    "in prose",
    "2026-03-02\nSound fre‸er today, at last.",
    ["freer", "Sound freer today", "Sound freer today, at last."],
  ],
])("%s", (_, marked, expected) => {
  expect(steps(marked).slice(0, expected.length)).toEqual(expected);
});

test("on a blank line there is the file, and of a file with nothing in it that nothing", () => {
  expect(steps("2026-03-02\nC major\n‸")).toEqual(["2026-03-02 … "]);
  expect(steps("‸")).toEqual([""]);
});

test("years are steps where a file has several; several positions are answered in their order", () => {
  const text = "2025-12-31\nslow C major\n2026-01-01\nslow D major\n2026-02-01\n";
  const at = (line: number): Position => ({ line, character: 0 });
  const found = selectionRanges(journalOf(text), URI, [at(3), at(0)]);
  const linesOf = (ranges: readonly Range[]) => ranges.map(({ start, end }) => [start.line, end.line]);
  expect(found.map(linesOf)).toEqual([
    [
      [3, 3],
      [3, 3],
      [2, 3],
      [2, 4],
      [0, 5],
    ],
    [
      [0, 0],
      [0, 1],
      [0, 5],
    ],
  ]);
});

test("what is no file of the journal has nothing", () => {
  expect(selectionRanges(journalOf(""), "file:///other.practice", [{ line: 0, character: 0 }])).toEqual([]);
});

test("each step holds the position, lies in the text, and within the next, which is larger", () => {
  const compare = (a: Position, b: Position): number => a.line - b.line || a.character - b.character;
  fc.assert(
    fc.property(fc.oneof(journalText, anyText), fc.nat(15), fc.nat(40), (text, line, character) => {
      const { blocks, lineCount } = createDocument(text);
      const lines = blocks.flatMap((block) => block.lines);
      const at = Math.min(line, lineCount - 1);
      const position = { line: at, character: Math.min(character, lines[at]!.length) };
      const [found] = selectionRanges(journalOf(text), URI, [position]);
      expect(found!.length).toBeGreaterThan(0);
      for (const [i, { start, end }] of found!.entries()) {
        expect(compare(start, position)).toBeLessThanOrEqual(0);
        expect(compare(position, end)).toBeLessThanOrEqual(0);
        expect(end.character).toBeLessThanOrEqual(lines[end.line]!.length);
        const next = found![i + 1];
        if (!next) continue;
        expect(compare(next.start, start)).toBeLessThanOrEqual(0);
        expect(compare(end, next.end)).toBeLessThanOrEqual(0);
        expect(compare(next.start, start) || compare(next.end, end)).not.toBe(0);
      }
      expect(found!.at(-1)).toEqual({
        start: { line: 0, character: 0 },
        end: { line: lineCount - 1, character: lines.at(-1)!.length },
      });
    }),
    { seed: 1 },
  );
});
