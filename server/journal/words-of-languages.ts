import { CHORDS } from "../music/chords/chord-kinds.ts";
import { INSTRUMENTS } from "../music/instruments/instruments.ts";
import { ENGLISH_NAMES, type NamesId, NOTE_NAMES, type NoteNames } from "../music/notes/note-names.ts";
import { PATTERNS } from "../music/patterns/pattern.ts";
import { KINDS } from "../music/scales/kinds.ts";
import { outcomeWords, phrasesOf } from "../syntax/lexicon/outcomes.ts";
import { withoutAccents } from "../syntax/words/fold.ts";
import { lexiconPhrases } from "../syntax/words/lexicon-phrases.ts";
import { TERMS } from "../syntax/words/terms.ts";
import { wordClasses } from "../syntax/words/word-classes.ts";
import { SUBJECT_WORDS } from "./subject-language.ts";

/** The single words of each language that a journal may be written in, without accents: gathered when asked for. */
export class WordsOfLanguages {
  private readonly words = new Map<NamesId, ReadonlySet<string>>();

  of(language: NamesId): ReadonlySet<string> {
    const known = this.words.get(language);
    if (known) return known;
    const names = NOTE_NAMES.find(({ id }) => id === language)!;
    const words = new Set(phrasesIn(names).flatMap(singleWords));
    this.words.set(language, words);
    return words;
  }
}

/** The words of a text as they are looked up here; letters by themselves are notes more often than not. */
export function singleWords(text: string): readonly string[] {
  const words = withoutAccents(text).match(/[\p{L}\d]*\p{L}[\p{L}\d]*/gu) ?? [];
  return words.filter((word) => word.length > 1);
}

function phrasesIn({ id, major, minor }: NoteNames): readonly string[] {
  const [own] = outcomeWords(id);
  const { standard, figures, sets } = SUBJECT_WORDS[id];
  return [
    ...major,
    ...minor,
    ...(id === ENGLISH_NAMES.id ? ENGLISH_PHRASES : lexiconPhrases(id).flatMap(({ words }) => words)),
    ...wordClasses(id).keys(),
    ...Object.values(own!).flatMap(phrasesOf),
    ...[standard, figures, sets].flatMap((table) => Object.values(table)),
  ];
}

/** Of the format, and the names in the tables of `music/`. */
const ENGLISH_PHRASES: readonly string[] = [
  ...TERMS.flatMap(({ words }) => words),
  ...[...KINDS, ...CHORDS, ...PATTERNS, ...INSTRUMENTS].flatMap(({ names }) => names),
  ...Object.keys(SUBJECT_WORDS.english.standard),
];
