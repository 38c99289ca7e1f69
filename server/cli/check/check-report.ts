import { diagnosticsOf, readAhead } from "../../features/diagnostics/diagnostics.ts";
import type { Diagnostic } from "../../features/types.ts";
import type { Document } from "../../syntax/document/document.ts";
import type { Io } from "../io.ts";
import { documentOf, type Journals, type ReadJournals } from "../journals.ts";
import type { Skipped } from "../paths.ts";
import { readAttempts } from "../read-attempts.ts";

/** What was found in one file; `path` as the user would write it. */
export interface FileReport {
  readonly path: string;
  readonly diagnostics: readonly Diagnostic[];
  /** The text that it was found in. */
  readonly document: Document;
}

export interface Summary {
  readonly files: number;
  readonly errors: number;
  readonly warnings: number;
  readonly information: number;
  readonly hints: number;
}

/** What `check` prints in one form or another. */
export interface CheckReport {
  readonly files: readonly FileReport[];
  readonly skipped: readonly Skipped[];
  readonly summary: Summary;
}

/** @param journals those that were read, or what became of them */
export function reportOn(
  read: ReadJournals,
  journals: Journals,
  { today, progress }: Pick<Io, "today" | "progress">,
): CheckReport {
  readDays(read, journals, { today, progress });
  readAttempts(
    read.files.map(({ root }) => journals.get(root)!),
    { progress },
  );
  const files = read.files.map(({ path, uri, root }, i) => {
    progress?.("Checking", i, read.files.length);
    const journal = journals.get(root)!;
    return { path, diagnostics: diagnosticsOf(journal, uri, today), document: journal.files.get(uri)! };
  });
  return { files, skipped: read.skipped, summary: summaryOf(files) };
}

/** The longest part of the work; told by days, as one file may hold them all. */
function readDays(
  { files }: Pick<ReadJournals, "files">,
  journals: Journals,
  { today, progress }: Pick<Io, "today" | "progress">,
): void {
  const days = files.reduce((sum, file) => sum + documentOf(file, journals).blocks.length, 0);
  let done = 0;
  for (const { uri, root } of files)
    readAhead(journals.get(root)!, uri, today, () => progress?.("Checking days", done++, days));
}

export function summaryOf(files: readonly FileReport[]): Summary {
  const count = { error: 0, warning: 0, information: 0, hint: 0 };
  for (const { diagnostics } of files) for (const { severity } of diagnostics) count[severity]++;
  return {
    files: files.length,
    errors: count.error,
    warnings: count.warning,
    information: count.information,
    hints: count.hint,
  };
}
