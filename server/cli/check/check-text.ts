import type { Diagnostic, Severity } from "../../features/types.ts";
import type { Paint } from "../colour.ts";
import { printable } from "../printable.ts";
import type { CheckReport, FileReport, Summary } from "./check-report.ts";

const COLOURS = { error: "red", warning: "yellow", information: "blue", hint: "dim" } as const satisfies Record<
  Severity,
  string
>;

/**
 * `path:line:col severity code message`, one a line, and a summary. Lines and columns count from 1. Hints, which are
 * about wording alone, are only counted.
 *
 * @param aligned whether the columns of a file stand below each other, for a person; programs are given single spaces
 */
export function reportText({ files, summary }: CheckReport, paint: Paint, aligned: boolean): string {
  const lines = files.flatMap((file) => fileLines(file, paint, aligned));
  return [...lines, summaryText(summary), ""].join("\n");
}

function fileLines({ path, diagnostics }: FileReport, paint: Paint, aligned: boolean): string[] {
  const shown = diagnostics.filter(({ severity }) => severity !== "hint");
  const cells = shown.map((each) => [placeOf(path, each), each.severity, each.code] as const);
  // Places of one file differ in their figures alone, so that their lengths differ as their display widths do.
  const widths = [0, 1, 2].map((column) => Math.max(0, ...cells.map((row) => (aligned ? row[column]!.length : 0))));
  return shown.map(({ severity, message }, i) => {
    const [place, word, code] = cells[i]!.map((cell, column) => cell.padEnd(widths[column]!));
    return `${place} ${paint(word!, COLOURS[severity])} ${code} ${printable(message)}`;
  });
}

function placeOf(path: string, { range: { start } }: Diagnostic): string {
  return `${printable(path)}:${start.line + 1}:${start.character + 1}`;
}

function summaryText({ files, errors, warnings, information, hints }: Summary): string {
  const counts = [
    counted(errors, "error", "errors"),
    counted(warnings, "warning", "warnings"),
    counted(information, "piece of advice", "pieces of advice"),
    counted(hints, "hint", "hints"),
  ].filter((count) => count !== "");
  return `${counted(files, "file", "files") || "No files"}: ${counts.join(", ") || "nothing found"}.`;
}

function counted(count: number, one: string, many: string): string {
  return count === 0 ? "" : `${count} ${count === 1 ? one : many}`;
}
