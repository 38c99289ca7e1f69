import stringWidth from "string-width";
import type { Diagnostic, Severity } from "../features/types.ts";
import type { CheckReport, FileReport, Summary } from "./check.ts";
import type { Paint } from "./colour.ts";
import { printable } from "./printable.ts";

const COLOURS = { error: "red", warning: "yellow", information: "blue", hint: "dim" } as const satisfies Record<
  Severity,
  string
>;

/**
 * `path:line:col severity code message`, one a line, and a summary. Lines and columns count from 1.
 *
 * @param aligned whether the columns stand below each other, as a person reads them; programs are given single spaces
 */
export function reportText({ files, summary }: CheckReport, paint: Paint, aligned: boolean): string {
  const lines = files.flatMap((file) => fileLines(file, paint, aligned));
  return [...lines, summaryText(summary), ""].join("\n");
}

function fileLines({ path, diagnostics }: FileReport, paint: Paint, aligned: boolean): string[] {
  const places = diagnostics.map((diagnostic) => placeOf(path, diagnostic));
  const wide = aligned ? Math.max(...places.map((place) => stringWidth(place))) : 0;
  const longest = (words: string[]) => (aligned ? Math.max(...words.map((word) => word.length)) : 0);
  const severities = longest(diagnostics.map(({ severity }) => severity));
  const codes = longest(diagnostics.map(({ code }) => code));
  return diagnostics.map(({ severity, code, message }, i) => {
    const place = places[i]! + " ".repeat(Math.max(0, wide - (aligned ? stringWidth(places[i]!) : 0)));
    return `${place} ${paint(severity.padEnd(severities), COLOURS[severity])} ${code.padEnd(codes)} ${printable(message)}`;
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
