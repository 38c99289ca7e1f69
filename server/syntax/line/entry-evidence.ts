import { AND, ON_INSTRUMENT, TONICS_THAT_ARE_WORDS } from "../lexicon/note-leads.ts";
import { BEFORE_KEY } from "../lexicon/title-words.ts";
import { CHORDS_BY_FIGURE } from "../words/chord-words.ts";
import type { Item, Meaning } from "../words/meaning.ts";
import { byAmount } from "./amount-evidence.ts";
import {
  behindItem,
  between,
  type Evidence,
  firstOf,
  hasBareTempo,
  hasPracticeWord,
  isSentenceLater,
  NAMED,
  OTHER_LINES,
  type Signs,
  TERMS,
} from "./evidence.ts";
import { ORDINARY } from "./known-title.ts";
import type { LineWords } from "./line-words.ts";
import { isLeadingTempo } from "./numbers.ts";
import { byTempo, hasTempoApart } from "./tempo-evidence.ts";
import { firstWord, opensWithTempo, type TitleWords, titleIn } from "./title.ts";
import { byTitle, isNumberedKind } from "./title-evidence.ts";

/** Subjects with a tonic: strong wherever they stand. */
const KEYED: readonly Meaning["type"][] = ["scale", "chord", "chain", "several", "faulty subject"];

/**
 * Whether a line tells of practice: a subject is found in it, or words with a place, a tempo or an amount. A sentence
 * in which such things occur in passing is none: a wrong count is worse than silence.
 */
export function evidenceIn(words: LineWords): Evidence | undefined {
  if (words.found(0)?.meaning.type === "quoted") return isSpeech(words) ? undefined : {};
  const tonic = bareTonic(words);
  const at = first(firstOf(words, KEYED), tonic);
  const named = firstOf(words, NAMED);
  const title = titleIn(words);
  const signs = signsIn(words);
  const isTitled = at >= 0 && title !== undefined && isTitleBefore(words, title, at);
  if (title && at < 0 && !signs.intends && isNumberedKind(words, title)) return byTitle(words, title, signs);
  if (at >= 0 && !isTitled) {
    if (named >= 0 && named < at && !signs.intends) return {};
    if (isSentence(words, at, signs)) return undefined;
    return at === tonic && isBehindScaleWord(words, tonic) ? onTonic(words.found(tonic)!) : {};
  }
  if (!(isTitled && named >= title.to) && isPracticeByName(words, named, signs)) return {};
  const narrower = narrowerName(words, named, signs);
  if (narrower) return narrower;
  return quotedLater(words, signs) ?? byTitle(words, title, signs) ?? byTempo(words, signs) ?? byAmount(words, signs);
}

/** `"my thumb hurts" - she presses so hard`: what somebody said, where nothing tells how a piece went. */
function isSpeech(words: LineWords): boolean {
  const quoted = words.found(0);
  if (quoted?.meaning.type !== "quoted" || words.has("tempo", "place", "amount", "outcome", "tries", "times"))
    return false;
  return words.isSpeech(quoted.meaning.text);
}

/** `new piece "Harvest", bars 1-8`: a title in quotes behind a few words. */
function quotedLater(words: LineWords, { sign, intends }: Signs): Evidence | undefined {
  const at = firstOf(words, ["quoted"]);
  if (at < 1 || words.isCapital(0) || at > LONGEST_LEAD || intends || (sign >= 0 && sign < at)) return undefined;
  const isTold =
    words.has("tempo", "place", "amount", "outcome", "tries", "times") || hasBareTempo(words) || hasTempoApart(words);
  const isOther = words.first(0, at, ...OTHER_LINES) >= 0 || words.first(0, at, "teacher-verb") >= 0;
  const item = words.found(at)!;
  if (!isTold || isOther || item.meaning.type !== "quoted" || /[:,;.]/.test(words.before(at))) return undefined;
  const declared = words.titleOf(item.meaning.text);
  const meaning = {
    type: "title",
    title: declared ?? item.meaning.text.trim(),
    declared: declared !== undefined,
  } as const;
  return { subject: { start: item.start, end: item.end, meaning } };
}

/** In words. */
const LONGEST_LEAD = 3;

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
    const isLed = isBehindScaleWord(words, i);
    const ends = behind >= words.count || /^[,;]/.test(words.before(behind)) || isBehindTonic(words, behind, isLed);
    const isIn = words.key(i - 1) === "in" && TERMS.includes(words.found(i - 2)?.meaning.type ?? "unknown");
    return ends && (i === 0 || isIn || isLed) ? i : -1;
  }
  return -1;
}

/** A lone tonic is major. */
function onTonic({ start, end, meaning }: Item): Evidence {
  if (meaning.type !== "note") return {};
  return {
    subject: {
      start,
      end,
      meaning: { type: "scale", tonic: meaning.note, kind: "major", declared: false, unsaid: "major" },
    },
  };
}

/** `scale C, 5 min`, `Tonleiter in Terzen F`. */
function isBehindScaleWord(words: LineWords, i: number): boolean {
  let before = i - 1;
  while (before > 0 && (words.key(before) === "in" || TERMS.includes(words.found(before)?.meaning.type ?? "unknown")))
    before--;
  return words.isScaleWord(before) && words.first(0, before, "sentence-sign", "intention", "negation") < 0;
}

/** @param isLed a word for scales stands before, so that how it is played may follow at once: `sc 3rds F tg` */
function isBehindTonic(words: LineWords, i: number, isLed = false): boolean {
  const type = words.found(i)?.meaning.type ?? "unknown";
  return BEHIND_TONIC.includes(type) || (isLed && TERMS.includes(type));
}

function signsIn(words: LineWords): Signs {
  const stop = words.firstStop;
  const opening = words.lengthOf(0, "practice-verb");
  let sign = -1;
  for (let i = opening; i < stop && sign < 0; i++) {
    if (words.found(i)?.meaning.type === "activity") continue; // `made up my own tune`
    const isName = i > 0 && words.isCapital(i) && words.typed(i) !== "I" && !/^I'/.test(words.typed(i));
    if (!isName && !isNumeral(words, i) && words.is(i, "sentence-sign")) sign = i;
  }
  const intention = words.first(0, Math.max(stop, 4), "intention");
  const isReached = words.found(intention + words.lengthOf(intention, "intention"))?.meaning.type === "number";
  return { sign, intends: intention >= 0 && !isReached }; // `got to 80`
}

/** `Brahms I, bars 1-8`: the number of a movement, behind a word and in front of a sign or a place. */
function isNumeral(words: LineWords, i: number): boolean {
  if (i === 0 || words.key(i) !== "i" || words.before(i) !== "") return false;
  const isSigned = /^[,;:|–-]/.test(words.before(i + 1)) || words.typed(i + 1) === "/";
  return i + 1 === words.count || isSigned || words.found(i + 1)?.meaning.type === "place";
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
  const isWritten = behind - subject < 3; // `A min pent` is no prose
  const isOnInstrument = ON_INSTRUMENT.includes(words.key(behind)) && words.is(behind + 1, "instrument");
  return (
    isPlain &&
    isWritten &&
    !isOnInstrument &&
    TONICS_THAT_ARE_WORDS.has(words.typed(subject).toLowerCase()) &&
    !words.found(behind)
  );
}

/** `Mozart D maj i, exposition, 116`: a name right before the key, and a place in the piece: a scale has none. */
function isOfComposer(words: LineWords, { from }: TitleWords, subject: number): boolean {
  if (subject !== from + 1 || !words.isCapital(from) || words.found(from) || words.is(from, ...ORDINARY)) return false;
  const isMovement = /^[ivx]{1,4}$/i.test(words.typed(behindItem(words, subject)));
  return (words.has("place") || isMovement) && words.typed(from).length > 3;
}

/** `Air in D minor`, `Minuet in G`: the key belongs to the title. */
function isTitleBefore(words: LineWords, title: TitleWords, subject: number): boolean {
  if (subject === title.from || hasPracticeWord(words, title.from, subject)) return false;
  if (isOfComposer(words, title, subject)) return true;
  const named = between(words, subject) > 0 || words.is(title.from, "title-kind");
  if (subject >= title.to) return named && (title.isKind || title.capitals > 1) && /,/.test(words.before(title.to));
  const leads = BEFORE_KEY.has(words.key(subject - 1));
  return named && (title.isKind || (leads && words.isCapital(title.from)));
}

/** A figure, an activity: at the head of the line, and not in passing. */
function isPracticeByName(words: LineWords, at: number, { sign, intends }: Signs): boolean {
  if (at < 0 || intends || between(words, at) > 0) return false;
  const behind = behindItem(words, at);
  const counts = hasTempoApart(words) || opensWithTempo(words) || isLeadingTempo(words.items, 0, words.text);
  const isStrong = counts || words.has("tempo", "amount", "tries", "times", "note value", "outcome", "clock");
  const ends = behind >= words.count || /[,.:;!(–—-]/.test(words.before(behind)) || words.found(behind) !== undefined;
  const isSaid = words.text.slice(words.words[at]!.start, words.end).includes(",") && !isSentenceLater(words, at);
  const isJoined =
    AND.includes(words.key(behind)) && NAMED.includes(words.found(behind + 1)?.meaning.type ?? "unknown");
  return (sign < 0 || sign < at) && (isStrong || ends || isSaid || isJoined) && !words.is(behind, "verb-behind");
}

/** `Finger trills Bb-C, x20`: a word or two that tell which, and how often or how long. */
function narrowerName(words: LineWords, at: number, { sign, intends }: Signs): Evidence | undefined {
  const from = firstWord(words);
  const type = words.found(at)?.meaning.type;
  if (at <= from || at - from > 2 || intends || sign >= 0 || (type !== "technique" && type !== "figure"))
    return undefined;
  if (words.first(from, at, ...OTHER_LINES.filter((each) => each !== "body-part")) >= 0) return undefined;
  for (let i = from; i < at; i++)
    if (words.found(i) || words.is(i, "title-kind") || /[,;:.]/.test(words.before(i + 1))) return undefined;
  if (!words.has("amount", "times", "tries")) return undefined;
  const [start, end] = [words.words[from]!.start, words.words[behindItem(words, at) - 1]!.end];
  return { subject: { start, end, meaning: { type: "technique", name: words.text.slice(start, end) } } };
}
