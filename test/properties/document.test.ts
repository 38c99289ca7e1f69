import fc from "fast-check";
import { expect, test } from "vitest";
import { TextDocument } from "vscode-languageserver-textdocument";
import {
  applyChanges,
  createDocument,
  lineAt,
  type TextChange,
  textOf,
} from "../../server/syntax/document/document.ts";
import { isDayLine } from "../../server/syntax/line/day-line.ts";
import { MANY } from "../support/random-runs.ts";

// The oracle: `TextDocument` of vscode-languageserver-textdocument, the document store of the protocol's own library.

const text = fc
  .array(
    fc.constantFrom(
      "2026-03-02 Mon",
      "02.03.2026",
      "2026-03-02",
      "D minor",
      "-- x",
      "\n",
      "\r\n",
      "\r",
      "𝄪",
      "é",
      "",
      " ",
      "2026",
      "-",
      "\uFEFF",
    ),
    { maxLength: 30 },
  )
  .map((parts) => parts.join(""));
const position = fc.record({ line: fc.integer({ min: -1, max: 14 }), character: fc.integer({ min: -1, max: 20 }) });
const change: fc.Arbitrary<TextChange> = fc.oneof(
  { weight: 9, arbitrary: fc.record({ range: fc.record({ start: position, end: position }), text }) },
  { weight: 1, arbitrary: fc.record({ text }) },
);

const opened = (content: string) => TextDocument.create("file:///x", "practice-journal", 0, content);

test("printing a document is its text, byte for byte", () => {
  fc.assert(
    fc.property(text, (content) => {
      expect(textOf(createDocument(content))).toBe(content);
    }),
    { seed: 1, numRuns: MANY },
  );
});

test("after any series of edits the text and its lines are those of the library's TextDocument", () => {
  fc.assert(
    fc.property(text, fc.array(change, { maxLength: 8 }), (content, changes) => {
      let ours = createDocument(content);
      let library = opened(content);
      for (const each of changes) {
        ours = applyChanges(ours, [each]);
        // Opened anew for each edit: the library's line table goes wrong after an edit that begins below the last line.
        library = opened(TextDocument.update(library, [each as never], library.version + 1).getText());
        expect(textOf(ours)).toBe(library.getText());
        expect(ours.lineCount).toBe(library.lineCount);
      }
      for (let line = 0; line < library.lineCount; line++) {
        const whole = library.getText({ start: { line, character: 0 }, end: { line: line + 1, character: 0 } });
        expect(lineAt(ours, line)).toBe(whole.replace(/[\r\n]+$/, ""));
      }
    }),
    { seed: 2, numRuns: MANY },
  );
});

test("after any series of edits the blocks are those of a document built afresh", () => {
  fc.assert(
    fc.property(text, fc.array(change, { maxLength: 8 }), (content, changes) => {
      const edited = applyChanges(createDocument(content), changes);
      expect(edited).toEqual(createDocument(textOf(edited)));
      for (const block of edited.blocks.slice(1)) expect(isDayLine(block.lines[0]!)).toBe(true);
    }),
    { seed: 3, numRuns: MANY },
  );
});

test("an edit within one day leaves every other block the same object", () => {
  const days = ["player Noor", "", "2026-03-02", "  D minor", "2026-03-03", "  G major", "2026-03-04", "  A minor"];
  const before = createDocument(days.join("\n"));
  const at = { line: 5, character: 3 };
  const after = applyChanges(before, [{ range: { start: at, end: at }, text: "x\ny" }]);
  expect(after.blocks.map((block, i) => block === before.blocks[i])).toEqual([true, true, false, true]);
});

test("a line of U+2028 is one line, however long, and space before a date", () => {
  const text = `2026-03-02\n${"\u2028".repeat(200_000)}2026-03-03\n`;
  expect(createDocument(text).blocks.map(({ lineCount }) => lineCount)).toEqual([1, 2]);
});

test.each(["\u2028", "\u2029", "- \u2028", "\u2028* "])(
  "a day line stays one behind %j, put in or there from the start",
  (lead) => {
    const before = createDocument("2026-07-01\nD minor\n2026-07-02\nC major\n");
    const start = { line: 2, character: 0 };
    const edited = applyChanges(before, [{ range: { start, end: start }, text: lead }]);
    const fresh = createDocument(`2026-07-01\nD minor\n${lead}2026-07-02\nC major\n`);
    expect(edited.blocks.map(({ text, day }) => [text, day])).toEqual(fresh.blocks.map(({ text, day }) => [text, day]));
    expect(fresh.blocks.map(({ day }) => day)).toEqual([true, true]);
  },
);
