import { usualInstrument } from "../../features/explain/usual-instrument.ts";
import { nameOf } from "../../features/preview/exercises.ts";
import { wayInWords } from "../../features/preview/way.ts";
import { articulationWords } from "../../history/articulation-words.ts";
import { attemptsOfJournal } from "../../history/attempts.ts";
import { practisedDays } from "../../history/break.ts";
import { comparisonsOf } from "../../history/comparisons.ts";
import { type ExerciseRow, exerciseRow } from "../../history/exercise-row.ts";
import { factsInWords } from "../../history/facts-words.ts";
import type { AttemptRecord } from "../../history/record.ts";
import { type DayAsked, factsToday, type StrandFacts } from "../../history/strand-facts.ts";
import { exerciseOf, exercisesOf, grouped, type Strand } from "../../history/strands.ts";
import { LATELY } from "../../history/trend.ts";
import { weeksIn, weeksUpTo } from "../../history/week-span.ts";
import { weeksOf } from "../../history/weeks.ts";
import { mondayOf, weekIndex } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { DaysAsked } from "./days-asked.ts";

/** An exercise that was played at a tempo in the days of a report, in one way. */
export interface PlayedExercise {
  /** `D melodic minor, thirds`. */
  readonly name: string;
  /** `slurred, one octave, 8ths`. */
  readonly way: string;
  /** Of the half year up to the last day; the trend is fitted on its weeks. */
  readonly row: ExerciseRow;
  /** The fastest rate reached in the days of the report; null where none was. */
  readonly best: number | null;
  /** What is known beside the trend, a sentence each. */
  readonly facts: readonly string[];
}

/** Those that move, those that have settled, those with no clear change, and those of which it is too early to say. */
export interface PlayedExercises {
  readonly moved: readonly PlayedExercise[];
  readonly settled: readonly PlayedExercise[];
  readonly unchanged: readonly PlayedExercise[];
  readonly early: readonly PlayedExercise[];
}

/**
 * What was played at a tempo in some days, by what is known of it on the last of them; what came later is not there
 * yet. Pieces and studies are told by themselves.
 */
export function exercisesPlayed(journal: Journal, days: DaysAsked): PlayedExercises {
  const all = attemptsOfJournal(journal).filter(({ day }) => day <= days.until);
  const practised = practisedDays(all);
  const attempts = grouped(all, "exerciseKey");
  const sorted: Record<keyof PlayedExercises, PlayedExercise[]> = { moved: [], settled: [], unchanged: [], early: [] };
  for (const { key, strands } of exercisesOf(all, days))
    for (const strand of strands) {
      if (strand.title || !strand.records.some(({ day, rate }) => day >= days.since && rate !== null)) continue;
      const facts = factsToday(strand, practised, asked(days));
      const played = playedExercise(journal, strand, { days, facts, beside: attempts.get(key)! });
      sorted[listOf(played, facts)].push(played);
    }
  return sorted;
}

function listOf({ row: { trend } }: PlayedExercise, { settled }: StrandFacts): keyof PlayedExercises {
  if (settled) return "settled";
  const lists = { rising: "moved", falling: "moved", level: "unchanged", "too early": "early" } as const;
  return lists[trend.verdict];
}

/** As it was the day after the last one: what was played on that counts in all that is known. */
function asked({ until }: DaysAsked): Required<DayAsked> {
  return { today: until + 1, until };
}

interface Known {
  readonly days: DaysAsked;
  readonly facts: StrandFacts;
  /** The attempts at the exercise in all ways of playing. */
  readonly beside: readonly AttemptRecord[];
}

function playedExercise(journal: Journal, strand: Strand, { days, facts, beside }: Known): PlayedExercise {
  const span = weeksUpTo(weekIndex(days.until), LATELY);
  // Each way of playing is told by itself, under its own key.
  const exercise = { ...exerciseOf([strand]), key: strand.key };
  const weeks = weeksIn(weeksOf(strand.records, mondayOf(span.first)), span);
  const row = exerciseRow(exercise, weeks, facts.since);
  const reached = strand.records.flatMap(({ day, rate, reached }) =>
    day >= days.since && reached === true && rate !== null ? [rate] : [],
  );
  const { today } = asked(days);
  // One of each exercise is told, with the slower way.
  const compared = comparisonsOf(beside, today)
    .slice(0, 1)
    .filter(({ strands: [slower] }) => slower === strand.key);
  return {
    name: nameOf(journal, exercise, usualInstrument(journal)),
    way: wayInWords(journal, strand),
    row,
    best: reached.length === 0 ? null : Math.max(...reached),
    facts: factsInWords(facts, compared, row.notation, today, articulationWords(journal, row.latest)),
  };
}
