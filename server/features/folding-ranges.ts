// placeholder
import type { Journal } from "../journal/journal.ts";
import type { FoldingRange } from "./types.ts";

export function foldingRanges(_journal: Journal, _uri: string): readonly FoldingRange[] {
  return NONE;
}

const NONE = [] as const;
