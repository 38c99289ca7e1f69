import { ON_INSTRUMENT } from "../lexicon/note-leads.ts";
import { VERBS_BEFORE_WITH } from "../lexicon/verbs-before-with.ts";
import type { MeaningOf } from "./meaning.ts";
import { amountAt } from "./quantity-words.ts";
import { tempoAt } from "./tempo-words.ts";
import type { Found, Words } from "./words.ts";

/** Long-short words: `LSS`, `SLL`. */
export function rhythmAt(words: Words, i: number): Found<MeaningOf<"rhythm">> | undefined {
  const word = words.typed(i);
  const mixed = /^[LS]{2,8}$/.test(word) && word.includes("L") && word.includes("S");
  return mixed ? { length: 1, meaning: { type: "rhythm", id: word, even: false } } : undefined;
}

/** `focus …`, `with …`, `sore …`: free words, up to a tempo, an outcome or an amount. */
export function freeWordsAt(words: Words, i: number): Found<MeaningOf<"focus" | "with" | "sore">> | undefined {
  const word = words.word(i);
  if (word !== "focus" && word !== "with" && word !== "sore") return undefined;
  if (word === "with" && VERBS_BEFORE_WITH.has(words.word(i - 1))) return undefined;
  if (words.phrase(i, "without click", "articulation", "manner", "rhythm", "place")) return undefined;
  let end = i + 1;
  while (end < words.tokens.length && !endsFreeWords(words, end)) end++;
  return end > i + 1 ? { length: end - i, meaning: { type: word, words: words.text(i + 1, end) } } : undefined;
}

function endsFreeWords(words: Words, i: number): boolean {
  return Boolean(tempoAt(words, i) ?? words.phrase(i, "outcome") ?? amountAt(words, i));
}

/**
 * `on tenor recorder`, `on "my flute"`; a known instrument's name alone is read too. In quotes behind `on` stands
 * nothing else.
 */
export function instrumentAt(words: Words, i: number): Found<MeaningOf<"instrument" | "unknown">> | undefined {
  const on = words.is(i, ...ON_INSTRUMENT) ? 1 : 0;
  const quoted = on ? words.quoted(i + 1) : undefined;
  const declared = quoted?.quote?.closed ? words.vocabulary.instrument(quoted.text) : undefined;
  if (declared !== undefined) return { length: 2, meaning: { type: "instrument", id: declared, declared: true } };
  if (quoted?.quote?.closed) return { length: 2, meaning: { type: "unknown", words: words.text(i, i + 2) } };
  const found = words.phrase(i + on, "instrument");
  return found && { length: on + found.length, meaning: found.meaning };
}

/** `steps T T S T T T S`, `steps TTSTTTS`, `steps 2 2 1 2 2 2 1`, `steps T T m3 T m3`, `steps cents 150 150 200`. */
export function stepsAt(words: Words, i: number): Found<MeaningOf<"steps">> | undefined {
  if (!words.is(i, "steps", "step")) return undefined;
  let end = i + 1;
  const isOne = isCents(words.typed(end)) ? isCents : isStepWord;
  while (isOne(words.typed(end))) end++;
  return end > i + 1 ? { length: end - i, meaning: { type: "steps", words: words.text(i + 1, end) } } : undefined;
}

/** `cents`, or a number that no count of semitones can be. */
function isCents(word: string): boolean {
  return /^cents?$|^(?=\d{2})\d*[05-9]\d*(?:\.\d{1,4})?$/i.test(word) && word.length < 10;
}

/** Tones and semitones in letters, one or more to the word, a semitone count from 1 to 4, or three by another name. */
export function isStepWord(word: string): boolean {
  return /^(?:3[SHsh]|[mM][23]|A2|\+2|[TSAWHtsawh]*(?:m3[TSAWHtsawh]*)+)$|^(?:[TSAtsa]+|[WHAwha]+|[1-4]+(?:-[1-4])*)(?:-[TSWHA])*$/.test(
    word,
  );
}
