import { painter } from "../colour.ts";
import type { Io } from "../io.ts";
import { jsonText } from "../printable.ts";
import { columnsOf } from "../wrapped.ts";
import type { CheckReport } from "./check-report.ts";
import { type Layout, reportText } from "./check-text.ts";

/** A report in the form that the flags ask for. */
export async function rendered(report: CheckReport, flags: ReadonlySet<string>, io: Io): Promise<string> {
  if (flags.has("json")) return jsonText(document(report));
  if (!flags.has("sarif"))
    return reportText(report, painter(io), { layout: await layoutFor(io), quiet: flags.has("quiet") });
  const { sarifLog } = await import("./sarif.ts");
  return jsonText(sarifLog(report, io.pages));
}

/** None but for a terminal: to know how wide a text is shown takes some milliseconds to load. */
async function layoutFor(io: Io): Promise<Layout | undefined> {
  const columns = columnsOf(io);
  if (columns === undefined) return undefined;
  const { findingLines } = await import("./finding-lines.ts");
  return (finding, paint) => findingLines(finding, columns, paint);
}

/** What `check --json` prints. */
function document({ files, skipped, summary }: CheckReport): object {
  return { files: files.map(({ path, diagnostics }) => ({ path, diagnostics })), skipped, summary };
}
