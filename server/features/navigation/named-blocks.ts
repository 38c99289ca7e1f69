import type { Journal } from "../../journal/journal.ts";
import type { Block } from "../../syntax/document/document.ts";
import { ORDINARY } from "../../syntax/line/known-title.ts";
import { fold, nameKey, phraseKey } from "../../syntax/words/fold.ts";
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

/** A name, or a word of one, as it may stand in a text. */
export interface WordsSought {
  /** As `phraseKey` has it: looked for first, as that is quick. */
  readonly key: string;
  /** Finds it in a folded text, with whatever spaces and hyphens, and as no part of a longer word. */
  readonly whole: RegExp;
}

export function sought(words: string): WordsSought {
  const key = phraseKey(words);
  const letters = [...key].map((letter) => letter.replace(/[\\^$.*+?()[\]{}|/]/, "\\$&")).join("[\\s-]*");
  const [before, behind] = [/^\p{L}/u.test(key) ? "(?<!\\p{L})" : "", /\p{L}$/u.test(key) ? "(?!\\p{L})" : ""];
  return { key, whole: new RegExp(before + letters + behind, "u") };
}

/** Whether a block has any of these words: so that few blocks need be read. */
export function hasWords({ text }: Block, words: readonly WordsSought[]): boolean {
  const joined = phraseKey(text);
  const there = words.filter(({ key }) => joined.includes(key));
  if (there.length === 0) return false;
  const folded = fold(text);
  return there.some(({ whole }) => whole.test(folded));
}

/**
 * Words of which one at least stands wherever something is named. A title may be named by some
 * of its words: by one that means nothing else, as `known-title.ts` wants it.
 */
export function wordsNaming(name: Name, vocabulary: Vocabulary): readonly WordsSought[] {
  return [...new Set(wordsOf(name, vocabulary).map(phraseKey))].map(sought);
}

function wordsOf({ kind, key, name }: Name, vocabulary: Vocabulary): readonly string[] {
  if (kind === "title") return wordsOfTitle(name, vocabulary);
  if (kind === "movement") {
    const piece = vocabulary.titleNames.find((title) => key.startsWith(`${nameKey(title)} `));
    return piece === undefined ? [] : wordsOfTitle(piece, vocabulary);
  }
  const known = kind === "instrument" ? namesOfInstrument(name, vocabulary) : [];
  return [name, ...known];
}

function wordsOfTitle(name: string, vocabulary: Vocabulary): readonly string[] {
  const { short = name } = vocabulary.declared.titles.find(({ title }) => title === name) ?? {};
  const telling = name.split(/\s+/).filter((word) => isTelling(word, vocabulary));
  return [name, short, ...telling.map(keyOf)];
}

function namesOfInstrument(id: string, { own }: Vocabulary): readonly string[] {
  return own.flatMap(({ meaning, words }) => (meaning.type === "instrument" && meaning.id === id ? words : []));
}

/** A word as a title is told by: at least three letters, no ordinary word, and none of a key. */
function isTelling(word: string, vocabulary: Vocabulary): boolean {
  if (!/\p{L}{3}/u.test(word)) return false;
  const classes = vocabulary.classes(keyOf(word))?.map((each) => each.class) ?? [];
  if (classes.includes("title-kind")) return true;
  const isOfKey = vocabulary.meanings(keyOf(word))?.some(({ type }) => type === "kind") ?? false;
  return !isOfKey && !classes.some((each) => (ORDINARY as readonly string[]).includes(each));
}

function keyOf(word: string): string {
  return phraseKey(word).replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, "");
}
