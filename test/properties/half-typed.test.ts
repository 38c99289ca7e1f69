import { describe, expect, test } from "vitest";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { applyChanges, type Document } from "../../server/syntax/document/document.ts";
import { JOURNALS, journalOf, type Name, TODAY, textsOf } from "../reference-journals/journals.ts";

// A line being typed is never an exception, and silences or accuses no other line, but for what crosses lines by design.

/** The order of days, what is given twice, and the sums of minutes look across lines. */
const CROSSING = ["day-order", "duplicate-day", "future-day", "duplicate-declaration", "minutes-sum", "long-stretch"];
/** A day line gone leaves its lines to the day before, or to none. */
const DAYS_GONE = ["no-day", "bad-declaration", "unknown-declaration", "prose", "aim-past"];

/** What is found on all lines but one, by line. */
function others(journal: Journal, uri: string, line: number, without: readonly string[]): readonly string[] {
  return diagnosticsOf(journal, uri, TODAY)
    .filter(({ code, range }) => range.start.line !== line && !without.includes(code))
    .map(({ code, range, message }) => `${range.start.line}:${range.start.character} ${code} ${message}`);
}

/** The document with one line cut off behind a column. */
function cut(document: Document, line: number, text: string, column: number): Document {
  const range = { start: { line, character: column }, end: { line, character: text.length } };
  return applyChanges(document, [{ range, text: "" }]);
}

describe.each(Object.keys(JOURNALS) as Name[])("the %s's journal", (name) => {
  test("half-typed at every character of every line below a day", () => {
    const texts = textsOf(name);
    const whole = journalOf(texts);
    for (const [uri, text] of texts) {
      const lines = text.split("\n");
      for (const [i, line] of lines.entries()) {
        const document = whole.files.get(uri)!;
        const isDay = /^\d{4}-/.test(line);
        const without = isDay ? [...CROSSING, ...DAYS_GONE] : CROSSING;
        const before = others(whole, uri, i, without);
        for (let column = 0; column < line.length; column++) {
          const typed = whole.with(uri, cut(document, i, line, column));
          const found = others(typed, uri, i, without);
          if (declares(line) || found.join("\n") === before.join("\n")) continue;
          const context = `${uri}:${i + 1} ${line.slice(0, column)}`;
          expect({ context, found }).toEqual({ context, found: before });
        }
      }
    }
  });

  test("half-typed declarations change only lines that use what they declare", () => {
    const texts = textsOf(name);
    const marker = [...texts.keys()].find((uri) => uri.endsWith("/journal.practice"))!;
    const whole = journalOf(texts);
    const lines = texts.get(marker)!.split("\n");
    for (const [i, line] of lines.entries()) {
      const used = quotedIn(line);
      for (let column = 0; column < line.length; column += 3) {
        const typed = whole.with(marker, cut(whole.files.get(marker)!, i, line, column));
        for (const uri of texts.keys()) {
          const changed = changedLines(whole, typed, uri).filter((each) => uri !== marker || each !== i);
          const foreign = changed.filter((each) => !uses(texts.get(uri)!.split("\n")[each]!, line, used));
          expect({ context: line.slice(0, column), uri, foreign }).toEqual({
            context: line.slice(0, column),
            uri,
            foreign: [],
          });
        }
      }
    }
  });
});

function declares(line: string): boolean {
  return /^(?:player|instrument|pitch|note|usual|piece|study|movement|concert|pattern|aim|focus)\b/.test(line);
}

/** The names that a declaration gives: in quotes, or behind `as`. */
function quotedIn(line: string): readonly string[] {
  return [...line.matchAll(/"([^"]+)"|\bas (\w+)/g)].map((match) => match[1] ?? match[2]!);
}

/** Whether a line may change with a declaration: it names what is declared, or holds notes that an instrument bounds. */
function uses(line: string, declaration: string, names: readonly string[]): boolean {
  return names.some((each) => line.includes(each)) || (/^instrument/.test(declaration) && /\d|octave|range/.test(line));
}

function changedLines(a: Journal, b: Journal, uri: string): readonly number[] {
  const [before, after] = [a, b].map((journal) =>
    diagnosticsOf(journal, uri, TODAY).map(({ code, range }) => `${range.start.line} ${code}`),
  ) as [string[], string[]];
  const changed = [
    ...before.filter((each) => !after.includes(each)),
    ...after.filter((each) => !before.includes(each)),
  ];
  return [...new Set(changed.map((each) => Number(each.split(" ")[0])))];
}
