import fc from "fast-check";
import { expect, test } from "vitest";
import { applyChanges, textOf } from "../../../server/syntax/document/document.ts";
import { FEW } from "../../support/random-runs.ts";
import { journalOf, journalText, URI } from "../journal-text.ts";
import { previewOf } from "./preview-asked.ts";

test("after any series of edits the preview is that of the text as it stands", () => {
  const edit = fc.record({ from: fc.nat(), length: fc.nat(4), lines: journalText });
  fc.assert(
    fc.property(journalText, fc.array(edit, { minLength: 1, maxLength: 3 }), (text, edits) => {
      let journal = journalOf(text);
      previewOf(journal);
      for (const { from, length, lines } of edits) {
        const document = journal.files.get(URI)!;
        const start = { line: from % document.lineCount, character: 0 };
        const change = { range: { start, end: { line: start.line + length, character: 0 } }, text: lines };
        journal = journal.with(URI, applyChanges(document, [change]));
        const fresh = journalOf(textOf(journal.files.get(URI)!));
        expect(previewOf(journal)).toEqual(previewOf(fresh));
      }
    }),
    { seed: 23, numRuns: FEW },
  );
});

test("another day gives other figures of the same journal", () => {
  const journal = journalOf("2026-03-02, 20 min\n  D minor, at 60 clean\n2026-03-09, 30 min\n  D minor, at 66 clean\n");
  const best = (today: string) => previewOf(journal, { today }).moving.groups[0]!.exercises[0]!.shows!.best;
  expect([best("2026-03-08"), best("2026-03-09"), best("2026-03-08")]).toEqual([
    "Best at 60, in 2026-W10.",
    "Best at 66, in 2026-W11.",
    "Best at 60, in 2026-W10.",
  ]);
  expect(previewOf(journal, { today: "2026-03-08" }).week.sentence).toBe("20 minutes on 1 day.");
});

test("the page is called after the player, else after the journal's folder", () => {
  expect(previewOf("player Noor van den Berg\n").name).toBe("Noor van den Berg");
  expect(previewOf("").name).toBe("journal");
});
