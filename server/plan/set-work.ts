import { DoneEntries, type DoneEntry } from "../history/aim-met.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { datedBlocks } from "../journal/dated-blocks.ts";
import type { DeclaredSet } from "../journal/declared-lines.ts";
import type { Journal } from "../journal/journal.ts";
import { readEntry } from "../journal/read-entry.ts";

/** Work is for a week unless a day is named (format.md, Declarations). */
const USUAL_DAYS = 7;

/** What a teacher set, and when it was done. */
export interface SetWork {
  readonly work: DeclaredSet;
  /** The days on which an entry had all that was set, the oldest first. */
  readonly done: readonly DayNumber[];
}

/** The last day that work is set for. In a head it is set as long as it is there. */
export function dueOf({ declared: { by }, day }: DeclaredSet, today: DayNumber): DayNumber {
  return by ?? (day === undefined ? today : day + USUAL_DAYS);
}

/** The first day that work is set for. */
function fromOf(work: DeclaredSet, today: DayNumber): DayNumber {
  return work.day ?? dueOf(work, today) - USUAL_DAYS + 1;
}

/** Whether work is set on a day: since the last lesson, on `since`, or for a day that has not passed. */
export function isSetOn(today: DayNumber, work: DeclaredSet, since: DayNumber): boolean {
  const { day, declared } = work;
  if (day !== undefined && day > today) return false;
  if (day !== undefined && declared.by === undefined) return day >= since;
  return dueOf(work, today) >= today || (day !== undefined && day >= since);
}

/** Up to when something counts as played for a lesson: the next one, or today. */
export interface Until {
  readonly until: DayNumber;
  readonly today: DayNumber;
}

/** When each piece of work was done, by the entries of its own journal. */
export function setWorkDone(journal: Journal, works: readonly DeclaredSet[], until: Until): readonly SetWork[] {
  if (works.length === 0) return [];
  const entries = new DoneEntries(entriesWithin(journal, works, until));
  return works.map((work) => ({ work, done: daysDone(journal, work, entries, until) }));
}

/** The entries of the days that some work is set for. What is played in a lesson is no practice. */
function* entriesWithin(
  journal: Journal,
  works: readonly DeclaredSet[],
  { until, today }: Until,
): Generator<DoneEntry> {
  const first = Math.min(...works.map((work) => fromOf(work, today)));
  for (const { uri, block, day } of datedBlocks(journal, first, Math.min(until, today)))
    for (const entry of journal.model(block).entries)
      if (entry.phase !== "lesson") yield { entry, day, conventions: journal.conventions(uri) };
}

function daysDone(
  journal: Journal,
  work: DeclaredSet,
  entries: DoneEntries,
  { until, today }: Until,
): readonly DayNumber[] {
  const { words, asTitle, entry = asTitle, by } = work.declared;
  const [from, due] = [fromOf(work, today), Math.min(by ?? until, until)];
  const days = new Set([
    ...(words === undefined ? [] : entries.daysAnsweringWords(words, from, due)),
    ...(entry ? entries.daysAnswering(readEntry(entry, 0, journal.vocabulary), from, due) : []),
  ]);
  return [...days].sort((a, b) => a - b);
}
