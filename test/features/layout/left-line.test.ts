import fc from "fast-check";
import { expect, test } from "vitest";
import { leftLineEdits } from "../../../server/features/layout/formatting.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { parseLine } from "../../../server/syntax/line/parse-line.ts";
import { FEW } from "../../support/random-runs.ts";
import { anyText, edited, journalOf, journalText, URI } from "../journal-text.ts";

/** The text once the line before the mark's was left: the mark is where the cursor went. */
function left(marked: string): string {
  const text = marked.replace("‸", "");
  const line = marked.split("‸")[0]!.split(/\r\n|\r|\n/).length - 1;
  return edited(text, leftLineEdits(journalOf(text), URI, line - 1));
}

test("the line that was left is laid out, and no other", () => {
  expect(left("2026-03-02\ngroundwork\nD minor ,thirds,8ths at 60  clean \n‸\nG major ,slow")).toBe(
    "2026-03-02\ngroundwork\nD minor, thirds, 8ths at 60 clean\n\nG major ,slow",
  );
  expect(left("2026-03-02\n\t  C major ,slow\t\n‸")).toBe("2026-03-02\n\t  C major, slow\n");
  expect(left("2026-03-02\n  C major ,slow\n\n‸")).toBe("2026-03-02\n  C major ,slow\n\n");
});

test("no comma is put in, and a line that is cut in two stays what it says", () => {
  expect(left("2026-03-02\nD minor thirds slurred  at 60\n‸")).toBe("2026-03-02\nD minor thirds slurred at 60\n");
  expect(left("2026-03-02\nD minor,  thirds, \n‸8ths at 60")).toBe("2026-03-02\nD minor, thirds,\n8ths at 60");
});

test("no line goes, though blank lines stand below each other", () => {
  expect(left("2026-03-02\n\n\n  \n‸")).toBe("2026-03-02\n\n\n\n");
});

test("lines keep their ends", () => {
  expect(left("2026-03-02\r\nC major ,slow \r\n‸")).toBe("2026-03-02\r\nC major, slow\r\n");
  expect(left("2026-03-02\rC major ,slow \r‸")).toBe("2026-03-02\rC major, slow\r");
});

test("the first line has none before it, and what is no file of the journal nothing", () => {
  expect(leftLineEdits(journalOf("C major ,slow"), URI, -1)).toEqual([]);
  expect(leftLineEdits(journalOf(""), "file:///other.practice", 0)).toEqual([]);
  expect(leftLineEdits(journalOf(""), URI, 7)).toEqual([]);
});

test("white space alone changes, on that line alone, once and for all; the line is read the same", () => {
  fc.assert(
    fc.property(fc.oneof(journalText, anyText), fc.nat(15), (text, line) => {
      const journal = journalOf(text);
      const edits = leftLineEdits(journal, URI, line);
      for (const { range, newText } of edits) {
        expect([range.start.line, range.end.line]).toEqual([line, line]);
        expect(newText).toMatch(/^ *$/);
      }
      const after = edited(text, edits);
      expect(after.replace(/\s/g, "")).toBe(text.replace(/\s/g, ""));
      expect(leftLineEdits(journalOf(after), URI, line)).toEqual([]);
      expect(createDocument(after).blocks.map(({ lineCount }) => lineCount)).toEqual(
        createDocument(text).blocks.map(({ lineCount }) => lineCount),
      );
      expect(reading(after, line)).toBe(reading(text, line));
    }),
    { seed: 4, numRuns: FEW },
  );
});

/** All that is read on a line, apart from columns and runs of white space. */
function reading(text: string, line: number): string {
  const journal = journalOf(text);
  const { blocks, starts } = journal.files.get(URI)!;
  const index = starts.findLastIndex((start) => start <= line);
  const read = parseLine(blocks[index]!.lines[line - starts[index]!] ?? "", {
    ...journal.partContext,
    head: !blocks[index]!.day,
  });
  return JSON.stringify(read, (key, value) => {
    if (typeof value === "string") return value.replace(/\s+/g, " ");
    return ["start", "end", "dateEnd", "wordEnd", "length", "from"].includes(key) && typeof value === "number"
      ? undefined
      : value;
  });
}
