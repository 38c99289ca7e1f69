import { namesShortenedTo } from "../music/instruments/instruments.ts";
import { nameKey } from "../syntax/words/fold.ts";
import type { Vocabulary } from "../syntax/words/vocabulary.ts";

/** Every name of an instrument, the journal's own last. */
export function instrumentNames({ own, declared }: Vocabulary): readonly string[] {
  return [
    ...own.filter(({ meaning }) => meaning.type === "instrument").flatMap(({ words }) => words),
    ...declared.instruments.map(nameKey),
  ];
}

/** What words that name no instrument were meant for: the names that they may be short for, else the nearest one, if any. */
export function instrumentsMeant(words: string, vocabulary: Vocabulary): readonly string[] {
  const shared = namesShortenedTo(nameKey(words));
  if (shared.length > 0) return shared;
  const near = vocabulary.nearest(words, instrumentNames(vocabulary));
  return near === undefined ? [] : [near];
}
