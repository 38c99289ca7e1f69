import { readDeclaration } from "../../journal/declarations/declaration.ts";
import { cutLine } from "../../syntax/line/cut.ts";
import type { Line, LineOf } from "../../syntax/line/line.ts";
import { closingQuote, isQuote } from "../../syntax/words/token.ts";
import { isReadEntry } from "../explain/read-in-full.ts";
import { separatorsOf } from "../explain/separators.ts";
import { missingCommas, type ReadingContext } from "./missing-commas.ts";
import { readsTheSame } from "./same-reading.ts";

/** Replaces the columns from `start` to `end` of a line. */
export interface LineEdit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

const NO_EDITS: readonly LineEdit[] = [];

/** White space of the language, except a byte order mark: that is never touched. */
const SPACE = /[^\S\uFEFF]/;
/** Spacing that may be other than canonical. Most lines have none of it and need not be cut up. */
const UNEVEN = /[^\S ]| {2}| [,:]|[,:>→]\S|\S[>→]/;

export interface LayoutContext extends ReadingContext {
  readonly head: boolean;
  /** White space alone may change: no comma is put in. */
  readonly spacingOnly: boolean;
}

/**
 * What changes a line into its canonical layout, in order: indentation, one space where spaces stand, `, ` between
 * terms, nothing behind the last character. No word, sign or quote is changed. The layout is taken back as far as the
 * line would be read differently in it; a line that cannot be read loses trailing white space alone.
 *
 * @param indent what the line is indented by; undefined leaves that as typed.
 */
export function lineEdits(
  text: string,
  line: Line,
  indent: string | undefined,
  context: LayoutContext,
): readonly LineEdit[] {
  if (line.type === "too long") return NO_EDITS;
  const trailing = trailingEdit(text);
  if (line.type === "blank") return trailing;
  const readable = isReadable(text, line, context);
  const outer = readable ? [...indentEdit(text, indent), ...trailing] : trailing;
  if (!readable || line.type === "remark") return firstThatReadsTheSame([outer, trailing], text, line, context);
  const commas = context.spacingOnly ? NO_COMMAS : missingCommas(text, line, context);
  const layouts = [commas, NO_COMMAS].map((each) => [
    ...indentEdit(text, indent),
    ...innerEdits(text, line, each),
    ...trailing,
  ]);
  return firstThatReadsTheSame([...layouts, outer, trailing], text, line, context);
}

/** The text of a line after edits that are in order and do not overlap. */
export function applyLineEdits(text: string, edits: readonly LineEdit[]): string {
  let result = "";
  let from = 0;
  for (const edit of edits) {
    result += text.slice(from, edit.start) + edit.text;
    from = edit.end;
  }
  return result + text.slice(from);
}

const NO_COMMAS: ReadonlySet<number> = new Set();

function firstThatReadsTheSame(
  layouts: readonly (readonly LineEdit[])[],
  text: string,
  line: Line,
  context: ReadingContext & { readonly head: boolean },
): readonly LineEdit[] {
  const kept = layouts.find(
    (edits) => edits.length === 0 || readsTheSame({ text, line }, applyLineEdits(text, edits), context),
  );
  return kept ?? NO_EDITS;
}

/** Whether everything on the line was understood. The reason for a rest may be any words. */
function isReadable(text: string, line: Line, context: ReadingContext): boolean {
  switch (line.type) {
    case "remark":
      return true;
    case "entry":
      return isReadEntry(line) && !hasOpenQuote(text, line);
    case "day":
    case "session":
    case "phase":
    case "break":
    case "plan":
    case "rest":
      return isReadFrame(line) && !hasOpenQuote(text, line);
    case "declaration": {
      const { faults } = readDeclaration(text, line, context);
      return faults.length === 0 && !hasOpenQuote(text, line);
    }
    default:
      return false;
  }
}

function isReadFrame({ items }: LineOf<"day" | "session" | "phase" | "break" | "plan" | "rest">): boolean {
  const rest = items.findIndex(({ meaning }) => meaning.type === "line word" && meaning.id === "rest");
  const read = rest < 0 ? items : items.slice(0, rest);
  return read.every(({ meaning }) => meaning.type !== "unknown");
}

function hasOpenQuote(text: string, line: Line): boolean {
  const end = line.remark?.start ?? text.length;
  for (let i = 0; i < end; i++) {
    const character = text[i]!;
    if ((character <= "~" && character !== '"') || !isQuote(character)) continue;
    i = closingQuote(text, i);
    if (i < 0) return true;
  }
  return false;
}

function trailingEdit(text: string): readonly LineEdit[] {
  let start = text.length;
  while (start > 0 && SPACE.test(text[start - 1]!)) start--;
  return start === text.length ? NO_EDITS : [{ start, end: text.length, text: "" }];
}

function indentEdit(text: string, indent: string | undefined): readonly LineEdit[] {
  if (indent === undefined) return NO_EDITS;
  const lead = text.slice(0, text.search(/[^\s\uFEFF]/));
  return changed(text, lead.lastIndexOf("\uFEFF") + 1, lead.length, indent);
}

/** A separator, or what stands between separators and spaces; a quoted text is never cut. */
interface Atom {
  readonly start: number;
  readonly end: number;
  readonly separator: string;
}

/** Spaces and commas between the first character of a line and its remark. */
function innerEdits(text: string, line: Line, commas: ReadonlySet<number>): readonly LineEdit[] {
  if (commas.size === 0 && !UNEVEN.test(text.trim())) return NO_EDITS;
  const atoms = atomsOf(text, line);
  return atoms.slice(1).flatMap((atom, i) => {
    const before = atoms[i]!;
    return changed(text, before.end, atom.start, between(text, before, atom, commas));
  });
}

/** What belongs between two atoms. */
function between(text: string, a: Atom, b: Atom, commas: ReadonlySet<number>): string {
  if (b.separator === "," || b.separator === ":") return "";
  if (a.separator || b.separator) return " ";
  return commas.has(a.end) ? ", " : oneSpace(text.slice(a.end, b.start));
}

/** A no-break space that stands alone was meant. */
function oneSpace(run: string): string {
  return run === "\u00A0" || run === "\u202F" ? run : " ";
}

function atomsOf(text: string, line: Line): readonly Atom[] {
  const first = text.search(/[^\s\uFEFF]/);
  const { cuts, remark } = cutLine(text, line.type === "day" ? line.dateEnd : first);
  const separators = new Map(separatorsOf(text, cuts).map(({ column, sign }) => [column, sign] as const));
  const atoms: Atom[] = [];
  for (let i = first; i < remark; ) {
    const separator = separators.get(i);
    if (SPACE.test(text[i]!)) i++;
    else if (separator) atoms.push({ start: i, end: ++i, separator });
    else {
      const end = endOfWord(text, i, remark, separators);
      atoms.push({ start: i, end, separator: "" });
      i = end;
    }
  }
  if (remark < text.length) atoms.push({ start: remark, end: text.length, separator: "" });
  return atoms;
}

function endOfWord(text: string, from: number, to: number, separators: ReadonlyMap<number, string>): number {
  let i = from;
  while (i < to && !SPACE.test(text[i]!) && !separators.has(i)) {
    i = (isQuote(text[i]!) ? closingQuote(text, i) : i) + 1;
  }
  return i;
}

/** The edit that makes a stretch of a line into `wanted`, without what they begin and end with in common. */
function changed(text: string, start: number, end: number, wanted: string): readonly LineEdit[] {
  const found = text.slice(start, end);
  if (found === wanted) return NO_EDITS;
  const shorter = Math.min(found.length, wanted.length);
  let head = 0;
  while (head < shorter && found[head] === wanted[head]) head++;
  let tail = 0;
  while (tail < shorter - head && found.at(-1 - tail) === wanted.at(-1 - tail)) tail++;
  return [{ start: start + head, end: end - tail, text: wanted.slice(head, wanted.length - tail) }];
}
