import fc from "fast-check";
import { expect, test } from "vitest";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { lineRows } from "../../server/features/explain/line-rows.ts";
import { documentSymbols } from "../../server/features/outline/document-symbols.ts";
import { attemptsOfJournal, recordsOfBlock } from "../../server/history/attempts.ts";
import { historyOf } from "../../server/history/history.ts";
import { HistoryIndex } from "../../server/history/history-index.ts";
import { journalHistory } from "../../server/history/journal-history.ts";
import type { AttemptRecord } from "../../server/history/record.ts";
import { atOnce } from "../../server/journal/at-once.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { subjectName } from "../../server/journal/subject-text.ts";
import { FEW } from "../support/random-runs.ts";
import { afresh, FILES, journalOf, type Step, TODAY, taken } from "./edits.ts";
import { titleLine } from "./title-lines.ts";

// Titles are learnt from lines in whatever file and order, and taken back when the line that taught them goes. What a journal
// answers after edits is what one of the same text answers that nobody read before.

const OTHERS = ["D minor, 8ths at 60 clean", "plan", "warm-up, 5 min", "-- a remark", "", "Lovely tone today.", "rest"];
const DATES = [
  "2026-03-02",
  "2026-03-02",
  "2026-03-03",
  "2026-03-09, 20 min",
  "2026-04-20",
  "2025-12-31",
  "2026-02-30",
];
const HEADS = ["", 'piece "Ground in G minor" as Ground: G minor', 'piece "The Sleepy Frog"', "names german"];

const line = fc.oneof({ weight: 5, arbitrary: titleLine }, { weight: 1, arbitrary: fc.constantFrom(...OTHERS) });
const day = fc
  .tuple(fc.constantFrom(...DATES), fc.array(line, { maxLength: 4 }))
  .map(([date, lines]) => [date, ...lines.map((each) => `  ${each}`)].join("\n"));
const days = fc.array(day, { maxLength: 4 });
const text = days.map((all) => all.join("\n"));

const step: fc.Arbitrary<Step> = fc.record({
  file: fc.constantFrom(...FILES),
  change: fc.record({
    from: fc.nat(12),
    to: fc.constantFrom(0, 0, 0, 1, 1, 2, 5),
    a: fc.constantFrom(0, 0, 0, 2, 6, 99),
    b: fc.constantFrom(0, 0, 0, 6, 99),
    text: fc.oneof(
      { weight: 4, arbitrary: line.map((each) => `  ${each}\n`) },
      { weight: 2, arbitrary: fc.constantFrom("", "\n", "x", "at 60", "2026-03-03\n", 'piece "Frog"\n') },
      { weight: 2, arbitrary: text.map((each) => `${each}\n`) },
    ),
  }),
  kind: fc.constantFrom("edit", "edit", "edit", "edit", "edit", "whole", "drop"),
  asked: fc.boolean(),
  today: fc.constant(TODAY),
});

const figures = ({ day, order, subject, strandKey, rate, reached, count, minutes, line: at }: AttemptRecord) => ({
  ...{ day, order, subject, strandKey, rate, reached, count, minutes, line: at },
});

function shown(index: HistoryIndex): unknown {
  return [...index.exercises.values()]
    .sort((a, b) => (a.key < b.key ? -1 : 1))
    .map(({ key, subject, strands }) => ({ key, subject, records: strands.map((each) => each.records.map(figures)) }));
}

/** Everything in which titles show. */
function told(journal: Journal): unknown {
  return journal.addresses.map((uri) => [
    uri,
    lineRows(journal, uri),
    documentSymbols(journal, uri),
    diagnosticsOf(journal, uri, TODAY),
    journal.files.get(uri)!.blocks.map((block) => recordsOfBlock(journal, uri, block).map(figures)),
  ]);
}

test("after any series of edits every line is read as in a journal of the same text", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...HEADS),
      text,
      text,
      fc.array(step, { minLength: 1, maxLength: 6 }),
      (head, a, b, steps) => {
        let journal = journalOf([head, a, b]);
        const check = (): void => {
          const fresh = afresh(journal);
          expect(told(journal)).toEqual(told(fresh));
          expect(shown(journalHistory(journal))).toEqual(shown(atOnce(HistoryIndex.inSteps(attemptsOfJournal(fresh)))));
        };
        for (const each of steps) {
          journal = taken(journal, each);
          if (each.asked) check();
        }
        check();
      },
    ),
    { seed: 61, numRuns: FEW },
  );
});

test("the history does not go by the order of files, nor of days in them", () => {
  fc.assert(
    fc.property(days, fc.array(fc.nat(), { minLength: 4, maxLength: 4 }), (all, places) => {
      const history = (texts: readonly string[]) => historyOf(attemptsOfJournal(journalOf(["", ...texts])));
      const shuffled = all
        .map((each, i) => ({ each, at: places[i]! }))
        .sort((a, b) => a.at - b.at)
        .map(({ each }) => each);
      const expected = history([all.join("\n"), ""]);
      expect(history([shuffled.join("\n"), ""])).toEqual(expected);
      expect(history(["", shuffled.join("\n")])).toEqual(expected);
      expect(history([shuffled.slice(0, 2).join("\n"), shuffled.slice(2).join("\n")])).toEqual(expected);
    }),
    { seed: 62, numRuns: FEW },
  );
});

test("what later days say changes nothing in the days before", () => {
  fc.assert(
    fc.property(fc.array(line, { maxLength: 5 }), fc.array(line, { maxLength: 5 }), (before, after) => {
      const first = ["2026-03-02", ...before].join("\n");
      const rows = (later: string) => lineRows(journalOf(["", first, later]), FILES[1]!);
      expect(rows(["2026-03-03", ...after].join("\n"))).toEqual(rows(""));
    }),
    { seed: 63, numRuns: FEW },
  );
});

test("every feature names the same piece", () => {
  fc.assert(
    fc.property(text, text, (a, b) => {
      const journal = journalOf(["", a, b]);
      for (const uri of FILES.slice(1)) {
        const { blocks } = journal.files.get(uri)!;
        for (const block of blocks) {
          const entries = new Map(journal.model(block).entries.map((entry) => [entry.place.line, entry]));
          for (const { line: at, attempt, subject } of recordsOfBlock(journal, uri, block)) {
            const entry = entries.get(at);
            expect(entry?.attempts[attempt]).toBeDefined();
            expect(subjectName(entry!.subject!, journal.names)).toBe(subject);
          }
        }
      }
    }),
    { seed: 64, numRuns: FEW },
  );
});
