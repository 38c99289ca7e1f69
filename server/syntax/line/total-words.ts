import type { Item } from "../words/meaning.ts";
import { behindItem } from "./evidence.ts";
import type { LineWords } from "./line-words.ts";

/** How long was practised in all: up to here on its day, or in a week, a month, a year. */
export interface TotalWords {
  readonly type: "total";
  readonly longer?: true;
}

/** Beside these an amount tells how long they took, and no total. */
const PRACTISED = [
  "scale",
  "chord",
  "chain",
  "figure",
  "title",
  "quoted",
  "tempo",
  "activity",
  "technique",
  "place",
] as const;

/**
 * The amount alone, or with words that say no more than that it is one; a sign behind it may lead to a short remark,
 * and so may a word that says what is in it or not. Behind `total` or `=` a number is minutes, and so it is before
 * `total`.
 */
export function totalIn(words: LineWords): TotalWords | undefined {
  let [amounts, longer] = [0, false];
  let i = isSum(words) ? 1 : 0;
  while (i < words.count && !(amounts > 0 && isAsideAt(words, i))) {
    const found = words.found(i)?.meaning;
    const isLonger = amounts === 0 && words.is(i, "longer-time");
    const length = words.lengthOf(i, "total", "beside-total", "longer-time");
    const isAmount = (found?.type === "amount" && found.minutes > 0) || isMinutes(words, i);
    if (isAmount) amounts++;
    else if (length === 0 && !(longer && amounts === 0 && found?.type === "number")) return undefined; // `week 12: 4 h`
    longer ||= isLonger;
    i = isAmount || length === 0 ? behindItem(words, i) : i + length;
  }
  if (amounts === 0 || hasPractice(words, i)) return undefined;
  if (longer) return { type: "total", longer: true };
  return isPossible(words) ? { type: "total" } : undefined;
}

/** What is practised stands on the line; of what the amount is made up it may name some. */
function hasPractice(words: LineWords, aside: number): boolean {
  if (words.is(aside, "counted-with")) return false;
  for (let i = 0; i < words.count; i++) if (isPractised(words, i) && !isPlaceInPassing(words, i, aside)) return true;
  return false;
}

function isPractised(words: LineWords, i: number): boolean {
  const type = words.found(i)?.meaning.type;
  return type !== undefined && (PRACTISED as readonly string[]).includes(type);
}

/** `40 min, dog barked all through`: a place by its name alone, within what is said. */
function isPlaceInPassing(words: LineWords, i: number, aside: number): boolean {
  const item = words.found(i)!;
  if (item.meaning.type !== "place" || item.meaning.word !== "named") return false;
  return i < aside || item === words.found(i - 1) || words.before(i) === "";
}

/** Of a day the first amount is no more than it has. */
function isPossible({ items }: LineWords): boolean {
  const amount = items.find(({ meaning }) => meaning.type === "amount")?.meaning;
  return amount?.type !== "amount" || amount.possible;
}

/** `= 50`. */
function isSum(words: LineWords): boolean {
  return words.typed(0) === "=";
}

/** A number or a time of day that a word beside it says to be minutes, or hours and minutes. */
function isMinutes(words: LineWords, i: number): boolean {
  const meaning = words.found(i)?.meaning;
  if (meaning?.type !== "number" && meaning?.type !== "clock") return false;
  if (i > 0 && (words.is(0, "total") || (isSum(words) && i === 1))) return true;
  if (meaning.type === "number" && meaning.value < LEAST_MINUTES) return false; // `3 in all`
  return i === 0 && words.is(1, "total") && words.count === 1 + words.lengthOf(1, "total");
}

const LEAST_MINUTES = 5;

/** In words: where the remark behind an amount begins at the latest, and how long it may be. */
const LONGEST_TOTAL = 8;
const LONGEST_ASIDE = 7;
/** Without a sign before it. */
const LONGEST_JOINED = 5;

function isAsideAt(words: LineWords, i: number): boolean {
  const length = words.count - i;
  if (i > LONGEST_TOTAL) return false;
  if (words.is(i, "counted-with")) return true;
  if (length <= LONGEST_ASIDE && /[,.;!?(–-]/.test(words.before(i))) return true;
  return isJoinedRemark(words, i);
}

/** `45 minutes and lips still alive!!`: a few words that make no sentence. */
function isJoinedRemark(words: LineWords, i: number): boolean {
  const from = i + words.lengthOf(i, "goes-on");
  if (from === i || from >= words.count || words.count - from > LONGEST_JOINED) return false;
  for (let k = from; k < words.count; k++) if (words.found(k)?.meaning.type === "amount") return false;
  return words.first(from, words.count, "sentence-sign", "intention", "negation", "before-time") < 0;
}

/** Behind the words of a total a number is minutes, and `0:45` three quarters of an hour. */
export function asAmount(item: Item, longer: boolean): Item {
  const { meaning } = item;
  if (meaning.type === "amount" && longer) return { ...item, meaning: { ...meaning, possible: true } };
  if (meaning.type === "number")
    return { ...item, meaning: { type: "amount", minutes: meaning.value, possible: true } };
  if (meaning.type !== "clock") return item;
  return { ...item, meaning: { type: "amount", minutes: meaning.hour * 60 + meaning.minute, possible: true } };
}

/** The amount that opens a line, with a sign behind it: `35'. thumb stiff`. */
export function leadingAmount(words: LineWords): Item | undefined {
  const first = words.found(0);
  if (first?.meaning.type !== "amount" || !first.meaning.possible) return undefined;
  return /[,.;!?(–-]/.test(words.before(behindItem(words, 0))) ? first : undefined;
}
