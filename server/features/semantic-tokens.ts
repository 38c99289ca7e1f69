// placeholder
import type { Journal } from "../journal/journal.ts";
import type { Range } from "./types.ts";

export const TOKEN_TYPES: readonly string[] = [];
export const TOKEN_MODIFIERS: readonly string[] = [];

export function semanticTokens(_journal: Journal, _uri: string, _range?: Range): number[] {
  return [];
}
