import type { AttemptRecord } from "../../history/record.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Block } from "../../syntax/document/document.ts";

/** The line that is being typed, which may say anything the next moment. */
export interface TypedAt {
  readonly uri: string;
  readonly day: Block;
  /** From 0, within the day. */
  readonly line: number;
}

/**
 * Tells whether the line of an attempt still stands in the journal, on another line than the one that is being typed.
 * The history may be older than the last edits: a day that was edited since counts by its lines' words.
 */
export function standsStill(journal: Journal, { uri, day, line }: TypedAt): (record: AttemptRecord) => boolean {
  return (record) => {
    const blocks = blocksOf(journal, record.uri);
    if (blocks.has(record.block)) return record.block !== day || record.line !== line;
    const words = record.block.lines[record.line]!.trim();
    return [...blocks].some(
      (block) =>
        dayOfBlock(block) === record.day &&
        block.lines.some((text, i) => text.trim() === words && (record.uri !== uri || block !== day || i !== line)),
    );
  };
}

function blocksOf({ files, memo }: Journal, uri: string): ReadonlySet<Block> {
  const document = files.get(uri);
  return document ? memo.of(document, "set of blocks", () => new Set(document.blocks)) : NONE;
}

const NONE: ReadonlySet<Block> = new Set();
