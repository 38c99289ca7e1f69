import { relative, sep } from "node:path";
import { attemptsOfJournal } from "../history/attempts.ts";
import type { AttemptRecord } from "../history/record.ts";
import { type DayNumber, isoDate } from "../journal/calendar.ts";
import type { Journal } from "../journal/journal.ts";
import { orderOfNames } from "../journal/journal-name.ts";
import { dayAsked } from "./arguments.ts";
import type { Io } from "./io.ts";
import type { NamedFile, ReadJournals } from "./journals.ts";
import { offer } from "./nearest.ts";
import { printable } from "./printable.ts";
import { isAttemptAt, nearestSubject, subjectAsked } from "./subject-asked.ts";

/** Which attempts to tell of. */
export interface AttemptsAsked {
  readonly since?: DayNumber;
  readonly until?: DayNumber;
  readonly subject?: string;
}

export type ReadAsked =
  | { readonly ok: true; readonly asked: AttemptsAsked }
  | { readonly ok: false; readonly reason: string };

/** Reads `--since`, `--until` and `--subject`. */
export function attemptsAsked(values: ReadonlyMap<string, string>): ReadAsked {
  const [since, until] = [dayAsked(values, "since"), dayAsked(values, "until")];
  if (!since.ok) return since;
  if (!until.ok) return until;
  if (since.day !== undefined && until.day !== undefined && until.day < since.day)
    return {
      ok: false,
      reason: `“--until ${isoDate(until.day)}” is before “--since ${isoDate(since.day)}”: put the earlier day after --since.`,
    };
  return { ok: true, asked: { since: since.day, until: until.day, subject: values.get("subject") } };
}

/** Whether a day is one of those asked for. */
export function isDayAsked(day: DayNumber, { since, until }: Pick<AttemptsAsked, "since" | "until">): boolean {
  return (since === undefined || day >= since) && (until === undefined || day <= until);
}

/** A journal with those of its files that were named; nothing of one journal is ever compared with another's. */
export interface NamedJournal {
  readonly root: string;
  /** Who plays, as declared. */
  readonly player?: string;
  readonly journal: Journal;
  readonly files: readonly NamedFile[];
}

/** The journals of the files named, by who plays, or else by their folders, as people sort: 2 before 10. */
export function namedJournals({ files, journals }: ReadJournals): NamedJournal[] {
  const named = [...new Set(files.map(({ root }) => root))].map((root) => {
    const journal = journals.get(root)!;
    const there = files.filter((file) => file.root === root);
    return { root, journal, files: there, player: journal.conventions(there[0]!.uri).player };
  });
  const compare = orderOfNames();
  const nameOf = ({ player, root }: NamedJournal) => player ?? root.slice(root.lastIndexOf(sep) + 1);
  return named.sort((a, b) => compare(nameOf(a), nameOf(b)) || compare(a.root, b.root));
}

/** A journal's folder, as seen from the current one (absolute); a lone file's own name, and `-` for standard input. */
export function pathOf({ root, files }: Pick<NamedJournal, "root" | "files">, cwd: string): string {
  if (files[0]?.place === undefined) return files[0]?.path ?? root;
  const path = relative(cwd, root);
  if (path === "") return ".";
  return path.startsWith("..") ? root : path;
}

/** What a journal is headed with among several: who plays, with its folder where another has the same name. */
export function headingOf(
  { player, journal }: { readonly player?: string; readonly journal: string },
  among: readonly { readonly player?: string }[],
): string {
  if (player === undefined) return journal;
  return among.filter((each) => each.player === player).length > 1 ? `${player} (${journal})` : player;
}

/** The attempts in the files named. */
export function namedAttempts({ journal, files }: NamedJournal): AttemptRecord[] {
  const named = new Set(files.map(({ uri }) => uri));
  return attemptsOfJournal(journal).filter(({ uri }) => named.has(uri));
}

/**
 * Why a subject that is asked for is an error: other things were practised in the files named, and it was not. Nothing
 * where it was, or where nothing was.
 */
export function unknownSubject(read: ReadJournals, { subject }: AttemptsAsked): string | undefined {
  if (subject === undefined) return undefined;
  const practised = namedJournals(read).map((named) => ({ named, records: namedAttempts(named) }));
  const isKnown = practised.some(({ named, records }) => {
    const asked = subjectAsked(subject, named.journal);
    return records.some((record) => isAttemptAt(asked, record));
  });
  const all = practised.flatMap(({ records }) => records);
  if (isKnown || all.length === 0) return undefined;
  const near = nearestSubject(subject, all.reverse());
  const next = near === undefined ? " Without --subject, daystave history lists what was." : offer(near);
  return `“${printable(subject)}” was not practised.${next}`;
}

/** Why there is nothing to show. */
export function nothingFound(read: ReadJournals, { since, until, subject }: AttemptsAsked): string {
  if (read.files.length === 0) return "There is no .practice file here.";
  if (!namedJournals(read).some((named) => namedAttempts(named).length > 0))
    return "No exercise practised yet: a line such as “D minor, 8ths at 60 clean” begins its history.";
  const span =
    since !== undefined && until !== undefined
      ? "in those weeks"
      : since !== undefined
        ? "since that day"
        : "up to that day";
  return subject === undefined
    ? `No exercise practised ${span}.`
    : `“${printable(subject)}” was not practised ${span}.`;
}

/** Says on standard error which days are in the future and counted all the same: most often a digit is wrong. */
export function warnOfDaysAhead(days: Iterable<DayNumber>, { stderr, today }: Pick<Io, "stderr" | "today">): void {
  const ahead = [...new Set(days)].filter((day) => day > today).sort((a, b) => a - b);
  const [first] = ahead;
  if (first === undefined) return;
  const which =
    ahead.length === 1
      ? `${isoDate(first)} is after today, ${isoDate(today)}, and is counted`
      : `${ahead.length} days from ${isoDate(first)} to ${isoDate(ahead.at(-1)!)} are after today, ${isoDate(today)}, and are counted`;
  stderr.write(`daystave: ${which} as practised. If that is wrong, daystave check says what to do.\n`);
}
