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
  const latest = (today: string) => previewOf(journal, { today }).exercises!.recent[0]!.shows!.latest;
  expect([latest("2026-03-08"), latest("2026-03-09"), latest("2026-03-08")]).toEqual(["60", "66", "60"]);
  expect(previewOf(journal, { today: "2026-03-08" }).week).toBe("This week: 20 minutes.");
});

test("the page is called after the player, else after the journal's folder", () => {
  expect(previewOf("player Noor van den Berg\n").name).toBe("Noor van den Berg");
  expect(previewOf("").name).toBe("journal");
});

test("the days that are shown, with their year: of the weeks that were chosen, from the first that is written", () => {
  const journal = journalOf("2025-12-29\n  D minor, at 60 clean\n2026-03-09\n  D minor, at 66 clean\n");
  const dates = (span: 4 | 26) => previewOf(journal, { choice: { span, instrument: null } }).dates;
  expect(dates(26)).toBe("29 December 2025 to 9 March 2026");
  expect(dates(4)).toBe("16 February to 9 March 2026");
  expect(previewOf("").dates).toBe("9 March 2026");
});
