import { HOUR_NAMES, TO_THE_HOUR, UNITS_OF_HOURS } from "../lexicon/hours.ts";
import type { Item } from "../words/meaning.ts";
import type { Vocabulary } from "../words/vocabulary.ts";
import type { Part } from "./cut.ts";
import { behindItem } from "./evidence.ts";
import { LineWords } from "./line-words.ts";

// Hours of the clock, from when to when a rehearsal was: as minutes.

/** Minutes that a rehearsal takes at most, by its hours. */
const LONGEST = 8 * 60;
/** By numbers alone. */
const LONGEST_BARE = 3 * 60;
const HALF_DAY = 12 * 60;
const DAY = 24 * 60;

const HOUR = "(\\d{1,2})(?:[.:h]([0-5]\\d))?";
const UNIT = `(?:\\s?(${UNITS_OF_HOURS})(?![\\p{L}\\d]))?`;
const SPAN = new RegExp(
  `(?<![\\p{L}\\d.,:/–-])${HOUR}${UNIT}\\s*(?:[-–]|\\s(?:${TO_THE_HOUR})\\s)\\s*(?:${HOUR}${UNIT}|half\\s(${HOUR_NAMES.join("|")}))(?![\\p{L}\\d:/–-]|[.,]\\d)`,
  "iu",
);
/** Something like it is in the line: asked first, as most lines have no such thing. */
const LIKELY = /\d\s?\p{L}{0,7}\s*(?:[-–]|\s\p{L}{1,5}\s)\s*(?:\d|half\s)|\p{L}\s+\d{1,2}[.:]\d\d\b/iu;

interface Hours {
  readonly start: number;
  readonly end: number;
  readonly minutes: number;
  /** Minutes or a unit are written, so that the numbers are surely hours. */
  readonly sure: boolean;
}

/**
 * `band 7.30-9.30`, `Probe 20-22 Uhr`, `7-9 pm`, `session 8 till half ten`: on a line of a rehearsal, a lesson or one's
 * own time the hours are the amount that they come to; one hour alone, with an amount behind it, says when. Numbers
 * without minutes and a unit are hours right behind its word alone, and so are bars never taken for hours.
 */
export function withHours(text: string, parts: readonly Part[], vocabulary: Vocabulary): readonly Part[] {
  if (!LIKELY.test(text)) return parts;
  const [from, to] = [parts[0]?.start ?? 0, parts.at(-1)?.end ?? 0];
  const words = new LineWords(text, from, to, parts, vocabulary);
  if (words.first(0, words.count, "called-off") >= 0) return parts;
  const hours = hoursIn(text);
  if (words.items.some((item) => item.meaning.type === "amount" && !isWithin(item, hours)))
    return withBeginning(text, parts, words);
  if (!hours || hours.end > to || !isOfMeeting(words, text, hours)) return parts;
  const meaning = { type: "amount", minutes: hours.minutes, possible: true } as const;
  return replaced(text, parts, { start: hours.start, end: hours.end, meaning });
}

function isWithin(item: Item, hours: Hours | undefined): boolean {
  return hours !== undefined && item.start >= hours.start && item.end <= hours.end;
}

function hoursIn(text: string): Hours | undefined {
  const match = SPAN.exec(text);
  if (!match) return undefined;
  const [found, hour, minute, unit, endHour, endMinute, endUnit, halfPast] = match;
  const from = minutesAt(hour!, minute);
  const until = halfPast ? (1 + HOUR_NAMES.indexOf(halfPast.toLowerCase())) * 60 + 30 : minutesAt(endHour!, endMinute);
  const isHalfDay = from <= HALF_DAY + 59 && until <= HALF_DAY + 59;
  const minutes = (until - from + DAY) % (isHalfDay ? HALF_DAY : DAY);
  if (Math.max(from, until) > DAY || minutes === 0 || minutes > LONGEST) return undefined;
  const sure = [minute, unit, endMinute, endUnit, halfPast].some((each) => each !== undefined);
  return { start: match.index, end: match.index + found.length, minutes, sure };
}

function minutesAt(hour: string, minute = "0"): number {
  return Number(hour) * 60 + Number(minute);
}

/** A rehearsal or the like stands right before the hours, or says between where it was, or with whom. */
function isOfMeeting(words: LineWords, text: string, hours: Hours): boolean {
  const at = words.words.findIndex((word) => word.end > hours.start);
  if (words.first(0, at, "negation", "intention") >= 0 || words.items.some((item) => tellsMusic(item, hours.start)))
    return false;
  const meeting = meetingBefore(words, at);
  if (meeting < 0) return false;
  const behind = behindMeeting(words, meeting);
  const isBeside = behind >= at || words.is(behind, "title-lead", "filler") || /^[,;:.(]/.test(words.before(behind));
  return isBeside && (hours.sure || areHours(words, text, hours, meeting, at));
}

function behindMeeting(words: LineWords, meeting: number): number {
  return words.found(meeting)?.meaning.type === "activity"
    ? behindItem(words, meeting)
    : meeting + words.lengthOf(meeting, "meeting", "heading");
}

/** `session at the Anchor 8-11`: numbers alone, with no sign before them and no word behind; not `trio 8-10`. */
function areHours(words: LineWords, text: string, hours: Hours, meeting: number, at: number): boolean {
  if (words.is(meeting, "title-kind") || words.meaningOf(meeting, "heading") === "lesson") return false;
  for (let i = meeting + 1; i <= at; i++) if (/[,;:.]/.test(words.before(i))) return false;
  return hours.minutes <= LONGEST_BARE && /^\s*(?:$|[,;.(!])/.test(text.slice(hours.end));
}

/** Before the hours, or with bars: what is counted may be no hours. */
function tellsMusic({ start, meaning }: Item, hours: number): boolean {
  if (meaning.type === "place") return BARS.includes(meaning.word);
  return meaning.type === "tempo" && start < hours;
}

const BARS: readonly string[] = ["bars", "line", "page"];

/** The last such word before another; -1 where there is none. */
function meetingBefore(words: LineWords, to: number): number {
  for (let i = to - 1; i >= 0; i--) {
    const meaning = words.found(i)?.meaning;
    const isRehearsal = meaning?.type === "activity" && meaning.name === REHEARSAL;
    if (isRehearsal || words.is(i, "meeting") || words.meaningOf(i, "heading") === "lesson") return i;
  }
  return -1;
}

/** By its name in the lexicon. */
const REHEARSAL = "rehearsal";

/** `Band 7.30, 2 hrs`: when it began, behind its word. */
function withBeginning(text: string, parts: readonly Part[], words: LineWords): readonly Part[] {
  const match = BEGINNING.exec(text);
  const at = match ? words.words.findIndex(({ start }) => start === match.index) : -1;
  if (!match || at < 1 || words.first(at - 1, at, "meeting") < 0) return parts;
  const meaning = { type: "clock", hour: Number(match[1]), minute: Number(match[2]) } as const;
  return replaced(text, parts, { start: match.index, end: match.index + match[0].length, meaning });
}

const BEGINNING = /(?<=\p{L}\s+)(\d{1,2})[.:]([0-5]\d)(?=\s*(?:[,;]|$))/u;

/** The parts with one item for a stretch of the text; unknown words that reach over it are kept beside it. */
function replaced(text: string, parts: readonly Part[], item: Item): readonly Part[] {
  const at = parts.findIndex(({ start, end }) => start <= item.start && item.end <= end);
  if (at < 0) return parts;
  const part = parts[at]!;
  const beside = part.items.flatMap((each) => outside(text, each, item));
  if (!beside) return parts;
  const items = [...beside, item].sort((a, b) => a.start - b.start);
  return parts.with(at, { ...part, items });
}

/** What of an item stands before or behind another; of one that is known all or nothing. */
function outside(text: string, item: Item, { start, end }: Item): readonly Item[] {
  if (item.end <= start || item.start >= end) return [item];
  if (item.meaning.type !== "unknown") return [];
  return [...wordsWithin(text, item.start, start), ...wordsWithin(text, end, item.end)];
}

function wordsWithin(text: string, from: number, to: number): readonly Item[] {
  const typed = text.slice(from, Math.max(from, to));
  const words = typed.trim();
  if (words === "") return [];
  const start = from + typed.length - typed.trimStart().length;
  return [{ start, end: start + words.length, meaning: { type: "unknown", words } }];
}
