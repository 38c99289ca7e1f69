import { BESIDE_ARTICULATIONS } from "../lexicon/articulations/beside-others.ts";
import { phraseKey } from "./fold.ts";
import type { Item, MeaningOf } from "./meaning.ts";
import type { Vocabulary } from "./vocabulary.ts";
import type { Words } from "./words.ts";

/** Ways of playing in one word, each by itself: `tg/sl`, `slurred/staccato`; among others `st` is short enough. */
export function articulationRowAt(
  { tokens, vocabulary }: Words,
  i: number,
): { readonly length: number; readonly items: readonly Item[] } | undefined {
  const { text, start, quote } = tokens[i]!;
  if (quote || text.indexOf("/") <= 0) return undefined;
  const items: Item[] = [];
  for (const { 0: word, index } of text.matchAll(/[^/]+/g)) {
    const meaning = articulationOf(word, vocabulary);
    if (!meaning) return undefined;
    items.push({ start: start + index, end: start + index + word.length, meaning });
  }
  return items.length > 1 && items.some(({ start: from, end }) => end - from > 1) ? { length: 1, items } : undefined;
}

function articulationOf(word: string, vocabulary: Vocabulary): MeaningOf<"articulation"> | undefined {
  const named = vocabulary.meanings(phraseKey(word));
  const meanings = named ?? vocabulary.meanings(phraseKey(BESIDE_ARTICULATIONS.get(word.toLowerCase()) ?? ""));
  return meanings?.find((each) => each.type === "articulation");
}
