import { relative } from "node:path";
import { fileURLToPath } from "node:url";
import type { DayNumber } from "../journal/calendar.ts";
import type { Journal } from "../journal/journal.ts";
import { pupilsOf } from "../plan/pupils.ts";
import { type NamedJournal, namedJournals, pathOf } from "./attempts-asked.ts";
import type { Io } from "./io.ts";
import type { ReadJournals } from "./journals.ts";

/** A journal of which all is asked, whichever of its files were named. */
export interface Around {
  readonly journal: Journal;
  /** Its folder, as seen from the current one; a lone file's own name. */
  readonly path: string;
  /** Who plays, or else the same. */
  readonly name: string;
  /** A file as it was named, or else as seen from the current folder. */
  readonly pathOf: (uri: string) => string;
}

/** The journals of the files named. One that only lends to those below it is nobody's: it counts where it is alone. */
export function wholeJournals(read: ReadJournals, { cwd, today }: Pick<Io, "cwd" | "today">): readonly Around[] {
  const named = new Map(read.files.map(({ uri, path }) => [uri, path]));
  return somebodys(namedJournals(read), today).map((each) => {
    const path = pathOf(each, cwd);
    const fileOf = (uri: string): string => named.get(uri) ?? (relative(cwd, fileURLToPath(uri)) || uri);
    return { journal: each.journal, path, name: each.player ?? path, pathOf: fileOf };
  });
}

function somebodys(all: readonly NamedJournal[], today: DayNumber): readonly NamedJournal[] {
  if (all.length < 2) return all;
  const pupils = pupilsOf(
    all.map(({ journal }) => journal),
    () => today,
  );
  const theirs = new Set(pupils.map(({ journal }) => journal));
  return theirs.size === 0 ? all : all.filter(({ journal }) => theirs.has(journal));
}

/** What is printed of one journal by itself, and of several one after another, each with whose it is. */
export function ofEach<T extends object>(
  journals: readonly Around[],
  report: (around: Around) => T,
  none: T,
): T | { readonly journals: readonly ({ readonly path: string; readonly name: string } & T)[] } {
  if (journals.length <= 1) return journals[0] ? report(journals[0]) : none;
  return { journals: journals.map((around) => ({ path: around.path, name: around.name, ...report(around) })) };
}
