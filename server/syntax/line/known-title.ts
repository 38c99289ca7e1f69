import { ARTICLES, CONNECTORS } from "../lexicon/title-words.ts";
import { nameKey } from "../words/fold.ts";
import type { Item, SubjectMeaning } from "../words/meaning.ts";
import type { LineWords } from "./line-words.ts";
import { isBareTempo } from "./numbers.ts";
import { firstWord, isAgain, isTitleNumber } from "./title.ts";

/** Words of a line that are a title the journal knows by then. Words are counted from 0, the last one excluded. */
export interface TitleMatch {
  readonly from: number;
  readonly to: number;
  /** As first written, or as declared. */
  readonly title: string;
  readonly declared: boolean;
  /** All of its words, in their order; else some of them, which no other known title has together. */
  readonly whole: boolean;
}

/**
 * The subject of a line that names a known title; undefined where the words only occur in it. A sentence that speaks of
 * a piece tells of no practice: a wrong count is worse than silence.
 */
export function knownTitleIn(words: LineWords, matches: readonly TitleMatch[]): Item<SubjectMeaning> | undefined {
  const within = matches.filter(({ to }) => to <= words.count); // others reach over a dash
  const found = within.map((match) => withoutJoint(words, match)).find((match) => stands(words, match));
  if (!found) return undefined;
  const [start, end] = [words.words[found.from]!.start, words.words[found.to - 1]!.end];
  return { start, end, meaning: meaningOf(found, words.text.slice(start, end)) };
}

/** A short form does not end in `in` or `the`. */
function withoutJoint(words: LineWords, match: TitleMatch): TitleMatch {
  let { to } = match;
  while (!match.whole && to > match.from + 1 && words.is(to - 1, "filler")) to--;
  return { ...match, to };
}

function meaningOf({ title, declared }: TitleMatch, typed: string): SubjectMeaning {
  if (declared) return { type: "title", title, declared };
  const isSame = nameKey(title) === nameKey(typed);
  return { type: "title", title: typed, declared, ...(isSame ? {} : { of: title }) };
}

/** Whether words that would be a title of their own are another use of a known one: `Heron's Dance B` beside it. */
export function isUseOf(words: LineWords, match: TitleMatch): boolean {
  if (goesOn(words, match)) return false;
  if (!match.whole) return match.from === 0 && match.to === words.count && isName(words, match);
  return match.from === 0 || (isPlain(words, match) && isLedTo(words, match, 0));
}

function stands(words: LineWords, match: TitleMatch): boolean {
  if (isSentence(words, match) || goesOn(words, match)) return false;
  const first = firstWord(words);
  if (match.from !== first) return match.whole && isPlain(words, match) && standsWithin(words, match, first);
  if (match.whole && match.to - match.from > 1) return standsFirst(words, match);
  const isAlone = match.whole && match.to >= words.count;
  return isName(words, match) && (isAlone || isSaid(words));
}

/** A title of several words at the head of its line. */
function standsFirst(words: LineWords, { from, to }: TitleMatch): boolean {
  const ends =
    to >= words.count ||
    /[,.:;!(–—-]/.test(words.before(to)) ||
    /[,:;(–—]/.test(words.before(to + 1)) ||
    words.found(to) !== undefined ||
    isAgain(words, to) ||
    words.is(to, "same-as-above");
  return ends || (hasCapital(words, from, to) && isSaid(words));
}

/** How many words that are no part of a title may stand before it. */
const MOST_BEFORE = 4;

/** Behind other words a title is the subject only where a tempo or a numbered place follows. */
function standsWithin(words: LineWords, match: TitleMatch, first: number): boolean {
  const { from, to } = match;
  if (from < first || from - first > MOST_BEFORE || !isLedTo(words, match, first)) return false;
  if (words.first(0, from, "negation") >= 0) return false;
  const end = words.words[to - 1]!.end;
  const counts = words.items.filter(isCounting);
  return counts.every((item) => item.start >= end) && (counts.length > 0 || hasBareTempo(words));
}

/** A tempo or a numbered place: titles are learnt where one stands. */
export function isCounting({ meaning }: Item): boolean {
  return meaning.type === "tempo" || (meaning.type === "place" && /\d/.test(meaning.text));
}

/** Two words or more, with a capital. */
function isPlain(words: LineWords, { from, to }: TitleMatch): boolean {
  return to - from > 1 && words.isCapital(from);
}

/** What stands before a title is no part of another one: `easy Sleepy Frog`, but `Return of the Sleepy Frog`. */
function isLedTo(words: LineWords, { from }: TitleMatch, first: number): boolean {
  for (let i = first; i < from; i++) {
    if (i > 0 && isProper(words, i)) return false;
    if (i > first && /[,;.]/.test(words.before(i))) return false;
  }
  const before = ARTICLES.has(words.key(from - 1)) ? from - 2 : from - 1;
  return !/[,;.]/.test(words.before(from)) && !CONNECTORS.has(words.key(before));
}

/** What follows belongs to the title, so that it is another one: `Study 15`, `The Frog and the Fly`, `Minuet in G`. */
function goesOn(words: LineWords, { from, to }: TitleMatch): boolean {
  if (to >= words.count || !/^['’]?$/.test(words.before(to))) return false;
  if (isTitleNumber(words, to) || (words.is(to, "title-number") && /^#?\d/.test(words.typed(to + 1)))) return true;
  if (isShouted(words)) return false;
  if (isProper(words, to)) return true;
  const isKind = to - from === 1 || words.is(to - 1, "title-kind");
  if (isKind && ["in", "en"].includes(words.key(to))) return words.isCapital(to + 1) || !words.is(to + 1, "filler");
  return CONNECTORS.has(words.key(to)) && (isProper(words, to + 1) || isProper(words, to + 2));
}

/** A word in a capital that nothing else is known of; a letter alone is a section or a note. */
function isProper(words: LineWords, i: number): boolean {
  return words.isCapital(i) && /\p{L}{2}/u.test(words.typed(i)) && !words.found(i);
}

/** Capitals throughout tell nothing. */
function isShouted(words: LineWords): boolean {
  const text = words.text.slice(words.start, words.end);
  return !/\p{Ll}/u.test(text);
}

function hasCapital(words: LineWords, from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (words.isCapital(i)) return true;
  return false;
}

/** Words alone that are a name: in a capital, and one at least that means nothing else. */
function isName(words: LineWords, { from, to }: TitleMatch): boolean {
  if (!hasCapital(words, from, to)) return false;
  for (let i = from; i < to; i++) if (/\p{L}{3}/u.test(words.typed(i)) && !isOrdinary(words, i)) return true;
  return false;
}

/** A word that tells what kind of line it stands on, or that means something by itself. */
function isOrdinary(words: LineWords, i: number): boolean {
  if (words.is(i, "title-number")) return true;
  if (words.is(i, "title-kind")) return false;
  const type = words.found(i)?.meaning.type;
  return (type !== undefined && type !== "title") || words.is(i, ...ORDINARY);
}

/** Words that tell what kind of line they stand on: alone they are the name of no piece. */
export const ORDINARY = [
  "sentence-sign",
  "intention",
  "filler",
  "practice-verb",
  "heading",
  "rest",
  "body-part",
  "body-trouble",
  "total",
  "beside-total",
  "set-work",
  "teacher",
  "question",
  "same-as-above",
  "negation",
  "instrument",
] as const;

/** Something is told of how it was played, where, or for how long. */
function isSaid(words: LineWords): boolean {
  return (
    words.has("tempo", "place", "outcome", "tries", "times", "amount", "done", "without click") || hasBareTempo(words)
  );
}

function hasBareTempo({ items, text }: LineWords): boolean {
  return items.some((_, i) => isBareTempo(items, i, text, undefined));
}

/** A pronoun or a verb up to the first comma, tempo or place, but in the title; or what is intended. */
function isSentence(words: LineWords, { from, to }: TitleMatch): boolean {
  const stop = Math.max(words.firstStop, to);
  for (let i = words.lengthOf(0, "practice-verb"); i < stop; i++) {
    const isWithin = i >= from && i < to;
    const isCapital = i > 0 && words.isCapital(i) && !/^I(?:['’]|$)/.test(words.typed(i));
    if (!isWithin && !isCapital && words.is(i, "sentence-sign")) return true;
  }
  for (let i = 0; i < Math.max(stop, MOST_BEFORE); i++)
    if ((i < from || i >= to) && words.is(i, "intention")) return true;
  return false;
}
