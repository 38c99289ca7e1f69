import { JOINTS_OF_BARS, PLURALS_OF_BARS } from "../lexicon/places/bars.ts";
import { BEFORE_NO_TEMPO, COUNTS_ELSE, LEAD_TO_TEMPO, UNITS } from "../lexicon/tempo-marks.ts";
import { fold } from "../words/fold.ts";
import type { Fraction, Item, Meaning, MeaningOf } from "../words/meaning.ts";
import { FASTEST, SLOWEST } from "../words/tempo-words.ts";

/** A number with nothing beside it is a tempo within these, in beats a minute. */
export const SLOWEST_BARE = 30;
const FASTEST_BARE = 240;
/** Minutes that nobody called so, behind an activity or long tones. */
const LEAST_MINUTES = 5;
const MOST_MINUTES = 30;

type NumberItem = Item<MeaningOf<"number" | "range">>;

/** Behind these a number is a tempo: what it counts was just said. */
const BEFORE_TEMPO: readonly Meaning["type"][] = [
  "note value",
  "pattern",
  "variant",
  "articulation",
  "span",
  "rhythm",
  "direction",
  "without click",
  "scale",
  "chord",
  "chain",
  "place",
];
/** In front of these it is one as well: they tell how it went, or how it was played. */
const BEHIND_TEMPO: readonly Meaning["type"][] = ["outcome", "tries", "number", "range", "note value", "articulation"];
const WORD_BEFORE = /([\p{L}.]+)\s*$/u;
const WORD_BEHIND = /^\s*(%|['′’]|\p{L}+\.?)/u;
const ORDINAL = /^(?:st|nd|rd|th|euros?|pounds?)$/;

/**
 * A bare number or range goes on with the tempo before it, or with the bars before it, whichever stood last; without
 * either it is a tempo behind what was played, or before how it went, and minutes behind an activity or long tones. A
 * tempo that goes on keeps its beat. Others stay as they are: nothing says what they count.
 */
export function resolveNumbers(items: readonly Item[], text: string, subject: Item | undefined): readonly Item[] {
  const resolved: Item[] = [];
  let open:
    | { readonly type: "tempo"; readonly beat?: Fraction }
    | { readonly type: "place"; readonly at: number }
    | undefined;
  for (const [i, item] of items.entries()) {
    const { meaning } = item;
    if (meaning.type === "tempo") open = { type: "tempo", beat: meaning.beat };
    if (meaning.type === "place") open = meaning.word === "bars" ? { type: "place", at: resolved.length } : open;
    if (!isNumber(item)) {
      resolved.push(item);
      continue;
    }
    const { number, top } = { number: item.meaning, top: topOf(item.meaning) };
    if (open?.type === "place" && open.at === resolved.length - 1 && !isBehindBars(resolved[open.at]!, item, text)) {
      resolved[open.at] = extended(resolved[open.at] as Item<MeaningOf<"place">>, item.end, number);
    } else if (areBars(items, i, subject)) {
      resolved.push({ ...item, meaning: barsOf(item, text) });
    } else if (open?.type === "tempo" && top >= SLOWEST && top <= FASTEST && !countsElse(item, text)) {
      resolved.push({ ...item, meaning: goingOn(number, open.beat) });
    } else if (isBareTempo(items, i, text, subject)) {
      open = { type: "tempo" };
      resolved.push({ ...item, meaning: goingOn(number, undefined) });
    } else if (isBareMinutes(items, i, text, subject)) {
      resolved.push({ ...item, meaning: { type: "amount", minutes: top, possible: true } });
    } else resolved.push(item);
  }
  return resolved;
}

/** `bars 1-16 @ 58, then 17-34 @ 50`: of a piece, too slow for a tempo or right in front of one. */
function areBars(items: readonly Item[], i: number, subject: Item | undefined): boolean {
  const { meaning } = items[i]!;
  if (meaning.type !== "range" || subject?.meaning.type !== "title") return false;
  const isTooSlow = Math.min(meaning.range.low, meaning.range.high) < SLOWEST;
  const isBeforeTempo = items[i + 1]?.meaning.type === "tempo" && items.some((each) => each.meaning.type === "place");
  return isTooSlow || isBeforeTempo;
}

function barsOf({ start, end }: Item, text: string): MeaningOf<"place"> {
  return { type: "place", word: "bars", text: text.slice(start, end) };
}

/**
 * `bars 1-12 66`, `b17, 60`: a number that goes on with no bars, as it stands behind a range, a list that was ended, or
 * one bar.
 */
function isBehindBars({ start, end, meaning: bars }: Item, number: NumberItem, text: string): boolean {
  if (number.meaning.type !== "number" || number.meaning.value < SLOWEST_BARE) return false;
  if (bars.type !== "place" || number.meaning.value > FASTEST_BARE || !/^[\s,–-]*$/.test(text.slice(end, number.start)))
    return false;
  if (ONE_RANGE.test(bars.text) || ENDED_LIST.test(text.slice(start, end))) return true;
  return !PLURAL.test(text.slice(start, end));
}

const ONE_RANGE = /^[^,]*-(?:\d+[a-f]?|end)$/;
const ENDED_LIST = new RegExp(`\\d\\s*(?:${JOINTS_OF_BARS})\\s*\\d+[a-f]?$`);
/** Of a list of single bars: `bars 12, 30, 44`. */
const PLURAL = new RegExp(`^\\P{L}*(?:${PLURALS_OF_BARS})\\P{L}`, "iu");

/** Whether a number that nothing marks is a tempo: behind what was played, or in front of how it went. */
export function isBareTempo(items: readonly Item[], i: number, text: string, subject: Item | undefined): boolean {
  const item = items[i]!;
  if (!isNumber(item) || countsElse(item, text)) return false;
  if (!isBareValue(topOf(item.meaning))) return false;
  const before = thingBefore(items, i, subject)?.meaning.type;
  const next = items[i + 1];
  const isSaid = (next !== undefined && BEHIND_TEMPO.includes(next.meaning.type)) || isBeforeAnother(items, i, text);
  if (subject && subject.start >= item.end && isLeadingTempo(items, i, text)) return true;
  const ends = /^\s*(?:$|[,;.)!–—-])/.test(text.slice(item.end));
  const isNamed = before === "technique" && topOf(item.meaning) >= SLOWEST_LEADING;
  const follows = isNamed || (before !== undefined && BEFORE_TEMPO.includes(before));
  const isApart = before !== "unknown" || /[,;.–—-]\s*$/.test(text.slice(0, item.start)) || isLed(item, text);
  return follows || isSaid || (ends && before !== undefined && isApart);
}

/** `100 then 108`. */
function isBeforeAnother(items: readonly Item[], i: number, text: string): boolean {
  const [lead, next] = [items[i + 1], items[i + 2]];
  if (!next || !isNumber(next) || lead?.meaning.type !== "unknown") return false;
  return LEAD_TO_TEMPO.has(fold(lead.meaning.words)) && !countsElse(next, text) && isBareValue(topOf(next.meaning));
}

/**
 * `84 C major`, `[72] Gavotte`, `66: thirds in G`: a number that opens the line, in front of what is played. Titles and
 * amounts begin with smaller ones.
 */
export function isLeadingTempo(items: readonly Item[], i: number, text: string): boolean {
  const item = items[i];
  if (i > 0 || !item || !isNumber(item) || topOf(item.meaning) < SLOWEST_LEADING || !isBareValue(topOf(item.meaning)))
    return false;
  return !countsElse(item, text) && OPENING_OF_LINE.test(text.slice(0, item.start).trim());
}

export const SLOWEST_LEADING = 40;
/** A bullet, or a bracket; trimmed before, as a long row of spaces would be gone over again and again. */
const OPENING_OF_LINE = /^(?:[-*•](?:\s+[([])?|[([])?$/;

/** Whether a number with nothing beside it may be a tempo. */
export function isBareValue(value: number): boolean {
  return value >= SLOWEST_BARE && value <= FASTEST_BARE && Number.isInteger(value);
}

/** What stands before an item: the subject is none of the items. */
function thingBefore(items: readonly Item[], i: number, subject: Item | undefined): Item | undefined {
  const before = items[i - 1];
  const isNearer = subject && subject.end <= items[i]!.start && (!before || before.end <= subject.start);
  return isNearer ? subject : before;
}

function isLed({ start }: Item, text: string): boolean {
  return LEAD_TO_TEMPO.has(fold(WORD_BEFORE.exec(text.slice(Math.max(0, start - LONGEST_WORD), start))?.[1] ?? ""));
}

function isBareMinutes(items: readonly Item[], i: number, text: string, subject: Item | undefined): boolean {
  const item = items[i]!;
  if (!isNumber(item) || item.meaning.type !== "number" || !subject || !isFirst(items, i, text)) return false;
  const { value } = item.meaning;
  const isTimed =
    subject.meaning.type === "activity" ||
    (subject.meaning.type === "figure" && subject.meaning.figure === "long tones");
  return isTimed && value >= LEAST_MINUTES && value <= MOST_MINUTES && /^\s*(?:$|,)/.test(text.slice(item.end));
}

/** `long notes, 10`; `long notes again, 10`, with one word and a comma between. */
function isFirst(items: readonly Item[], i: number, text: string): boolean {
  if (i === 0) return true;
  const before = items[0]!;
  const isWord = before.meaning.type === "unknown" && /^\p{L}+$/u.test(before.meaning.words);
  return i === 1 && isWord && /^\s*,\s*$/.test(text.slice(before.end, items[i]!.start));
}

export function isNumber(item: Item): item is NumberItem {
  return item.meaning.type === "number" || item.meaning.type === "range";
}

/** Whether the words right beside a number or range say that it is no tempo. */
export function countsElse({ start, end }: Item, text: string): boolean {
  const before = fold(WORD_BEFORE.exec(text.slice(Math.max(0, start - LONGEST_WORD), start))?.[1] ?? "");
  const behind = fold(WORD_BEHIND.exec(text.slice(end, end + LONGEST_WORD))?.[1] ?? "");
  const plain = before.replace(/\.$/, "");
  return (
    COUNTS_ELSE.has(plain) ||
    BEFORE_NO_TEMPO.has(before) ||
    BEFORE_NO_TEMPO.has(plain) ||
    (UNITS.has(behind) && behind !== "x") || // apart from its number it is a cross: how it went
    ORDINAL.test(behind)
  );
}

/** In UTF-16 units: of the words in the tables, and the space beside them. */
const LONGEST_WORD = 12;

function topOf(number: MeaningOf<"number" | "range">): number {
  return number.type === "number" ? number.value : Math.max(number.range.low, number.range.high);
}

function goingOn(number: MeaningOf<"number" | "range">, beat: Fraction | undefined): Meaning {
  const named = beat ? { beat } : {};
  if (number.type === "number") return { type: "tempo", bpm: number.value, ...named };
  const { low, high } = number.range;
  return { type: "tempo", bpm: Math.max(low, high), low: Math.min(low, high), ...named };
}

function extended(place: Item<MeaningOf<"place">>, end: number, number: MeaningOf<"number" | "range">): Item {
  const text = number.type === "number" ? String(number.value) : `${number.range.low}-${number.range.high}`;
  return { start: place.start, end, meaning: { ...place.meaning, text: `${place.meaning.text}, ${text}` } };
}
