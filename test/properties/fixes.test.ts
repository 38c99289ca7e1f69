import fc from "fast-check";
import { expect, test } from "vitest";
import { codeActionsIn } from "../../server/features/diagnostics/code-actions.ts";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { documentSymbols } from "../../server/features/outline/document-symbols.ts";
import type { DocumentSymbol, Range, TextEdit } from "../../server/features/types.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import {
  applyChanges,
  createDocument,
  type Document,
  lineAt,
  type Position,
  textOf,
} from "../../server/syntax/document/document.ts";
import { FEW } from "../support/random-runs.ts";
import { anyLine, anyVocabulary } from "./any-line.ts";
import { CHORD_SUBJECTS, SCALE_SUBJECTS, TERMS, WHOLE_LINES } from "./lines.ts";

// Whatever is written: every fix that is offered can be made, and changes something; every name of the outline stands
// within what it is the name of.

const URI = "file:///journal/journal.practice";
const TODAY = parseIsoDate("2026-06-01")!;

function compare(a: Position, b: Position): number {
  return a.line - b.line || a.character - b.character;
}

function expectInText({ start, end }: Range, document: Document): void {
  expect(compare(start, end)).toBeLessThanOrEqual(0);
  expect(start.line).toBeGreaterThanOrEqual(0);
  expect(end.line).toBeLessThan(document.lineCount);
  for (const { line, character } of [start, end]) {
    expect(character).toBeGreaterThanOrEqual(0);
    expect(character).toBeLessThanOrEqual(lineAt(document, line).length);
  }
}

/** Edits in the text that do not overlap, and after which it is another. */
function expectChange(edits: readonly TextEdit[], document: Document): void {
  const sorted = [...edits].sort((a, b) => compare(a.range.start, b.range.start));
  for (const [i, { range }] of sorted.entries()) {
    expectInText(range, document);
    if (i > 0) expect(compare(sorted[i - 1]!.range.end, range.start)).toBeLessThanOrEqual(0);
  }
  const changes = [...sorted].reverse().map(({ range, newText }) => ({ range, text: newText }));
  expect(textOf(applyChanges(document, changes))).not.toBe(textOf(document));
}

function expectNamed(symbols: readonly DocumentSymbol[], document: Document): void {
  for (const { name, range, selection, children } of symbols) {
    expectInText(range, document);
    expectInText(selection, document);
    expect(compare(range.start, selection.start)).toBeLessThanOrEqual(0);
    expect(compare(selection.end, range.end)).toBeLessThanOrEqual(0);
    expect(name).not.toMatch(/^\s*$|[\p{Cc}\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/u);
    for (const child of children) {
      expect(compare(range.start, child.range.start)).toBeLessThanOrEqual(0);
      expect(compare(child.range.end, range.end)).toBeLessThanOrEqual(0);
    }
    expectNamed(children, document);
  }
}

function check(text: string): void {
  const document = createDocument(text);
  const journal = new Journal("file:///journal", new Map([[URI, document]]));
  const diagnostics = diagnosticsOf(journal, URI, TODAY);
  for (const { range } of diagnostics) expectInText(range, document);
  const last = document.lineCount - 1;
  const whole = { start: { line: 0, character: 0 }, end: { line: last, character: lineAt(document, last).length } };
  for (const { edits } of codeActionsIn(diagnostics, whole)) expectChange(edits, document);
  expectNamed(documentSymbols(journal, URI), document);
}

const words = fc
  .array(
    fc.tuple(
      fc.constantFrom(
        ...[...SCALE_SUBJECTS, ...CHORD_SUBJECTS, ...TERMS, ...WHOLE_LINES].filter((each) => each.length < 60),
        ..."aim set piece pattern scale phase activity movement concert names pitch instrument goal by as on to".split(
          " ",
        ),
        ..."groundwork warm-up pieces min wed went well C G E A x".split(" "),
        ...'"" " “ : > , - -- – # b \r \t \u202E \u200F \u2067 \u2028 \u2029 \uFEFF'.split(" "),
        "2026-03-02",
        "\n",
      ),
      fc.constantFrom(" ", " ", "", ", ", ": ", " > ", "\n"),
    ),
    { maxLength: 14 },
  )
  .map((each) => each.flat().join(""));

test("words of the language in any order", () => {
  fc.assert(
    fc.property(words, (text) => {
      check(text);
      check(`2026-03-02\n${text}`);
    }),
    { seed: 51 },
  );
});

test("lines in any hand, in any vocabulary", () => {
  fc.assert(
    fc.property(anyVocabulary, fc.array(anyLine, { maxLength: 6 }), (declared, lines) => {
      check([...declared, "2026-03-02", ...lines].join("\n"));
    }),
    { seed: 52, numRuns: 2 * FEW },
  );
});
