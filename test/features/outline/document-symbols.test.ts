import fc from "fast-check";
import { expect, test } from "vitest";
import { documentSymbols } from "../../../server/features/outline/document-symbols.ts";
import { LATEST_DAYS, MOST_DAYS_WHOLE } from "../../../server/features/outline/latest-days.ts";
import type { DocumentSymbol, Range } from "../../../server/features/types.ts";
import { createDocument, type Position } from "../../../server/syntax/document/document.ts";
import { anyText, journalOf, journalText, URI } from "../journal-text.ts";

/** The outline, one symbol a line: kind, name, detail, its lines from 0, and what is selected when it is chosen. */
function outline(text: string): string {
  const lines = text.split("\n");
  const show = (symbol: DocumentSymbol, depth: number): string[] => {
    const { start, end } = symbol.selection;
    const detail = symbol.detail === undefined ? "" : ` (${symbol.detail})`;
    const selected = lines[start.line]!.slice(start.character, end.character);
    const span = `${symbol.range.start.line}-${symbol.range.end.line}`;
    const line = `${"  ".repeat(depth)}${symbol.kind} ${symbol.name}${detail} ${span} [${selected}]`;
    return [line, ...symbol.children.flatMap((child) => show(child, depth + 1))];
  };
  return documentSymbols(journalOf(text), URI)
    .flatMap((symbol) => show(symbol, 0))
    .join("\n");
}

function check(text: string, expected: string): void {
  expect(outline(text)).toBe(expected);
}

test("days hold sessions, phases and entries, up to the last line that is not blank", () => {
  check(
    `2026-03-02 Mon, 50 min
G  major, slow
session 19:30, 40 min
groundwork, 15 min
  D minor melodic, 3rds, slurred, at 60 clean
    -- it slides
    -- roll it
  C major, thirds, alternating, slow

session
D major, slow


2026-03-03
Sound freer today.
`,
    `day 2026-03-02 Mon (50 min) 0-10 [2026-03-02 Mon]
  entry G major 1-1 [G  major]
  session session 19:30 (40 min) 2-7 [session 19:30]
    phase groundwork (15 min) 3-7 [groundwork]
      entry D minor melodic (thirds) 4-6 [D minor melodic]
      entry C major (thirds, alternating) 7-7 [C major]
  session session 9-10 [session]
    entry D major 10-10 [D major]
day 2026-03-03 13-14 [2026-03-03]`,
  );
});

test("an entry that goes on with the one above it is called by what it goes on with", () => {
  check(
    "2026-03-02\nF major at 60\nsame, 66",
    `day 2026-03-02 0-2 [2026-03-02]
  entry F major 1-1 [F major]
  entry F major 2-2 [same]`,
  );
});

test("declarations stand where they are made, by their names", () => {
  check(
    `player Noor
piece "Ground in G" as Ground: G minor
pitch A=415
set
2026-03-05 Thu
lesson
set "clap line 4" by 2026-03-12
set D minor, slow
Ground, bars 1-4, slow
"Solo", "zigzag", slow`,
    `declaration Noor (player) 0-0 [Noor]
declaration Ground in G (piece) 1-1 ["Ground in G"]
declaration A=415 (pitch) 2-2 [A=415]
declaration set 3-3 [set]
day 2026-03-05 Thu 4-9 [2026-03-05 Thu]
  phase lesson 5-9 [lesson]
    declaration clap line 4 (set) 6-6 ["clap line 4"]
    declaration D minor, slow (set) 7-7 [D minor, slow]
    entry Ground 8-8 [Ground]
    entry "Solo" 9-9 ["Solo"]`,
  );
});

test("a declared pattern is told by its name, and a line without a subject by its words", () => {
  check(
    `pattern "zigzag": 1 3 2 4
- 2026-03-05
D major, "ZigZag", slow
thirds, slow`,
    `declaration zigzag (pattern) 0-0 ["zigzag"]
day 2026-03-05 1-3 [2026-03-05]
  entry D major (zigzag) 2-2 [D major]
  entry thirds, slow (thirds) 3-3 [thirds, slow]`,
  );
});

test("the symbols of a day that has moved are those of a file read afresh", () => {
  const text = "2026-03-02 Mon\nD minor, slow\n";
  const journal = journalOf(text);
  documentSymbols(journal, URI);
  const day = journal.files.get(URI)!.blocks[0]!;
  const head = createDocument(`-- above\n${text}`).blocks[0]!;
  const moved = journal.with(URI, { blocks: [head, day], starts: [0, 1], lineCount: 4 });
  expect(documentSymbols(moved, URI)).toEqual(documentSymbols(journalOf(`-- above\n${text}`), URI));
});

const atOrBefore = (a: Position, b: Position): boolean =>
  a.line < b.line || (a.line === b.line && a.character <= b.character);
const covers = (outer: Range, inner: Range): boolean =>
  atOrBefore(outer.start, inner.start) && atOrBefore(inner.end, outer.end);

// Language Server Protocol 3.17, DocumentSymbol: a name must hold more than white space, and `selectionRange` must lie
// in `range`.
test("every range covers what is selected and all children, and every name says something", () => {
  const depths = { day: 0, session: 1, phase: 2, entry: 3, declaration: 3 } as const;
  const visit = (symbol: DocumentSymbol): void => {
    expect(symbol.name.trim()).not.toBe("");
    expect(covers(symbol.range, symbol.selection)).toBe(true);
    for (const [i, child] of symbol.children.entries()) {
      expect(covers(symbol.range, child.range)).toBe(true);
      expect(depths[child.kind]).toBeGreaterThan(depths[symbol.kind]);
      if (i > 0) expect(symbol.children[i - 1]!.range.end.line).toBeLessThan(child.range.start.line);
      visit(child);
    }
  };
  fc.assert(
    fc.property(fc.oneof(journalText, anyText), (text) => {
      for (const symbol of documentSymbols(journalOf(text), URI)) visit(symbol);
    }),
    { seed: 1 },
  );
});

test("every entry and every declaration is in the outline once", () => {
  const leaves = (symbols: readonly DocumentSymbol[]): number[] =>
    symbols.flatMap(({ kind, range, children }) => [
      ...(kind === "entry" || kind === "declaration" ? [range.start.line] : []),
      ...leaves(children),
    ]);
  fc.assert(
    fc.property(journalText, (text) => {
      const journal = journalOf(text);
      const { blocks, starts } = journal.files.get(URI)!;
      const lines = blocks.flatMap((block, i) =>
        journal
          .model(block)
          .lines.flatMap(({ type }, line) => (type === "entry" || type === "declaration" ? [starts[i]! + line] : [])),
      );
      expect(leaves(documentSymbols(journal, URI))).toEqual(lines);
    }),
    { seed: 2 },
  );
});

/** Days with one entry each, the first with more on its line. */
const days = (count: number): string[] =>
  Array.from({ length: count }, (_, i) => {
    const date = new Date(Date.UTC(2020, 0, 1 + i)).toISOString().slice(0, 10);
    return `${date}${i === 0 ? " Wed, 30 min -- cold" : ""}\n  C major, slow\n`;
  });

test("a year is told with all that its days hold", () =>
  expect(outline(days(MOST_DAYS_WHOLE).join("")).split("\n")).toHaveLength(2 * MOST_DAYS_WHOLE));

test("of more days only the latest are told with what they hold, at whichever end of the file they stand", () => {
  const many = days(MOST_DAYS_WHOLE + 1);
  const lines = outline(many.join("")).split("\n");
  expect(lines.slice(0, 2)).toEqual(["day 2020-01-01 Wed 0-1 [2020-01-01 Wed]", "day 2020-01-02 2-3 [2020-01-02]"]);
  expect(lines).toHaveLength(many.length + LATEST_DAYS);
  expect(lines.slice(-2 * LATEST_DAYS).filter((line) => line.startsWith("  entry"))).toHaveLength(LATEST_DAYS);
  const reversed = outline([...many].reverse().join("")).split("\n");
  expect(reversed.at(-1)).toBe(`day 2020-01-01 Wed ${2 * many.length - 2}-${2 * many.length - 1} [2020-01-01 Wed]`);
  expect(reversed.slice(0, 2 * LATEST_DAYS).filter((line) => line.startsWith("  entry"))).toHaveLength(LATEST_DAYS);
});

test("names are without what would steer how the outline is written", () => {
  check(
    `piece "\u202Eeuqi\u2066G"
2026-03-02
  "Gi\u200Fgue", slow
  "\u202E", slow
  D minor, \u202Eslow`,
    `declaration euqiG (piece) 0-0 ["\u202Eeuqi\u2066G"]
day 2026-03-02 1-4 [2026-03-02]
  entry "Gigue" 2-2 ["Gi\u200Fgue"]
  entry "" 3-3 ["\u202E"]
  entry D minor 4-4 [D minor]`,
  );
});

test("a row of keys that stops short is selected as far as it goes", () =>
  check("2026-03-02\n  C > D > ", "day 2026-03-02 0-1 [2026-03-02]\n  entry C > D 1-1 [C > D]"));
