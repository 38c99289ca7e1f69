import { attemptsOfJournal } from "../../history/attempts.ts";
import { practisedDays } from "../../history/break.ts";
import { type HistoryChoice, type HistoryOfExercise, historyOf } from "../../history/history.ts";
import { type Choice, exercisesOf } from "../../history/strands.ts";
import { weekCount, weeksFrom } from "../../history/week-span.ts";
import { isoDate } from "../../journal/calendar.ts";
import type { Skipped } from "../paths.ts";
import type { JournalAttempts } from "./journal-attempts.ts";

/** What `history --json` prints: the exercises, and what could not be read. */
export interface HistoryReport {
  /** Where there are several journals, each says whose it is. */
  readonly exercises: readonly (HistoryOfExercise & { readonly journal?: string })[];
  readonly skipped: readonly Skipped[];
}

export function historyReport(
  journals: readonly JournalAttempts[],
  choice: HistoryChoice,
  skipped: readonly Skipped[],
): HistoryReport {
  const several = journals.length > 1;
  const exercises = journals.flatMap(({ journal, source, records }) => {
    // Whatever else was practised, in whichever file, is no break.
    const practised = practisedDays(attemptsOfJournal(source));
    const own = historyOf(records, { ...choice, practised }).exercises;
    return own.map((exercise) => (several ? { ...exercise, journal } : exercise));
  });
  return { exercises, skipped };
}

/** So many weeks are at most 200 MB of JSON; a text of much over 500 cannot be made. */
const MOST_WEEKS = 1_000_000;

/**
 * Why blank weeks are not listed, where they are too many: one mistyped year may add tens of thousands to each strand.
 */
export function tooManyWeeks(journals: readonly JournalAttempts[], choice: Choice): string | undefined {
  const weeks = journals.reduce((sum, each) => sum + weeksSpanned(each, choice), 0);
  if (weeks <= MOST_WEEKS) return undefined;
  const days = journals.flatMap(({ records }) => records.map(({ day }) => day)).sort((a, b) => a - b);
  return `“--blank-weeks” would list ${weeks} weeks, more than fit into one document: the attempts go from ${isoDate(days[0]!)} to ${isoDate(days.at(-1)!)}. Check the years, or ask for fewer with --since or --subject.`;
}

/** From the first to the last of each strand, which is at most what would be listed. */
function weeksSpanned({ records }: JournalAttempts, choice: Choice): number {
  const { since = Number.NEGATIVE_INFINITY } = choice;
  return exercisesOf(records, choice)
    .flatMap(({ strands }) => strands)
    .reduce((sum, strand) => {
      const [first, last] = [strand.records[0]!.day, strand.records.at(-1)!.day];
      return sum + weekCount(weeksFrom(Math.max(first, since), last));
    }, 0);
}
