import { singleWords, WordsOfLanguages } from "../../journal/words-of-languages.ts";
import { ENGLISH_NAMES, type NamesId, NOTE_NAMES } from "../../music/notes/note-names.ts";
import { cutLine } from "../../syntax/line/cut.ts";
import type { CodeAction } from "../types.ts";
import { diagnosticsTexts } from "./diagnostics-texts.ts";
import { actionOf, type LineIn } from "./line-in.ts";

/** One word alone may be the title of a piece, but for one that says how a tempo went: `72 sauber`. */
const FEWEST_WORDS = 2;
const BEHIND_NUMBER = /\d\s*,?\s*\p{L}+\s*$/u;

/**
 * Where a journal declares no language: the declaration of the one that a line below a day is written in. Worked out
 * when it is asked for, of this line alone.
 */
export function otherLanguage({ journal, document, at, text }: LineIn): readonly CodeAction[] {
  if (journal.declaredIn.has("names")) return [];
  const tables = journal.memo.of(journal.vocabulary, "words of languages", () => new WordsOfLanguages());
  const language = languageOf(text.slice(0, cutLine(text).remark), tables);
  if (!language) return [];
  const head = `names ${language}`;
  return [actionOf({ title: diagnosticsTexts.declareLanguage(head), safe: false, edits: [], head }, { at, document })];
}

/**
 * The one language other than English that has every known word of a text, and at least two of them alone, or the
 * one that says how a tempo went; undefined where there is none.
 */
export function languageOf(text: string, tables: WordsOfLanguages): NamesId | undefined {
  const words = [...new Set(singleWords(text))];
  const having = words.map((word) => LANGUAGES.filter((id) => tables.of(id).has(word)));
  const alone = having.flatMap((ids) => (ids.length === 1 ? ids : []));
  const said = BEHIND_NUMBER.test(text) ? having.at(-1) : undefined;
  if (said?.length === 1) {
    const [language] = said;
    const isForeign = alone.some((id) => id !== language && id !== ENGLISH_NAMES.id);
    return language === ENGLISH_NAMES.id || isForeign ? undefined : language;
  }
  const [language] = alone;
  if (language === undefined || language === ENGLISH_NAMES.id || alone.length < FEWEST_WORDS) return undefined;
  return having.every((ids) => ids.length === 0 || ids.includes(language)) ? language : undefined;
}

const LANGUAGES: readonly NamesId[] = NOTE_NAMES.map(({ id }) => id);
