import type { Item } from "../words/meaning.ts";
import { AFTER_COLON, AFTER_COMMA, FIRST, JOINED, LineCuts } from "./line-cuts.ts";

/** One part of a line between separators, without the white space at its ends, and the separator before it. */
export interface Cut {
  readonly start: number;
  readonly end: number;
  readonly after: "" | "," | ":" | ">";
}

/** A part with what its words mean; columns are those of the line. */
export interface Part extends Cut {
  readonly items: readonly Item[];
}

/** A line in its parts, and where its remark begins (the length of the line where it has none). */
export interface CutLine {
  readonly cuts: readonly Cut[];
  readonly remark: number;
}

/** Cuts a line at commas, colons and `>`, outside quotes and before its remark. The colon of `19:30` cuts nothing. */
export function cutLine(line: string, from = 0): CutLine {
  const cuts = new LineCuts();
  cuts.cut(line, from, line.length, 0);
  return { cuts: partCuts(cuts), remark: cuts.remark };
}

/** The parts that pieces make: those that are joined are one. */
function partCuts(cuts: LineCuts): Cut[] {
  const parts: { start: number; end: number; after: Cut["after"] }[] = [];
  for (let i = 0; i < cuts.count; i++) {
    if (cuts.after[i] === JOINED) parts.at(-1)!.end = cuts.ends[i]!;
    else parts.push({ start: cuts.starts[i]!, end: cuts.ends[i]!, after: separatorText(cuts.after[i]!) });
  }
  return parts;
}

export function separatorText(after: number): Cut["after"] {
  if (after === FIRST || after === JOINED) return "";
  return after === AFTER_COMMA ? "," : after === AFTER_COLON ? ":" : ">";
}

/** The text of a remark without its mark. */
export function remarkText(line: string, at: number): string {
  return line
    .slice(at)
    .replace(/^(?:--|[–—])-*\s*/, "")
    .trim();
}

/** Whether the sign that a remark begins with stands here: `--`, `–` or `—`. */
export function isRemarkMark(line: string, at: number): boolean {
  return line.startsWith("--", at) || line[at] === "–" || line[at] === "—";
}
