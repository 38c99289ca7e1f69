import { namesShortenedTo } from "../music/instruments/instruments.ts";
import { nameKey } from "../syntax/words/fold.ts";
import type { Vocabulary } from "../syntax/words/vocabulary.ts";

/**
 * What words that name no instrument were meant for: the names that they may be short for, else the nearest one, if
 * any.
 */
export function instrumentsMeant(words: string, vocabulary: Vocabulary): readonly string[] {
  const shared = namesShortenedTo(nameKey(words));
  if (shared.length > 0) return shared;
  const near = vocabulary.nearest(words, vocabulary.instrumentNames);
  return near === undefined ? [] : [near];
}
