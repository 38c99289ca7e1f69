import fc from "fast-check";
import { expect, test } from "vitest";
import { attemptsOfJournal } from "../../server/history/attempts.ts";
import { historyOf } from "../../server/history/history.ts";
import { factsOfStrand, factsOfStrandInWords } from "../../server/history/journal-facts.ts";
import { journalHistory } from "../../server/history/journal-history.ts";
import { isoDate, parseIsoDate } from "../../server/journal/calendar.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { FEW } from "../support/random-runs.ts";
import { afresh, FILES, journalOf, taken } from "./edits.ts";

const MONDAY = parseIsoDate("2026-01-05")!;
const WEEKS = 30;
const TODAY = MONDAY + 7 * WEEKS;

/** A week: two ways of one exercise, and another one, each at a tempo or not at all. */
interface Practised {
  readonly slurred: number;
  readonly tongued: number;
  readonly other: number;
}

const at = (...tempos: number[]) => fc.constantFrom(0, ...tempos);
const practised: fc.Arbitrary<Practised> = fc.oneof(
  {
    weight: 3,
    arbitrary: fc.record({ slurred: at(76, 80, 84), tongued: at(69, 72, 76), other: at(60, 72, 92) }),
  },
  { weight: 1, arbitrary: fc.constant({ slurred: 0, tongued: 0, other: 0 }) },
);
/** Half a year, where breaks come often enough. */
const course = fc.array(fc.tuple(practised, fc.constantFrom(1, 1, 1, 4)), { minLength: 16, maxLength: WEEKS });

function textOf(week: number, { slurred, tongued, other }: Practised): string {
  const said = (what: string, tempo: number) =>
    tempo === 0 ? "" : `  ${what}, 8ths at ${tempo} clean 2 of 2, ${tempo + 4} slips\n`;
  const lines = said("D minor, slurred", slurred) + said("D minor, tongued", tongued) + said("G major", other);
  return lines === "" ? "" : `${isoDate(MONDAY + 7 * week)}\n${lines}`;
}

/** The days of a course; weeks off follow some of them. */
function daysOf(all: readonly (readonly [Practised, number])[]): string[] {
  let week = 0;
  return all.flatMap(([each, weeks]) => {
    const text = week < WEEKS ? textOf(week, each) : "";
    week += weeks;
    return text === "" ? [] : [text];
  });
}

/** What is known of each strand today, by its key, as it is kept from edit to edit. */
function known(journal: Journal): unknown {
  const strands = [...journalHistory(journal).exercises.values()].flatMap((exercise) => exercise.strands);
  return Object.fromEntries(
    strands.map((strand) => [
      strand.key,
      [factsOfStrand(journal, strand, TODAY), factsOfStrandInWords(journal, strand, {}, TODAY)],
    ]),
  );
}

test("after any edits what is known of a strand is what a journal built afresh says", () => {
  const edit = fc.tuple(fc.nat(WEEKS), practised);
  fc.assert(
    fc.property(course, fc.array(edit, { minLength: 1, maxLength: 6 }), (all, edits) => {
      let journal = journalOf(["instrument alto recorder", daysOf(all).join("\n")]);
      known(journal);
      for (const [week, each] of edits) {
        const change = { from: 0, to: 0, a: 0, b: 0, text: `${textOf(week, each)}\n` };
        journal = taken(journal, { file: FILES[1]!, change, kind: "edit", asked: true, today: TODAY });
        expect(known(journal)).toEqual(known(afresh(journal)));
      }
    }),
    { seed: 23, numRuns: FEW },
  );
});

test("it is the same whatever order files are read and days are written in, and in whichever file a day is", () => {
  fc.assert(
    fc.property(
      course,
      fc.array(fc.nat(), { minLength: WEEKS, maxLength: WEEKS }),
      fc.array(fc.boolean(), { minLength: WEEKS, maxLength: WEEKS }),
      (all, places, files) => {
        const days = daysOf(all);
        const shuffled = days
          .map((day, i) => ({ day, at: places[i]! }))
          .sort((a, b) => a.at - b.at)
          .map(({ day }) => day);
        const inTwo = [true, false].map((first) => shuffled.filter((_, i) => files[i] === first).join("\n"));
        const history = (texts: readonly string[]) =>
          historyOf(attemptsOfJournal(journalOf(["instrument alto recorder", ...texts])), { today: TODAY });
        const expected = history([days.join("\n"), ""]);
        expect(history(inTwo)).toEqual(expected);
        expect(history([...inTwo].reverse())).toEqual(expected);
      },
    ),
    { seed: 24, numRuns: FEW },
  );
});

test("such courses have something to say", () => {
  const told = { returned: 0, since: 0, settled: 0, shares: 0, compared: 0 };
  for (const all of fc.sample(course, { seed: 25, numRuns: FEW }))
    for (const exercise of historyOf(attemptsOfJournal(journalOf(["", daysOf(all).join("\n")])), { today: TODAY })
      .exercises)
      for (const strand of exercise.strands) {
        if (strand.return) told.returned++;
        if (strand.return?.fresh) told.since++;
        if (strand.settled) told.settled++;
        if (strand.shares!.length > 0) told.shares++;
        if (strand.comparisons!.length > 0) told.compared++;
      }
  for (const [what, count] of Object.entries(told)) expect(count, what).toBeGreaterThan(0);
});
