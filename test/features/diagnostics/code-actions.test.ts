import fc from "fast-check";
import { expect, test } from "vitest";
import { codeActionsIn, safeFixEdits } from "../../../server/features/diagnostics/code-actions.ts";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import type { CodeAction, Diagnostic, Range, TextEdit } from "../../../server/features/types.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { anyText, edited, journalOf, journalText, URI } from "../journal-text.ts";

const TODAY = parseIsoDate("2026-06-01")!;

/** A text in which `‸` marks a place, or two of them a range. */
function placed(marked: string): { readonly text: string; readonly range: Range } {
  const [before, middle, after] = marked.split("‸");
  const end = (text: string): Range["start"] => {
    const lines = text.split("\n");
    return { line: lines.length - 1, character: lines.at(-1)!.length };
  };
  const start = end(before!);
  return after === undefined
    ? { text: before! + (middle ?? ""), range: { start, end: start } }
    : { text: before! + middle! + after, range: { start, end: end(before! + middle!) } };
}

function actionsAt(marked: string, only?: readonly string[]): readonly CodeAction[] {
  const { text, range } = placed(marked);
  return codeActionsIn(diagnosticsOf(journalOf(text), URI, TODAY), range, only);
}

/**
 * The actions at a place below a day, one a line: kind, `*` where preferred, title, and what the first line becomes.
 */
function check(marked: string, ...expected: readonly string[]): void {
  const day = "2026-03-02 Mon\n";
  const { text } = placed(day + marked);
  const shown = actionsAt(day + marked).map(
    ({ kind, preferred, title, edits }) =>
      `${kind}${preferred ? "*" : ""} ${title}: ${edited(text, edits).slice(day.length)}`,
  );
  expect(shown).toEqual(expected);
}

test("each fix of what is touched is a quick fix, preferred where it is the only one or safe", () => {
  check("D minor, slu‸rde, at 60 clean", 'quickfix* Change to "slurred": D minor, slurred, at 60 clean');
});

test("a place right before or behind a word touches it, one further off does not", () => {
  const titles = (marked: string): string[] => actionsAt(`2026-03-02 Mon\n${marked}`).map(({ title }) => title);
  expect(titles("D minor, ‸slurde, slow")).toEqual(['Change to "slurred"']);
  expect(titles("D minor, slurde‸, slow")).toEqual(['Change to "slurred"']);
  expect(titles("D minor, slurde, ‸slow")).toEqual([]);
  expect(titles("D ‸minor, slurde, s‸low")).toEqual(['Change to "slurred"']);
  expect(titles("D minor, slow‸")).toEqual([]);
});

const TWO_SAFE = "2026-03-02 Mon\nD minor, clean at 60\nG minor, clean at 60\nD minor, slow‸\n";
const kinds = (marked: string, only?: readonly string[]): string[] => [
  ...new Set(actionsAt(marked, only).map(({ kind }) => kind)),
];

test("all safe fixes of the file are one action, unasked only where there are two", () => {
  expect(kinds(TWO_SAFE)).toEqual(["source.fixAll"]);
  expect(kinds(TWO_SAFE.replace("D minor, clean at 60", "D minor"))).toEqual([]);
  expect(kinds(TWO_SAFE.replace("D minor, clean at 60", "D minor"), ["source"])).toEqual(["source.fixAll"]);
  const { text } = placed(TWO_SAFE);
  const [all] = actionsAt(TWO_SAFE);
  expect(all!.title).toBe("Apply all safe fixes");
  expect(all!.diagnostics.map(({ code }) => code)).toEqual(["outcome-order", "outcome-order"]);
  expect(edited(text, all!.edits)).toBe("2026-03-02 Mon\nD minor, at 60 clean\nG minor, at 60 clean\nD minor, slow\n");
});

// Language Server Protocol 3.17, CodeActionKind: kinds are a hierarchy parted by dots, the empty kind is its root.
test("a kind that is asked for stands for all below it, and for none else", () => {
  const at = TWO_SAFE.replace("‸", "").replace("clean", "cl‸ean");
  expect(kinds(at, [])).toEqual([]);
  expect(kinds(at, [""])).toEqual(["quickfix", "source.fixAll"]);
  expect(kinds(at, ["quickfix"])).toEqual(["quickfix"]);
  expect(kinds(at, ["quick"])).toEqual([]);
  expect(kinds(at, ["source"])).toEqual(["source.fixAll"]);
  expect(kinds(at, ["refactor", "source.fixAll"])).toEqual(["source.fixAll"]);
  expect(kinds(at, ["source.fixAll.other"])).toEqual([]);
  expect(kinds("2026-03-02\nD minor‸, slow", ["source.fixAll"])).toEqual([]);
});

/** An invented diagnostic with one fix: `from` to `to` of the first line become `text`. */
function fixed(from: number, to: number, text: string, safe = true): Diagnostic {
  const range = { start: { line: 0, character: from }, end: { line: 0, character: to } };
  const fixes = [{ title: text, safe, edits: [{ range, newText: text }] }];
  return { code: "prose", severity: "information", range, message: "", fixes };
}

const texts = (edits: readonly TextEdit[]): string[] => edits.map(({ newText }) => newText);

test("of safe fixes that overlap the one found first is taken, and the edits are in the order of the file", () => {
  expect(texts(safeFixEdits([fixed(4, 8, "b"), fixed(0, 4, "a"), fixed(6, 9, "c"), fixed(9, 9, "d")]))).toEqual([
    "a",
    "b",
    "d",
  ]);
  expect(texts(safeFixEdits([fixed(2, 2, "a"), fixed(2, 2, "b"), fixed(2, 4, "c"), fixed(4, 5, "d", false)]))).toEqual([
    "a",
  ]);
  expect(safeFixEdits([])).toEqual([]);
});

test("safe fixes can always be made together, and where there is one, one is made", () => {
  fc.assert(
    fc.property(fc.oneof(journalText, anyText), (text) => {
      const diagnostics = diagnosticsOf(journalOf(text), URI, TODAY);
      const safe = diagnostics.filter(({ fixes }) => fixes.some((fix) => fix.safe && fix.edits.length));
      const edits = safeFixEdits(diagnostics);
      edited(text, edits);
      expect(edits.length > 0).toBe(safe.length > 0);
    }),
    { seed: 1 },
  );
});

test("whatever the text and the place, there is an answer, and every action can be carried out", () => {
  fc.assert(
    fc.property(fc.oneof(journalText, anyText), fc.nat(14), fc.nat(40), (text, line, character) => {
      const range = { start: { line, character: 0 }, end: { line, character } };
      for (const { edits, diagnostics, kind } of codeActionsIn(diagnosticsOf(journalOf(text), URI, TODAY), range)) {
        expect(diagnostics.length).toBeGreaterThan(0);
        if (kind === "quickfix") expect(diagnostics[0]!.range.start.line).toBeLessThanOrEqual(line);
        edited(text, edits);
      }
    }),
    { seed: 2 },
  );
});
