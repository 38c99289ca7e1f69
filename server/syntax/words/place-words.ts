import { wholeNumberOf } from "./fold.ts";
import type { MeaningOf } from "./meaning.ts";
import { type Found, longest, type Words } from "./words.ts";

type Place = Found<MeaningOf<"place">>;

/** `17`, `17-32`, `12a`, `17-end`. */
const RANGE = /^\d{1,4}[a-f]?(?:[-–/+](?:\d{1,4}[a-f]?|end|ende|schluss|fin|fine|einde|final))?$|^\d{1,4}ff?$/i;
const ENDS = /[-–](?:end|ende|schluss|fin|fine|einde|final)$/i;
/** `b.9-14`, `bars1-8`, `p12`, `T.25`: a word, a point or none, and what it counts. */
const CLOSE = /^(\p{L}{1,8})(\.?)(\d{1,4}[a-f]?(?:[-–](?:\d{1,4}[a-f]?|end|ende|fin|fine|einde))?)$/iu;
/** Movements alone are in capitals; one letter would be a note or a word. */
const ROMAN = /^(?:I{2,3}|IV|VI{1,3}|IX|XI{1,2})$/;
const ROMAN_NUMBER = /^(?:I{1,3}|IV|VI{0,3}|IX|XI{0,2})$/;
const NUMBER_OR_ROMAN = /^(?:\d{1,3}|[ivxl]{1,6})$/i;
const MARK = /^[A-Z]{1,2}\d?(?:[-–](?:[A-Z]{1,2}\d?|end))?$/;
/** `2nd`, `3.`, `2e`, `2ème`. */
const ORDINAL = /^(\d{1,3})(?:st|nd|rd|th|d|\.|e|er|re|ère|ème|eme|de|ste|º|ª|°)$/i;
/** A lone number of bars close to one letter could be a note, an interval or an abbreviation. */
const SURE_CLOSE_NUMBER = 10;

/** Whether a word may be a place in itself: `b.9-14`, `II`. */
export function looksLikePlace(word: string): boolean {
  return CLOSE.test(word) || ROMAN.test(word);
}

/**
 * Where in a piece: `bars 17-32`, `b.9-14`, `upbeat to 17`, `mvt 2`, `II`, `var 3`, `letter C to end`, `page 4`,
 * `second line`, `first 8 bars`, `A section`, `from the top to bar 16`, `coda`.
 */
export function placeAt(words: Words, i: number): Place | undefined {
  if (isTick(words, i)) return undefined;
  const found = longest([
    upbeat(words, i),
    joinedPlace(words, i),
    numberedPlace(words, i),
    ordinalPlace(words, i),
    letteredSection(words, i),
    romanMovement(words, i),
    besidePlace(words, i),
    fromPlace(words, i),
    toPlace(words, i),
  ]);
  return found ?? withArticle(words, i);
}

/** `88 v 96`: between two tempos it is a tick, no verse. */
function isTick(words: Words, i: number): boolean {
  return words.is(i, "v") && TWO_FIGURES.test(words.typed(i - 1)) && TWO_FIGURES.test(words.typed(i + 1));
}

const TWO_FIGURES = /^[1-9]\d\d?$/;

/** The same behind a place with a name: `from the top to bar 16`. */
export function furtherPlace(words: Words, i: number, named: Place): Place {
  const to = toPlace(words, i + named.length);
  return to ? asTyped(words, i, named.length + to.length, to.meaning.word) : named;
}

function place(length: number, word: string, text: string): Place {
  return { length, meaning: { type: "place", word, text: `${word} ${text}` } };
}

function asTyped(words: Words, i: number, length: number, word: string): Place {
  return { length, meaning: { type: "place", word, text: words.text(i, i + length) } };
}

function placeWord(words: Words, i: number): Found<MeaningOf<"place word">> | undefined {
  const found = words.phrase(i, "place word");
  if (found || !words.typed(i).endsWith(".")) return found;
  const meaning = wordMeaning(words, words.typed(i).slice(0, -1));
  return meaning && { length: 1, meaning };
}

function wordMeaning(words: Words, word: string): MeaningOf<"place word"> | undefined {
  const meanings = words.vocabulary.meanings(word.toLowerCase());
  return meanings?.find((meaning): meaning is MeaningOf<"place word"> => meaning.type === "place word");
}

/** The place word at a token that has a role. */
function inRole(
  words: Words,
  i: number,
  role: "from" | "to" | "end" | "article" | "onwards" | "beside",
): Found<MeaningOf<"place word">> | undefined {
  const found = placeWord(words, i);
  return found?.meaning[role] ? found : undefined;
}

function upbeat(words: Words, i: number): Place | undefined {
  const leads =
    words.is(i, "upbeat", "pickup", "pick-up", "anacrusis") && words.is(i + 1, "to") && RANGE.test(words.word(i + 2));
  return leads ? place(3, "upbeat to", hyphened(words.word(i + 2))) : undefined;
}

/** `b.9-14`, `bars1-8`, `p12`. */
function joinedPlace(words: Words, i: number): Place | undefined {
  const match = CLOSE.exec(words.typed(i));
  if (!match) return undefined;
  const meaning = wordMeaning(words, match[1]!);
  const noun = meaning?.numbered ?? meaning?.short;
  if (!noun || noun === "letter") return undefined;
  const number = match[3]!;
  const sure = meaning?.numbered || match[2] || /[-–]/.test(number) || Number(number) >= SURE_CLOSE_NUMBER;
  if (!sure || (match[1] === match[1]!.toUpperCase() && !match[2] && !/[-–]/.test(number))) return undefined;
  const onward = rangesAt(words, i, number);
  return place(onward.length, noun, onward.text);
}

/** `bars 17-32`, `bb. 33-48`, `mvt 2`, `vars 4`, `letter C to end`, `verse 2`. */
function numberedPlace(words: Words, i: number): Place | undefined {
  const found = placeWord(words, i);
  const noun = found?.meaning.numbered ?? found?.meaning.short;
  if (!found || !noun) return undefined;
  const next = i + found.length;
  if (noun === "mvt") return movement(words, i, found.length);
  if (noun === "var" && ROMAN_NUMBER.test(words.typed(next))) return place(found.length + 1, noun, words.typed(next));
  if (noun === "letter" || noun === "section" || noun === "part") return markedPlace(words, i, found.length, noun);
  if (!found.meaning.numbered && !isSureShort(words, i, found.length)) return undefined;
  if (!isPlaceNumber(words, next, noun)) return undefined;
  const ranges = rangesAt(words, next);
  return ranges.length > 0 ? place(found.length + ranges.length, noun, ranges.text) : undefined;
}

/** In a letter or two it needs its point; `mm` is a tempo, too, and means bars before a range alone. */
function isSureShort(words: Words, i: number, length: number): boolean {
  const next = words.typed(i + length);
  const range = /[-–]/.test(next) || words.is(i + length + 1, "to", "-", "–");
  if (words.is(i, "mm", "mm.")) return range;
  if (words.typed(i) === "bb") return range && i > 0; // B flat by itself
  return (
    words.typed(i).endsWith(".") || (range && words.is(i, "m", "p", "pp", "l", "ll", "t", "b", "bs", "ms", "v", "vv"))
  );
}

/** In words, numbers count variations and the like; `line one`. */
function isPlaceNumber(words: Words, i: number, noun: string): boolean {
  if (RANGE.test(words.word(i))) return true;
  return noun !== "bars" && noun !== "mvt" && wholeNumberOf(words.typed(i)) !== undefined;
}

function movement(words: Words, i: number, named: number): Place | undefined {
  const name = words.quoted(i + named)?.text ?? numberOrRoman(words, i + named);
  return name === undefined ? undefined : place(named + 1, "mvt", name);
}

function numberOrRoman(words: Words, i: number): string | undefined {
  if (NUMBER_OR_ROMAN.test(words.typed(i))) return words.word(i);
  const spoken = wholeNumberOf(words.typed(i));
  return spoken === undefined ? undefined : String(spoken);
}

/** `letter C`, `figs C to E`, `fig. 5 to end`, `section B`. */
function markedPlace(words: Words, i: number, named: number, noun: string): Place | undefined {
  const at = i + named;
  const mark = (n: number): boolean =>
    MARK.test(words.typed(n)) ||
    (noun !== "section" && /^\d{1,3}$/.test(words.typed(n))) ||
    (noun === "part" && ROMAN_NUMBER.test(words.typed(n)));
  if (!mark(at)) return undefined;
  const to = inRole(words, at + 1, "to");
  const end = to && inRole(words, at + 1 + to.length, "end");
  const word = noun === "letter" && !words.is(i, "letter", "letters") ? "figure" : noun;
  if (to && end) return place(named + 1 + to.length + end.length, word, `${words.typed(at)} to end`);
  if (to && mark(at + 1 + to.length))
    return place(named + 2 + to.length, word, `${words.typed(at)} to ${words.typed(at + 1 + to.length)}`);
  const further = words.is(at + 1, "and", "&", "+") && mark(at + 2);
  return further
    ? place(named + 3, word, `${words.typed(at)}, ${words.typed(at + 2)}`)
    : place(named + 1, word, words.typed(at));
}

/** `2nd mvt`, `second line`, `first 8 bars`, `last half`, `2. Satz`. */
function ordinalPlace(words: Words, i: number): Place | undefined {
  const figure = ORDINAL.exec(words.typed(i));
  const spoken = figure ? undefined : placeWord(words, i);
  const nth = figure ? Number(figure[1]) : spoken?.meaning.ordinal;
  const length = spoken?.length ?? 1;
  if (nth === undefined && !spoken?.meaning.likeOrdinal) return undefined;
  const counted = wholeNumberOf(words.typed(i + length)) === undefined ? 0 : 1;
  const noun = placeWord(words, i + length + counted);
  if (!noun || (!noun.meaning.numbered && !noun.meaning.part)) return undefined;
  const whole = length + counted + noun.length;
  if (noun.meaning.numbered === "mvt" && nth !== undefined && counted === 0) return place(whole, "mvt", String(nth));
  return asTyped(words, i, whole, noun.meaning.numbered ?? "named");
}

/** `A section`, `B-Teil`, `C part`. */
function letteredSection(words: Words, i: number): Place | undefined {
  if (!/^[A-E]$/.test(words.typed(i))) return undefined;
  const noun = placeWord(words, i + 1);
  const { numbered } = noun?.meaning ?? {};
  const sections = numbered === "section" || numbered === "part" || numbered === "strain" || words.is(i + 1, "part");
  return noun && sections ? asTyped(words, i, 1 + noun.length, "section") : undefined;
}

/** `II` alone. */
function romanMovement(words: Words, i: number): Place | undefined {
  return ROMAN.test(words.typed(i)) ? place(1, "mvt", words.word(i)) : undefined;
}

/** `8 bars before fig. 5`. */
function besidePlace(words: Words, i: number): Place | undefined {
  const counted = wholeNumberOf(words.typed(i)) === undefined ? undefined : placeWord(words, i + 1);
  if (!counted?.meaning.numbered) return undefined;
  const beside = inRole(words, i + 1 + counted.length, "beside");
  const at = i + 1 + counted.length + (beside?.length ?? 0);
  const inner = beside && (numberedPlace(words, at) ?? joinedPlace(words, at) ?? namedPlace(words, at));
  return inner && asTyped(words, i, at - i + inner.length, inner.meaning.word);
}

/** `from bar 17`, which goes on to the end; `from bar 17 to 32`. */
function fromPlace(words: Words, i: number): Place | undefined {
  const from = inRole(words, i, "from");
  if (!from) return undefined;
  const at = i + from.length;
  const inner = numberedPlace(words, at) ?? joinedPlace(words, at) ?? ordinalPlace(words, at) ?? namedPlace(words, at);
  if (!inner) return undefined;
  const { word, text } = inner.meaning;
  const length = from.length + inner.length;
  if (word === "bars" && /^bars \d+[a-f]?$/.test(text)) {
    const to = toPlace(words, i + length);
    return to
      ? asTyped(words, i, length + to.length, word)
      : { length, meaning: { type: "place", word, text: `${text}-end` } };
  }
  if (text.startsWith(`${word} `) && /[\d-]/.test(text) && word === "bars") return { length, meaning: inner.meaning };
  return furtherPlace(words, i, asTyped(words, i, length, word));
}

/** `to bar 32`, `up to the repeat`, `to end`. */
function toPlace(words: Words, i: number): Place | undefined {
  const to = inRole(words, i, "to");
  if (!to) return undefined;
  const at = i + to.length;
  const end = inRole(words, at, "end");
  if (end) return asTyped(words, i, to.length + end.length, "named");
  const inner = numberedPlace(words, at) ?? joinedPlace(words, at) ?? ordinalPlace(words, at) ?? namedPlace(words, at);
  return inner && asTyped(words, i, to.length + inner.length, inner.meaning.word);
}

/** `the last line`. */
function withArticle(words: Words, i: number): Place | undefined {
  const article = inRole(words, i, "article");
  const inner = article && ordinalPlace(words, i + article.length);
  return inner && { length: article.length + inner.length, meaning: inner.meaning };
}

function namedPlace(words: Words, i: number): Place | undefined {
  return words.phrase(i, "place") ?? letteredSection(words, i) ?? withArticle(words, i);
}

/**
 * `17-32`, `17 to 32`, `1-8 and 17-24`, `17 to end`, `17 onwards`.
 *
 * @param first the number at `i`, where it is part of its word
 */
function rangesAt(words: Words, i: number, first?: string): { readonly text: string; readonly length: number } {
  const texts: string[] = [];
  let next = i;
  for (let typed = first ?? numberAt(words, i); typed !== undefined; typed = numberAt(words, next)) {
    const range = rangeAt(words, next, typed);
    texts.push(range.text);
    next += range.length;
    if (!(words.is(next, "and", "&", "+", "und", "et", "en", "e", "y") && RANGE.test(words.word(next + 1)))) break;
    next++;
  }
  return { text: texts.join(", "), length: next - i };
}

function numberAt(words: Words, i: number): string | undefined {
  if (RANGE.test(words.word(i))) return words.word(i);
  const spoken = wholeNumberOf(words.typed(i));
  return spoken === undefined ? undefined : String(spoken);
}

function rangeAt(words: Words, i: number, typed: string): { readonly text: string; readonly length: number } {
  if (ENDS.test(typed)) return { text: typed.replace(ENDS, "-end"), length: 1 };
  const dash = words.is(i + 1, "-", "–") ? 1 : 0;
  const to = dash ? undefined : inRole(words, i + 1, "to");
  const at = i + 1 + (dash || (to?.length ?? 0));
  if (dash || to) {
    if (RANGE.test(words.word(at)) && !ENDS.test(words.word(at)))
      return { text: `${typed}-${hyphened(words.word(at))}`, length: at + 1 - i };
    const end = inRole(words, at, "end");
    if (end) return { text: `${typed}-end`, length: at + end.length - i };
  }
  const onwards = inRole(words, i + 1, "onwards");
  if (onwards && isOnwards(words, i + 1 + onwards.length, onwards))
    return { text: `${typed}-end`, length: 1 + onwards.length };
  return { text: hyphened(typed), length: 1 };
}

/** `on` goes on with an instrument or a note, too. */
function isOnwards(words: Words, next: number, { length }: Found): boolean {
  return length > 1 || !words.is(next - 1, "on") || next >= words.tokens.length;
}

function hyphened(range: string): string {
  return range.replace(/[–/]/, "-").replace("+", ", ").replace(/ff?$/i, "-end");
}
