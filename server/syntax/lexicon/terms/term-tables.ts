import type { LexiconLanguage } from "../language.ts";
import { DUTCH_TERMS } from "./dutch.ts";
import { ENGLISH_TERMS } from "./english.ts";
import { FRENCH_TERMS } from "./french.ts";
import { GERMAN_TERMS } from "./german.ts";
import { ITALIAN_TERMS } from "./italian.ts";
import { SPANISH_TERMS } from "./spanish.ts";
import type { TermTable } from "./term-table.ts";

export const TERM_TABLES: Readonly<Record<LexiconLanguage, TermTable>> = {
  english: ENGLISH_TERMS,
  german: GERMAN_TERMS,
  french: FRENCH_TERMS,
  dutch: DUTCH_TERMS,
  italian: ITALIAN_TERMS,
  spanish: SPANISH_TERMS,
};

/** The single words of one kind in all languages, in lower case. */
export function wordsOf(kind: "octave" | "degrees" | "minutes" | "hours" | "each" | "about"): ReadonlySet<string> {
  return new Set(Object.values(TERM_TABLES).flatMap((table) => table[kind].toLowerCase().split(" | ")));
}
