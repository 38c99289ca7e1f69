import type { Document } from "../../syntax/document/document.ts";
import type { TextEdit } from "../types.ts";

/**
 * A line of its own behind the last line of the head that says something, or behind another of its lines; before the
 * first day where there is no head.
 */
export function headInsertion(text: string, document: Document, below?: number): TextEdit {
  const head = document.blocks[0]!;
  const end = head.ends.find((each) => each !== "") ?? "\n";
  const last = below ?? (head.day ? -1 : head.lines.findLastIndex((line) => line.trim() !== ""));
  if (last < 0)
    return { range: { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }, newText: `${text}${end}` };
  const character = head.lines[last]!.length;
  return { range: { start: { line: last, character }, end: { line: last, character } }, newText: `${end}${text}` };
}
