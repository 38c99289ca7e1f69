import { dayOfBlock } from "../../journal/day-of-block.ts";
import type { Journal } from "../../journal/journal.ts";
import { titleIndex } from "../../journal/titles/journal-titles.ts";
import type { PlacedMention } from "./declarations.ts";
import { mentionsIn } from "./mentions.ts";
import { isSameName, type Mention, type Name } from "./named.ts";
import { blocksOf, hasWords, wordsNaming } from "./named-blocks.ts";

/** Whether a line names a thing: set work in quotes may be a title. */
export function names(mention: Mention, name: Name): boolean {
  return (
    isSameName(mention, name) || (name.kind === "title" && mention.kind === "set work" && mention.key === name.key)
  );
}

/** Every place at which a journal names something, in the order of its files and lines; a few days at each step. */
export function* placesOfName(journal: Journal, name: Name): Generator<void, readonly PlacedMention[]> {
  const words = wordsNaming(name, journal.vocabulary);
  const found: PlacedMention[] = [];
  for (const { uri, block, first } of blocksOf(journal)) {
    yield;
    if (block.day && !hasWords(block, words)) continue;
    for (const mention of mentionsIn(journal, block))
      if (names(mention, name)) found.push({ uri, block, first, mention });
  }
  return found;
}

/** Of places at which a title is named that is not declared the one that teaches it, or else the first by date. */
export function teaching(journal: Journal, places: readonly PlacedMention[]): PlacedMention | undefined {
  const [some] = places;
  const taught = titleIndex(journal).taught.find(({ key }) => key === some?.mention.key);
  const dated = places.flatMap((place) => {
    const day = dayOfBlock(place.block);
    return day === undefined ? [] : [{ place, day }];
  });
  const found = dated.find(({ place, day }) => day === taught?.day && place.mention.line === taught.line);
  if (found) return found.place;
  const inTime = dated.sort((a, b) => a.day - b.day || a.place.mention.line - b.place.mention.line);
  return inTime[0]?.place ?? some;
}
