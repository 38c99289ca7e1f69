import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const PATH = join(import.meta.dirname, "../../syntaxes/language-configuration.json");
const configuration = JSON.parse(readFileSync(PATH, "utf8"));

const regExp = ({ pattern, flags }: { pattern: string; flags: string }, more = "") => new RegExp(pattern, flags + more);

/** The words that the editor sees in a line: what a double click selects, and what completion replaces. */
function words(line: string): string[] {
  return [...line.matchAll(regExp(configuration.wordPattern, "g"))].map(([word]) => word);
}

/** How the editor indents a typed line (against the one above it) and the line that follows it. */
function indentation(line: string): { itself: "out" | "same"; next: "in" | "same" } {
  const { increaseIndentPattern, decreaseIndentPattern } = configuration.indentationRules;
  return {
    itself: regExp(decreaseIndentPattern).test(line) ? "out" : "same",
    next: regExp(increaseIndentPattern).test(line) ? "in" : "same",
  };
}

test("a word holds accidentals, tempos, syllables and slurs", () => {
  const line = "F# B♭ C𝄪 G## 2+1+1 t-k-t 1/4.=60 ♩.=60 4/5 17-32 warm-up inégal don't";
  expect(words(line)).toEqual(line.split(" "));
});

test("a word ends at commas, colons, quotes and spaces", () => {
  expect(words('"Courante in F" as Courante: F# major, 8ths')).toEqual([
    "Courante",
    "in",
    "F",
    "as",
    "Courante",
    "F#",
    "major",
    "8ths",
  ]);
});

test("a remark's dashes are no word", () => {
  expect(words("-- left thumb — tight")).toEqual(["left", "thumb", "tight"]);
});

test("entries are indented under a phase line, and a phase line goes back out", () => {
  for (const line of [
    "groundwork",
    "  Warm up, 5 min",
    "fluency 10 min",
    "reading: 5 min",
    "Pieces:",
    "pieces -- at last",
    "lesson, plan",
  ]) {
    expect({ line, ...indentation(line) }).toEqual({ line, itself: "out", next: "in" });
  }
});

test("days, sessions and breaks go back out, and what follows stands beneath them", () => {
  for (const line of ["2026-03-02", "2026-03-02 Mon, 50 min", "02.03.2026", "session 19:30, 40 min", "break, 5 min"]) {
    expect({ line, ...indentation(line) }).toEqual({ line, itself: "out", next: "same" });
  }
});

test("entries, remarks, what is said on one line and prose stay where they are", () => {
  const lines = ["  D minor, slow", "  -- pieces", "reading a good book", "together we are slow", "  2 octaves"];
  for (const line of [...lines, "lesson: no hurry in the middle", "warm-up: long tones, 5 min"]) {
    expect({ line, ...indentation(line) }).toEqual({ line, itself: "same", next: "same" });
  }
});

test("nothing is typed unasked: a quote that Enter came before would be closed on the next line", () => {
  expect(configuration.autoClosingPairs).toEqual([]);
});

test("a quote over a selection puts it in quotes of its kind", () => {
  const pairs = configuration.surroundingPairs.map((pair: string[]) => pair.join(""));
  expect(pairs).toEqual(['""', "“”", "„“", "«»"]);
});

test("Ctrl+/ makes a remark", () => {
  expect(configuration.comments).toEqual({ lineComment: "--" });
});
