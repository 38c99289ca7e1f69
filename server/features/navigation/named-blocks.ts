import type { Journal } from "../../journal/journal.ts";
import type { Block } from "../../syntax/document/document.ts";
import { ORDINARY } from "../../syntax/line/known-title.ts";
import { nameKey, phraseKey } from "../../syntax/words/fold.ts";
import type { Vocabulary } from "../../syntax/words/vocabulary.ts";
import type { Name } from "./named.ts";

/** A block, and the absolute line at which it begins. */
export interface PlacedBlock {
  readonly uri: string;
  readonly block: Block;
  readonly index: number;
  readonly first: number;
}

/** The blocks of a journal in the order of its files and lines. */
export function* blocksOf(journal: Journal): Generator<PlacedBlock, void, undefined> {
  for (const uri of journal.addresses) {
    const { blocks, starts } = journal.files.get(uri)!;
    for (const [index, block] of blocks.entries()) yield { uri, block, index, first: starts[index]! };
  }
}

/** Whether a block has any of these words, in whatever case, spacing and hyphens: so that few blocks need be read. */
export function hasWords({ text }: Block, words: readonly string[]): boolean {
  const key = phraseKey(text);
  return words.some((word) => key.includes(word));
}

/**
 * Words of which one at least stands wherever something is named, as `phraseKey` has them. A title may be named by some
 * of its words: by one that means nothing else, as `known-title.ts` wants it.
 */
export function wordsNaming({ kind, key, name }: Name, vocabulary: Vocabulary): readonly string[] {
  if (kind === "title") return wordsOfTitle(name, vocabulary);
  if (kind === "movement") {
    const piece = vocabulary.titleNames.find((title) => key.startsWith(`${nameKey(title)} `));
    return piece === undefined ? [] : wordsOfTitle(piece, vocabulary);
  }
  const known = kind === "instrument" ? namesOfInstrument(name, vocabulary) : [];
  return [name, ...known].map(phraseKey);
}

function wordsOfTitle(name: string, vocabulary: Vocabulary): readonly string[] {
  const { short = name } = vocabulary.declared.titles.find(({ title }) => title === name) ?? {};
  const telling = name.split(/\s+/).filter((word) => isTelling(word, vocabulary));
  return [phraseKey(name), phraseKey(short), ...telling.map(keyOf)];
}

function namesOfInstrument(id: string, { own }: Vocabulary): readonly string[] {
  return own.flatMap(({ meaning, words }) => (meaning.type === "instrument" && meaning.id === id ? words : []));
}

/** A word as a title is told by: at least three letters, and no ordinary word. */
function isTelling(word: string, vocabulary: Vocabulary): boolean {
  const classes = vocabulary.classes(keyOf(word))?.map((each) => each.class) ?? [];
  if (!/\p{L}{3}/u.test(word)) return false;
  return classes.includes("title-kind") || !classes.some((each) => (ORDINARY as readonly string[]).includes(each));
}

function keyOf(word: string): string {
  return phraseKey(word).replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, "");
}
