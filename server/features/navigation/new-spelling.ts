import { nameKey, phraseKey } from "../../syntax/words/fold.ts";
import type { Mention } from "./named.ts";

/** What is called otherwise: a name as it was written where it comes from, and what it is called from now on. */
export interface Renaming {
  readonly before: string;
  readonly after: string;
  /** Which mentions are rewritten: those by the name itself, or those by its short name. */
  readonly form: "whole" | "short name";
}

/**
 * What may be written in the place of a mention, the likeliest first: in the case in which it was typed; of some words
 * of a title, those as they are, or their fellows in the new title, or else all of it; quotes only where nothing else
 * is read as the title.
 *
 * @param typed the words of the mention, without quotes
 */
export function newSpellings(typed: string, mention: Mention, { before, after }: Renaming): readonly string[] {
  const words = typed.replace(/\s+/g, " ");
  const own =
    mention.form === "short form" ? shortSpellings(typed, words, before, after) : [inCase(words, before, after)];
  const plain = mention.kind === "title" || mention.form !== "short form" ? [...own, after] : own;
  const quoted = mention.kind === "title" && !mention.isQuoted ? [`"${after}"`] : [];
  return [...new Set([...plain, ...quoted])];
}

function shortSpellings(typed: string, words: string, before: string, after: string): readonly string[] {
  const fellow = fellowWords(words, before, after);
  return [typed, ...(fellow === undefined ? [] : [fellow])];
}

/** The words of a new title in the places that some words had in the old one; undefined where it has more or fewer. */
function fellowWords(words: string, before: string, after: string): string | undefined {
  const [from, to, some] = [before.split(" "), after.split(" "), words.split(" ")];
  if (from.length !== to.length) return undefined;
  const first = from.findIndex((_, i) => some.every((word, k) => phraseKey(word) === phraseKey(from[i + k] ?? "")));
  if (first < 0) return undefined;
  const name = from.slice(first, first + some.length).join(" ");
  return inCase(words, name, to.slice(first, first + some.length).join(" "));
}

/** A name in the case of the words that named the same: small, capitals, or with a capital first. */
function inCase(words: string, before: string, after: string): string {
  if (words === before || nameKey(words) !== nameKey(before)) return after;
  const way = CASES.find((inThatCase) => inThatCase(before) === words);
  return way ? way(after) : after;
}

const CASES: readonly ((name: string) => string)[] = [
  (name) => name.toLowerCase(),
  (name) => name.toUpperCase(),
  (name) => name.charAt(0).toUpperCase() + name.slice(1),
  (name) => name.charAt(0).toLowerCase() + name.slice(1),
];
