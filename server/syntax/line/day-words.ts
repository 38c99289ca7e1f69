import type { Item } from "../words/meaning.ts";
import { BESIDE_PART, isTakenBack } from "./body-words.ts";
import type { LineWords } from "./line-words.ts";
import { leadingAmount, type TotalWords, totalIn } from "./total-words.ts";

/** What is said of the day itself, or of the player: no practice is counted of it. */
export type DayWords =
  | { readonly type: "rest" }
  | { readonly type: "body"; readonly sore: boolean; readonly total?: Item }
  | TotalWords
  /** A phase, a sitting or a lesson that lines below stand under, by its name. */
  | { readonly type: "heading"; readonly name: string; readonly sitting: boolean };

/** A rest, a body line, a total or a heading; undefined for any other line. */
export function dayWordsIn(words: LineWords): DayWords | undefined {
  return rest(words) ?? body(words) ?? totalIn(words) ?? heading(words);
}

const PRACTISED = ["scale", "chord", "chain", "figure", "title", "quoted", "tempo"] as const;

/** A reason for a day off is hardly longer. */
const LONGEST_REST = 14;

function rest(words: LineWords): DayWords | undefined {
  if (words.has(...PRACTISED, "outcome") || words.hasNumberedPlace) return undefined;
  const none = words.found(0)?.meaning;
  if (none?.type === "amount" && none.minutes === 0 && words.is(1, "rest")) return { type: "rest" }; // `0' - flu`
  const length = words.lengthOf(0, "rest");
  if (length > 0 && words.count <= LONGEST_REST && standsAsRest(words, length)) return { type: "rest" };
  const within = words.first(1, words.count, "rest");
  const isPhrase = within > 0 && words.lengthOf(within, "rest") > 1;
  return isPhrase && !words.has("amount") && words.count <= LONGEST_REST ? { type: "rest" } : undefined;
}

/** `off` and `nothing` begin sentences too; a phrase of two words or more hardly does. */
function standsAsRest(words: LineWords, length: number): boolean {
  if (length > 1 || words.count === 1) return true;
  if (words.before(1) !== "") return true;
  const next = words.is(1, "sentence-sign") || (words.found(1) !== undefined && !words.is(1, "rest"));
  return !next && (words.is(1, "rest", "filler") || !words.is(0, "rest-or-sentence"));
}

function body(words: LineWords): DayWords | undefined {
  if (words.has(...PRACTISED)) return undefined;
  const trouble = words.words.findIndex((_, i) => words.is(i, "body-trouble") && !isInTechnique(words, i));
  if (trouble < 0) return undefined;
  const from = Math.max(0, trouble - BESIDE_PART);
  const part = words.first(from, Math.min(words.count, trouble + BESIDE_PART + 1), "body-part");
  const isAlone = trouble === 0 && words.count <= 3;
  if (part < 0 && !isAlone) return undefined;
  if (words.first(Math.max(0, trouble - 2), trouble, "negation") >= 0) return undefined;
  if (isTakenBack(words, trouble)) return undefined;
  const meaning = words.meaningOf(trouble, "body-trouble");
  const total = leadingAmount(words);
  return { type: "body", sore: meaning !== "tired" && meaning !== "cold", ...(total && { total }) };
}

/** A heading of the writer's own is short, and ends in a colon. */
const LONGEST_HEADING = 4;

/** `main droite, cordes à vide`: a word within the name of a technique. */
function isInTechnique(words: LineWords, i: number): boolean {
  const item = words.found(i);
  return item?.meaning.type === "technique" && (words.found(i - 1) === item || words.found(i + 1) === item);
}

function heading(words: LineWords): DayWords | undefined {
  if (words.has(...PRACTISED, "outcome", "place")) return undefined;
  const length = words.lengthOf(0, "heading", "instrument");
  if (length > 0 && restIsAside(words, length)) {
    const kind = words.meaningOf(0, "heading");
    const name = kind && !SITTING.test(kind) ? kind : words.text.slice(words.start, words.words[length - 1]!.end);
    return { type: "heading", name, sitting: kind !== undefined && SITTING.test(kind) };
  }
  const content = words.text.slice(words.start, words.end).trimEnd();
  const isOwn = content.endsWith(":") && words.count <= LONGEST_HEADING && words.items.every(isUnknown);
  return isOwn ? { type: "heading", name: content.slice(0, -1).trim(), sitting: false } : undefined;
}

const SITTING = /sitting/;

/** Behind a warm-up a number is minutes: `w/u 8`. */
function isMinutes(words: LineWords, i: number): boolean {
  const meaning = words.found(i)?.meaning;
  return meaning?.type === "number" && words.meaningOf(0, "heading") === "warm-up" && areMinutes(meaning.value);
}

function areMinutes(value: number): boolean {
  return value >= 3 && value <= 60;
}

/** The items of a warm-up, with the number at its end as minutes; those of other headings as they are. */
export function withMinutes(phase: string, items: readonly Item[]): readonly Item[] {
  const last = items.at(-1);
  if (phase !== "warm-up" || last?.meaning.type !== "number" || !areMinutes(last.meaning.value)) return items;
  return items.with(-1, { ...last, meaning: { type: "amount", minutes: last.meaning.value, possible: true } });
}

/** `inspelen 10 min manualiter`: a word or two, which are not known, on what a heading's amount was for. */
function isNote(words: LineWords, i: number): boolean {
  if (words.found(i - 1)?.meaning.type !== "amount" || words.count - i > LONGEST_NOTE || words.before(i) !== "")
    return false;
  if (words.first(i, words.count, "sentence-sign", "intention", "negation", "before-time", "filler") >= 0) return false;
  return words.words.every((_, k) => k < i || !words.found(k));
}

/** In words. */
const LONGEST_NOTE = 2;

/** Behind the word of a heading: an amount, a time of day, further headings, and no more than a word or two. */
function restIsAside(words: LineWords, from: number): boolean {
  for (let i = from; i < words.count; ) {
    const type = words.found(i)?.meaning.type;
    if (isNote(words, i)) return true;
    if (isMinutes(words, i)) return i + 1 === words.count;
    const length = words.lengthOf(i, "heading", "filler");
    if (type !== "amount" && type !== "clock" && length === 0) return false;
    i += Math.max(1, type ? 1 : length);
  }
  return true;
}

function isUnknown({ meaning }: LineWords["items"][number]): boolean {
  return meaning.type === "unknown";
}
