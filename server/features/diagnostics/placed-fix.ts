import type { FindingFix } from "../../checks/finding.ts";
import { type Document, lineAt } from "../../syntax/document/document.ts";
import { headInsertion } from "../explain/head-insertion.ts";
import type { Fix, Range, TextEdit } from "../types.ts";

/** A fix as edits of the text: its declaration goes above the first day. */
export function placedFix({ title, safe, edits, head }: FindingFix, line: number, document: Document): Fix {
  const placed = edits.map(
    ({ start, end, further = 0, text }): TextEdit => ({
      range: withinText({ start: { line, character: start }, end: { line: line + further, character: end } }, document),
      newText: text,
    }),
  );
  return { title, safe, edits: head === undefined ? placed : [...placed, headInsertion(head, document)] };
}

/** A last line without a line end goes with the one before it, where a line would go with its own. */
function withinText({ start, end }: Range, document: Document): Range {
  const last = document.lineCount - 1;
  if (end.line <= last) return { start, end };
  const before = start.character === 0 && start.line > 0 ? start.line - 1 : undefined;
  return {
    start: before === undefined ? start : { line: before, character: lineAt(document, before).length },
    end: { line: last, character: lineAt(document, last).length },
  };
}
