import { atOnce } from "../journal/at-once.ts";
import type { DayNumber } from "../journal/calendar.ts";
import type { Journal } from "../journal/journal.ts";
import { articulationWords } from "./articulation-words.ts";
import { type Break, breaksUpTo, inOrder, type PractisedDays } from "./break.ts";
import { type Comparison, comparisonsOf } from "./comparisons.ts";
import { factsInWords } from "./facts-words.ts";
import type { HistoryIndex } from "./history-index.ts";
import { journalHistory, latestHistory, weeksOfStrand } from "./journal-history.ts";
import { factsOf, type StrandFacts } from "./strand-facts.ts";
import { playedUpTo, type Strand } from "./strands.ts";
import { TRIED_WITHIN } from "./thresholds.ts";
import type { Notation } from "./trend-words.ts";

/**
 * What is known of a strand on a day, by the history that was made last. Kept while the strand, the breaks of its
 * instrument and the day stay the same: an edit elsewhere has nothing done again.
 *
 * @param strand as the history has it, or a part of that
 */
export function factsOfStrand(journal: Journal, strand: Strand, day: DayNumber): StrandFacts {
  const { exerciseKey, strandKey, instrument } = strand.records[0]!;
  const whole = latestHistory(journal)?.strandOf({ exerciseKey, strandKey }) ?? strand;
  const breaks = breaksOf(journal, instrument, day);
  return journal.memo.from(whole, "facts", [keyOf(breaks), day], () => {
    const played = playedUpTo(whole, day);
    return factsOf(played?.records ?? [], played ? weeksOfStrand(journal, played) : [], breaks, day);
  });
}

/**
 * The day from which on a strand is looked at, by the history that was made last; undefined where all of it counts
 * (`baselineOf`).
 */
export function sinceOfStrand(journal: Journal, strand: Strand, day: DayNumber): DayNumber | undefined {
  return breaksOf(journal, strand.records[0]!.instrument, day).length === 0
    ? undefined
    : factsOfStrand(journal, strand, day).since;
}

/** The same for what is tried lately: a return that lies before all of that is passed over, and costs nothing. */
export function sinceLately(journal: Journal, strand: Strand, day: DayNumber): DayNumber | undefined {
  const last = breaksOf(journal, strand.records[0]!.instrument, day).at(-1);
  return last === undefined || last.since <= day - TRIED_WITHIN ? undefined : sinceOfStrand(journal, strand, day);
}

/** What is known of a strand beside its trend, a sentence each. */
export function factsOfStrandInWords(
  journal: Journal,
  strand: Strand,
  notation: Notation,
  day: DayNumber,
): readonly string[] {
  const articulation = articulationWords(journal, strand.records[0]!);
  const comparisons = comparisonsOfStrand(journal, strand, day);
  return factsInWords(factsOfStrand(journal, strand, day), comparisons, notation, day, articulation);
}

/** How a strand compares with other ways of playing; kept while its exercise and the day stay the same. */
function comparisonsOfStrand(journal: Journal, strand: Strand, day: DayNumber): readonly Comparison[] {
  const exercise = latestHistory(journal)?.exercises.get(strand.records[0]!.exerciseKey);
  if (!exercise) return [];
  const records = () => exercise.strands.flatMap((each) => each.records);
  const all = journal.memo.from(exercise, "comparisons", [day], () => comparisonsOf(records(), day));
  return all.filter(({ strands }) => strands.includes(strand.key));
}

/** The breaks of an instrument up to a day, by the history that was made last. */
function breaksOf(journal: Journal, instrument: string | null, day: DayNumber): readonly Break[] {
  const index = latestHistory(journal);
  return index ? breaksUpTo(daysIn(journal, index).get(instrument) ?? [], day) : [];
}

/** Finds the practised days beforehand, those of one exercise at each step. */
export function* practisedDaysInSteps(journal: Journal): Generator<void> {
  const index = journalHistory(journal);
  const days = yield* daysInSteps(journal, index);
  practisedDays(journal, index, () => days);
}

function daysIn(journal: Journal, index: HistoryIndex): PractisedDays {
  return practisedDays(journal, index, () => atOnce(daysInSteps(journal, index)));
}

function practisedDays(journal: Journal, index: HistoryIndex, make: () => PractisedDays): PractisedDays {
  return journal.memo.of(index, "practised days", make);
}

/** Each strand's days are found once while it stays the same. */
function* daysInSteps(journal: Journal, index: HistoryIndex): Generator<void, PractisedDays> {
  const days = new Map<string | null, Set<DayNumber>>();
  for (const { instrument, strands } of index.exercises.values()) {
    const own = days.get(instrument) ?? new Set();
    days.set(instrument, own);
    for (const strand of strands) for (const day of daysOfStrand(journal, strand)) own.add(day);
    yield;
  }
  return inOrder(days);
}

function daysOfStrand(journal: Journal, strand: Strand): readonly DayNumber[] {
  return journal.memo.of(strand, "practised days", () => [...new Set(strand.records.map(({ day }) => day))]);
}

/** What tells the breaks of an instrument up to a day from others, for whatever is kept by them. */
export function breaksKey(journal: Journal, instrument: string | null, day: DayNumber): string {
  return keyOf(breaksOf(journal, instrument, day));
}

function keyOf(breaks: readonly Break[]): string {
  return breaks.map(({ since, days }) => `${since} ${days}`).join(", ");
}
