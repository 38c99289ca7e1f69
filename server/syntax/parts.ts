import type { Cut } from "./cut.ts";
import type { Item, Meaning } from "./meaning.ts";
import { readPart } from "./part.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** Parts read with one vocabulary, by their text. */
export type PartMemo = Map<string, readonly Item[]>;

/** Parts differ little in a journal; past this many something else is being fed in, and the memo starts over. */
const MOST_PARTS = 60_000;

/** One stretch of a line with what its words mean; columns are those of the line. */
export interface Part {
  readonly start: number;
  readonly end: number;
  readonly after: Cut["after"];
  readonly items: readonly Item[];
}

export interface PartContext {
  readonly vocabulary: Vocabulary;
  readonly memo: PartMemo;
}

export function partsOf(line: string, cuts: readonly Cut[], context: PartContext): Part[] {
  return cuts.map(({ start, end, after }) => ({
    start,
    end,
    after,
    items: moved(readPartOnce(line.slice(start, end), context), start),
  }));
}

/** The items of a part, by its text: the same array for the same text while the memo lasts. */
export function readPartOnce(text: string, { vocabulary, memo }: PartContext): readonly Item[] {
  const known = memo.get(text);
  if (known) return known;
  const items = readPart(text, vocabulary);
  if (memo.size >= MOST_PARTS) memo.clear();
  memo.set(text, items);
  return items;
}

function moved(items: readonly Item<Meaning>[], by: number): readonly Item[] {
  return by === 0 ? items : items.map(({ start, end, meaning }) => ({ start: start + by, end: end + by, meaning }));
}
