import type { Part } from "../../syntax/line/cut.ts";
import { knownTitleIn } from "../../syntax/line/known-title.ts";
import { keysOf, LineWords } from "../../syntax/line/line-words.ts";
import { firstWord } from "../../syntax/line/title.ts";
import type { Item, SubjectMeaning } from "../../syntax/words/meaning.ts";
import { TitleIndex } from "../titles/title-index.ts";
import type { Body } from "./declared.ts";

/**
 * The declared title that some words begin with, without quotes, as a line below a day may: `Greensleeves, first line`.
 * Titles that were only played are learnt from days, which a declaration does not look at.
 */
export function declaredTitleIn(
  { text, vocabulary }: Body,
  { start, end }: { readonly start: number; readonly end: number },
  parts: readonly Part[],
): Item<SubjectMeaning> | undefined {
  const words = new LineWords(text, start, end, parts, vocabulary);
  const first = firstWord(words);
  const named = words.isCapital(first) || words.isCapital(first + 1);
  const candidate = { line: 0, keys: keysOf(words), first, named };
  const matches = new TitleIndex(vocabulary, []).matches(candidate, Number.POSITIVE_INFINITY);
  return matches && knownTitleIn(words, matches);
}
