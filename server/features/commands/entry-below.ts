import type { Block, Document } from "../../syntax/document/document.ts";
import { type EntryUnderCursor, lineEndOf } from "../explain/line-under-cursor.ts";
import type { CommandDone } from "./command-answer.ts";

/** An entry to be put in, without what its line is led in by, and the column in it where the cursor goes. */
export interface NewLine {
  readonly text: string;
  readonly cursor: number;
}

export interface InDay {
  readonly uri: string;
  readonly document: Document;
  readonly block: Block;
  readonly first: number;
}

/** A line below an entry and its remarks, led in as the entry is. */
export function belowEntry(
  uri: string,
  { document, block, first, line, text, model, entry }: EntryUnderCursor,
  added: NewLine,
): CommandDone {
  let last = line;
  while (model.lines[last + 1]?.type === "remark") last++;
  const lead = text.slice(0, entry.source.start).replace("\uFEFF", "");
  return insertedBelow({ uri, document, first, block }, last, lead, added);
}

/** In the place of a line below that is empty but for its indentation: room was left there. */
export function insertedBelow(
  { uri, document, block, first }: InDay,
  line: number,
  lead: string,
  added: NewLine,
): CommandDone {
  const start = { line: first + line, character: block.lines[line]!.length };
  const next = block.lines[line + 1] ?? "";
  const isRoom = next !== "" && next.trim() === "";
  const end = isRoom ? { line: start.line + 1, character: next.length } : start;
  return {
    ok: true,
    uri,
    edits: [{ range: { start, end }, newText: lineEndOf(document) + lead + added.text }],
    cursor: { line: start.line + 1, character: lead.length + added.cursor },
  };
}
