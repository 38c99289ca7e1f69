import { phraseKey } from "./fold.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** `my thumb hurts`: what somebody said, and no title, where it stands in quotes. A capital within it is a name. */
export function isSpeech(quoted: string, vocabulary: Vocabulary): boolean {
  const words = quoted.split(/\s+/);
  return words.length > 2 && words.some((word, i) => !(i > 0 && /^\p{Lu}/u.test(word)) && isPronoun(word, vocabulary));
}

function isPronoun(word: string, vocabulary: Vocabulary): boolean {
  const classes = vocabulary.classesOfWord(phraseKey(word)) ?? [];
  return classes.some((each) => each.class === "sentence-sign" && each.meaning === "pronoun");
}
