import type { AttemptRecord } from "../../history/record.ts";
import type { Journal } from "../../journal/journal.ts";
import { type AttemptsAsked, type NamedJournal, namedAttempts, pathOf } from "../attempts-asked.ts";
import { isAttemptAt, subjectAsked } from "../subject-asked.ts";

/** The attempts of one journal at what was asked for. */
export interface JournalAttempts {
  /** The journal's folder, as seen from the current one; a lone file's own name. */
  readonly journal: string;
  readonly player?: string;
  readonly source: Journal;
  /** Those before `since` as well, as a week is judged by the ones before it. */
  readonly records: readonly AttemptRecord[];
}

/** @param cwd the current folder, an absolute path */
export function attemptsIn(named: NamedJournal, { subject }: AttemptsAsked, cwd: string): JournalAttempts {
  const asked = subject === undefined ? undefined : subjectAsked(subject, named.journal);
  const { player } = named;
  return {
    journal: pathOf(named, cwd),
    player,
    source: named.journal,
    records: namedAttempts(named).filter((each) => isAttemptAt(asked, each)),
  };
}
