import { attemptsOfJournal } from "../history/attempts.ts";
import type { AttemptRecord } from "../history/record.ts";
import { type DayNumber, isoDate } from "../journal/calendar.ts";
import type { Journal } from "../journal/journal.ts";
import { dayAsked } from "./arguments.ts";
import type { Io } from "./io.ts";
import type { NamedFile, ReadJournals } from "./journals.ts";
import { nearest, offer } from "./nearest.ts";
import { printable } from "./printable.ts";

/** Which attempts to tell of. */
export interface AttemptsAsked {
  readonly since?: DayNumber;
  readonly subject?: string;
}

export type ReadAsked =
  | { readonly ok: true; readonly asked: AttemptsAsked }
  | { readonly ok: false; readonly reason: string };

/** Reads `--since` and `--subject`. */
export function attemptsAsked(values: ReadonlyMap<string, string>): ReadAsked {
  const since = dayAsked(values, "since");
  return since.ok ? { ok: true, asked: { since: since.day, subject: values.get("subject") } } : since;
}

/** A journal with those of its files that were named; nothing of one journal is ever compared with another's. */
export interface NamedJournal {
  readonly root: string;
  readonly journal: Journal;
  readonly files: readonly NamedFile[];
}

export function namedJournals({ files, journals }: ReadJournals): NamedJournal[] {
  return [...new Set(files.map(({ root }) => root))].map((root) => ({
    root,
    journal: journals.get(root)!,
    files: files.filter((file) => file.root === root),
  }));
}

/** The attempts in the files named. */
export function namedAttempts({ journal, files }: NamedJournal): AttemptRecord[] {
  const named = new Set(files.map(({ uri }) => uri));
  return attemptsOfJournal(journal).filter(({ uri }) => named.has(uri));
}

/** Why there is nothing to tell. */
export function nothingFound(read: ReadJournals, { since, subject }: AttemptsAsked): string {
  if (read.files.length === 0) return "There is no .practice file here.";
  const practised = new Set(
    namedJournals(read)
      .flatMap(namedAttempts)
      .map((attempt) => attempt.subject),
  );
  if (practised.size === 0)
    return "No exercise was practised yet: a line such as “D minor, 8ths at 60 clean” begins its history.";
  if (subject === undefined) return "No exercise was practised since that day.";
  const span = since === undefined ? "" : " since that day";
  const others = [...practised].filter((each) => since === undefined || each !== subject);
  return `“${printable(subject)}” was not practised${span}.${offer(nearest(subject, others))}`;
}

/** Says on standard error which days lie ahead and are told of all the same: most often a digit is wrong. */
export function warnOfDaysAhead(days: Iterable<DayNumber>, { stderr, today }: Pick<Io, "stderr" | "today">): void {
  const ahead = [...new Set(days)].filter((day) => day > today).sort((a, b) => a - b);
  const [first] = ahead;
  if (first === undefined) return;
  const which =
    ahead.length === 1
      ? `${isoDate(first)} lies ahead of today, ${isoDate(today)}, and counts`
      : `${ahead.length} days from ${isoDate(first)} to ${isoDate(ahead.at(-1)!)} lie ahead of today, ${isoDate(today)}, and count`;
  stderr.write(`daystave: ${which} as practised. Where that is not meant, daystave check says what to do.\n`);
}
