import { closingQuote, isQuote } from "../words/token.ts";
import { isSpace } from "./day-line.ts";

/** One stretch of a line between separators, without the white space at its ends, and the separator before it. */
export interface Cut {
  readonly start: number;
  readonly end: number;
  readonly after: "" | "," | ":" | ">";
}

/** A line in its stretches, and where its remark begins (the length of the line where it has none). */
export interface CutLine {
  readonly cuts: readonly Cut[];
  readonly remark: number;
}

const SPACE = /\s/;

const COMMA = 44;
const HYPHEN = 45;
const COLON = 58;
const GREATER = 62;
const DOUBLE_QUOTE = 34;
const FIRST_BEYOND_ASCII = 128;

/** Cuts a line at commas, colons and `>`, outside quotes and before its remark. The colon of `19:30` cuts nothing. */
export function cutLine(line: string, from = 0): CutLine {
  return NEEDS_CARE.test(line) ? cutWithCare(line, from) : { cuts: cutAtCommas(line, from), remark: line.length };
}

/** What may be a quote, another separator than a comma, or the beginning of a remark. Most lines have none of it. */
const NEEDS_CARE = /["“”„«»‟:>→–—]|--/;

function cutAtCommas(line: string, from: number): Cut[] {
  const cuts: Cut[] = [];
  let start = from;
  for (let comma = line.indexOf(",", from); comma >= 0; comma = line.indexOf(",", start)) {
    cuts.push(trimmed(line, start, comma, start === from ? "" : ","));
    start = comma + 1;
  }
  cuts.push(trimmed(line, start, line.length, start === from ? "" : ","));
  return cuts;
}

function cutWithCare(line: string, from: number): CutLine {
  const cuts: Cut[] = [];
  let start = from;
  let after: Cut["after"] = "";
  let i = from;
  for (; i < line.length; i++) {
    const code = line.charCodeAt(i);
    if (code > GREATER && code < FIRST_BEYOND_ASCII) continue; // letters, most often
    if ((code === HYPHEN || code >= FIRST_BEYOND_ASCII) && isRemarkAt(line, i, line[i]!)) break;
    if ((code === DOUBLE_QUOTE || code >= FIRST_BEYOND_ASCII) && isQuote(line[i]!)) {
      const close = closingQuote(line, i);
      if (close >= 0) i = close;
      continue;
    }
    const separator = separatorAt(line, i, code);
    if (!separator) continue;
    cuts.push(trimmed(line, start, i, after));
    start = i + 1;
    after = separator;
  }
  cuts.push(trimmed(line, start, i, after));
  return { cuts, remark: i };
}

/**
 * The same cuts one after another, with no object for each: for going through very many lines. `next` is false when there
 * are no more; the fields are those of `Cut`.
 */
export class CutCursor {
  start = 0;
  end = 0;
  after: Cut["after"] = "";
  remark = 0;
  private line = "";
  private at = 0;
  private first = true;
  private careful: readonly Cut[] | undefined;

  open(line: string, from: number): void {
    const careful = NEEDS_CARE.test(line) ? cutWithCare(line, from) : undefined;
    this.line = line;
    this.at = careful ? 0 : from;
    this.first = true;
    this.careful = careful?.cuts;
    this.remark = careful?.remark ?? line.length;
  }

  next(): boolean {
    return this.careful ? this.nextOf(this.careful) : this.nextAtComma();
  }

  private nextOf(cuts: readonly Cut[]): boolean {
    const cut = cuts[this.at++];
    if (!cut) return false;
    this.start = cut.start;
    this.end = cut.end;
    this.after = cut.after;
    return true;
  }

  private nextAtComma(): boolean {
    const { line } = this;
    if (this.at > line.length) return false;
    const comma = line.indexOf(",", this.at);
    let start = this.at;
    let end = comma < 0 ? line.length : comma;
    this.at = end + 1;
    while (start < end && isSpace(line.charCodeAt(start))) start++;
    while (end > start && isSpace(line.charCodeAt(end - 1))) end--;
    this.start = start;
    this.end = end;
    this.after = this.first ? "" : ",";
    this.first = false;
    return true;
  }
}

/** The text of a remark without its mark; what a remark is for is told by its first sign. */
export function remarkText(
  line: string,
  at: number,
): { readonly kind: "remark" | "question" | "teacher"; readonly text: string } {
  const text = line.slice(at).replace(/^(?:--|[–—])-*\s*/, "");
  if (text.startsWith("?")) return { kind: "question", text: text.slice(1).trim() };
  if (text.startsWith("!")) return { kind: "teacher", text: text.slice(1).trim() };
  return { kind: "remark", text: text.trim() };
}

/** Whether the sign that a remark begins with stands here: `--`, `–` or `—`. */
export function isRemarkMark(line: string, at: number): boolean {
  return line.startsWith("--", at) || line[at] === "–" || line[at] === "—";
}

/** Whether a remark begins here: `--`, `–` or `—`, at the start of the line or between white space. */
function isRemarkAt(line: string, i: number, character: string): boolean {
  if (character !== "-" && character !== "–" && character !== "—") return false;
  const length = character !== "-" ? 1 : line[i + 1] === "-" ? 2 : 0;
  if (!length) return false;
  if (line.slice(0, i).trim() === "") return true;
  const next = line[i + length];
  return SPACE.test(line[i - 1]!) && (next === undefined || SPACE.test(next));
}

function separatorAt(line: string, i: number, code: number): Cut["after"] {
  if (code === COMMA) return ",";
  if (code === GREATER || line[i] === "→") return ">";
  if (code === COLON && !(isDigit(line[i - 1]) && isDigit(line[i + 1]))) return ":";
  return "";
}

function isDigit(character: string | undefined): boolean {
  return character !== undefined && character >= "0" && character <= "9";
}

function trimmed(line: string, from: number, to: number, after: Cut["after"]): Cut {
  let start = from;
  let end = to;
  while (start < end && isSpace(line.charCodeAt(start))) start++;
  while (end > start && isSpace(line.charCodeAt(end - 1))) end--;
  return { start, end, after };
}
