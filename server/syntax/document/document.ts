import { DATE_SIGNS, type DateWord, dateOpenings, dateWord, isDayLine, isSpace } from "../line/day-line.ts";
import { mayDeclareName, NAMING_WORDS, QUOTES } from "../line/naming-line.ts";

export type LineEnd = "\n" | "\r\n" | "\r" | "";

/**
 * The head of a document, or one day: from its day line up to the next. Blocks are immutable; what is derived
 * from one hangs on it by identity, so a day that only moved keeps everything that was found out about it.
 */
export class Block {
  /** Cut when first asked for: most days of a long journal are checked as a whole and never looked at line by line. */
  #cut: Lines | undefined;
  /** Looked for once, as every key asks for those of many days; null is none. */
  #date: DateWord | null | undefined;

  constructor(
    /** With its line ends. */
    readonly text: string,
    readonly lineCount: number,
    /** Begins with a day line; otherwise it is the head. */
    readonly day: boolean,
    /** Some line in it may declare a name: told while the lines are gone over, as asking each of them again is slow. */
    readonly mayName: boolean,
    /** Nothing follows it, so that what stands behind its last line end is a line too, if only an empty one. */
    readonly last: boolean,
  ) {}

  get lines(): readonly string[] {
    return this.cut().lines;
  }

  /** One for each line; only the last line of a document has none (""). */
  get ends(): readonly LineEnd[] {
    return this.cut().ends;
  }

  /** The date-like word that opens a day; a head has none. Its lines are not cut for it. */
  get date(): DateWord | undefined {
    this.#date ??= (this.day ? dateWord(/^[^\r\n]*/.exec(this.text)![0]) : undefined) ?? null;
    return this.#date ?? undefined;
  }

  private cut(): Lines {
    this.#cut ??= splitLines(this.text, this.last);
    return this.#cut;
  }
}

interface Lines {
  readonly lines: readonly string[];
  readonly ends: readonly LineEnd[];
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
  return withBlocks(blocksOf(text, true));
}

export function textOf({ blocks }: Document): string {
  return blocks.map(({ text }) => text).join("");
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

/**
 * Which blocks differ between two states of a document: those from `from` up to `before` became those up to `after`.
 */
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
  return replaceLines(document, from, end.line, head + text + tail);
}

/** Replaces whole lines, their ends among them, and cuts only the blocks they stood in anew. */
function replaceLines(document: Document, from: number, to: number, inserted: string): Document {
  let first = blockIndexAt(document, from);
  const last = blockIndexAt(document, to);
  const [above, below] = [document.blocks[first]!, document.blocks[last]!];
  const before = above.text.slice(0, offsetOf(above, from - document.starts[first]!));
  let region = before + inserted + below.text.slice(offsetOf(below, to - document.starts[last]! + 1));
  if (first > 0 && !beginsWithDay(region)) {
    first--; // the day line is gone: its lines fall to the day before
    region = document.blocks[first]!.text + region;
  }
  const blocks = document.blocks.slice(0, first);
  for (const block of blocksOf(region, last + 1 === document.blocks.length)) blocks.push(block);
  for (let i = last + 1; i < document.blocks.length; i++) blocks.push(document.blocks[i]!);
  return withBlocks(blocks);
}

function beginsWithDay(text: string): boolean {
  return isDayLine(text.slice(0, endOfLine(text, 0)));
}

/** Where a line of a block begins in its text, in UTF-16 units; the text's length for the line behind the last. */
function offsetOf({ lines, ends }: Block, line: number): number {
  let offset = 0;
  for (let i = 0; i < line && i < lines.length; i++) offset += lines[i]!.length + ends[i]!.length;
  return offset;
}

/** A text cut at LF, CRLF and lone CR. `last` says that what stands behind the last line end is a line too. */
function splitLines(text: string, last: boolean): Lines {
  const { lines, ends } = text.includes("\r") ? splitAtAnyEnd(text) : splitAtNewlines(text);
  if (!last) {
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

/** Where the line that holds an offset ends, without its line end. */
function endOfLine(text: string, at: number): number {
  const ends = /[\n\r]/g;
  ends.lastIndex = at;
  return ends.exec(text)?.index ?? text.length;
}

/**
 * Cuts a text before each day line. Ten years have tens of thousands of lines of which few open a day or name anything:
 * an expression finds those that may, and only they are looked at.
 */
function blocksOf(text: string, last: boolean): Block[] {
  const opening = mayOpenOrName();
  const ends = text.includes("\r") ? /\r\n|\n|\r/g : undefined;
  const blocks: Block[] = [];
  let from = 0;
  let day = false;
  let mayName = false;
  for (let match = opening.exec(text); match; match = opening.exec(text)) {
    const at = lineStart(text, match.index);
    if (at < from) continue;
    const line = text.slice(at, endOfLine(text, at));
    if (isDayLine(line)) {
      if (at > from) blocks.push(new Block(text.slice(from, at), countEnds(text, from, at, ends), day, mayName, false));
      from = at;
      day = true;
      mayName = false;
    } else mayName ||= mayDeclareName(line);
  }
  const lines = countEnds(text, from, text.length, ends) + (last ? 1 : 0);
  blocks.push(new Block(text.slice(from), lines, day, mayName, last));
  return blocks;
}

/**
 * Where the line begins that opens with what stands at an offset, behind space and a bullet; -1 where other things
 * stand before it: U+2028 is space, and ends no line of a journal as it does for an expression.
 */
function lineStart(text: string, opening: number): number {
  let at = spaceBefore(text, opening);
  if (at < opening && BULLETS.includes(text[at - 1] ?? " ")) at = spaceBefore(text, at - 1);
  return at === 0 || text[at - 1] === "\n" || text[at - 1] === "\r" ? at : -1;
}

const BULLETS = "-*•";

function spaceBefore(text: string, end: number): number {
  let at = end;
  while (at > 0 && text[at - 1] !== "\n" && text[at - 1] !== "\r" && isSpace(text.charCodeAt(at - 1))) at--;
  return at;
}

/** The beginning of a line that may open a day, or declare a name. */
function mayOpenOrName(): RegExp {
  // U+2028 and U+2029 end a line for an expression: each of a run would be a beginning.
  const space = "[^\\S\\n\\r\\u2028\\u2029]";
  const naming = `(?:${NAMING_WORDS.join("|")})${space}*[${QUOTES}]`;
  const date = `\\d+[${DATE_SIGNS.replace("-", "\\-")}]\\d|${dateOpenings()}`;
  return new RegExp(`^${space}*(?:[-*•]${space}+)?(?:${date}|${naming})`, "gim");
}

/** The line ends from one offset to another. */
function countEnds(text: string, from: number, to: number, ends: RegExp | undefined): number {
  let count = 0;
  if (ends) {
    ends.lastIndex = from;
    for (let match = ends.exec(text); match && match.index < to; match = ends.exec(text)) count++;
  } else for (let at = text.indexOf("\n", from); at >= 0 && at < to; at = text.indexOf("\n", at + 1)) count++;
  return count;
}

function withBlocks(blocks: readonly Block[]): Document {
  const starts = new Array<number>(blocks.length);
  let line = 0;
  for (let i = 0; i < blocks.length; i++) {
    starts[i] = line;
    line += blocks[i]!.lineCount;
  }
  return { blocks, starts, lineCount: line };
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
