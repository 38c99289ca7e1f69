import { namesShortenedTo } from "../music/instruments/instruments.ts";
import { NAMES_IN_LANGUAGES } from "../music/instruments/names-in-languages.ts";
import { nameKey, phraseKey, withoutAccents } from "../syntax/words/fold.ts";
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

/** The id of the instrument that is called so in another language than English, with its accents or without. */
export function instrumentAbroad(words: string): string | undefined {
  const key = plainKey(words);
  return Object.values(NAMES_IN_LANGUAGES)
    .flatMap((names) => Object.entries(names))
    .find(([, names]) => names.split(" | ").some((name) => plainKey(name) === key))?.[0];
}

function plainKey(words: string): string {
  return phraseKey(withoutAccents(words.trim()));
}
