import { createHash } from "node:crypto";
import type { Diagnostic } from "../../features/types.ts";
import { blockIndexAt, type Document, lineAt } from "../../syntax/document/document.ts";

/**
 * What each finding of a file is known by from run to run (SARIF 2.1.0, 3.27.17), one for each: its code, its day, the
 * text of its line, and which such finding of the day it is. So it stays the same when lines or days come in above it,
 * when the line is indented otherwise, and when the message is worded otherwise.
 */
export function fingerprints(diagnostics: readonly Diagnostic[], document: Document): readonly string[] {
  const seen = new Map<string, number>();
  return diagnostics.map(({ code, range }) => {
    const known = JSON.stringify([code, dayAt(document, range.start.line), spaced(lineAt(document, range.start.line))]);
    const nth = (seen.get(known) ?? 0) + 1;
    seen.set(known, nth);
    return createHash("sha256").update(`${known}${nth}`).digest("hex").slice(0, DIGITS);
  });
}

/** 128 bits. */
const DIGITS = 32;

/** The date as its day line begins; empty above the first day. */
function dayAt(document: Document, line: number): string {
  const { day, lines } = document.blocks[blockIndexAt(document, line)]!;
  return day ? spaced(lines[0]!).split(" ")[0]! : "";
}

function spaced(line: string): string {
  return line.trim().replace(/\s+/g, " ");
}
