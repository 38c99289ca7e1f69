import type { LexiconLanguage } from "../language.ts";
import { DUTCH_PLACES } from "./dutch.ts";
import { ENGLISH_PLACES } from "./english.ts";
import { FRENCH_PLACES } from "./french.ts";
import { GERMAN_PLACES } from "./german.ts";
import { ITALIAN_PLACES } from "./italian.ts";
import type { PlaceTable } from "./place-table.ts";
import { SPANISH_PLACES } from "./spanish.ts";

/** Where in a piece, a table for each language. */
export const PLACE_TABLES: Readonly<Record<LexiconLanguage, PlaceTable>> = {
  english: ENGLISH_PLACES,
  german: GERMAN_PLACES,
  french: FRENCH_PLACES,
  dutch: DUTCH_PLACES,
  italian: ITALIAN_PLACES,
  spanish: SPANISH_PLACES,
};
