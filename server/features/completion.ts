// placeholder
import type { Journal } from "../journal/journal.ts";
import type { Position } from "../syntax/document.ts";
import type { CompletionItem } from "./types.ts";

export function completionsAt(
  _journal: Journal,
  _uri: string,
  _position: Position,
  _today: number,
): readonly CompletionItem[] {
  return [];
}

export function explainCompletion(_journal: Journal, _resolve: { topic: string; key: string }): string | undefined {
  return undefined;
}
