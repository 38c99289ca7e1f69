import { PLACE_TABLES } from "../lexicon/places/place-tables.ts";
import { phraseKey } from "./fold.ts";

/** What the whole piece is called where nobody named it in words of their own; read in a journal of any language. */
export const WHOLE_PIECE = "from the top";

const KEYS: ReadonlySet<string> = new Set(
  [WHOLE_PIECE, ...Object.values(PLACE_TABLES).flatMap(({ whole }) => whole.split(" | "))].map(phraseKey),
);

/** Whether a place, as it was read, is all of its piece: `from the top`, `start to finish`, `von Anfang an`. */
export function isWholePiecePlace(text: string): boolean {
  return KEYS.has(phraseKey(text));
}
