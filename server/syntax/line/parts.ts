import type { Item } from "../words/meaning.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import type { Cut, Part } from "./cut.ts";
import type { LineReader } from "./line-reader.ts";

export interface PartContext {
  readonly vocabulary: Vocabulary;
  /** What was read before with this vocabulary: owned by whoever owns that. */
  readonly memo: LineReader;
}

/** The parts of a line, with what their words mean. */
export function partsOf(line: string, cuts: readonly Cut[], { memo }: PartContext): Part[] {
  return cuts.map(({ start, end, after }) => ({ start, end, after, items: memo.table.itemsIn(line, start, end) }));
}

/**
 * The items of a text as one part; columns count from its beginning. The same array for the same text while it is kept.
 */
export function readPartOnce(text: string, { memo }: PartContext): readonly Item[] {
  return memo.table.of(text).items();
}
