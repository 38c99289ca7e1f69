import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { expect, test } from "vitest";
import { formatEdits } from "../../../server/features/layout/formatting.ts";
import type { Journal } from "../../../server/journal/journal.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { anyText, edited, journalOf, journalText, URI } from "../journal-text.ts";

// What is canonical is the format's own decision: no source outside. The library `vscode-languageserver-textdocument`
// makes the edits, and the journals of the samples and of syntaxes/FORMAT.md, written by hand, are what is measured by.

function formatted(text: string): string {
  return edited(text, formatEdits(journalOf(text), URI));
}

/** A line or more below a day, before and after. */
function check(before: string, after: string): void {
  const day = "2026-03-02 Mon\n";
  expect(formatted(day + before)).toBe(day + after);
}
const stays = (text: string): void => check(text, text);

test("one comma and one space stand between terms", () => {
  check("D minor thirds slurred", "D minor, thirds, slurred");
  check("D minor,thirds ,  slurred", "D minor, thirds, slurred");
  check("D   minor\tmelodic , thirds", "D minor melodic, thirds");
  check("D minor , five notes : D E F G A", "D minor, five notes: D E F G A");
  check("D minor: D,E,F G A Bb C D slow", "D minor: D, E, F G A Bb C D, slow");
  check('"Ground in G" bars 5-8,17-20 slow', '"Ground in G", bars 5-8, 17-20, slow');
  check("long tones on F4 C5 with drone F 5 min", "long tones on F4 C5, with drone F, 5 min");
  check("D minor focus finger changes at 60 clean", "D minor, focus finger changes, at 60 clean");
  check("C major>F major  →Bb major", "C major > F major → Bb major");
});

test("what is said in one breath stays so", () => {
  stays("D minor, 8ths at 60 clean 5 in a row, 66 slips tense, slurred at 54 clean");
  stays("D minor, slurred up, tongued down, at 72 clean, by heart");
  stays("D minor, straight 8ths at 60");
  stays("D minor, clean at 60");
  check("D minor, up, at 60 clean 66 clean 4/5 72 slips", "D minor, up, at 60 clean, 66 clean 4/5, 72 slips");
  check("D minor slurred up and down", "D minor, slurred, up and down");
});

test("lines that frame others begin at the first column, what stands below a phase two spaces in", () => {
  check(
    " warm-up 5 min\nD minor, slow\n\tbreak 5 min\nplan\n  session 19:30 40 min\n  D minor, slow",
    "warm-up, 5 min\n  D minor, slow\n  break, 5 min\n  plan\nsession 19:30, 40 min\nD minor, slow",
  );
  check("pieces plan\n  together  :  90 min , with Anna", "pieces, plan\ntogether: 90 min, with Anna");
  expect(formatted("  2026-03-02   Mon 50 min plan")).toBe("2026-03-02 Mon, 50 min, plan");
  expect(formatted("2026-03-04 Wed rest , thumb  hurts")).toBe("2026-03-04 Wed, rest, thumb hurts");
  expect(formatted("  -   2026-03-02 50 min")).toBe("- 2026-03-02, 50 min");
});

test("declarations are laid out, and names in quotes are left alone", () => {
  expect(formatted('  piece  "Ground,in  G" as Ground :G minor 96 bars ,due 2026-05-09')).toBe(
    'piece "Ground,in  G" as Ground: G minor, 96 bars, due 2026-05-09',
  );
  expect(formatted("aim D minor thirds 8ths at 96 by 2026-04-30")).toBe(
    "aim D minor, thirds, 8ths at 96 by 2026-04-30",
  );
  expect(formatted("set D minor thirds 5 days by 2026-04-30")).toBe("set D minor, thirds, 5 days by 2026-04-30");
  expect(formatted("pitch A=415,Vallotti  ")).toBe("pitch A=415, Vallotti");
});

test("a remark keeps its words; a plain one right under an entry goes two spaces deeper", () => {
  check(
    "groundwork\nD minor slow   --  as it  is  \n-- E,F\n  -- again",
    "groundwork\n  D minor, slow --  as it  is\n    -- E,F\n    -- again",
  );
  check("D minor, slow\nask: breathe\n   said: roll", "D minor, slow\nask: breathe\n   said: roll");
  check("D minor, slow\n\n   -- by itself", "D minor, slow\n\n   -- by itself");
  check("\t-- a tab", "  -- a tab");
});

test("what cannot be read loses trailing white space and nothing else", () => {
  check("   C major,thrdis  ,slow \t", "   C major,thrdis  ,slow");
  check("  d,slow", "  d,slow");
  check("  D minor  7", "  D minor  7");
  check("  Sound  freer,today. ", "  Sound  freer,today.");
  check('  C major,  "no end,slow ', '  C major,  "no end,slow');
  check("<<<<<<< mine  ", "<<<<<<< mine");
  const long = `D minor,thirds${" ".repeat(4096)}`;
  check(long, long);
});

test("of blank lines in a row one stays, and the end of the file as it was", () => {
  check("\n\nD minor, slow\n \n\t\n\nD major, slow\n\n\n", "\nD minor, slow\n\nD major, slow\n\n");
  check("D minor, slow\n  ", "D minor, slow\n");
  check("D minor, slow", "D minor, slow");
});

test("line ends and a byte order mark stay as they are", () => {
  expect(formatted("\uFEFF2026-03-02  Mon\r\nD minor slow\rD major slow\n")).toBe(
    "\uFEFF2026-03-02 Mon\r\nD minor, slow\rD major, slow\n",
  );
  expect(formatted("\uFEFF  D minor slow")).toBe("\uFEFFD minor, slow");
  stays("D minor, slow\r  \nD major, slow"); // without its spaces this line would make one line end out of two
  stays("D minor, 10\u00A0min");
});

test("an edit is no longer than what changes", () => {
  const edits = formatEdits(journalOf("2026-03-02 Mon\nD minor  slow,up"), URI);
  expect(edits).toEqual([
    { range: { start: { line: 1, character: 7 }, end: { line: 1, character: 8 } }, newText: "," },
    { range: { start: { line: 1, character: 14 }, end: { line: 1, character: 14 } }, newText: " " },
  ]);
});

test("with a range only the lines that it touches are laid out, as they stand below the others", () => {
  const text = "2026-03-02 Mon\ngroundwork  15 min\nD minor slow\nD major slow\n-- E\n";
  const only = (line: number): string =>
    edited(text, formatEdits(journalOf(text), URI, { start: { line, character: 0 }, end: { line, character: 1 } }));
  expect(only(2)).toBe(text.replace("D minor slow", "  D minor, slow"));
  expect(only(4)).toBe(text.replace("-- E", "  -- E"));
});

const ROOT = join(import.meta.dirname, "../../..");
const reference = readFileSync(join(ROOT, "syntaxes/FORMAT.md"), "utf8");
const boxes = [...reference.matchAll(/\n```practice(?: later)?\n([\s\S]*?\n)```\n/g)].map(([, text]) => text!);

test("the examples of the format reference are canonical", () => {
  expect(boxes.length).toBeGreaterThan(20);
  for (const text of boxes) expect(formatted(text)).toBe(text);
});

test("the first sample is canonical, read with its own journal", () => {
  const folder = join(ROOT, "samples/quickstart");
  const names = readdirSync(folder).filter((name) => name.endsWith(".practice"));
  expect(names).toContain("week.practice");
  let journal: Journal = journalOf("").with(URI, undefined);
  for (const name of names)
    journal = journal.with(`file:///journal/${name}`, createDocument(readFileSync(join(folder, name), "utf8")));
  for (const uri of journal.addresses) expect(formatEdits(journal, uri)).toEqual([]);
});

/** All that is read in a text, apart from where it stands and runs of white space. */
function meaning(text: string): string {
  const journal = journalOf(text);
  const models = journal.files.get(URI)!.blocks.map((block) => {
    const { lines, sittings, ...model } = journal.model(block);
    const said = lines.filter((line) => line.type !== "blank");
    return { ...model, said, sittings: sittings.map((sitting) => ({ ...sitting, breaks: sitting.breaks.length })) };
  });
  const places = ["start", "end", "line", "dateEnd", "wordEnd", "length"];
  return JSON.stringify(models, (key, value) => {
    if (typeof value === "string") return value.replace(/\s+/g, " ");
    return places.includes(key) && typeof value === "number" ? undefined : value;
  });
}

test("formatting twice is formatting once, and what is said stays", () => {
  fc.assert(
    fc.property(fc.oneof(journalText, anyText), (text) => {
      const once = formatted(text);
      expect(formatted(once)).toBe(once);
      expect(meaning(once)).toBe(meaning(text));
    }),
    { seed: 1 },
  );
});

test("only white space goes, only spaces and commas come, and lines keep their ends", () => {
  const ends = (text: string): readonly (readonly [string, string])[] =>
    createDocument(text).blocks.flatMap(({ lines, ends }) =>
      lines.flatMap((line, i) => (line.trim() ? [[line.replace(/[\s,]/g, ""), ends[i]!] as const] : [])),
    );
  fc.assert(
    fc.property(fc.oneof(journalText, anyText), (text) => {
      const edits = formatEdits(journalOf(text), URI);
      for (const { range, newText } of edits) {
        expect(newText).toMatch(/^[ ,]*$/);
        if (range.start.line === range.end.line) continue;
        expect([range.start.character, range.end.character, newText]).toEqual([0, 0, ""]);
      }
      const after = edited(text, edits);
      expect(after.replace(/[\s,]/g, "")).toBe(text.replace(/[\s,]/g, ""));
      expect(ends(after)).toEqual(ends(text));
    }),
    { seed: 2 },
  );
});

test("the edits of a range lie in its lines", () => {
  fc.assert(
    fc.property(journalText, fc.nat(14), fc.nat(14), (text, a, b) => {
      const range = { start: { line: Math.min(a, b), character: 0 }, end: { line: Math.max(a, b), character: 0 } };
      const edits = formatEdits(journalOf(text), URI, range);
      edited(text, edits);
      for (const { range: at } of edits) {
        expect(at.start.line).toBeGreaterThanOrEqual(range.start.line);
        expect(at.start.line).toBeLessThanOrEqual(range.end.line);
      }
    }),
    { seed: 3 },
  );
});
