// placeholder
import type { Journal } from "../journal/journal.ts";
import type { Range, TextEdit } from "./types.ts";

export function formatEdits(_journal: Journal, _uri: string, _range?: Range): readonly TextEdit[] {
  return NONE;
}

const NONE = [] as const;
