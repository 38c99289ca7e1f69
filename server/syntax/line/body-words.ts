import { TURNS } from "../lexicon/signs/turns.ts";
import { ARTICLES } from "../lexicon/title-words.ts";
import type { LineWords } from "./line-words.ts";

/**
 * What words say of the player's body: it hurts, or is tense or tired, which is no reason to stop; or it no longer
 * hurts: `thumb better`, `no pain`.
 */
export type BodySays = "hurts" | "tense" | "tired" | "eased";

/** How far from the part of the body its trouble may stand, in words. */
export const BESIDE_PART = 6;

/**
 * What a sentence or a few say of the body, in the journal's language or in English; the worst where there are several.
 * A word with other meanings says so beside a part of the body in its clause, or all alone.
 */
export function bodySays(words: LineWords): BodySays | undefined {
  const all = Array.from({ length: words.count }, (_, i) => saysAt(words, i));
  return (["hurts", "eased", "tense", "tired"] as const).find((each) => all.includes(each));
}

function saysAt(words: LineWords, i: number): BodySays | undefined {
  if (words.meaningOf(i, "eased") === "free") return "eased";
  const trouble = words.meaningOf(i, "body-trouble") ?? (isNearTrouble(words, i) ? "sore" : undefined);
  if (trouble === undefined) return isEasedPart(words, i) ? "eased" : undefined;
  const clause = clauseAt(words, i);
  const isPlain = trouble === "hurts" || trouble === "tired";
  const from = Math.max(clause.from, i - BESIDE_PART);
  const hasPart = words.first(from, Math.min(clause.to, i + BESIDE_PART + 1), "body-part") >= 0;
  if (!isPlain && !hasPart && words.count > words.lengthOf(i, "body-trouble")) return undefined;
  if (isDenied(words, i) || isTakenBack(words, i)) return "eased";
  if (words.is(i, "eased") && words.first(clause.from, i, "body-trouble") >= 0) return "eased"; // `the pain is gone`
  if (trouble === "tight" && hasPart && words.first(clause.from, clause.to, "rhythm") < 0) return "hurts";
  return MEANS[trouble];
}

/** How far from the part of the body a word of trouble with a slip may stand, in words: `numbnes in my hand`. */
const SLIP_BESIDE_PART = 3;

/** A word with a slip of spelling, for safety's sake: `lips swolen`. */
function isNearTrouble(words: LineWords, i: number): boolean {
  const { from, to } = clauseAt(words, i);
  const first = Math.max(from, i - SLIP_BESIDE_PART);
  return words.first(first, Math.min(to, i + SLIP_BESIDE_PART + 1), "body-part") >= 0 && words.isNearTrouble(i);
}

/** By the meanings of the lexicon's class. */
const MEANS: Readonly<Record<string, BodySays>> = {
  hurts: "hurts",
  sore: "hurts",
  tight: "tense",
  tense: "tense",
  tired: "tired",
  cold: "tired",
};

/** `thumb better`. */
function isEasedPart(words: LineWords, i: number): boolean {
  if (!words.is(i, "eased")) return false;
  const { from, to } = clauseAt(words, i);
  return words.first(from, to, "body-part") >= 0;
}

/** How far before a word of trouble its negation may stand, in words: `not at all sore`. */
const BEFORE_TROUBLE = 3;

/** `no pain`, `nothing sore`, `not a sore thumb`: within its clause. */
function isDenied(words: LineWords, trouble: number): boolean {
  const from = Math.max(clauseAt(words, trouble).from, trouble - BEFORE_TROUBLE);
  return words.first(from, trouble, "negation") >= 0;
}

/**
 * `wrist pain better`, `thumb stiff but fine`: behind it within its clause, as `thumb sore, tone good` is still sore,
 * and so is it after a `good session`. In `pain in the right thumb` a side is named, and nothing is taken back.
 */
export function isTakenBack(words: LineWords, trouble: number): boolean {
  const { to } = clauseAt(words, trouble);
  for (let i = trouble + 1; i < to; i++)
    if (words.is(i, "eased") || (words.isGood(i) && !isSide(words, i) && isTurned(words, trouble, i))) return true;
  return false;
}

/** `stiff but fine`; `hurts even at rest`, `douleur bien présente` and `Schmerz geht durch` ease nothing. */
function isTurned(words: LineWords, trouble: number, good: number): boolean {
  for (let i = good - 1; i > trouble; i--) if (words.is(i, "negation") || ARTICLES.has(words.key(i))) return false;
  for (let i = good - 1; i > trouble; i--) if (TURNS.has(words.key(i))) return true;
  return false;
}

/** `right` says that something went well, or which of two it is. */
function isSide(words: LineWords, i: number): boolean {
  return /^right$/i.test(words.typed(i)) || words.is(i + 1, "body-part");
}

interface Clause {
  readonly from: number;
  /** The first word behind it. */
  readonly to: number;
}

/** The words around one up to the signs that part sentences. */
function clauseAt(words: LineWords, i: number): Clause {
  let from = i;
  while (from > 0 && !SIGNS.test(words.before(from))) from--;
  let to = i + 1;
  while (to < words.count && !SIGNS.test(words.before(to))) to++;
  return { from, to };
}

const SIGNS = /[,;.:!?–—]/;
