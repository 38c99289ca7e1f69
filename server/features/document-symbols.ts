// placeholder
import type { Journal } from "../journal/journal.ts";
import type { DocumentSymbol } from "./types.ts";

export function documentSymbols(_journal: Journal, _uri: string): readonly DocumentSymbol[] {
  return NONE;
}

const NONE = [] as const;
