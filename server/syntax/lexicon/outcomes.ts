import { DUTCH_OUTCOMES } from "./outcomes/dutch.ts";
import { ENGLISH_OUTCOMES } from "./outcomes/english.ts";
import { FRENCH_OUTCOMES } from "./outcomes/french.ts";
import { GERMAN_OUTCOMES } from "./outcomes/german.ts";
import { ITALIAN_OUTCOMES } from "./outcomes/italian.ts";
import type { OutcomeWords } from "./outcomes/outcome-words.ts";
import { OUTCOME_SIGNS } from "./outcomes/signs.ts";
import { SPANISH_OUTCOMES } from "./outcomes/spanish.ts";

const BY_NAMES: Readonly<Record<string, OutcomeWords>> = {
  german: GERMAN_OUTCOMES,
  french: FRENCH_OUTCOMES,
  dutch: DUTCH_OUTCOMES,
  italian: ITALIAN_OUTCOMES,
  spanish: SPANISH_OUTCOMES,
};

/** The words known where notes are named in a language: its own first, then the English ones, and signs. */
export function outcomeWords(names: string): readonly OutcomeWords[] {
  const own = BY_NAMES[names];
  return own ? [own, ENGLISH_OUTCOMES, OUTCOME_SIGNS] : [ENGLISH_OUTCOMES, OUTCOME_SIGNS];
}

/** The phrases of such a text. */
export function phrasesOf(text: string): readonly string[] {
  const phrases = text.replace(/\s+/g, " ").split("|");
  return phrases.map((phrase) => phrase.trim()).filter((phrase) => phrase !== "");
}
