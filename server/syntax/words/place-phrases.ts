import type { LexiconLanguage } from "../lexicon/language.ts";
import type { PlaceTable } from "../lexicon/places/place-table.ts";
import { PLACE_TABLES } from "../lexicon/places/place-tables.ts";
import { phraseKey } from "./fold.ts";
import type { MeaningOf } from "./meaning.ts";
import type { Phrase } from "./phrase.ts";

type PlaceWord = MeaningOf<"place word">;

/**
 * The words that places are made of, one row for each with all that it may be in one; and the places that have a name.
 * A journal in another language has the English words, too, so its rows hold both.
 */
export function placePhrases(language: LexiconLanguage): readonly Phrase[] {
  const own = PLACE_TABLES[language];
  const tables = language === "english" ? [own] : [own, PLACE_TABLES.english];
  const words = new Map<string, { readonly word: string; meaning: PlaceWord }>();
  const add = (list: string, role: Omit<PlaceWord, "type">): void => {
    for (const word of list.split(" | ")) {
      const key = phraseKey(word);
      const known = words.get(key)?.meaning ?? { type: "place word" };
      words.set(key, { word, meaning: { ...role, ...known } });
    }
  };
  for (const table of tables) addRoles(table, add);
  const named = [own.whole, own.named]
    .flatMap((list) => list.split(" | "))
    .map((name): Phrase => ({ words: [name], meaning: { type: "place", word: "named", text: name }, foreign: true }));
  return [
    ...[...words.values()].map(({ word, meaning }): Phrase => ({ words: [word], meaning, foreign: true })),
    ...named,
  ];
}

function addRoles(table: PlaceTable, add: (list: string, role: Omit<PlaceWord, "type">) => void): void {
  for (const [noun, list] of Object.entries(table.numbered)) add(list, { numbered: noun as PlaceWord["numbered"] });
  for (const [noun, list] of Object.entries(table.short)) add(list, { short: noun as PlaceWord["short"] });
  for (const [i, list] of table.ordinals.split(" | ").entries()) add(list.replaceAll("/", " | "), { ordinal: i + 1 });
  add(table.likeOrdinals, { likeOrdinal: true });
  add(table.parts, { part: true });
  add(table.articles, { article: true });
  add(table.from, { from: true });
  add(table.to, { to: true });
  add(table.onwards, { onwards: true });
  add(table.end, { end: true });
  add(table.before, { beside: "before" });
  add(table.after, { beside: "after" });
}
