import { ACTIVITIES, ENGLISH_ACTIVITIES } from "../lexicon/activities/activities.ts";
import type { ArticulationRow, ArticulationWords } from "../lexicon/articulations/articulation-table.ts";
import { DUTCH_ARTICULATIONS } from "../lexicon/articulations/dutch.ts";
import { ENGLISH_ARTICULATIONS } from "../lexicon/articulations/english.ts";
import { FRENCH_ARTICULATIONS } from "../lexicon/articulations/french.ts";
import { GERMAN_ARTICULATIONS } from "../lexicon/articulations/german.ts";
import { ITALIAN_ARTICULATIONS } from "../lexicon/articulations/italian.ts";
import { SPANISH_ARTICULATIONS } from "../lexicon/articulations/spanish.ts";
import type { LexiconLanguage } from "../lexicon/language.ts";
import { DUTCH_TECHNIQUES } from "../lexicon/techniques/dutch.ts";
import { ENGLISH_TECHNIQUES } from "../lexicon/techniques/english.ts";
import { FRENCH_TECHNIQUES } from "../lexicon/techniques/french.ts";
import { GERMAN_TECHNIQUES } from "../lexicon/techniques/german.ts";
import { ITALIAN_TECHNIQUES } from "../lexicon/techniques/italian.ts";
import { SPANISH_TECHNIQUES } from "../lexicon/techniques/spanish.ts";
import type { TechniqueWords } from "../lexicon/techniques/technique-table.ts";
import type { TermTable } from "../lexicon/terms/term-table.ts";
import { TERM_TABLES } from "../lexicon/terms/term-tables.ts";
import { withoutAccents } from "./fold.ts";
import type { MeaningOf } from "./meaning.ts";
import { type Phrase, phrase } from "./phrase.ts";
import { placePhrases } from "./place-phrases.ts";

/**
 * The phrases of one language that the lexicon has: articulations, techniques, activities, places, note values,
 * directions, rhythms, patterns, manners, spans and amounts. Those of other languages mean what the English ones do,
 * and may be typed without their accents.
 */
export function lexiconPhrases(language: LexiconLanguage): readonly Phrase[] {
  const phrases = [
    ...articulationPhrases(language),
    ...techniquePhrases(language),
    ...activityPhrases(language),
    ...termPhrases(TERM_TABLES[language]),
    ...placePhrases(language),
  ];
  return language === "english" ? phrases : phrases.map(withPlainForms);
}

/** What is sung and played with the breath, with bow, fingers and keys, each a table of its own. */
const ARTICULATION_ROWS: readonly ArticulationRow[] = Object.values(ENGLISH_ARTICULATIONS).flat();

const ARTICULATION_WORDS: Readonly<Record<Exclude<LexiconLanguage, "english">, ArticulationWords>> = {
  german: GERMAN_ARTICULATIONS,
  french: FRENCH_ARTICULATIONS,
  dutch: DUTCH_ARTICULATIONS,
  italian: ITALIAN_ARTICULATIONS,
  spanish: SPANISH_ARTICULATIONS,
};

const TECHNIQUE_WORDS: Readonly<Record<Exclude<LexiconLanguage, "english">, TechniqueWords>> = {
  german: GERMAN_TECHNIQUES,
  french: FRENCH_TECHNIQUES,
  dutch: DUTCH_TECHNIQUES,
  italian: ITALIAN_TECHNIQUES,
  spanish: SPANISH_TECHNIQUES,
};

function articulationPhrases(language: LexiconLanguage): Phrase[] {
  if (language === "english")
    return ARTICULATION_ROWS.map(([words, tonguing, sentence]) =>
      phrase(words, { type: "articulation", id: nameOf(words), tonguing }, sentence),
    );
  return Object.entries(ARTICULATION_WORDS[language]).map(([id, words]) => {
    const row = ARTICULATION_ROWS.find(([own]) => nameOf(own) === id);
    return phrase(words, { type: "articulation", id, tonguing: row?.[1] ?? "mixed" }, row?.[2]);
  });
}

function techniquePhrases(language: LexiconLanguage): Phrase[] {
  if (language === "english")
    return Object.values(ENGLISH_TECHNIQUES)
      .flat()
      .map((words: string) => phrase(words, { type: "technique", name: nameOf(words) }));
  return Object.entries(TECHNIQUE_WORDS[language]).map(([name, words]) => phrase(words, { type: "technique", name }));
}

function activityPhrases(language: LexiconLanguage): Phrase[] {
  if (language === "english")
    return ENGLISH_ACTIVITIES.map((words) => phrase(words, { type: "activity", name: nameOf(words) }));
  return Object.entries(ACTIVITIES[language]).map(([name, words]) => phrase(words, { type: "activity", name }));
}

function termPhrases(table: TermTable): Phrase[] {
  type Row = readonly [string, string | undefined];
  const values = Object.entries(table.noteValues).map(([value, words]: Row) => {
    const [numerator, denominator] = value.split("/").map(Number);
    const meaning = { type: "note value", value: { numerator: numerator!, denominator: denominator! } } as const;
    return phrase(words!, meaning);
  });
  const directions = Object.entries(table.directions).map(([id, words]: Row) =>
    phrase(words!, { type: "direction", id: id as MeaningOf<"direction">["id"] }),
  );
  const rhythms = Object.entries(table.rhythms).map(([id, words]: Row) =>
    phrase(words!, { type: "rhythm", id, even: id === "even" }),
  );
  const patterns = Object.entries(table.patterns).map(([id, words]) => phrase(words, { type: "pattern", id }));
  const manners = Object.entries(table.manners).map(([id, words]) => phrase(words, { type: "manner", id }));
  const amounts = Object.entries(table.amounts).map(([minutes, words]: Row) =>
    phrase(words!, { type: "amount", minutes: Number(minutes), possible: true }),
  );
  const slow = phrase(table.slow, { type: "without click", id: "slow" }, SLOW);
  return [...values, slow, ...directions, ...rhythms, ...patterns, ...manners, ...amounts, ...spanPhrases(table)];
}

const SLOW = "Slowly and without a metronome; beside a tempo, how it was played.";

/** The whole range, a twelfth, an octave; and two, three and four octaves where their number is a word. */
function spanPhrases({ fullRange, twelfth, octave, numbers }: TermTable): Phrase[] {
  const octaves = octave.split(" | ");
  const spoken = numbers.split(" | ").map((number, i) => ({
    words: octaves.map((word) => `${number} ${word}`),
    meaning: { type: "span", reach: { type: "octaves", count: i + 2 } } as const,
  }));
  return [
    phrase(fullRange, { type: "span", reach: { type: "full range" } }),
    phrase(twelfth, { type: "span", reach: { type: "twelfth" } }),
    { words: octaves.filter((word) => !PATTERN_TOO.includes(word)), meaning: ONE_OCTAVE },
    ...spoken,
  ];
}

const ONE_OCTAVE: MeaningOf<"span"> = { type: "span", reach: { type: "octaves", count: 1 } };
/** Without a number before them they are the pattern. */
const PATTERN_TOO = ["octaves", "8ves", "8vas", "Oktaven", "octaven", "ottave", "octavas"];

function nameOf(words: string): string {
  return words.split(" | ", 1)[0]!;
}

function withPlainForms(row: Phrase): Phrase {
  const plain = row.words.map(withoutAccents).filter((word, i) => word !== row.words[i]!.toLowerCase());
  return plain.length > 0 ? { ...row, words: [...row.words, ...plain] } : row;
}
