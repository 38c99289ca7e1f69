import type { Columns, MeaningOf } from "../syntax/words/meaning.ts";
import type { Attempt, Entry } from "./model.ts";
import { subjectKey } from "./subject-text.ts";

/** What an entry says of one of its subjects, as an entry of its own. */
export interface EntryOfOne {
  readonly entry: Entry;
  /** Which of the line's attempts its own are. */
  readonly attempts: readonly number[];
}

/**
 * An entry by its subjects: `C, G and D major at 60` is practice of each, at all that the line says of how it went, and
 * each takes an equal share of its minutes. Where every one has tempos of its own behind it (`C108 F108`), these are
 * attempts at that one alone. The same subject twice is one. A set that has a name (`all major scales`, `circle of
 * fifths`) is practised as a whole and stays one: two dozen exercises of a single line would tell less, and a player
 * who goes round the circle looks for that in the history. So is every other entry one.
 */
export function eachSubject(entry: Entry): readonly EntryOfOne[] {
  const { subject, attempts, minutes } = entry;
  if (!hasSeveral(subject)) return [{ entry, attempts: attempts.map((_, i) => i) }];
  const owners = tempoOwners(entry, subject);
  const groups = new Map<string, number[]>();
  for (const [i, one] of subject.subjects.entries()) {
    const key = subjectKey(one);
    groups.set(key, [...(groups.get(key) ?? []), i]);
  }
  return [...groups.values()].map((same) => {
    const own = attempts.flatMap((_, i) => (!owners || same.includes(owners[i]!) ? [i] : []));
    const share = minutes === undefined ? undefined : minutes / groups.size;
    const subjectOfIt = subject.subjects[same[0]!]!;
    return {
      entry: { ...entry, subject: subjectOfIt, attempts: own.map((i) => attempts[i]!), minutes: share },
      attempts: own,
    };
  });
}

/** Whether what is practised is several things that are each counted. */
export function hasSeveral(subject: Entry["subject"]): subject is MeaningOf<"several"> {
  return subject?.type === "several" && subject.called === undefined;
}

/** For each attempt the subject that its tempo stands behind, where each subject has one; else they are everyone's. */
function tempoOwners(entry: Entry, { at, subjects }: MeaningOf<"several">): readonly number[] | undefined {
  const start = columnOfSubject(entry);
  if (!at || start === undefined) return undefined;
  const ownerOf = ({ tempo, place }: Attempt) =>
    tempo ? at.findLastIndex(({ end }) => start + end <= place.start) : -1;
  const owners = entry.attempts.map(ownerOf);
  return !owners.includes(-1) && subjects.every((_, i) => owners.includes(i)) ? owners : undefined;
}

/** Where the subject begins; undefined where it stands on the line above, and this one says `same`. */
function columnOfSubject({ source }: Entry): number | undefined {
  return source.same ? undefined : source.subject?.start;
}

/** The entry for that one of its subjects that a column touches, and where that stands; else for the first. */
export function entryOfSubjectAt(entry: Entry, column: number): { readonly entry: Entry; readonly columns?: Columns } {
  const { subject } = entry;
  const start = columnOfSubject(entry);
  const parts = eachSubject(entry);
  if (!hasSeveral(subject) || !subject.at || start === undefined) return parts[0]!;
  const touched = subject.at.findLastIndex((at) => start + at.start <= column && column <= start + at.end);
  if (touched < 0) return parts[0]!;
  const at = subject.at[touched]!;
  return {
    entry: partOf(parts, subjectKey(subject.subjects[touched]!)),
    columns: { start: start + at.start, end: start + at.end },
  };
}

/** The entry for that one of its subjects that the history calls so (`subjectKey`), or else for the first. */
export function entryOfSubject(entry: Entry, key: string): Entry {
  return hasSeveral(entry.subject) ? partOf(eachSubject(entry), key) : entry;
}

function partOf(parts: readonly EntryOfOne[], key: string): Entry {
  return (parts.find((part) => subjectKey(part.entry.subject!) === key) ?? parts[0]!).entry;
}
