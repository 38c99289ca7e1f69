import { fold } from "../../syntax/words/fold.ts";

/** The best first. */
const CLOSE = { begins: 0, word: 1, within: 2, letters: 3 } as const;

/**
 * How close a name is to what was typed to find it: it begins with that, a word of it does, it holds it, or it has its
 * letters in their order; undefined where it has not even those. Case and spaces make no difference. 0 is the best.
 */
export function closeness(name: string, query: string): number | undefined {
  const wanted = letters(query);
  const own = letters(name);
  if (own.startsWith(wanted)) return CLOSE.begins;
  if (!hasInOrder(own, wanted)) return undefined;
  const at = own.indexOf(wanted);
  if (at < 0) return CLOSE.letters;
  return fold(name)
    .split(/[\s-]+/)
    .some((_, i, words) => words.slice(i).join("").startsWith(wanted))
    ? CLOSE.word
    : CLOSE.within;
}

function letters(text: string): string {
  return fold(text).replace(/[\s-]+/g, "");
}

function hasInOrder(name: string, wanted: string): boolean {
  let at = 0;
  for (const letter of wanted) {
    at = name.indexOf(letter, at) + letter.length;
    if (at < letter.length) return false;
  }
  return true;
}
