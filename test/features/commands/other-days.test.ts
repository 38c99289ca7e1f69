import fc from "fast-check";
import { expect, test } from "vitest";
import { fingerChange } from "../../../server/features/commands/finger-change.ts";
import { newDay } from "../../../server/features/commands/new-day.ts";
import { repeatEntry } from "../../../server/features/commands/repeat-entry.ts";
import { writeNotes } from "../../../server/features/commands/write-notes.ts";
import { writePlan } from "../../../server/features/commands/write-plan.ts";
import { dayOfBlock } from "../../../server/journal/day-of-block.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { USUAL_PLAN } from "../../../server/plan/plan.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import { times } from "../../support/random-runs.ts";
import { edited, journalText, URI } from "../journal-text.ts";
import { type Command, TODAY } from "../marked-text.ts";

// A diary is never changed by the diary: whatever a command is asked for, and wherever, days that are over stay as they
// were written, and what stands in today stays there.

const COMMANDS: Readonly<Record<string, Command>> = {
  "new day": (journal, uri, _, { today }) => newDay(journal, uri, { today, phases: false }),
  "new day with phases": (journal, uri, _, { today }) => newDay(journal, uri, { today, phases: true }),
  faster: (journal, uri, at, { today }) => repeatEntry(journal, uri, at, { today, step: "faster" }),
  slower: (journal, uri, at, { today }) => repeatEntry(journal, uri, at, { today, step: "slower" }),
  "write out the notes": writeNotes,
  "finger change": fingerChange,
  "write a plan": (journal, uri, at, { today }) =>
    writePlan(journal, uri, at, { today, minutes: 20, settings: USUAL_PLAN, reasons: true }),
};

const OTHER = "file:///journal/march.practice";

/** The lines that hold anything, in their order, of the head, and of the days that are over or cannot be. */
function linesOfThePast(text: string): readonly string[] {
  return createDocument(text)
    .blocks.filter((block) => (dayOfBlock(block) ?? 0) < TODAY)
    .flatMap(({ lines }) => lines.map((line) => line.trimEnd()).filter((line) => line !== ""));
}

const withToday = fc
  .tuple(
    journalText,
    fc.constantFrom("", "2026-03-09 Mon\n", "2026-03-09\nwarm-up\n  C major, at 60 clean\n"),
    journalText,
  )
  .map(([before, today, after]) => `${before}\n${today}${after}`);

test("no command writes into a day that is over", () => {
  let wrote = 0;
  fc.assert(
    fc.property(
      withToday,
      journalText,
      fc.nat({ max: 40 }),
      fc.constantFrom(...Object.values(COMMANDS)),
      (text, other, line, command) => {
        const texts = new Map([
          [URI, `instrument alto recorder\n${text}`],
          [OTHER, other],
        ]);
        const journal = new Journal(
          "file:///journal",
          new Map([...texts].map(([uri, each]) => [uri, createDocument(each)])),
        );
        const answer = command(journal, URI, { line, character: 0 }, { today: TODAY });
        if (!answer.ok || answer.edits.length === 0) return;
        wrote++;
        const before = texts.get(answer.uri)!;
        expect(linesOfThePast(edited(before, answer.edits))).toEqual(linesOfThePast(before));
      },
    ),
    { seed: 20260309, numRuns: times(160) },
  );
  expect(wrote).toBeGreaterThan(times(30));
});
