import { type Document, lineAt } from "../../syntax/document/document.ts";
import type { PlacedLine } from "./merge-days.ts";

/** One conflict that a merge left, by the absolute lines of its markers. */
export interface Conflict {
  /** `<<<<<<<`. */
  readonly open: number;
  /** `|||||||`, above what both sides were made from, where git writes that (`diff3`, `zdiff3`). */
  readonly base?: number;
  /** `=======`. */
  readonly middle: number;
  /** `>>>>>>>`. */
  readonly close: number;
}

/** Every conflict of a file whose markers are all there, in its order. Days without a marker are not cut into lines. */
export function conflictsIn({ blocks, starts }: Document): readonly Conflict[] {
  const found: Conflict[] = [];
  let open: { readonly open: number; base?: number; middle?: number } | undefined;
  for (const [index, { text }] of blocks.entries()) {
    if (!(open ? MARKER.test(text) : text.includes(OPENING))) continue;
    for (const [i, line] of blocks[index]!.lines.entries()) {
      const sign = MARKER_LINE.exec(line)?.[1]?.[0];
      const at = starts[index]! + i;
      if (sign === "<") open = { open: at };
      else if (!open) continue;
      else if (sign === "|" && open.base === undefined && open.middle === undefined) open.base = at;
      else if (sign === "=" && open.middle === undefined) open.middle = at;
      else if (sign === ">" && open.middle !== undefined) {
        found.push({ ...open, middle: open.middle, close: at });
        open = undefined;
      } else if (sign !== undefined) open = undefined; // no merge writes them so
    }
  }
  return found;
}

/** Whether a file has any marker, also one whose fellows are gone. */
export function hasMarkers({ blocks }: Document): boolean {
  return blocks.some(({ text }) => MARKER.test(text));
}

const OPENING = "<<<<<<<";
const MARKER = /(?:^|[\r\n])(?:<{7}|>{7}|={7}|\|{7})(?=\s|$)/;
const MARKER_LINE = /^(<{7}|>{7}|={7}|\|{7})(?:\s|$)/;

/** The side above `=======`, or the one below it. */
export type Side = "upper" | "lower";

/** The lines of one side, the end excluded. */
export function sideOf({ open, base, middle, close }: Conflict, side: Side): { from: number; to: number } {
  return side === "upper" ? { from: open + 1, to: base ?? middle } : { from: middle + 1, to: close };
}

/** Lines from one on up to another as they would be if in every conflict among them one side were kept. */
export function linesKeeping(
  document: Document,
  conflicts: readonly Conflict[],
  side: Side,
  { from, to }: { readonly from: number; readonly to: number },
): readonly PlacedLine[] {
  const lines: PlacedLine[] = [];
  const take = (first: number, end: number): void => {
    for (let at = first; at < end; at++) lines.push({ text: lineAt(document, at), at });
  };
  let at = from;
  for (const conflict of conflicts.filter(({ open, close }) => open >= from && close < to)) {
    take(at, conflict.open);
    const kept = sideOf(conflict, side);
    take(kept.from, kept.to);
    at = conflict.close + 1;
  }
  take(at, to);
  return lines;
}
