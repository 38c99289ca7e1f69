import { type Block, type Document, lineAt, type Position } from "../../syntax/document/document.ts";
import { lastLineOf, type PlacedDay } from "../explain/dated-days.ts";
import { lineEndOf } from "../explain/line-under-cursor.ts";
import type { TextEdit } from "../types.ts";
import type { CommandDone } from "./command-answer.ts";

/** What goes in below a block, and where the cursor goes in it. */
export interface NewLines {
  /** A day line, or "" below one that stands there. */
  readonly day: string;
  /** Put behind the line that they go below, such as the day line of an empty day. */
  readonly behind?: string;
  readonly below: readonly string[];
  /** Which of `below` the cursor goes to, and its column. */
  readonly cursor: Position;
}

/**
 * Puts lines in below a block, in the place of the empty lines at its end; other days keep the distance they have in
 * the file. Index -1 is the top of a file without a head.
 */
export function insertedAfter(
  { uri, document, index }: Pick<PlacedDay, "uri" | "document" | "index">,
  { day, behind = "", below, cursor }: NewLines,
): CommandDone {
  const start = endOfContent(document, index);
  const isLast = index + 1 >= document.blocks.length;
  const from = start ?? startOfContent(document, index);
  const end = isLast ? endOfDocument(document) : startOfContent(document, index + 1);
  const gap = isSeparated(document) ? [""] : [];
  const above = start ? [behind, ...(day === "" ? [] : gap)] : [];
  const opening = [...above, ...(day === "" ? [] : [day])];
  const lines = [...opening, ...below];
  const after = isLast ? (lines.at(-1)!.trim() === "" ? [] : [""]) : [...gap, ""];
  return {
    ok: true,
    uri,
    edits: [{ range: { start: from, end }, newText: [...lines, ...after].join(lineEndOf(document)) }],
    cursor: { line: from.line + opening.length + cursor.line, character: cursor.character },
  };
}

/** An empty line at the end of a day, where there is room for one; else a new one is put in. */
export function freshLineIn({ uri, document, index }: PlacedDay, indent: string): CommandDone {
  const block = document.blocks[index]!;
  const last = lastLineOf(block);
  const line = document.starts[index]! + last;
  if (roomBelow(document, index) > 0) {
    const text = block.lines[last + 1]!;
    const at = { line: line + 1, character: 0 };
    const edits = text === "" && indent !== "" ? [{ range: { start: at, end: at }, newText: indent }] : [];
    return { ok: true, uri, edits, cursor: { ...at, character: text.length || indent.length } };
  }
  const at = { line, character: block.lines[last]!.length };
  return {
    ok: true,
    uri,
    edits: [{ range: { start: at, end: at }, newText: lineEndOf(document) + indent }],
    cursor: { line: line + 1, character: indent.length },
  };
}

/** How many empty lines a day ends with, beside the one that parts it from the next. */
export function roomBelow(document: Document, index: number): number {
  const block = document.blocks[index]!;
  const isLast = index + 1 >= document.blocks.length;
  return block.lines.length - 1 - lastLineOf(block) - (!isLast && isSeparated(document) ? 1 : 0);
}

/** Behind the last line that holds anything; undefined where a block, or all above the first, is empty. */
function endOfContent({ blocks, starts }: Document, index: number): Position | undefined {
  const block = blocks[index];
  const line = block ? lastLineOf(block) : 0;
  const text = block?.lines[line] ?? "";
  return /[^\s\uFEFF]/.test(text) ? { line: starts[index]! + line, character: text.trimEnd().length } : undefined;
}

/** The start of a block, or of the file, behind a byte order mark. */
function startOfContent({ blocks, starts }: Document, index: number): Position {
  const block = Math.max(0, index);
  return { line: starts[block]!, character: blocks[block]!.text.startsWith("\uFEFF") ? 1 : 0 };
}

function endOfDocument({ blocks, lineCount }: Document): Position {
  return { line: lineCount - 1, character: blocks.at(-1)!.lines.at(-1)!.length };
}

/** Whether an empty line stands between the last two days; as in most files, where there are no two. */
export function isSeparated({ blocks }: Document): boolean {
  const before = blocks.findLast((block: Block, i) => block.day && i < blocks.length - 1);
  return !before || before.lines.at(-1)!.trim() === "";
}

/** Takes whole lines out of a file, each with its end. */
export function linesTakenOut(document: Document, lines: readonly number[]): readonly TextEdit[] {
  const gone = new Set(lines);
  const { lineCount } = document;
  const lengthOf = (line: number) => lineAt(document, line).length;
  return [...gone]
    .filter((line) => !gone.has(line - 1))
    .sort((a, b) => a - b)
    .map((from) => {
      let to = from + 1;
      while (gone.has(to)) to++;
      const isToEnd = to >= lineCount && from > 0;
      const start = isToEnd ? { line: from - 1, character: lengthOf(from - 1) } : { line: from, character: 0 };
      const end = isToEnd ? { line: to - 1, character: lengthOf(to - 1) } : { line: to, character: 0 };
      return { range: { start, end }, newText: "" };
    });
}

/** Puts lines in the place of others, the end excluded; those that are the same at either end are left alone. */
export function linesReplaced(
  document: Document,
  { from, to }: { readonly from: number; readonly to: number },
  lines: readonly string[],
): readonly TextEdit[] {
  const most = Math.min(to - from, lines.length);
  let head = 0;
  while (head < most && lineAt(document, from + head) === lines[head]) head++;
  let tail = 0;
  while (tail < most - head && lineAt(document, to - 1 - tail) === lines.at(-1 - tail)) tail++;
  const [first, end] = [from + head, to - tail];
  const put = lines.slice(head, lines.length - tail);
  if (first === end && put.length === 0) return [];
  const eol = lineEndOf(document);
  if (end < document.lineCount) {
    const newText = put.map((line) => line + eol).join("");
    return [{ range: { start: { line: first, character: 0 }, end: { line: end, character: 0 } }, newText }];
  }
  const last = { line: end - 1, character: lineAt(document, end - 1).length };
  if (first === 0) return [{ range: { start: { line: 0, character: 0 }, end: last }, newText: put.join(eol) }];
  const start = { line: first - 1, character: lineAt(document, first - 1).length };
  return [{ range: { start, end: last }, newText: put.map((line) => eol + line).join("") }];
}
