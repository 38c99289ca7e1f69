import type { Journal } from "../../journal/journal.ts";
import type { BlockModel, Entry } from "../../journal/model.ts";
import {
  type Block,
  blockIndexAt,
  type Document,
  type LineEnd,
  type Position,
} from "../../syntax/document/document.ts";
import { entryTexts } from "./entry-texts.ts";
import { type Refusal, refusal } from "./refusal.ts";

/** An entry of a day, with the block it stands in. */
export interface EntryUnderCursor {
  readonly ok: true;
  readonly document: Document;
  readonly block: Block;
  /** The absolute line at which the block begins. */
  readonly first: number;
  /** The entry's line, within the block. */
  readonly line: number;
  readonly text: string;
  readonly model: BlockModel;
  readonly entry: Entry;
}

/** The entry on the line of a position. Entries above the first day count for nothing, and are none here. */
export function entryUnderCursor(journal: Journal, uri: string, position: Position): EntryUnderCursor | Refusal {
  const document = journal.files.get(uri);
  if (!document || position.line < 0 || position.line >= document.lineCount) return NO_ENTRY;
  const index = blockIndexAt(document, position.line);
  const block = document.blocks[index]!;
  const first = document.starts[index]!;
  const line = position.line - first;
  const model = journal.model(block);
  const entry = block.day ? model.entries.find(({ place }) => place.line === line) : undefined;
  return entry ? { ok: true, document, block, first, line, text: block.lines[line]!, model, entry } : NO_ENTRY;
}

const NO_ENTRY = refusal(entryTexts.noEntry);

/** The line end that a file is written with: its first one. */
export function lineEndOf({ blocks }: Document): LineEnd {
  return blocks[0]!.ends[0] || "\n";
}
