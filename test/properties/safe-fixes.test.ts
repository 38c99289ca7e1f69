import fc from "fast-check";
import { expect, test } from "vitest";
import { safeFixEdits } from "../../server/features/diagnostics/code-actions.ts";
import { diagnosticsOf } from "../../server/features/diagnostics/diagnostics.ts";
import { attemptsOfJournal } from "../../server/history/attempts.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { Journal } from "../../server/journal/journal.ts";
import type { Entry } from "../../server/journal/model.ts";
import { applyChanges, createDocument, textOf } from "../../server/syntax/document/document.ts";
import { attemptText } from "../journal/print.ts";
import { CHORD_SUBJECTS, SCALE_SUBJECTS, TERMS, WHOLE_LINES } from "./lines.ts";

// Safe fixes cannot lose meaning: applied again and again they come to an end, and what the journal means stays.

const URI = "file:///journal/journal.practice";
const TODAY = parseIsoDate("2026-06-01")!;
const HEAD = 'instrument alto recorder\npiece "Ground in G minor" as Ground: G minor\npattern "zigzag": 1 3 2 4\n';

function journalOf(text: string): Journal {
  return new Journal("file:///journal", new Map([[URI, createDocument(text)]]));
}

function fixedOnce(text: string): string {
  const edits = safeFixEdits(diagnosticsOf(journalOf(text), URI, TODAY));
  const changes = [...edits].reverse().map(({ range, newText }) => ({ range, text: newText }));
  return textOf(applyChanges(createDocument(text), changes));
}

/** What all safe fixes make of a text; there must be an end to them. */
function fixed(text: string): string {
  let now = text;
  for (let round = 0; round < 8; round++) {
    const next = fixedOnce(now);
    if (next === now) return now;
    now = next;
  }
  throw new Error(`There is no end to the safe fixes of ${JSON.stringify(text)}: ${JSON.stringify(now)}`);
}

const anyLine = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...WHOLE_LINES.filter((each) => each.length < 200)) },
  {
    weight: 5,
    arbitrary: fc
      .tuple(
        fc.constantFrom(...SCALE_SUBJECTS, ...CHORD_SUBJECTS),
        fc.array(fc.tuple(fc.constantFrom(", ", ", ", " ", ": ", " > "), fc.constantFrom(...TERMS)), { maxLength: 4 }),
      )
      .map(([subject, terms]) => subject + terms.map((each) => each.join("")).join("")),
  },
);
const dayLine = fc.constantFrom(
  "2026-03-02",
  "02.03.2026",
  "2026/3/4",
  "3/4/2026",
  "2026-02-30",
  "2026-3-5 Mon",
  "14.3.2026",
);
const text = fc
  .array(fc.tuple(dayLine, fc.array(anyLine, { maxLength: 6 })), { minLength: 1, maxLength: 3 })
  .map((days) => HEAD + days.map(([day, lines]) => [day, ...lines].join("\n")).join("\n"));

/** What no fix may change: every entry's attempts, minutes and terms that stand; its subject and day only get found. */
function kept(entry: Entry): string {
  const { attempts, minutes, where, focus, sore, instrument, done } = entry;
  return JSON.stringify([attempts.map(attemptText), minutes, where, focus, sore, instrument, done]);
}

test("safe fixes come to an end, after which none is left", () => {
  fc.assert(
    fc.property(text, (before) => {
      const after = fixed(before);
      const left = diagnosticsOf(journalOf(after), URI, TODAY).filter(({ fixes }) => fixes.some(({ safe }) => safe));
      expect(left).toEqual([]);
    }),
    { seed: 31 },
  );
});

test("safe fixes keep the entries: their attempts, their terms, and every subject and day that stood", () => {
  fc.assert(
    fc.property(text, (before) => {
      const [a, b] = [before, fixed(before)].map((each) => {
        const journal = journalOf(each);
        return journal.files.get(URI)!.blocks.map((block) => journal.model(block));
      }) as [ReturnType<Journal["model"]>[], ReturnType<Journal["model"]>[]];
      expect(b.map(({ entries }) => entries.map(kept))).toEqual(a.map(({ entries }) => entries.map(kept)));
      for (const [i, { entries, day }] of a.entries()) {
        if (day?.date !== undefined) expect(b[i]!.day?.date).toBe(day.date);
        for (const [k, { subject, pattern }] of entries.entries()) {
          // titles are learnt by date: below one that is mended, a title may be known by fewer words
          const isLearnt = day?.date === undefined && subject?.type === "title" && !subject.declared;
          if (isLearnt) expect(b[i]!.entries[k]!.subject?.type).toBe("title");
          else if (subject) expect(b[i]!.entries[k]!.subject).toEqual(subject);
          if (pattern) expect(b[i]!.entries[k]!.pattern).toEqual(pattern);
        }
      }
    }),
    { seed: 32 },
  );
});

test("safe fixes lose no attempt of the history", () => {
  fc.assert(
    fc.property(text, (before) => {
      const count = (each: string): number => attemptsOfJournal(journalOf(each)).length;
      expect(count(fixed(before))).toBeGreaterThanOrEqual(count(before));
    }),
    { seed: 33 },
  );
});

/** What all safe fixes make of lines below a day. */
function check(lines: string, expected: string): void {
  expect(fixed(`2026-03-02\n${lines}`).slice("2026-03-02\n".length)).toBe(expected);
}

test("what they do", () => {
  check("D minor, clean at 60", "D minor, at 60 clean");
  check("D minor, clean 4 of 5 at 60, 66 slips", "D minor, at 60 clean 4 of 5, 66 slips");
  check("D minor, clean at 60 5x", "D minor, at 60 clean, 5x");
  check("D minor, clean at 60 5 in a row", "D minor, at 60 clean 5 in a row");
  check("D minor, clean, at 60 wobble", "D minor, clean, at 60 wobble"); // it would be no outcome beside such words
  expect(fixed("02.03.2026 Mon\nD minor, clean at 60")).toBe("2026-03-02 Mon\nD minor, at 60 clean");
});

test("what they leave to the player: a guess is not safe", () => {
  for (const line of ["d, slow", "H minor, slow", "D minor, thrdis", "D minor, 60", "D pentatonic"]) check(line, line);
  for (const day of ["2026-02-30", "3/4/2026", "2026-03-02 Tue"]) expect(fixed(day)).toBe(day);
});
