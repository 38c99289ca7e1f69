// placeholder
import type { Journal } from "../journal/journal.ts";
import type { Position } from "../syntax/document.ts";
import type { Hover, Settings } from "./types.ts";

export function hoverAt(
  _journal: Journal,
  _uri: string,
  _position: Position,
  _options: Settings & { today: number },
): Hover | undefined {
  return undefined;
}
