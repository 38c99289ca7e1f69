import fc from "fast-check";
import { expect, test } from "vitest";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { Journal } from "../../server/journal/journal.ts";
import { applyChanges, createDocument, textOf } from "../../server/syntax/document/document.ts";
import { FEW } from "../support/random-runs.ts";
import { afresh, DAYS, FILES, head, journalOf, lines, MARKER, ROOT, step, TODAY, taken } from "./edits.ts";

// After any series of edits the diagnostics are those of a journal built afresh from the same texts.

function check(journal: Journal, today: number): void {
  const fresh = afresh(journal);
  for (const uri of FILES) {
    const texts = `${uri}\n${journal.files.has(uri) ? textOf(journal.files.get(uri)!) : ""}`;
    expect({ texts, found: diagnosticsOf(journal, uri, today) }).toEqual({
      texts,
      found: diagnosticsOf(fresh, uri, today),
    });
  }
}

test("after any series of edits the diagnostics are those of a journal built afresh", () => {
  fc.assert(
    fc.property(head, lines, lines, fc.array(step, { minLength: 1, maxLength: 12 }), (marker, a, b, steps) => {
      let journal = journalOf([marker, a, b]);
      for (const each of steps) {
        journal = taken(journal, each);
        if (each.asked) check(journal, each.today);
      }
      check(journal, TODAY);
    }),
    { seed: 21, numRuns: FEW },
  );
});

test("an older state of the journal still answers for itself", () => {
  fc.assert(
    fc.property(head, lines, lines, fc.array(step, { minLength: 2, maxLength: 6 }), (marker, a, b, steps) => {
      const first = journalOf([marker, a, b]);
      const states = [first];
      for (const each of steps) states.push(taken(states.at(-1)!, each));
      for (const state of [...states].reverse()) check(state, TODAY);
      for (const state of states) check(state, TODAY);
    }),
    { seed: 22, numRuns: FEW },
  );
});

test("the same day put in above the only one", () => {
  const journal = new Journal(ROOT, new Map([[MARKER, createDocument("2026-03-02\n")]]));
  check(journal, TODAY);
  const top = { line: 0, character: 0 };
  const edit = { range: { start: top, end: top }, text: "2026-03-02 Mon\n" };
  check(journal.with(MARKER, applyChanges(journal.files.get(MARKER)!, [edit])), TODAY);
});

const CROSSING = [
  "day-order",
  "duplicate-day",
  "future-day",
  "duplicate-declaration",
  "aim-past",
  "aim-far",
  "tempo-leap",
];

/** What is found on the last lines of a text, by their distance from its end, without what crosses days. */
function ownFindings(journal: Journal, text: string, last: number): readonly string[] {
  const count = text.split("\n").length;
  const found = diagnosticsOf(journal, FILES[1]!, TODAY).filter(({ code }) => !CROSSING.includes(code));
  return found
    .filter(({ range }) => range.start.line >= count - last)
    .map(({ code, range, message }) => `${range.start.line - count} ${range.start.character} ${code} ${message}`);
}

test("a day's own findings do not depend on the days before it", () => {
  const own = fc.tuple(
    fc.constantFrom(...DAYS),
    lines.map((each) => each.split("\n").filter((text) => !isDay(text))),
  );
  // Names that are declared in a day hold everywhere, by design.
  const naming = (text: string): boolean => /^\W*(?:piece|study|pattern|scale|phase|activity|instrument)\b/m.test(text);
  fc.assert(
    fc.property(lines, own, (before, [day, rest]) => {
      if (naming(before)) return;
      const text = [day, ...rest].join("\n");
      const alone = new Journal(ROOT, new Map([[FILES[1]!, createDocument(text)]]));
      const behind = `2026-01-01\n${before}\n${text}`;
      const among = new Journal(ROOT, new Map([[FILES[1]!, createDocument(behind)]]));
      const last = rest.length + 1;
      expect(ownFindings(among, behind, last)).toEqual(ownFindings(alone, text, last));
    }),
    { seed: 23 },
  );
});

function isDay(text: string): boolean {
  return createDocument(text).blocks[0]!.day;
}

test("at most a thousand diagnostics are given, errors first, and the last says how many more there are", () => {
  const text = `2026-03-02\n${"Felt fine today\n".repeat(900)}${"D minor, 2 sharps\n".repeat(300)}${"D minor, at 500\n".repeat(50)}`;
  const journal = new Journal(ROOT, new Map([[MARKER, createDocument(text)]]));
  const found = diagnosticsOf(journal, MARKER, TODAY);
  expect(found.length).toBe(1000);
  const severities = found.map(({ severity }) => severity);
  expect(severities.indexOf("warning")).toBe(300);
  expect(severities.indexOf("hint")).toBe(350);
  expect(found.at(-1)!.message).toMatch(/\(And 250 more in this file\.\)$/);
});
