import type { Item, Meaning, SubjectMeaning } from "../words/meaning.ts";
import type { LineWords } from "./line-words.ts";
import { isBareTempo } from "./numbers.ts";
import { isTitleNumber, type TitleWords } from "./title.ts";

// What the kinds of evidence for practice ask of a line's words.

/** A line of practice by what was found in it, and what was practised. */
export interface Evidence {
  /** Missing where the first thing found names the subject. */
  readonly subject?: Item<SubjectMeaning>;
}

/** Subjects by a word of the trade: weak without a note, an amount or a comma. */
export const NAMED: readonly Meaning["type"][] = ["figure", "technique", "activity"];
export const WAYS: readonly Meaning["type"][] = ["pattern", "articulation", "note value", "span", "rhythm"];
export const TERMS: readonly Meaning["type"][] = [...WAYS, "direction"];

/** Words of lines of another kind. */
export const OTHER_LINES = [
  "negation",
  "body-part",
  "body-trouble",
  "total",
  "rest",
  "question",
  "teacher",
  "set-work",
] as const;

/** What makes a line a sentence, up to its first comma, tempo or place. */
export interface Signs {
  /** A pronoun or a verb, by its word; -1 where there is none. */
  readonly sign: number;
  readonly intends: boolean;
}

/** The first word that is part of something of one of the types; -1 where there is none. */
export function firstOf(words: LineWords, types: readonly Meaning["type"][]): number {
  for (let i = 0; i < words.count; i++) {
    const type = words.found(i)?.meaning.type;
    if (type !== undefined && types.includes(type)) return i;
  }
  return -1;
}

/** Words in front of a subject that have nothing to do with it. */
export function between(words: LineWords, to: number): number {
  let count = 0;
  for (let i = 0; i < to; i++) {
    const length = words.lengthOf(i, "filler", "practice-verb", "heading", "same-as-above");
    if (length > 0) i += length - 1;
    else if (!words.found(i)) count++;
  }
  return count;
}

export function behindItem(words: LineWords, i: number): number {
  const item = words.found(i);
  let behind = i;
  while (behind < words.count && words.found(behind) === item) behind++;
  return behind;
}

/** Something is found that tells how or what one plays; a kind of piece may be a phase as well. */
export function hasPracticeWord(
  words: LineWords,
  from: number,
  to: number,
  ...but: readonly Meaning["type"][]
): boolean {
  for (let i = from; i < to; i++) {
    const type = words.found(i)?.meaning.type;
    const isTitle = words.is(i, "title-kind", "title-number") || isTitleNumber(words, i);
    if (type && type !== "phase" && !but.includes(type) && !isTitle) return true;
  }
  return false;
}

/** `In the morning` says when, and names no piece. */
export function saysMore(words: LineWords, { from, to }: Pick<TitleWords, "from" | "to">): boolean {
  for (let i = from; i < to; i++) if (!words.is(i, "filler", "heading") || words.is(i, "title-kind")) return true;
  return false;
}

/** `quoted at 340` tells of no tempo. */
export function hasLikelyTempo({ items }: LineWords): boolean {
  return items.some(({ meaning }) => meaning.type === "tempo" && meaning.bpm <= FASTEST_LIKELY);
}

/** Beats a minute: of quicker ones one counts half as many. */
const FASTEST_LIKELY = 260;

/** A number that is a tempo as it stands before how it went. */
export function hasBareTempo({ items, text }: LineWords): boolean {
  return items.some((_, i) => isBareTempo(items, i, text, undefined));
}

/** `Harmonics over the middle octave, one in three speaks`: no verb and no pronoun in all of it. */
export function isSentenceLater(words: LineWords, from: number): boolean {
  return words.first(from, words.count, "sentence-sign", "intention", "negation", "teacher-verb") >= 0;
}
