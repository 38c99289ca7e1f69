import type { TextEdit } from "../features/types.ts";
import { blockIndexAt, createDocument, type Document, type Position, textOf } from "../syntax/document/document.ts";

/** So many pieces of a text are put together at once: each takes as much memory as a word or two. */
const PIECES = 10_000;

/** The document after edits: see `editedText`. */
export function applyEdits(document: Document, edits: Iterable<TextEdit>): Document {
  return createDocument(editedText(document, edits));
}

/**
 * The text of a document after edits that all refer to it as it is, in order, and do not overlap. New lines end as
 * those around them do. It is written out once, however many edits there are.
 */
export function editedText(document: Document, edits: Iterable<TextEdit>): string {
  const text = textOf(document);
  const starts = lineStarts(document);
  const at = ({ line, character }: Position) => Math.min((starts[line] ?? text.length) + character, text.length);
  const parts: string[] = [];
  let pieces: string[] = [];
  let from = 0;
  for (const { range, newText } of edits) {
    pieces.push(text.slice(from, at(range.start)), withLineEnds(newText, document, range.start.line));
    from = at(range.end);
    if (pieces.length < PIECES) continue;
    parts.push(pieces.join(""));
    pieces = [];
  }
  return [...parts, ...pieces, text.slice(from)].join("");
}

/** Edits in the order of their places. */
export function inOrder(edits: readonly TextEdit[]): readonly TextEdit[] {
  return edits.toSorted((a, b) => compare(a.range.start, b.range.start));
}

/** Where each line begins in the text. */
function lineStarts({ blocks }: Document): readonly number[] {
  const starts: number[] = [];
  let at = 0;
  for (const { lines, ends } of blocks) {
    for (const [i, line] of lines.entries()) {
      starts.push(at);
      at += line.length + ends[i]!.length;
    }
  }
  return starts;
}

function withLineEnds(text: string, document: Document, line: number): string {
  return text.includes("\n") ? text.replace(/(?<!\r)\n/g, lineEndAt(document, line)) : text;
}

/** What stands in a range; line ends as a space. */
export function textIn(document: Document, { range: { start, end } }: TextEdit): string {
  const lines: string[] = [];
  for (let line = start.line; line <= end.line; line++) {
    const block = blockIndexAt(document, line);
    const text = document.blocks[block]!.lines[line - document.starts[block]!] ?? "";
    lines.push(text.slice(line === start.line ? start.character : 0, line === end.line ? end.character : undefined));
  }
  return lines.join(" ");
}

/** The end of a line; the last line's is that of the line before it, and a lone line's is LF. */
function lineEndAt(document: Document, line: number): string {
  for (const at of [line, line - 1].filter((each) => each >= 0)) {
    const block = blockIndexAt(document, at);
    const end = document.blocks[block]!.ends[at - document.starts[block]!];
    if (end) return end;
  }
  return "\n";
}

function compare(a: Position, b: Position): number {
  return a.line - b.line || a.character - b.character;
}
