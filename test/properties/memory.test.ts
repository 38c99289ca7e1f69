import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { expect, test } from "vitest";
import { completionsAt } from "../../server/features/completion/completion.ts";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { Journal } from "../../server/journal/journal.ts";
import { applyChanges, createDocument } from "../../server/syntax/document/document.ts";
import { IN_FULL } from "../support/random-runs.ts";
import { TODAY } from "./edits.ts";

// However long somebody types, what is remembered of it stays within bounds.

const URI = "file:///journal/journal.practice";
const HEAD = ["player Noor", "instrument alto recorder", 'piece "Ground" as G: G minor', "aim D minor by 2026-12-31"];
const DAYS = Array.from({ length: 20 }, (_, i) => [
  `2026-03-${String(i + 1).padStart(2, "0")}, 50 min`,
  "  D minor melodic, thirds, slurred, 8ths at 60 clean",
  "  G, bars 1-8, at 72 nearly",
]);
const LINES = [...HEAD, ...DAYS.flat()];

/** Numbers that differ, as letters that mean nothing and as notes. */
const word = (n: number): string => `w${[...n.toString(7)].map((digit) => "bdgklmr"[Number(digit)]).join("o")}`;
const notes = (n: number): string => [...String(1000 + n)].map((digit) => "CDEFGABCDE"[Number(digit)]).join(" E ");

/** What is put in at the end of a line, by the number of the edit. */
const PUT_IN: readonly ((n: number) => string)[] = [
  (n) => `, ${word(n)} ${word(2 * n)}`,
  (n) => `: ${notes(n)} ${notes(3 * n)} ${notes(7 * n)}`,
  (n) => `, at ${1 + (n % 400)}.${n % 10} clean ${n % 40} of ${n % 90}`,
  (n) => `, focus ${word(n)}, 1/4.=${n}, with ${word(3 * n)}`,
  (n) => ` -- ${word(n)}`,
];

function edited(journal: Journal, line: number, from: number, to: number, text: string): Journal {
  const range = { start: { line, character: from }, end: { line, character: to } };
  const after = journal.with(URI, applyChanges(journal.files.get(URI)!, [{ range, text }]));
  diagnosticsOf(after, URI, TODAY, { history: text.length % 5 === 0 });
  completionsAt(after, URI, { line, character: from + text.length }, TODAY);
  return after;
}

test.skipIf(!IN_FULL)(
  "after thousands of edits with new words each time, no more is kept",
  () => {
    let journal = new Journal("file:///journal", new Map([[URI, createDocument(LINES.join("\n"))]]));
    const after = (edits: number, first: number): number => {
      for (let n = first; n < first + edits; n++) {
        const line = n % 50 === 0 ? 1 + (n % HEAD.length) : HEAD.length + 1 + (n % 2) + 3 * (n % DAYS.length);
        const end = LINES[line % LINES.length]!.length;
        const text = PUT_IN[n % PUT_IN.length]!(n);
        journal = edited(journal, line % LINES.length, end, end, text);
        journal = edited(journal, line % LINES.length, end, end + text.length, "");
      }
      return heapUsed();
    };
    const warm = after(4000, 1);
    expect(after(2000, 4001) - warm).toBeLessThan(4000 * 2000);
  },
  300_000,
); // a busy machine takes more than the usual minute

/** In bytes, with nothing to collect. */
function heapUsed(): number {
  setFlagsFromString("--expose-gc");
  const collect: () => void = runInNewContext("gc");
  collect();
  return process.memoryUsage().heapUsed;
}
