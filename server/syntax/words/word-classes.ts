import type { LexiconLanguage } from "../lexicon/language.ts";
import { DUTCH_SIGNS } from "../lexicon/signs/dutch.ts";
import { ENGLISH_SIGNS } from "../lexicon/signs/english.ts";
import { FRENCH_SIGNS } from "../lexicon/signs/french.ts";
import { GERMAN_SIGNS } from "../lexicon/signs/german.ts";
import { ITALIAN_SIGNS } from "../lexicon/signs/italian.ts";
import type { SignClass, SignTable } from "../lexicon/signs/sign-table.ts";
import { SPANISH_SIGNS } from "../lexicon/signs/spanish.ts";
import { phraseKey, withoutAccents } from "./fold.ts";

/** What a word says of the kind of its line: `heading` with the meaning `scales`, `sentence-sign` with `pronoun`. */
export interface WordClass {
  readonly class: SignClass;
  readonly meaning: string;
}

/**
 * The words of one language that tell the kinds of lines, by their keys (`phraseKey`), also as they are typed without
 * accents where that is no other word of the language. English is not in the other languages' tables: who reads a
 * journal with German names asks both. Made at each call: whoever asks for a journal keeps it.
 */
export function wordClasses(language: LexiconLanguage): ReadonlyMap<string, readonly WordClass[]> {
  return classesOf(SIGNS[language]);
}

function classesOf(table: SignTable): ReadonlyMap<string, readonly WordClass[]> {
  const found = new Map<string, WordClass[]>();
  for (const [name, meanings] of Object.entries(table))
    for (const [meaning, words] of Object.entries(meanings))
      for (const word of words.split(" | ")) {
        const key = phraseKey(word);
        const classes = found.get(key) ?? [];
        if (!classes.some((one) => one.class === name)) classes.push({ class: name as SignClass, meaning });
        found.set(key, classes);
      }
  const accented = [...found.keys()].filter((key) => BEYOND_ASCII.test(key));
  for (const key of accented) {
    const plain = withoutAccents(key);
    if (!found.has(plain)) found.set(plain, found.get(key)!);
  }
  return found;
}

const BEYOND_ASCII = /[^\x20-\x7E]/;

const SIGNS: Readonly<Record<LexiconLanguage, SignTable>> = {
  english: ENGLISH_SIGNS,
  german: GERMAN_SIGNS,
  french: FRENCH_SIGNS,
  dutch: DUTCH_SIGNS,
  italian: ITALIAN_SIGNS,
  spanish: SPANISH_SIGNS,
};
