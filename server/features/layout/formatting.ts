import type { Journal } from "../../journal/journal.ts";
import { endsPlan } from "../../journal/plan-form.ts";
import { type Block, blockIndexAt } from "../../syntax/document/document.ts";
import type { Line } from "../../syntax/line/line.ts";
import { LineReader } from "../../syntax/line/line-reader.ts";
import { INDENT } from "../explain/indentation.ts";
import type { Range, TextEdit } from "../types.ts";
import { applyLineEdits, type LayoutContext, type LineEdit, lineEdits } from "./line-layout.ts";

/**
 * The edits that lay out a file, or the lines that a range touches, canonically: in order, none upon another, each no
 * longer than what changes. Days, sessions, phases and declarations begin at the first column; entries, `plan`, `rest`
 * and breaks one step in below a phase line; a plain remark right under an entry one step further in than that, any
 * other remark as typed. Of blank lines in a row one is left. Line ends and a byte order mark stay, and so does all
 * that is said.
 */
export function formatEdits(journal: Journal, uri: string, range?: Range): readonly TextEdit[] {
  return [...eachFormatEdit(journal, uri, range)];
}

/**
 * The same one by one, for texts of which all edits at once are many times the text.
 *
 * @param onLine told of each line before it is laid out
 */
export function* eachFormatEdit(
  journal: Journal,
  uri: string,
  range?: Range,
  onLine?: (line: number) => void,
): Generator<TextEdit, void, undefined> {
  yield* laidOut(journal, uri, range, { onLine, spacingOnly: false });
}

/**
 * The edits that lay out one line when it is left, as the cursor goes to another: of white space between and behind
 * its words alone. What it is indented by stays as the editor had it, no word and no comma comes, no line goes, and no
 * other line is touched.
 */
export function leftLineEdits(journal: Journal, uri: string, line: number): readonly TextEdit[] {
  const at = { line, character: 0 };
  return line < 0 ? [] : [...laidOut(journal, uri, { start: at, end: at }, { spacingOnly: true })];
}

interface LayingOut {
  readonly spacingOnly: boolean;
  readonly onLine?: ((line: number) => void) | undefined;
}

function* laidOut(
  journal: Journal,
  uri: string,
  range: Range | undefined,
  { spacingOnly, onLine }: LayingOut,
): Generator<TextEdit, void, undefined> {
  const document = journal.files.get(uri);
  if (!document) return;
  const from = Math.max(0, range?.start.line ?? 0);
  const to = Math.min(document.lineCount - 1, range?.end.line ?? document.lineCount - 1);
  if (to < from) return;
  const context = { vocabulary: journal.vocabulary, memo: new LineReader(journal.vocabulary), spacingOnly };
  for (let i = blockIndexAt(document, from); i < document.blocks.length && document.starts[i]! <= to; i++) {
    const block = document.blocks[i]!;
    yield* new BlockLayout(block, document.starts[i]!, context).edits(journal.linesOnce(block), from, to, onLine);
  }
}

/** Goes down a block once, and remembers what the lines so far opened. Lines count from the block's first. */
class BlockLayout {
  private readonly context: LayoutContext;
  private belowPhase = false;
  /** What the entry that a remark may belong to is indented by; undefined where none stands right above. */
  private entryIndent: string | undefined;
  /** The end of the last line that stays. */
  private lineEnd = "";

  constructor(
    private readonly block: Block,
    private readonly firstLine: number,
    context: Omit<LayoutContext, "head">,
  ) {
    this.context = { ...context, head: !block.day };
  }

  /** The edits of the lines from one absolute line to another; `lines` are all of the block's as they were read. */
  *edits(lines: Iterable<Line>, from: number, to: number, onLine?: (line: number) => void): Generator<TextEdit, void> {
    let i = -1;
    for (const line of lines) {
      const at = this.firstLine + ++i;
      if (at > to) break;
      onLine?.(at);
      const text = this.block.lines[i]!;
      const within = at >= from;
      if (within && !this.context.spacingOnly && this.isSpareBlank(i, at === to)) {
        yield deletion(at);
        continue;
      }
      const changes = within && !this.joinsLineEnds(i) ? this.layOut(line, text) : [];
      for (const change of changes) yield placed(change, at);
      this.remember(line, applyLineEdits(text, changes), i);
    }
  }

  private layOut(line: Line, text: string): readonly LineEdit[] {
    const indent = this.context.spacingOnly ? undefined : this.indentOf(line, text);
    return lineEdits(text, line, indent, this.context);
  }

  /** What a line is to be indented by; undefined leaves it as typed. */
  private indentOf(line: Line, text: string): string | undefined {
    switch (line.type) {
      case "day":
      case "session":
      case "phase":
      case "declaration":
        return "";
      case "entry":
      case "break":
      case "plan":
      case "rest":
        return this.belowPhase ? INDENT : "";
      case "remark": {
        const ofEntry = this.entryIndent !== undefined && !endsPlan(line);
        return ofEntry ? this.entryIndent + INDENT : leadOf(text).replaceAll("\t", INDENT);
      }
      default:
        return undefined;
    }
  }

  private remember(line: Line, text: string, i: number): void {
    if (line.type === "phase") this.belowPhase = true;
    if (line.type === "day" || line.type === "session") this.belowPhase = false;
    if (line.type === "entry") this.entryIndent = /^ *$/.test(leadOf(text)) ? leadOf(text) : undefined;
    else if (line.type !== "remark") this.entryIndent = undefined;
    this.lineEnd = this.block.ends[i]!;
  }

  /** A blank line under a blank line. What follows the last line end of a file is no line. */
  private isSpareBlank(i: number, last: boolean): boolean {
    const { lines, ends } = this.block;
    if (i === 0 || ends[i] === "" || !isBlank(lines[i]!) || !isBlank(lines[i - 1]!)) return false;
    return !(last && this.lineEnd === "\r" && lines[i + 1] === "" && ends[i + 1] === "\n");
  }

  /** Emptied, this line would leave a CR and an LF side by side: one line end out of two. */
  private joinsLineEnds(i: number): boolean {
    return this.lineEnd === "\r" && this.block.ends[i] === "\n" && isBlank(this.block.lines[i]!);
  }
}

/** A line with a byte order mark is none: that stays. */
function isBlank(text: string): boolean {
  return !/[\S\uFEFF]/.test(text);
}

/** The white space that a line begins with, a byte order mark left out. */
function leadOf(text: string): string {
  const lead = text.slice(0, Math.max(0, text.search(/[^\s\uFEFF]/)));
  return lead.slice(lead.lastIndexOf("\uFEFF") + 1);
}

function placed({ start, end, text }: LineEdit, line: number): TextEdit {
  return { range: { start: { line, character: start }, end: { line, character: end } }, newText: text };
}

function deletion(line: number): TextEdit {
  return { range: { start: { line, character: 0 }, end: { line: line + 1, character: 0 } }, newText: "" };
}
