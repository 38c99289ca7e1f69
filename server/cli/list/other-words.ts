import { SUBJECT_WORDS } from "../../journal/subject-language.ts";
import { inLanguage, type NamesId, NOTE_NAMES } from "../../music/notes/note-names.ts";
import { fold, withoutAccents } from "../../syntax/words/fold.ts";
import { lexiconPhrases } from "../../syntax/words/lexicon-phrases.ts";
import type { Meaning } from "../../syntax/words/meaning.ts";

/** The words of other languages for one thing, by language; those that have none are missing. */
export type OtherWords = Readonly<Partial<Record<NamesId, readonly string[]>>>;

const LANGUAGES = NOTE_NAMES.map(({ id }) => id).filter((id) => id !== "english");

/** What other languages call what the lexicon has, by `keyOf` its meaning. */
export function lexiconWords(): ReadonlyMap<string, OtherWords> {
  const found = new Map<string, Partial<Record<NamesId, readonly string[]>>>();
  for (const language of LANGUAGES)
    for (const { words, meaning } of lexiconPhrases(language)) {
      const key = keyOf(meaning);
      const known = found.get(key) ?? {};
      found.set(key, { ...known, [language]: distinct([...(known[language] ?? []), ...words]) });
    }
  return found;
}

export function keyOf(meaning: Meaning): string {
  return JSON.stringify(meaning);
}

/** What other languages call a kind of scale or chord. */
export function subjectWords(names: readonly string[]): OtherWords {
  const english = new Set(names.flatMap((name) => fold(name).split(/[ -]/)));
  const entries = NOTE_NAMES.filter(({ id }) => id !== "english").flatMap((noteNames) => {
    const { standard } = SUBJECT_WORDS[noteNames.id];
    const whole = names.flatMap((name) => (Object.hasOwn(standard, name) ? standard[name]!.split(" | ") : []));
    const translated = names
      .flatMap((name) => inLanguage(name, noteNames))
      .filter(
        (words) =>
          !fold(words)
            .split(/[ -]/)
            .some((word) => english.has(word)),
      );
    const words = distinct([...translated, ...whole]);
    return words.length > 0 ? [[noteNames.id, words] as const] : [];
  });
  return Object.fromEntries(entries);
}

/** Each once; a form without its accents goes without saying. */
export function distinct(words: readonly string[]): readonly string[] {
  const whole = new Set(words.filter((word) => fold(word) !== withoutAccents(word)).map(withoutAccents));
  const seen = new Set<string>();
  return words.filter((word) => {
    const key = fold(word);
    if (seen.has(key) || whole.has(key)) return false;
    seen.add(key);
    return true;
  });
}

/** `Also: staccato, short. German: kurz. French: piqué.`; nothing where there are none. */
export function otherWordsText(also: readonly string[], languages: OtherWords = {}): string {
  const told = Object.entries(languages).map(
    ([id, words]) => `${id[0]!.toUpperCase()}${id.slice(1)}: ${words.join(", ")}.`,
  );
  return [...(also.length > 0 ? [`Also: ${also.join(", ")}.`] : []), ...told].join(" ");
}

/** Sentences one after another. */
export function together(...sentences: readonly (string | undefined)[]): string {
  return sentences.filter((sentence) => sentence).join(" ");
}
