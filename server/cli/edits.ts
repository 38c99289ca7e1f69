import type { TextEdit } from "../features/types.ts";
import { applyChanges, blockIndexAt, type Document, type Position } from "../syntax/document/document.ts";

/**
 * The document after edits that all refer to it as it is, and do not overlap. New lines end as those around them do.
 */
export function applyEdits(document: Document, edits: readonly TextEdit[]): Document {
  // From the last to the first, so that no edit moves the place of another.
  const inReverse = edits.toReversed().sort((a, b) => compare(b.range.start, a.range.start));
  const changes = inReverse.map(({ range, newText }) => ({
    range,
    text: newText.replace(/(?<!\r)\n/g, lineEndAt(document, range.start.line)),
  }));
  return applyChanges(document, changes);
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
