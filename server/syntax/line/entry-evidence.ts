import { TONICS_THAT_ARE_WORDS } from "../lexicon/note-leads.ts";
import { BEFORE_KEY } from "../lexicon/title-words.ts";
import { CHORDS_BY_FIGURE } from "../words/chord-words.ts";
import type { Item, Meaning, SubjectMeaning } from "../words/meaning.ts";
import type { LineWords } from "./line-words.ts";
import { countsElse, isBareTempo, isLeadingTempo, isNumber } from "./numbers.ts";
import { firstWord, isAgain, isTitleNumber, opensWithTempo, type TitleWords, titleIn } from "./title.ts";

/** A line of practice by what was found in it, and what was practised. */
export interface Evidence {
  /** Missing where the first thing found names the subject. */
  readonly subject?: Item<SubjectMeaning>;
}

/** Subjects with a tonic: strong wherever they stand. */
const KEYED: readonly Meaning["type"][] = ["scale", "chord", "chain", "several", "faulty subject"];
/** Subjects by a word of the trade: weak without a note, an amount or a comma. */
const NAMED: readonly Meaning["type"][] = ["figure", "technique", "activity"];
const TERMS: readonly Meaning["type"][] = ["pattern", "articulation", "note value", "span", "rhythm", "direction"];

/**
 * Whether a line tells of practice: a subject is found in it, or words with a place, a tempo or an amount. A sentence
 * in which such things occur in passing is none: a wrong count is worse than silence.
 */
export function evidenceIn(words: LineWords): Evidence | undefined {
  if (words.found(0)?.meaning.type === "quoted") return {};
  const at = first(firstOf(words, KEYED), bareTonic(words));
  const named = firstOf(words, NAMED);
  const title = titleIn(words);
  const signs = signsIn(words);
  const isTitled = at >= 0 && title !== undefined && isTitleBefore(words, title, at);
  if (at >= 0 && !isTitled) {
    if (named >= 0 && named < at && !signs.intends) return {};
    return isSentence(words, at, signs) ? undefined : {};
  }
  if (!(isTitled && named >= title.to) && isPracticeByName(words, named, signs)) return {};
  return byTitle(words, title, signs) ?? byTempo(words, signs) ?? byAmount(words, signs);
}

/** The lesser of two places; -1 where neither is one. */
function first(a: number, b: number): number {
  return a < 0 || b < 0 ? Math.max(a, b) : Math.min(a, b);
}

/** What follows a tonic that stands for its major key. */
const BEHIND_TONIC: readonly Meaning["type"][] = ["note value", "span", "tempo", "number", "range"];

/** A tonic in a capital with nothing but what belongs to a scale behind it, or behind `thirds in`; -1 where none is. */
function bareTonic(words: LineWords): number {
  for (let i = 0; i < words.count; i++) {
    const meaning = words.found(i)?.meaning;
    if (meaning?.type !== "note" || meaning.lower) continue;
    const behind = behindItem(words, i);
    const isChord = CHORDS_BY_FIGURE[meaning.note.octave ?? -1] !== undefined && isBehindTonic(words, behind);
    if (meaning.note.octave !== undefined && !isChord) continue;
    const ends = behind >= words.count || /^[,;]/.test(words.before(behind)) || isBehindTonic(words, behind);
    const isIn = words.key(i - 1) === "in" && TERMS.includes(words.found(i - 2)?.meaning.type ?? "unknown");
    return ends && (i === 0 || isIn) ? i : -1;
  }
  return -1;
}

function isBehindTonic(words: LineWords, i: number): boolean {
  return BEHIND_TONIC.includes(words.found(i)?.meaning.type ?? "unknown");
}

/** The first word that is part of something of one of the types; -1 where there is none. */
function firstOf(words: LineWords, types: readonly Meaning["type"][]): number {
  for (let i = 0; i < words.count; i++) {
    const type = words.found(i)?.meaning.type;
    if (type !== undefined && types.includes(type)) return i;
  }
  return -1;
}

/** What makes a line a sentence, up to its first comma, tempo or place. */
interface Signs {
  /** A pronoun or a verb, by its word; -1 where there is none. */
  readonly sign: number;
  readonly intends: boolean;
}

function signsIn(words: LineWords): Signs {
  const stop = words.firstStop;
  const opening = words.lengthOf(0, "practice-verb");
  let sign = -1;
  for (let i = opening; i < stop && sign < 0; i++) {
    const isName = i > 0 && words.isCapital(i) && words.typed(i) !== "I" && !/^I'/.test(words.typed(i));
    if (!isName && words.is(i, "sentence-sign")) sign = i;
  }
  const intention = words.first(0, Math.max(stop, 4), "intention");
  const isReached = words.found(intention + words.lengthOf(intention, "intention"))?.meaning.type === "number";
  return { sign, intends: intention >= 0 && !isReached }; // `got to 80`
}

/** Words in front of a subject that have nothing to do with it. */
function between(words: LineWords, to: number): number {
  let count = 0;
  for (let i = 0; i < to; i++) {
    const length = words.lengthOf(i, "filler", "practice-verb", "heading", "same-as-above");
    if (length > 0) i += length - 1;
    else if (!words.found(i)) count++;
  }
  return count;
}

function isSentence(words: LineWords, subject: number, { sign, intends }: Signs): boolean {
  if (intends) return true;
  const counts = words.has("tempo") || hasBareTempo(words);
  const strange = between(words, subject);
  if (strange === 0) return goesOnAsSentence(words, subject);
  if (sign >= 0 && !counts) return true;
  const isPlain = !counts && !words.has("amount", "place", ...TERMS);
  return strange > 4 || (strange > 1 && isPlain);
}

/** A verb follows at once, or words do behind a tonic that may be no tonic: `A minor problem`. */
function goesOnAsSentence(words: LineWords, subject: number): boolean {
  const behind = behindItem(words, subject);
  if (behind >= words.count || words.before(behind) !== "") return false;
  if (words.is(behind, "verb-behind")) return true; // `D minor is hard` is said of the scale
  const isPlain = !words.has("tempo", "amount", "place", ...TERMS);
  return isPlain && TONICS_THAT_ARE_WORDS.has(words.typed(subject).toLowerCase()) && !words.found(behind);
}

function behindItem(words: LineWords, i: number): number {
  const item = words.found(i);
  let behind = i;
  while (behind < words.count && words.found(behind) === item) behind++;
  return behind;
}

/** `Air in D minor`, `Minuet in G`: the key belongs to the title. */
function isTitleBefore(words: LineWords, title: TitleWords, subject: number): boolean {
  if (subject === title.from || hasPracticeWord(words, title.from, subject)) return false;
  const named = between(words, subject) > 0 || words.is(title.from, "title-kind");
  if (subject >= title.to) return named && (title.isKind || title.capitals > 1) && /,/.test(words.before(title.to));
  const leads = BEFORE_KEY.has(words.key(subject - 1));
  return named && (title.isKind || (leads && words.isCapital(title.from)));
}

/** Something is found that tells how or what one plays; a kind of piece may be a phase as well. */
function hasPracticeWord(words: LineWords, from: number, to: number, ...but: readonly Meaning["type"][]): boolean {
  for (let i = from; i < to; i++) {
    const type = words.found(i)?.meaning.type;
    const isTitle = words.is(i, "title-kind", "title-number") || isTitleNumber(words, i);
    if (type && type !== "phase" && !but.includes(type) && !isTitle) return true;
  }
  return false;
}

/** A figure, an activity: at the head of the line, and not in passing. */
function isPracticeByName(words: LineWords, at: number, { sign, intends }: Signs): boolean {
  if (at < 0 || intends || between(words, at) > 0) return false;
  const behind = behindItem(words, at);
  const counts = hasTempoApart(words) || opensWithTempo(words) || isLeadingTempo(words.items, 0, words.text);
  const isStrong = counts || words.has("tempo", "amount", "tries", "times", "note value", "outcome", "clock");
  const ends = behind >= words.count || /[,.:;!(–—-]/.test(words.before(behind)) || words.found(behind) !== undefined;
  const isSaid = words.text.slice(words.words[at]!.start, words.end).includes(",") && !isSentenceLater(words, at);
  return (sign < 0 || sign < at) && (isStrong || ends || isSaid) && !words.is(behind, "verb-behind");
}

function byTitle(words: LineWords, title: TitleWords | undefined, { sign, intends }: Signs): Evidence | undefined {
  if (!title || intends || (sign >= 0 && sign < title.to) || !standsAsTitle(words, title)) return undefined;
  const first = words.found(title.from);
  if (first && TRADE.includes(first.meaning.type) && !isNamedSo(words, title)) return byTrade(words, title, first);
  const declared = words.titleOf(title.text);
  const meaning = { type: "title", title: declared ?? title.text, declared: declared !== undefined } as const;
  return { subject: { start: title.start, end: title.end, meaning } };
}

/** A place or a tempo behind a name; without either, a kind of piece or two capitals, and what was said of it. */
function standsAsTitle(words: LineWords, title: TitleWords): boolean {
  const counts = words.has("tempo") || words.hasNumberedPlace || hasBareTempo(words) || opensWithTempo(words);
  const isNamed = (title.capitals > 0 || title.isKind || title.numbered) && saysMore(words, title);
  const isSaid = words.has("outcome", "tries", "times", "done", "without click");
  const ends =
    title.to >= words.count || /[,.:;!(–—-]/.test(words.before(title.to)) || words.found(title.to) !== undefined;
  return (
    (counts && isNamed) ||
    (isNamed && words.has("place") && (title.isKind || title.capitals > 1)) ||
    (title.isKind && title.capitals > 0 && (isAgain(words, title.to) || (ends && isSaid))) ||
    (title.isKind && title.capitals > 0 && ends && (title.numbered || words.has("amount"))) ||
    (title.capitals > 0 && isAgain(words, title.to) && isSaid) ||
    (title.capitals > 1 && ends && (isSaid || words.has("amount")))
  );
}

/** `In the morning` says when, and names no piece. */
function saysMore(words: LineWords, { from, to }: Pick<TitleWords, "from" | "to">): boolean {
  for (let i = from; i < to; i++) if (!words.is(i, "filler", "heading") || words.is(i, "title-kind")) return true;
  return false;
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

/** A number that is a tempo as it stands before how it went. */
function hasBareTempo({ items, text }: LineWords): boolean {
  return items.some((_, i) => isBareTempo(items, i, text, undefined));
}

/** `Harmonics over the middle octave, one in three speaks`: no verb and no pronoun in all of it. */
function isSentenceLater(words: LineWords, from: number): boolean {
  return words.first(from, words.count, "sentence-sign", "intention", "negation", "teacher-verb") >= 0;
}

/** Words in front of a tempo that stands apart name what is practised when they are at most so many. */
const LONGEST_NAME = 5;
/** Words of lines of another kind. */
const OTHER_LINES = [
  "negation",
  "body-part",
  "body-trouble",
  "total",
  "rest",
  "question",
  "teacher",
  "set-work",
] as const;

/**
 * `gde gracenotes, 50, the last one late`, `grips @48`: words that nothing is known of, in front of a tempo that is
 * marked or stands apart, or of a numbered place and how it went there. With a place they are a piece, else an exercise
 * by its own words.
 */
function byTempo(words: LineWords, { sign, intends }: Signs): Evidence | undefined {
  if (intends || (sign >= 0 && sign < words.firstStop)) return undefined;
  if (!hasTempoApart(words) && !hasMarkedTempo(words) && !(words.hasNumberedPlace && words.has("outcome", "tries")))
    return undefined;
  const from = firstWord(words);
  let to = from;
  while (to < words.count && !endsName(words, from, to)) to++;
  if (to <= from || to - from > LONGEST_NAME || words.first(0, to, ...OTHER_LINES, "same-as-above") >= 0)
    return undefined;
  if (!saysMore(words, { from, to })) return undefined;
  const [start, end] = [words.words[from]!.start, words.words[to - 1]!.end];
  const name = words.text.slice(start, end);
  if ((name.match(/\p{L}/gu) ?? []).length < 3 || (words.is(from, "heading") && to - from === 1)) return undefined;
  const declared = words.titleOf(name);
  if (declared !== undefined || words.has("place"))
    return {
      subject: { start, end, meaning: { type: "title", title: declared ?? name, declared: declared !== undefined } },
    };
  return { subject: { start, end, meaning: { type: "technique", name } } };
}

function endsName(words: LineWords, from: number, i: number): boolean {
  if (i > from && /[,;:|(!→>]|(?:^|\s)[–—-]+(?:\s|$)/.test(words.before(i))) return true;
  const type = words.found(i)?.meaning.type;
  return type !== undefined && ENDS_NAME.includes(type);
}

const ENDS_NAME: readonly Meaning["type"][] = [
  "tempo",
  "number",
  "range",
  "place",
  "amount",
  "tries",
  "times",
  "outcome",
];

/** A number that may be a tempo and stands between commas, or in a row of such: `grips, 48, clean`. */
function hasTempoApart({ items, text }: LineWords): boolean {
  return items.some((item) => {
    if (!isNumber(item) || countsElse(item, text)) return false;
    const { meaning } = item;
    const [low, high] =
      meaning.type === "range" ? [meaning.range.low, meaning.range.high] : [meaning.value, meaning.value];
    if (low < SLOWEST_APART || high > FASTEST_APART) return false;
    return /[,;|]\s*$/.test(text.slice(0, item.start)) && /^[.!]*\s*(?:$|[,;|!–—-]|then\b)/.test(text.slice(item.end));
  });
}

/** Beats a minute: what stands apart and is less, or more, is likelier to count something else. */
const SLOWEST_APART = 40;
const FASTEST_APART = 220;

/** `@72`, `♩=72`, `72 bpm`; `at 72` goes on with sentences, too. */
function hasMarkedTempo({ items, text }: LineWords): boolean {
  return items.some(
    ({ meaning, start, end }) => meaning.type === "tempo" && /[@=♩♪]|bpm/i.test(text.slice(start, end)),
  );
}

/** Words in front of an amount name an activity when they are at most so many. */
const LONGEST_ACTIVITY = 4;

function byAmount(words: LineWords, { sign, intends }: Signs): Evidence | undefined {
  const amount = firstOf(words, ["amount"]);
  if (amount < 1 || amount > LONGEST_ACTIVITY || sign >= 0 || intends) return undefined;
  if (words.is(amount - 1, "before-time")) return undefined;
  const isOther = words.first(0, amount, "negation", "body-part", "body-trouble", "heading", "total", "rest") >= 0;
  if (isOther || hasPracticeWord(words, 0, amount, "activity")) return undefined;
  const [start, end] = [words.words[0]!.start, words.words[amount - 1]!.end];
  const meaning = { type: "activity", name: words.text.slice(start, end) } as const;
  return { subject: { start, end, meaning } };
}
