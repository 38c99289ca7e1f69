import type { Diagnostic, Severity } from "../../features/types.ts";
import type { Paint } from "../colour.ts";
import { printable } from "../printable.ts";
import type { CheckReport, FileReport, Summary } from "./check-report.ts";
import type { FindingText } from "./finding-lines.ts";

const COLOURS = { error: "red", warning: "yellow", information: "blue", hint: "dim" } as const satisfies Record<
  Severity,
  string
>;

/**
 * `path:line:col severity code message`, one a line, and a summary. Lines and columns count from 1. Hints, which are
 * about wording alone, are only counted.
 *
 * @param layout for a person: the columns of a file stand below each other, and this makes lines of each; programs are
 *   given single spaces
 * @param quiet without the summary
 */
export function reportText(
  { files, summary }: CheckReport,
  paint: Paint,
  { layout, quiet = false }: { readonly layout?: Layout; readonly quiet?: boolean },
): string {
  const lines = files.flatMap((file) => fileLines(file, paint, layout));
  return [...lines, ...(quiet ? [] : [summaryText(summary)])].map((line) => `${line}\n`).join("");
}

export type Layout = (finding: FindingText, paint: (severity: string) => string) => string[];

function fileLines({ path, diagnostics }: FileReport, paint: Paint, layout: Layout | undefined): string[] {
  const shown = diagnostics.filter(({ severity }) => severity !== "hint");
  const cells = shown.map((each) => [placeOf(path, each), each.severity, each.code] as const);
  // Places of one file differ in their figures alone, so that their lengths differ as their display widths do.
  const longest = (column: number): number => Math.max(0, ...cells.map((row) => row[column]!.length));
  const widths = layout === undefined ? [0, 0, 0] : [0, 1, 2].map(longest);
  return shown.flatMap(({ severity, message }, i) => {
    const [place, word, code] = cells[i]!.map((cell, column) => cell.padEnd(widths[column]!));
    const finding = { place: place!, severity: word!, code: code!, message: printable(message) };
    const painted = (text: string): string => paint(text, COLOURS[severity]);
    return layout?.(finding, painted) ?? [`${place} ${painted(word!)} ${code} ${finding.message}`];
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
