import { expect, test } from "vitest";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { applyChanges } from "../../../server/syntax/document/document.ts";
import { journalOf, URI } from "../journal-text.ts";

// The order of a file's days is looked at around an edit alone; what is told is what a fresh look tells.

const TODAY = 20_600; // 2026-05-27

function told(journal: ReturnType<typeof journalOf>): readonly string[] {
  return diagnosticsOf(journal, URI, TODAY).map(({ code, range }) => `${code} on line ${range.start.line}`);
}

function afterInsertion(text: string, line: number, inserted: string): readonly string[] {
  const journal = journalOf(text);
  told(journal);
  const place = { line, character: 0 };
  const document = applyChanges(journal.files.get(URI)!, [{ range: { start: place, end: place }, text: inserted }]);
  return told(journal.with(URI, document));
}

const RISING = "2026-01-11\n  rest\n2026-01-18\n  rest\n";

test("a later day before all others departs from the order of the rest", () => {
  const found = afterInsertion(RISING, 0, "2026-03-06\n  rest\n");
  expect(found).toEqual(told(journalOf(`2026-03-06\n  rest\n${RISING}`)));
  expect(found).toEqual(["day-order on line 2"]);
});

test("so does an earlier one behind them, and a day in its place does not", () => {
  expect(afterInsertion(RISING, 4, "2026-01-02\n  rest\n")).toEqual(["day-order on line 4"]);
  expect(afterInsertion(RISING, 2, "2026-01-14\n  rest\n")).toEqual([]);
});
