// placeholder
import type { Journal } from "../journal/journal.ts";
import type { Range } from "./types.ts";

export { TOKEN_MODIFIERS, TOKEN_TYPES } from "./token-legend.ts";

export function semanticTokens(_journal: Journal, _uri: string, _range?: Range): number[] {
  return [];
}
