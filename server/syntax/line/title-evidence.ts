import { BARS_BESIDE_TITLE } from "../lexicon/places/beside-title.ts";
import { EXERCISE_WORDS } from "../lexicon/title-words.ts";
import type { Item, Meaning } from "../words/meaning.ts";
import { type Evidence, hasBareTempo, hasLikelyTempo, type Signs, saysMore } from "./evidence.ts";
import { ORDINARY } from "./known-title.ts";
import type { LineWords } from "./line-words.ts";
import { hasTempoApart } from "./tempo-evidence.ts";
import { isAgain, isForWhom, isTitleNumber, opensWithTempo, type TitleWords } from "./title.ts";

/** A piece by its name, where something is said of it; what names an exercise by its own words is one. */
export function byTitle(
  words: LineWords,
  title: TitleWords | undefined,
  { sign, intends }: Signs,
): Evidence | undefined {
  if (!title || intends || (sign >= 0 && sign < title.to) || isDate(words, title) || !standsAsTitle(words, title))
    return undefined;
  const first = words.found(title.from);
  if (first && TRADE.includes(first.meaning.type) && !isNamedSo(words, title)) return byTrade(words, title, first);
  const declared = words.titleOf(title.text);
  if (declared === undefined && namesExercise(words, title))
    return { subject: { start: title.start, end: title.end, meaning: { type: "technique", name: title.text } } };
  const meaning = { type: "title", title: declared ?? title.text, declared: declared !== undefined } as const;
  return { subject: { start: title.start, end: title.end, meaning } };
}

/** A place or a tempo behind a name; without either, a kind of piece or two capitals, and what was said of it. */
function standsAsTitle(words: LineWords, title: TitleWords): boolean {
  const counts = hasLikelyTempo(words) || words.hasNumberedPlace || hasBareTempo(words) || opensWithTempo(words);
  const isNamed = (title.capitals > 0 || title.isKind || title.numbered) && saysMore(words, title);
  const isSaid = words.has("outcome", "tries", "times", "done", "without click");
  const ends =
    title.to >= words.count || /[,.:;!(–—-]/.test(words.before(title.to)) || words.found(title.to) !== undefined;
  return (
    (counts && isNamed) ||
    (isNamed && words.has("place") && (title.isKind || title.capitals > 1)) ||
    (title.isKind && title.capitals > 0 && (isAgain(words, title.to) || (ends && isSaid))) ||
    (title.isKind && title.capitals > 0 && ends && (title.numbered || words.has("amount"))) ||
    isNumberedKind(words, title) ||
    isKindApart(words, title) ||
    (title.capitals > 0 && isAgain(words, title.to) && isSaid) ||
    (title.capitals > 1 && ends && (isSaid || words.has("amount"))) ||
    (title.capitals > 1 && isForWhom(words, title.to) && words.is(0, "practice-verb")) ||
    (isNamed && words.has("scale") && hasTempoApart(words)) || // `Mozart D maj i / 116`
    isBesidePlaceApart(words, title)
  );
}

/**
 * `greensleeves - first half - slow - nearly`: small letters of which nothing is known, before a sign; a part of the
 * line is a place, and two others say how the piece was played there. `film, first half, slow` is no piece.
 */
function isBesidePlaceApart(words: LineWords, { from, to, capitals }: TitleWords): boolean {
  if (capitals > 0 || to - from > LONGEST_SMALL || !/^[,–-]/.test(words.before(to))) return false;
  for (let i = from; i < to; i++) if (words.found(i) || words.is(i, ...ORDINARY)) return false;
  if (words.first(to, words.count, "intention", "teacher-verb", "sentence-sign") >= 0) return false;
  return HOW.filter((type) => words.has(type)).length > 1 && placeApart(words, to);
}

const HOW = ["without click", "tempo", "manner", "articulation", "outcome", "tries", "times", "rhythm"] as const;

/** In words. */
const LONGEST_SMALL = 3;

/** Between two signs stands nothing but a place. */
function placeApart({ text, words, items, end }: LineWords, from: number): boolean {
  const rest = text.slice(words[from]!.start, end);
  return rest.split(/\s*,\s*|\s[–-]\s/).some((part) => {
    if (PLACE_BESIDE.test(part.trim())) return true;
    const start = words[from]!.start + rest.indexOf(part);
    return items.some(
      (item) => item.meaning.type === "place" && item.start === start && item.end === start + part.length,
    );
  });
}

const PLACE_BESIDE = new RegExp(`^(?:${BARS_BESIDE_TITLE})$`, "i");

/** `March 3, snow`. */
function isDate(words: LineWords, { from, to }: TitleWords): boolean {
  return words.key(from) === "march" && to - from === 2 && !words.has("tempo", "place");
}

/** `song 41 x3 ok`, `No 15. Awful`: a kind of piece with its number, and nothing else before what is said of it. */
export function isNumberedKind(words: LineWords, { from, to }: TitleWords): boolean {
  const number = from + words.lengthOf(from, "title-kind", "title-number");
  const isDenial = words.is(from, "negation") && !words.isCapital(from); // `no 5 today`
  const isNext = isTitleNumber(words, number);
  if (number === from || isDenial || !isNext || words.is(to, "verb-behind", "sentence-sign")) return false;
  for (let i = number + 1; i < to; i++) if (!words.isCapital(i) && !words.is(i, "title-joint")) return to - number < 4;
  return true;
}

/** `Partita Allemande, breaths only`: capitals alone, of which one is a kind of piece, before a comma. */
function isKindApart(words: LineWords, { from, to, isKind, capitals }: TitleWords): boolean {
  if (!isKind || capitals < 2 || to >= words.count || !/^[,:;]/.test(words.before(to))) return false;
  for (let i = from; i < to; i++)
    if (!words.isCapital(i) && !words.is(i, "title-joint") && !words.is(i, "title-kind")) return false;
  return words.first(to, words.count, "sentence-sign", "intention", "teacher-verb") < 0;
}

/** Words of the trade that no title begins with: without a tonic they name what is practised by themselves. */
const TRADE: readonly Meaning["type"][] = ["kind", "part of a kind", "chord kind", "pattern", "articulation", "rhythm"];

/** `Blues for a Wet Dog`: two further words in capitals, of which nothing else is known. */
function isNamedSo(words: LineWords, { from, to }: TitleWords): boolean {
  let capitals = 0;
  for (let i = from + 1; i < to; i++) if (words.isCapital(i) && !words.found(i)) capitals++;
  return capitals > 1 && !isShouted(words);
}

/** Nothing is told by capitals where all is written in them. */
function isShouted({ text, start, end }: LineWords): boolean {
  return !/\p{Ll}{3}/u.test(text.slice(start, end));
}

/** `Major arpeggios legato`, `Double tonguing, G5`: an exercise by its own words. */
function byTrade({ text }: LineWords, title: TitleWords, { start, end: itsEnd }: Item): Evidence {
  const end = Math.max(itsEnd, title.end);
  const meaning = { type: "technique", name: text.slice(start, end) } as const;
  return { subject: { start, end, meaning } };
}

/** `finger drill E-F#-E`, `Popping exercise`, `Stopped horn scale`: a word of the trade in small letters. */
function namesExercise(words: LineWords, { from, to, numbered }: TitleWords): boolean {
  const isOfKind = words.is(from, "title-kind") && !EXERCISE_WORDS.has(words.key(from)); // `Valse lente`
  if (numbered || isOfKind) return false;
  for (let i = from; i < to; i++) {
    const type = words.found(i)?.meaning.type;
    const isTrade =
      type === "technique" || type === "figure" || words.isScaleWord(i) || EXERCISE_WORDS.has(words.key(i));
    if (isTrade && (i === from || !words.isCapital(i))) return true;
  }
  return false;
}
