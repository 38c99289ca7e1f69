import type { Meaning } from "./meaning.ts";

/**
 * A phrase and what it means. Written with single spaces; hyphens and spaces in it are the same, or may be left out.
 */
export interface Phrase {
  readonly words: readonly string[];
  readonly meaning: Meaning;
  /** One sentence for hovers and completion. */
  readonly sentence?: string;
  /**
   * Of another language than the journal's, or nothing by itself: it is known when seen, and never offered for a word
   * that is nearly it.
   */
  readonly foreign?: true;
}

/** @param words as in the tables, `"a | b | c"` */
export function phrase(words: string, meaning: Meaning, sentence?: string): Phrase {
  return { words: words.split(" | "), meaning, sentence };
}

/** One row for each meaning, with all words for it; the first row's sentence and first word stand. */
export function merged(phrases: readonly Phrase[]): readonly Phrase[] {
  const rows = new Map<string, Phrase>();
  for (const each of phrases) {
    const key = JSON.stringify(each.meaning);
    const known = rows.get(key);
    rows.set(key, known ? { ...known, words: [...new Set([...known.words, ...each.words])] } : each);
  }
  return [...rows.values()];
}
