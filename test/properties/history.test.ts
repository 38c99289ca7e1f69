import fc from "fast-check";
import { expect, test } from "vitest";
import { attemptsOfJournal } from "../../server/history/attempts.ts";
import { historyOf } from "../../server/history/history.ts";
import { HistoryIndex } from "../../server/history/history-index.ts";
import { factsOfStrand, factsOfStrandInWords } from "../../server/history/journal-facts.ts";
import { journalHistory } from "../../server/history/journal-history.ts";
import type { AttemptRecord } from "../../server/history/record.ts";
import { atOnce } from "../../server/journal/at-once.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { afresh, head, journalOf, lines, practice, type Step, step, TODAY, taken } from "./edits.ts";

const text = fc.oneof(
  { weight: 3, arbitrary: practice.map((days) => days.join("\n")) },
  { weight: 1, arbitrary: lines },
);
const practised: fc.Arbitrary<Step> = fc
  .tuple(step, practice)
  .map(([each, days]) => ({ ...each, change: { ...each.change, text: `${days[0] ?? "x"}\n` } }));

/** What an index says, as plain data: a record is the same wherever its day stands. */
function shown(index: HistoryIndex): unknown {
  return [...index.exercises.values()]
    .sort((a, b) => (a.key < b.key ? -1 : 1))
    .map(({ key, subject, lastDay, strands }) => ({
      key,
      subject,
      lastDay,
      strands: strands.map((strand) => ({ ...strand, records: strand.records.map(figures) })),
    }));
}

function figures({ day, order, strandKey, rate, reached, count, got, minutes, about, line }: AttemptRecord): unknown {
  return { day, order, strandKey, rate, reached, count, got, minutes, about, line };
}

/** What is known of each strand, by its key, as it is kept from edit to edit. */
function known(journal: Journal): unknown {
  const strands = [...journalHistory(journal).exercises.values()].flatMap((exercise) => exercise.strands);
  return Object.fromEntries(
    strands.map((strand) => [
      strand.key,
      [factsOfStrand(journal, strand, TODAY), factsOfStrandInWords(journal, strand, {}, TODAY)],
    ]),
  );
}

function check(journal: Journal): void {
  const other = afresh(journal);
  const fresh = atOnce(HistoryIndex.inSteps(attemptsOfJournal(other)));
  expect(shown(journalHistory(journal))).toEqual(shown(fresh));
  expect(known(journal)).toEqual(known(other));
}

test("after any series of edits the index is that of a journal built afresh", () => {
  fc.assert(
    fc.property(
      head,
      text,
      text,
      fc.array(fc.oneof(step, practised), { minLength: 1, maxLength: 10 }),
      (marker, a, b, steps) => {
        let journal = journalOf([marker, a, b]);
        for (const each of steps) {
          journal = taken(journal, each);
          if (each.asked) check(journal);
        }
        check(journal);
      },
    ),
    { seed: 31 },
  );
});

test("an edit leaves the exercises that it does not touch the same objects", () => {
  const journal = journalOf([
    "",
    "2026-03-02\n  D minor, at 60 clean\n  G major, at 60 clean\n",
    "2026-03-03\n  D minor, at 63\n",
  ]);
  const before = journalHistory(journal);
  const edit = { from: 1, to: 0, a: 16, b: 18, text: "66" };
  const after = journalHistory(
    taken(journal, { file: "file:///journal/b.practice", change: edit, kind: "edit", asked: false, today: 0 }),
  );
  const same = [...before.exercises].map(([key, exercise]) => [
    exercise.subject,
    after.exercises.get(key) === exercise,
  ]);
  expect(same).toEqual([
    ["D natural minor", false],
    ["G major", true],
  ]);
});

const HEAD = 'instrument alto recorder\npiece "Ground" as Ground: G minor';

test("the history is the same in whatever order files are read and days are written, and in whichever file a day stands", () => {
  fc.assert(
    fc.property(
      practice,
      fc.array(fc.nat(), { minLength: 5, maxLength: 5 }),
      fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }),
      (days, places, files) => {
        const shuffled = days
          .map((day, i) => ({ day, at: places[i]! }))
          .sort((a, b) => a.at - b.at)
          .map(({ day }) => day);
        const inTwo = [true, false].map((first) => shuffled.filter((_, i) => files[i] === first).join("\n"));
        const history = (texts: readonly string[]) =>
          historyOf(attemptsOfJournal(journalOf([HEAD, ...texts])), { today: TODAY });
        const expected = history([days.join("\n"), ""]);
        expect(history([shuffled.join("\n"), ""])).toEqual(expected);
        expect(history(inTwo)).toEqual(expected);
        expect(history([...inTwo].reverse())).toEqual(expected);
      },
    ),
    { seed: 32 },
  );
});
