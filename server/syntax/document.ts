import { firstCode, isDayLine } from "./day-line.ts";
import { mayDeclareName } from "./naming-line.ts";

export type LineEnd = "\n" | "\r\n" | "\r" | "";

/**
 * The head of a document, or one day: from its day line up to the next. Blocks are immutable; what is derived
 * from one hangs on it by identity, so a day that only moved keeps everything that was found out about it.
 */
export interface Block {
  readonly lines: readonly string[];
  /** One for each line; only the last line of a document has none (""). */
  readonly ends: readonly LineEnd[];
  /** Begins with a day line; otherwise it is the head. */
  readonly day: boolean;
  /** Some line in it may declare a name: told while the lines are at hand, as asking each of them again is slow. */
  readonly mayName: boolean;
}

/** A text as blocks. Every block but the first begins with a day line. There is always one block with one line. */
export interface Document {
  readonly blocks: readonly Block[];
  /** The absolute line, from 0, at which each block begins. */
  readonly starts: readonly number[];
  readonly lineCount: number;
}

/** Line and UTF-16 column from 0; out of bounds means the nearest place inside, as in the protocol. */
export interface Position {
  readonly line: number;
  readonly character: number;
}

/** The text between two positions becomes `text`; without a range the whole document does. */
export interface TextChange {
  readonly range?: { readonly start: Position; readonly end: Position };
  readonly text: string;
}

export function createDocument(text: string): Document {
  return withBlocks(blocksOf(splitLines(text)));
}

export function textOf(document: Document): string {
  const parts: string[] = [];
  for (const { lines, ends } of document.blocks) {
    for (let i = 0; i < lines.length; i++) parts.push(lines[i]!, ends[i]!);
  }
  return parts.join("");
}

/** The document after the changes, each seen by the next. Blocks that no change touched are the same objects. */
export function applyChanges(document: Document, changes: readonly TextChange[]): Document {
  return changes.reduce(applyChange, document);
}

/** The index of the block that holds an absolute line. */
export function blockIndexAt(document: Document, line: number): number {
  let low = 0;
  let high = document.starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (document.starts[middle]! <= line) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Which blocks differ between two states of a document: those from `from` up to `before` became those up to `after`. */
export interface ChangedBlocks {
  readonly from: number;
  readonly before: number;
  readonly after: number;
}

/** Compares by identity, as blocks that no edit touched are the same objects. */
export function changedBlocks(before: Document, after: Document): ChangedBlocks {
  const old = before.blocks;
  const now = after.blocks;
  const shorter = Math.min(old.length, now.length);
  let from = 0;
  while (from < shorter && old[from] === now[from]) from++;
  let same = 0;
  while (same < shorter - from && old[old.length - 1 - same] === now[now.length - 1 - same]) same++;
  return { from, before: old.length - same, after: now.length - same };
}

export function lineAt(document: Document, line: number): string {
  const index = blockIndexAt(document, line);
  return document.blocks[index]?.lines[line - document.starts[index]!] ?? "";
}

function applyChange(document: Document, { range, text }: TextChange): Document {
  if (!range) return createDocument(text);
  const [start, end] = inOrder(clamped(document, range.start), clamped(document, range.end));
  let from = start.line;
  let head = lineAt(document, from).slice(0, start.character);
  if (start.character === 0 && from > 0 && endAt(document, from - 1) === "\r") {
    from--; // what follows a lone CR may begin with LF, and then the two are one line end
    head = `${lineAt(document, from)}\r`;
  }
  const tail = lineAt(document, end.line).slice(end.character) + endAt(document, end.line);
  return replaceLines(document, from, end.line, splitLines(head + text + tail, endAt(document, end.line) !== ""));
}

/** Replaces whole lines and cuts only the blocks they stood in anew. */
function replaceLines(document: Document, from: number, to: number, inserted: Lines): Document {
  let first = blockIndexAt(document, from);
  const last = blockIndexAt(document, to);
  const before = takeLines(document.blocks[first]!, 0, from - document.starts[first]!);
  const after = takeLines(document.blocks[last]!, to - document.starts[last]! + 1);
  let region = joinLines(before, inserted, after);
  if (first > 0 && !(region.lines[0] !== undefined && isDayLine(region.lines[0]))) {
    first--; // the day line is gone: its lines fall to the day before
    region = joinLines(document.blocks[first]!, region);
  }
  const blocks = document.blocks.slice(0, first);
  for (const block of blocksOf(region)) blocks.push(block);
  for (let i = last + 1; i < document.blocks.length; i++) blocks.push(document.blocks[i]!);
  return withBlocks(blocks);
}

interface Lines {
  readonly lines: readonly string[];
  readonly ends: readonly LineEnd[];
}

/** A text cut at LF, CRLF and lone CR. `whole` says that the text ends with a line end, after which nothing follows. */
function splitLines(text: string, whole = false): Lines {
  const { lines, ends } = text.includes("\r") ? splitAtAnyEnd(text) : splitAtNewlines(text);
  if (whole) {
    lines.pop();
    ends.pop();
  }
  return { lines, ends };
}

function splitAtNewlines(text: string): { lines: string[]; ends: LineEnd[] } {
  const lines = text.split("\n");
  const ends = new Array<LineEnd>(lines.length).fill("\n");
  ends[ends.length - 1] = "";
  return { lines, ends };
}

function splitAtAnyEnd(text: string): { lines: string[]; ends: LineEnd[] } {
  const lines: string[] = [];
  const ends: LineEnd[] = [];
  let from = 0;
  for (const match of text.matchAll(/\r\n|\n|\r/g)) {
    lines.push(text.slice(from, match.index));
    ends.push(match[0] as LineEnd);
    from = match.index + match[0].length;
  }
  lines.push(text.slice(from));
  ends.push("");
  return { lines, ends };
}

function blocksOf({ lines, ends }: Lines): Block[] {
  const blocks: Block[] = [];
  let from = 0;
  let day = isDayLine(lines[0]!);
  let mayName = mayDeclareName(lines[0]!);
  for (let i = 1; i <= lines.length; i++) {
    const line = lines[i];
    const first = line === undefined ? 0 : firstCode(line);
    if (line !== undefined && !isDayLine(line, first)) {
      mayName ||= mayDeclareName(line, first);
      continue;
    }
    blocks.push({ lines: lines.slice(from, i), ends: ends.slice(from, i), day, mayName });
    from = i;
    day = true;
    mayName = false;
  }
  return blocks;
}

function withBlocks(blocks: readonly Block[]): Document {
  const starts = new Array<number>(blocks.length);
  let line = 0;
  for (let i = 0; i < blocks.length; i++) {
    starts[i] = line;
    line += blocks[i]!.lines.length;
  }
  return { blocks, starts, lineCount: line };
}

function takeLines({ lines, ends }: Lines, from: number, to?: number): Lines {
  return { lines: lines.slice(from, to), ends: ends.slice(from, to) };
}

function joinLines(...parts: readonly Lines[]): Lines {
  return { lines: parts.flatMap((part) => part.lines), ends: parts.flatMap((part) => part.ends) };
}

function endAt(document: Document, line: number): LineEnd {
  const index = blockIndexAt(document, line);
  return document.blocks[index]!.ends[line - document.starts[index]!] ?? "";
}

function clamped(document: Document, { line, character }: Position): Position {
  if (line < 0) return { line: 0, character: 0 };
  if (line >= document.lineCount) {
    const last = document.lineCount - 1;
    return { line: last, character: lineAt(document, last).length };
  }
  return { line, character: Math.max(0, Math.min(character, lineAt(document, line).length)) };
}

function inOrder(a: Position, b: Position): [Position, Position] {
  const ordered = a.line < b.line || (a.line === b.line && a.character <= b.character);
  return ordered ? [a, b] : [b, a];
}
