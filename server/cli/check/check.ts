import { diagnosticsOf } from "../../features/diagnostics/diagnostics.ts";
import type { Diagnostic } from "../../features/types.ts";
import { painter } from "../colour.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { type Journals, type ReadJournals, readJournals } from "../journals.ts";
import { type Skipped, STANDARD_INPUT } from "../paths.ts";
import { jsonText } from "../printable.ts";
import { reportText } from "./check-text.ts";

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

/** `daystave check`: found is an error or a warning. */
export async function check({ positionals, flags }: Arguments, io: Io): Promise<Status> {
  if (flags.has("json") && flags.has("sarif")) return fail(io, "“--json” and “--sarif” cannot both be printed.");
  if (flags.has("fix") && positionals.includes(STANDARD_INPUT))
    return fail(io, "“--fix” writes into files, and standard input is none.");
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  const { fixFiles } = flags.has("fix") ? await import("./check-fix.ts") : { fixFiles: undefined };
  const fixed = fixFiles?.(read, io);
  const report = reportOn(read, fixed?.journals ?? read.journals, io);
  io.stdout.write(await rendered(report, flags, io));
  if (fixed?.refused) return STATUS.failed;
  return report.summary.errors + report.summary.warnings > 0 ? STATUS.found : STATUS.done;
}

function reportOn(read: ReadJournals, journals: Journals, io: Io): CheckReport {
  const files = read.files.map(({ path, uri, root }) => ({
    path,
    diagnostics: diagnosticsOf(journals.get(root)!, uri, io.today),
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

async function rendered(report: CheckReport, flags: ReadonlySet<string>, io: Io): Promise<string> {
  if (flags.has("json")) return jsonText(report);
  if (!flags.has("sarif")) return reportText(report, painter(io), io.isTerminal);
  const { sarifLog } = await import("./sarif.ts");
  return jsonText(sarifLog(report));
}
