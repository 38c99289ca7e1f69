import { OUTCOME_MARKS } from "../lexicon/outcomes/marks.ts";
import { LOOK_OF_SIGN, TICKS } from "../lexicon/outcomes/signs.ts";
import { withoutAccents } from "./fold.ts";
import type { Item, Meaning, MeaningOf, Verdict } from "./meaning.ts";
import { LONGEST_OUTCOME } from "./outcome-table.ts";
import type { Vocabulary } from "./vocabulary.ts";
import type { Found, Words } from "./words.ts";

/**
 * What a whole stretch of words says of the tempo before it; undefined where the tables have it in part or not at all
 * (`ok but sharp`, `too fast for me`).
 */
export function outcomePhrase(text: string, vocabulary: Vocabulary): Verdict | undefined {
  const whole = vocabulary.outcomes.of(text);
  if (whole) return whole.says;
  const signs = SIGNS.test(text.trim()) ? [...text.trim().matchAll(ONE_SIGN)].map(([, sign]) => sign!) : [];
  return new Set(signs).size === 1 ? vocabulary.outcomes.of(signs[0]!)?.says : undefined;
}

/** What a mark says where marks may stand: `v`, `x`; see `OUTCOME_MARKS`. */
export function verdictOfMark(typed: string): Verdict | undefined {
  return MARKS.get(withoutAccents(typed));
}

const MARKS: ReadonlyMap<string, Verdict> = new Map(
  (["reached", "nearly", "not"] as const).flatMap((says) =>
    OUTCOME_MARKS[says].split(" | ").map((mark) => [mark, says] as const),
  ),
);

/** Signs that say how it went, several together: `✓✓✗`, `++–`. A dash says that it did not, and only among others. */
const SIGNS = new RegExp(`^(?=.*[^–-])(?:[${TICKS}+±~–-][${LOOK_OF_SIGN}]?){2,}$`, "su");
const ONE_SIGN = new RegExp(`([${TICKS}+±~–-])[${LOOK_OF_SIGN}]?`, "gu");
const DASHES = "–-";
/** Other signs than these mean something else as well: `+` joins, `~ 60` is about 60. */
const TICK = new RegExp(`^[${TICKS}][${LOOK_OF_SIGN}]?$`, "u");
const JOINS = /^[+~±]$/;

/**
 * A phrase of the tables, from a token to the end of the part or to something else that is known. `isKnown` tells
 * whether something begins at a token; what stands before is asked of `mayFollow`.
 */
export function outcomeAt(
  words: Words,
  i: number,
  isKnown: (i: number) => boolean,
): Found<MeaningOf<"outcome">> | undefined {
  const { outcomes } = words.vocabulary;
  if (!outcomes.opens(words.typed(i))) return undefined;
  const phrase: string[] = [];
  let found: Found<MeaningOf<"outcome">> | undefined;
  for (let n = 1; n <= LONGEST_OUTCOME; n++) {
    const word = words.typed(i + n - 1);
    if (word === "") break;
    phrase.push(word);
    const meaning = outcomes.ofWords(phrase);
    if (meaning && (i + n === words.tokens.length || (!JOINS.test(word) && isKnown(i + n))))
      found = { length: n, meaning };
  }
  return found;
}

/** Behind these an outcome of the tables does not stand: they begin its phrase, or belong to other lines. */
export const BEFORE_NO_OUTCOME: readonly Meaning["type"][] = [
  "unknown",
  "note",
  "quoted",
  "part of a kind",
  "phase",
  "line word",
  "weekday",
  "clock",
  "date",
  "days",
  "bars",
  "goal",
  "last note",
];

/** Whether an outcome of the tables may stand behind a meaning; a dash between them is passed over. */
export function mayFollow(before: Meaning | undefined): boolean {
  if (before?.type === "unknown") return before.words.length === 1 && "-–—".includes(before.words);
  return before === undefined || !BEFORE_NO_OUTCOME.includes(before.type);
}

/** The words of the format that leave a `clean` beside them as it is: `easy uneven` is reached. */
const BESIDE_GOOD = ["nearly", "uneven", "rushed", "slips", "broke down"];

/** Whether with this outcome a tempo is not reached, whatever else is said of it. */
export function isAmiss({ id, says }: MeaningOf<"outcome">): boolean {
  return says !== "reached" && !BESIDE_GOOD.includes(id);
}

/** An outcome of the format beside a negation or a `but` means something only where the tables have the whole. */
export function isDenied(words: Words, i: number, length: number, before: Meaning | undefined): boolean {
  const { outcomes } = words.vocabulary;
  if (before?.type === "unknown" && before.words.split(/\s+/).some((word) => outcomes.denies(word))) return true;
  let next = i + length;
  while (words.phrase(next, "outcome")) next++;
  return outcomes.denies(words.word(next)) && !outcomes.ofWords([words.typed(next)]);
}

/** Outcomes that belong together: `✓✓✗`, `✓ ✓ ✗`, `ok/ok/no`, `clean / clean / almost`, up to the end of the part. */
export function outcomeRowAt(words: Words, i: number): { readonly length: number; readonly items: Item[] } | undefined {
  return signRow(words, i) ?? wordRow(words, i);
}

function signRow({ tokens, vocabulary }: Words, i: number): { length: number; items: Item[] } | undefined {
  const items: Item[] = [];
  let end = i;
  for (; end < tokens.length; end++) {
    const { text, start, quote } = tokens[end]!;
    if (quote || !(SIGNS.test(text) || TICK.test(text))) break;
    for (const { 0: typed, 1: sign, index } of text.matchAll(ONE_SIGN)) {
      const meaning = DASHES.includes(sign!) ? DASH : vocabulary.outcomes.of(sign!)!;
      items.push({ start: start + index, end: start + index + typed.length, meaning: { ...meaning, inRow: true } });
    }
  }
  return items.length > 1 ? { length: end - i, items } : undefined;
}

/** A dash among other signs, or close to its tempo. */
export const DASH = { type: "outcome", id: "–", says: "not" } as const;

function wordRow(words: Words, i: number): { length: number; items: Item[] } | undefined {
  const { tokens, vocabulary } = words;
  const first = words.typed(i);
  if (!first.includes("/") && words.typed(i + 1) !== "/") return undefined;
  const items: Item[] = [];
  for (const { text, start, quote } of tokens.slice(i)) {
    if (quote) return undefined;
    for (const { 0: word, index } of text.matchAll(/[^/]+/g)) {
      const meaning = vocabulary.outcomes.of(word);
      if (!meaning) return undefined;
      items.push({ start: start + index, end: start + index + word.length, meaning: { ...meaning, inRow: true } });
    }
  }
  return items.length > 1 && !SIDE_BY_SIDE.test(words.text(i, tokens.length))
    ? { length: tokens.length - i, items }
    : undefined;
}

/** `ok bad / no` is no row: each is one word. */
const SIDE_BY_SIDE = /[^\s/]\s+[^\s/]/;
