import { diagnosticsOf, readAhead } from "../../features/diagnostics/diagnostics.ts";
import type { Diagnostic } from "../../features/types.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Journals, ReadJournals } from "../journals.ts";
import type { Skipped } from "../paths.ts";

/** What was found in one file; `path` as the user would write it. */
export interface FileReport {
  readonly path: string;
  readonly diagnostics: readonly Diagnostic[];
}

export interface Summary {
  readonly files: number;
  readonly errors: number;
  readonly warnings: number;
  readonly information: number;
  readonly hints: number;
}

/** What `check --json` prints. */
export interface CheckReport {
  readonly files: readonly FileReport[];
  readonly skipped: readonly Skipped[];
  readonly summary: Summary;
}

/** @param journals those that were read, or what became of them */
export function reportOn(read: ReadJournals, journals: Journals, today: DayNumber): CheckReport {
  for (const { uri, root } of read.files) readAhead(journals.get(root)!, uri, today);
  const files = read.files.map(({ path, uri, root }) => ({
    path,
    diagnostics: diagnosticsOf(journals.get(root)!, uri, today),
  }));
  return { files, skipped: read.skipped, summary: summaryOf(files) };
}

function summaryOf(files: readonly FileReport[]): Summary {
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
