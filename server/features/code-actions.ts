// placeholder
import type { Journal } from "../journal/journal.ts";
import type { CodeAction, Range } from "./types.ts";

export function codeActionsIn(
  _journal: Journal,
  _uri: string,
  _range: Range,
  _today: number,
  _only?: readonly string[],
): readonly CodeAction[] {
  return NONE;
}

const NONE = [] as const;
