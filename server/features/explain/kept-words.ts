import type { Item } from "../../syntax/words/meaning.ts";
import type { MeaningType } from "../../syntax/words/term-types.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";

/** Pieces of a meaning, of which no meaning came. */
const LEFT: readonly MeaningType[] = [
  "unknown",
  "faulty subject",
  "note",
  "number",
  "range",
  "kind",
  "part of a kind",
  "chord kind",
];

/** Whether words of a line were kept as typed, and nothing was made of them. */
export function isKept({ meaning }: Item, vocabulary: Vocabulary): boolean {
  return meaning.type === "quoted" ? vocabulary.pattern(meaning.text) === undefined : LEFT.includes(meaning.type);
}
