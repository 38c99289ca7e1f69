import { painter } from "../colour.ts";
import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { readJournals } from "../journals.ts";
import { STANDARD_INPUT } from "../paths.ts";
import { jsonText } from "../printable.ts";
import { type CheckReport, reportOn } from "./check-report.ts";
import { reportText } from "./check-text.ts";

/** `daystave check`: found is an error or a warning; where lines are explained, nothing is looked for. */
export async function check({ positionals, flags }: Arguments, io: Io): Promise<Status> {
  if (flags.has("json") && flags.has("sarif")) return fail(io, "“--json” and “--sarif” cannot both be printed.");
  if (flags.has("fix") && positionals.includes(STANDARD_INPUT))
    return fail(io, "“--fix” writes into files, and standard input is none.");
  const other = flags.has("explain-lines") ? ["fix", "sarif"].find((option) => flags.has(option)) : undefined;
  if (other)
    return fail(io, `“--explain-lines” tells how lines were read, and “--${other}” what is wrong: one of them.`);
  const read = await readJournals(positionals, io);
  if (!read.ok) return fail(io, read.reason);
  if (flags.has("explain-lines")) {
    const { explainedLines } = await import("./explain-lines.ts");
    io.stdout.write(explainedLines(read, flags.has("json")));
    return STATUS.done;
  }
  const { fixFiles } = flags.has("fix") ? await import("./check-fix.ts") : { fixFiles: undefined };
  const fixed = fixFiles?.(read, io);
  const report = reportOn(read, fixed?.journals ?? read.journals, io.today);
  io.stdout.write(await rendered(report, flags, io));
  if (fixed?.refused) return STATUS.failed;
  return report.summary.errors + report.summary.warnings > 0 ? STATUS.found : STATUS.done;
}

async function rendered(report: CheckReport, flags: ReadonlySet<string>, io: Io): Promise<string> {
  if (flags.has("json")) return jsonText(report);
  if (!flags.has("sarif")) return reportText(report, painter(io), io.isTerminal);
  const { sarifLog } = await import("./sarif.ts");
  return jsonText(sarifLog(report));
}
