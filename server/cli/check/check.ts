import type { Arguments } from "../command.ts";
import { fail, type Io, STATUS, type Status } from "../io.ts";
import { readJournals } from "../journals.ts";
import { STANDARD_INPUT } from "../paths.ts";
import { inputPathAsked } from "../stdin-path.ts";
import { type CheckReport, reportOn } from "./check-report.ts";
import { rendered } from "./rendered.ts";

/** `daystave check`: found is an error or a warning; where lines are explained, nothing is looked for. */
export async function check(args: Arguments, io: Io): Promise<Status> {
  const { positionals, flags } = args;
  const contradiction = contradictionIn(positionals, flags);
  if (contradiction !== undefined) return fail(io, contradiction);
  const input = inputPathAsked(args, io.cwd);
  if (!input.ok) return fail(io, input.reason);
  if (flags.has("staged")) return staged(flags, io);
  if (flags.has("watch")) return (await import("./check-watch.ts")).checkWatching(positionals, flags, io);
  const read = await readJournals(positionals, io, input);
  if (!read.ok) return fail(io, read.reason);
  if (flags.has("explain-lines")) {
    const { explainedLines } = await import("./explain-lines.ts");
    io.stdout.write(explainedLines(read, flags.has("json")));
    return read.unread ? STATUS.failed : STATUS.done;
  }
  const { fixFiles } = flags.has("fix") ? await import("./check-fix.ts") : { fixFiles: undefined };
  const fixed = fixFiles?.(read, io, flags.has("quiet"));
  const report = reportOn(read, fixed?.journals ?? read.journals, io);
  // Of files that could not be read there is nothing to say that is not said already.
  if (!isText(flags) || report.files.length > 0 || !read.unread) io.stdout.write(await rendered(report, flags, io));
  return fixed?.refused || read.unread ? STATUS.failed : statusOf(report);
}

/** Before a commit nobody wants to hear of what is right, and a journal that cannot be read is no sound one. */
async function staged(flags: ReadonlySet<string>, io: Io): Promise<Status> {
  const { checkStaged } = await import("./check-staged.ts");
  const checked = await checkStaged(io);
  if (!checked.ok) return fail(io, checked.reason);
  const { report } = checked;
  const status = report.skipped.length > 0 ? STATUS.failed : statusOf(report);
  if (!isText(flags) || statusOf(report) !== STATUS.done) io.stdout.write(await rendered(report, flags, io));
  return status;
}

function statusOf({ summary }: CheckReport): Status {
  return summary.errors + summary.warnings > 0 ? STATUS.found : STATUS.done;
}

function isText(flags: ReadonlySet<string>): boolean {
  return !flags.has("json") && !flags.has("sarif");
}

/** Which of the options given do not go together, in a sentence. */
function contradictionIn(positionals: readonly string[], flags: ReadonlySet<string>): string | undefined {
  const among = (...options: string[]) => options.find((option) => flags.has(option));
  if (flags.has("json") && flags.has("sarif")) return "Choose one of “--json” and “--sarif”.";
  if (flags.has("staged")) {
    const other = among("fix", "explain-lines");
    if (other) return `Choose one: “--staged” checks what git would commit, “--${other}” works on files.`;
    if (positionals.length > 0) return "“--staged” checks all that is staged, and takes no PATH.";
  }
  if (flags.has("watch")) {
    const other = among("fix", "staged", "explain-lines", "json", "sarif");
    if (other) return `Choose one: “--watch” goes on and on, “--${other}” is done once.`;
    if (positionals.includes(STANDARD_INPUT)) return "“--watch” looks at files, and cannot watch standard input.";
  }
  if (flags.has("fix") && positionals.includes(STANDARD_INPUT))
    return "“--fix” writes into files, and cannot fix standard input.";
  const other = flags.has("explain-lines") ? among("fix", "sarif") : undefined;
  return other && `Choose one: “--explain-lines” shows how lines were read, “--${other}” what is wrong.`;
}
