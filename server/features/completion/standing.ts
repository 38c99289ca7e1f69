import type { AttemptRecord } from "../../history/record.ts";
import { datedBlocks } from "../../journal/dated-blocks.ts";
import type { Journal } from "../../journal/journal.ts";
import { type Block, changedBlocks, type Document } from "../../syntax/document/document.ts";

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
    return datedBlocks(journal, record.day, record.day).some(
      ({ uri: its, block }) =>
        its === record.uri &&
        block.lines.some((text, i) => text.trim() === words && (its !== uri || block !== day || i !== line)),
    );
  };
}

interface Blocks {
  readonly document: Document;
  readonly set: Set<Block>;
}

/** Made once for a file; from one state to the next only the blocks that changed come and go. */
function blocksOf({ files, memo }: Journal, uri: string): ReadonlySet<Block> {
  const document = files.get(uri);
  if (!document) return NONE;
  const last = memo.latest<Blocks>("set of blocks", uri);
  if (last?.document === document) return last.set;
  const set = last ? movedOn(last, document) : new Set(document.blocks);
  memo.setLatest<Blocks>("set of blocks", uri, { document, set });
  return set;
}

function movedOn({ document: before, set }: Blocks, now: Document): Set<Block> {
  const changed = changedBlocks(before, now);
  for (const block of before.blocks.slice(changed.from, changed.before)) set.delete(block);
  for (const block of now.blocks.slice(changed.from, changed.after)) set.add(block);
  return set;
}

const NONE: ReadonlySet<Block> = new Set();
