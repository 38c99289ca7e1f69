import { WEEKDAY_WORDS } from "../lexicon/calendar-words.ts";
import { ARTICLES_OF_DAYS, BEFORE_DUE_DAY, THIS_WEEK } from "../lexicon/due-words.ts";
import { fold } from "../words/fold.ts";
import type { Meaning } from "../words/meaning.ts";
import type { LineWords } from "./line-words.ts";
import { isNumber } from "./numbers.ts";

/** What is set, what the teacher said, and what is to be asked: kept for the lesson, and counted as nothing. */
export interface Spoken {
  readonly type: "set" | "said" | "asked";
  /** Where what is set, said or asked begins: behind `for next week:`, `ask:`; of what is said with its name. */
  readonly from: number;
  /** Nothing stands behind its words: the lines below are what is set, said or asked. */
  readonly opens?: true;
}

const SIGN = /^[:=–—-]/;

/** Set work, the teacher's word, or a question; undefined for any other line. */
export function spokenIn(words: LineWords): Spoken | undefined {
  return asked(words) ?? set(words) ?? said(words);
}

function asked(words: LineWords): Spoken | undefined {
  const opening = words.lengthOf(0, "question") || (words.typed(0) === "Q" ? 1 : 0);
  if (opening > 0 && isBare(words, opening)) return { type: "asked", from: words.end, opens: true };
  if (opening > 0 && words.count > opening && !words.has("tempo"))
    return { type: "asked", from: words.words[opening]!.start };
  const isAnswered = words.has("tempo", "outcome");
  const ends = words.text.slice(words.start, words.end).trimEnd();
  const isQuestion = /\?[!)"”]*$/.test(ends) || (ends.includes("?") && words.is(0, "sentence-sign"));
  if (isQuestion && !isAnswered) return { type: "asked", from: words.start };
  const ask = words.first(0, 3, "question");
  const isIntended = ask > 0 && words.is(0, "intention", "sentence-sign");
  return isIntended && !isAnswered ? { type: "asked", from: words.words[ask]!.start } : undefined;
}

function set(words: LineWords): Spoken | undefined {
  const due = behindDueDay(words) || behindSetFor(words);
  if (due > 0) return { type: "set", from: words.words[due]!.start };
  const from = afterLesson(words);
  const length = words.lengthOf(from, "set-work");
  if (length > 0) {
    if (isBare(words, from + length)) return { type: "set", from: words.end, opens: true };
    const isPlain = length > 1 || !words.is(from, "set-work-with-sign");
    const isSigned = SIGN.test(words.before(from + length));
    if (isPlain || isSigned || (from > 0 && words.meaningOf(from, "set-work-with-sign") === "bring"))
      return { type: "set", from: words.words[from + length]?.start ?? words.end };
  }
  const later = words.first(1, words.count, "set-work");
  const isForLater = later > 0 && words.lengthOf(later, "set-work") > 1 && !words.has("tempo", "outcome");
  return isForLater ? { type: "set", from: words.start } : undefined;
}

/**
 * Where the words begin behind `By Tues:`, `zum Sonntag:`, `this week:`; 0 where the line has no such head, or tells
 * how the week went.
 */
function behindDueDay(words: LineWords): number {
  const colon = firstColon(words);
  if (colon < 1 || colon > LONGEST_HEAD || colon >= words.count) return 0;
  const head = fold(words.text.slice(words.start, words.words[colon - 1]!.end)).split(/\s+/);
  const isPlayed = words.has("outcome", "tries") || words.first(colon, words.count, "sentence-sign") >= 0;
  if (THIS_WEEK.has(head.join(" "))) return !isPlayed && PLAYED.includes(typeAt(words, colon)) ? colon : 0;
  const day = head.at(-1)!.replace(/\.$/, "");
  const between = head.slice(1, -1);
  const isDue = head.length > 1 && BEFORE_DUE_DAY.has(head[0]!) && between.every((word) => ARTICLES_OF_DAYS.has(word));
  return isDue && WEEKDAYS.has(day) ? colon : 0;
}

/** In words. */
const LONGEST_HEAD = 3;
const WEEKDAYS: ReadonlySet<string> = new Set(WEEKDAY_WORDS.flatMap((words) => words.split(" | ")));

/** The word behind the first colon; -1 where there is none. */
function firstColon(words: LineWords): number {
  for (let i = 1; i < words.count; i++) if (/^\.?:/.test(words.before(i))) return i;
  return -1;
}

/** `set Femi: arp of F`, `Set Amy G maj`: for whom it is set stands between; 0 where it does not. */
function behindSetFor(words: LineWords): number {
  const isSet = words.lengthOf(0, "set-work-with-sign") === 1 && words.before(1) === "";
  if (!isSet || !words.isCapital(1) || words.count < 3 || !isNoOther(words, 1)) return 0;
  if (/^\.?:/.test(words.before(2))) return 2;
  const isWord = words.typed(1).length > 2 && !words.found(1) && words.before(2) === "";
  return isWord && PLAYED.includes(typeAt(words, 2)) ? 2 : 0;
}

function typeAt(words: LineWords, i: number): Meaning["type"] {
  return words.found(i)?.meaning.type ?? "unknown";
}

/** Names of whom is asked, or who sets it, are at most so many words. */
const LONGEST_NAME = 3;

/**
 * Whether nothing stands behind the words of an opening, or before its colon no more than a name, or further words of
 * set work: `homework`, `questions for Ruth:`.
 */
function isBare(words: LineWords, behind: number): boolean {
  if (words.count === behind) return true;
  if (!words.before(words.count).startsWith(":") || words.count - behind > LONGEST_NAME) return false;
  for (let i = behind; i < words.count; ) {
    const length = words.lengthOf(i, "set-work", "teacher");
    if (length === 0 && !words.is(i, "filler") && !(words.isCapital(i) && !words.found(i))) return false;
    i += Math.max(1, length);
  }
  return true;
}

/** Behind `lesson`, `lesson with Ruth`, and their sign. */
function afterLesson(words: LineWords): number {
  return words.meaningOf(0, "heading") === "lesson" ? words.lengthOf(0, "heading") : 0;
}

function said(words: LineWords): Spoken | undefined {
  if (words.meaningOf(0, "teacher-verb") === "said" && words.before(1).startsWith(":"))
    return words.count === 1
      ? { type: "said", from: words.end, opens: true }
      : { type: "said", from: words.words[1]!.start };
  if (words.has("tempo", "place") && !isTeacherSigned(words)) return undefined;
  let at = afterLesson(words);
  if (words.is(at, "before-teacher")) at++;
  const isTeacher = words.is(at, "teacher") || (isAddressed(words, at) && at + 2 === firstColon(words));
  if (!isTeacher && !(isName(words, at) && !words.found(at))) return undefined;
  const isNext = words.isCapital(at + 1) && !words.is(at + 1, "teacher-verb");
  const second = isNext && (words.before(at + 1) === "" || isAddressed(words, at)) ? 1 : 0;
  const behind = at + Math.max(1, words.lengthOf(at, "teacher")) + second;
  const from = words.words[at]!.start;
  const isNamed = words.isCapital(behind) && !isTeacher; // `Waltz Nobody Asked For`
  const verb = isNamed || /[,:;]/.test(words.before(behind)) ? 0 : words.lengthOf(behind, "teacher-verb");
  const ends = words.count === behind + verb && words.before(words.count).startsWith(":");
  if (ends && (verb > 0 || isTeacher)) return { type: "said", from: words.end, opens: true };
  if (verb > 0) return { type: "said", from };
  const isSigned = /^\.?:/.test(words.before(behind)) && (isTeacher || !isPlayed(words, behind));
  if (isSigned && (isTeacher || (second === 0 && words.count - behind >= 3 && isNoOther(words, at))))
    return { type: "said", from };
  return undefined;
}

/** What is practised stands right behind the sign, and how long or how often: it was played, and nobody said so. */
function isPlayed(words: LineWords, i: number): boolean {
  const type = words.found(i)?.meaning.type ?? "unknown";
  const isTold = words.has("amount", "times", "tries", "outcome", "span") || words.items.some((item) => isNumber(item));
  return PLAYED.includes(type) && isTold;
}

const PLAYED: readonly Meaning["type"][] = ["scale", "chord", "several", "figure", "technique"];

/** `Prof: at 96 till Friday`: a tempo is no sign of practice where the teacher speaks and no outcome is told. */
function isTeacherSigned(words: LineWords): boolean {
  const length = words.lengthOf(0, "teacher") || (isAddressed(words, 0) ? 2 : 0);
  return length > 0 && /^\.?:/.test(words.before(length)) && !words.has("outcome", "tries");
}

/** `Hr. V.`, `Mrs Lane`. */
function isAddressed(words: LineWords, i: number): boolean {
  return words.is(i, "title") && words.isCapital(i + 1) && !words.found(i + 1);
}

function isName(words: LineWords, i: number): boolean {
  return words.isCapital(i) && !words.is(i, "sentence-sign");
}

/** A capitalised word that names nothing else: no heading, kind of piece, instrument, part of the body. */
function isNoOther(words: LineWords, i: number): boolean {
  return !words.is(
    i,
    "heading",
    "title-kind",
    "title-number",
    "instrument",
    "body-part",
    "rest",
    "total",
    "filler",
    "scope",
  );
}
