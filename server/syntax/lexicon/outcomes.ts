import { DUTCH_OUTCOMES } from "./outcomes/dutch.ts";
import { ENGLISH_OUTCOMES } from "./outcomes/english.ts";
import { FRENCH_OUTCOMES } from "./outcomes/french.ts";
import { GERMAN_OUTCOMES } from "./outcomes/german.ts";
import { ITALIAN_OUTCOMES } from "./outcomes/italian.ts";
import type { OutcomeWords } from "./outcomes/outcome-words.ts";
import { SPANISH_OUTCOMES } from "./outcomes/spanish.ts";

const BY_NAMES: Readonly<Record<string, OutcomeWords>> = {
  german: GERMAN_OUTCOMES,
  french: FRENCH_OUTCOMES,
  dutch: DUTCH_OUTCOMES,
  italian: ITALIAN_OUTCOMES,
  spanish: SPANISH_OUTCOMES,
};

/** The words known where notes are named in a language: its own first, then the English ones. */
export function outcomeWords(names: string): readonly OutcomeWords[] {
  const own = BY_NAMES[names];
  return own ? [own, ENGLISH_OUTCOMES] : [ENGLISH_OUTCOMES];
}

/** The phrases of such a text. */
export function phrasesOf(text: string): readonly string[] {
  return text.split("|").map((phrase) => phrase.trim().replace(/\s+/g, " "));
}
