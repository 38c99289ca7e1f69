import { BEHIND_NO_AMOUNT } from "../lexicon/beside-numbers.ts";
import { MINUTES_IN_WORDS } from "../lexicon/minutes-in-words.ts";
import { wordsOf } from "../lexicon/terms/term-tables.ts";
import { fold, wholeNumberOf } from "./fold.ts";
import type { MeaningOf } from "./meaning.ts";
import type { Found, Words } from "./words.ts";

const MINUTE_WORDS = wordsOf("minutes");
const HOUR_WORDS = wordsOf("hours");
const EACH_WORDS = wordsOf("each");
const ABOUT_WORDS = wordsOf("about");
/** The words before an amount that say it is not exact. */
export const ABOUT_OPENERS: readonly string[] = [...ABOUT_WORDS].map((word) => word.split(" ", 1)[0]!);
const PRIMES = ["'", "′", "’"];
const MINUTES_IN_A_DAY = 1440;
const COMPACT_AMOUNT =
  /^(?:(\d{1,6}(?:[.,]\d{1,2})?|\d{0,2}½)(?:h|hr|hrs|std|u))?(?:(\d{1,6})(?:m|mn|min|mins|minuten|minutes|['′’])?)?\.?$/i;
/** Organ pipes: `8' 4'` are feet, as is `8' flute`. */
const FEET = /^\d{1,2}['′’]$/;
const STOPS = ["flute", "principal", "diapason", "reed", "stop", "stops", "gedackt", "bourdon", "trumpet", "pitch"];

/** `10 min`, `10m`, `10'`, `1 h 20`, `1h20`, `2 hours`, `1,5 h`, `2 1/2 hrs`; `about 10 min`, `5 min each`. */
export function amountAt(words: Words, i: number): Found<MeaningOf<"amount">> | undefined {
  const about = aboutAt(words, i);
  const found = timeAt(words, i + about) ?? spokenAt(words, i + about, about > 0);
  if (!found) return undefined;
  if (lengthIn(BEHIND_NO_AMOUNT, words, i + about + found.length) > 0) return undefined;
  const ish = words.is(i + about + found.length, "ish") ? 1 : 0;
  const isAbout = about + ish > 0 || /^\(?~/.test(words.typed(i));
  const each = eachAt(words, i + about + found.length + ish);
  const meaning = {
    ...found.meaning,
    ...(isAbout ? { about: true as const } : {}),
    ...(each > 0 ? { each: true as const } : {}),
  };
  return { length: about + found.length + ish + each, meaning };
}

/** `an hour`, and `an hour and ten minutes`; behind a word that it is not exact the phrase alone, too. */
function spokenAt(words: Words, i: number, isAbout: boolean): Found<MeaningOf<"amount">> | undefined {
  const phrase = words.phrase(i, "amount");
  if (!phrase) return undefined;
  const behind = i + phrase.length;
  const isJoined = words.is(behind, "and", "und", "et", "en", "e", "y");
  const more = isJoined ? (timeAt(words, behind + 1) ?? minutesInWords(words, behind + 1)) : undefined;
  const isMore = more !== undefined && phrase.meaning.minutes % 60 === 0 && more.meaning.minutes < 60;
  if (!isMore) return isAbout ? phrase : undefined;
  return {
    length: phrase.length + 1 + more.length,
    meaning: { ...phrase.meaning, minutes: phrase.meaning.minutes + more.meaning.minutes },
  };
}

/** `an hour and twenty`, `un'ora e dieci`. */
function minutesInWords(words: Words, i: number): Found<MeaningOf<"amount">> | undefined {
  const minutes = MINUTES_IN_WORDS.get(withoutStop(words.word(i)));
  return minutes === undefined ? undefined : amount(1, undefined, minutes);
}

function withoutStop(word: string): string {
  return word.replace(/[.!?]+$/, "");
}

function timeAt(words: Words, i: number): Found<MeaningOf<"amount">> | undefined {
  const compact = isFeet(words, i) ? undefined : compactAmount(unsigned(words.typed(i)));
  if (compact) {
    const onward =
      compact.hours !== undefined && compact.minutes === undefined ? minutesAfterHours(words, i + 1) : undefined;
    return amount(1 + (onward?.length ?? 0), compact.hours, onward?.minutes ?? compact.minutes);
  }
  const number = decimalAt(words, i);
  if (!number) return undefined;
  const at = i + number.length;
  const unit = unsigned(words.word(at));
  if (MINUTE_WORDS.has(unit) || (PRIMES.includes(words.word(at)) && !isFeetSign(words, i)))
    return amount(number.length + 1, undefined, number.value);
  if (!HOUR_WORDS.has(unit)) return undefined;
  const onward = minutesAfterHours(words, at + 1);
  return amount(number.length + 1 + (onward?.length ?? 0), number.value, onward?.minutes);
}

/** Without what stands around a thing said in passing: `(6 min)`, `40 min!!`, `~1 hr`. */
function unsigned(word: string): string {
  return word.replace(/^\(?~?(?=\d)|^\(/, "").replace(/(?<=[\p{L}'′’])[.!?)]+$/u, "");
}

/** `2.5`, `1,5`, `2 1/2`, `½`, `1½`, `25ish`, `ten`. */
function decimalAt(words: Words, i: number): { readonly value: number; readonly length: number } | undefined {
  const typed = unsigned(words.typed(i)).replace(/(?<=^\d+)-?ish$/i, "");
  if (/^\d{1,6}[.,]\d{1,2}$/.test(typed)) return { value: Number(typed.replace(",", ".")), length: 1 };
  if (/^\d{0,2}½$/.test(typed)) return { value: Number(typed.slice(0, -1)) + 0.5, length: 1 };
  if (typed === "1/2") return { value: 0.5, length: 1 };
  const whole = wholeNumberOf(typed) ?? MINUTES_IN_WORDS.get(fold(typed));
  if (whole === undefined) return undefined;
  return words.typed(i + 1) === "1/2" ? { value: whole + 0.5, length: 2 } : { value: whole, length: 1 };
}

/** How many words say that an amount is not exact. */
function aboutAt(words: Words, i: number): number {
  return words.typed(i) === "~" ? 1 : lengthIn(ABOUT_WORDS, words, i);
}

function eachAt(words: Words, i: number): number {
  return lengthIn(EACH_WORDS, words, i);
}

/** The longest of the phrases that begins at a token, in tokens. */
function lengthIn(phrases: ReadonlySet<string>, words: Words, i: number): number {
  const first = words.word(i);
  if (first === "") return 0;
  const second = `${first} ${words.word(i + 1)}`;
  if (phrases.has(`${second} ${words.word(i + 2)}`)) return 3;
  if (phrases.has(second)) return 2;
  return phrases.has(first) ? 1 : 0;
}

function isFeet(words: Words, i: number): boolean {
  if (!FEET.test(words.typed(i))) return false;
  const beside = (n: number): boolean => FEET.test(words.typed(n));
  const joined = (n: number, further: number): boolean => words.is(n, "+", "&", "and") && beside(further);
  return beside(i - 1) || beside(i + 1) || joined(i - 1, i - 2) || joined(i + 1, i + 2) || words.is(i + 1, ...STOPS);
}

function isFeetSign(words: Words, i: number): boolean {
  return words.is(i + 2, ...STOPS);
}

function minutesAfterHours(words: Words, i: number): { readonly minutes: number; readonly length: number } | undefined {
  const joined = words.is(i, "and", "und", "et", "en", "e", "y") ? 1 : 0;
  const compact = /^(\d{1,4})(?:m|mn|min|mins|['′’])$/i.exec(words.typed(i + joined));
  if (compact) return { minutes: Number(compact[1]), length: joined + 1 };
  if (!/^\d{1,4}$/.test(words.typed(i + joined))) return undefined;
  const unit = MINUTE_WORDS.has(words.word(i + joined + 1)) || PRIMES.includes(words.word(i + joined + 1)) ? 1 : 0;
  return { minutes: Number(words.typed(i + joined)), length: joined + 1 + unit };
}

function compactAmount(word: string): { readonly hours?: number; readonly minutes?: number } | undefined {
  const match = /[a-z'′’]/i.test(word) ? COMPACT_AMOUNT.exec(word) : null;
  if (!match) return undefined;
  const hours = match[1] === undefined ? undefined : Number(match[1].replace(",", ".").replace("½", ".5"));
  return { ...(hours ? { hours } : {}), ...(match[2] ? { minutes: Number(match[2]) } : {}) };
}

function amount(length: number, hours: number | undefined, minutes: number | undefined): Found<MeaningOf<"amount">> {
  const total = Math.round((hours ?? 0) * 60 + (minutes ?? 0));
  const possible = total > 0 && total <= MINUTES_IN_A_DAY && (hours === undefined || (minutes ?? 0) < 60);
  return { length, meaning: { type: "amount", minutes: total, possible } };
}

/** `five notes`, `9 notes`, `2 octaves`, `2oct`, `3 8ves`, `tenth`, `to the ninth`, `from F4 to G6`. */
export function spanAt(words: Words, i: number): Found<MeaningOf<"span">> | undefined {
  if (words.is(i, "from", "range")) return spanBetween(words, i);
  const joined = JOINED_SPAN.exec(words.word(i));
  const count = joined ? wholeNumberOf(joined[1]!) : words.whole(i);
  const unit = joined ? joined[2]! : words.word(i + 1);
  if (count === undefined || count < 1) return spanToDegree(words, i);
  const length = joined ? 1 : 2;
  if (DEGREE_WORDS.has(unit) && count <= 60) return degrees(length, count);
  if (OCTAVE_WORDS.has(unit) && count <= 8)
    return { length, meaning: { type: "span", reach: { type: "octaves", count } } };
  return spanToDegree(words, i);
}

/** `five-notes`, `2-octave`, `2oct`: as within a phrase, a hyphen is as good as a space. */
const JOINED_SPAN = /^([a-z]+(?=[-‐‑])|\d{1,2})[-‐‑]?([\p{L}\d.]{3,})$/u;
const OCTAVE_WORDS = wordsOf("octave");
const DEGREE_WORDS = wordsOf("degrees");

function degrees(length: number, count: number): Found<MeaningOf<"span">> {
  return { length, meaning: { type: "span", reach: { type: "degrees", count } } };
}

/** `tenth`, `a tenth`, `to the ninth`, `up to the 9th`: a lone ninth may count something. */
function spanToDegree(words: Words, i: number): Found<MeaningOf<"span">> | undefined {
  const up = words.is(i, "up") ? 1 : 0;
  const to = words.is(i + up, "to") ? up + 1 : 0;
  const article = words.is(i + to, "the", "a", "an") ? 1 : 0;
  const count = DEGREES.get(words.word(i + to + article));
  if (count === undefined || (to === 0 && count !== TENTH)) return undefined;
  const length = to + article + 1;
  if (count === TWELFTH) return { length, meaning: { type: "span", reach: { type: "twelfth" } } };
  return degrees(length, count);
}

const TENTH = 10;
const TWELFTH = 12;
const DEGREES: ReadonlyMap<string, number> = new Map(
  "sixth 6th seventh 7th eighth 8th ninth 9th tenth 10th eleventh 11th twelfth 12th thirteenth 13th"
    .split(" ")
    .map((word, n) => [word, 6 + Math.floor(n / 2)]),
);

function spanBetween(words: Words, i: number): Found<MeaningOf<"span">> | undefined {
  const from = words.note(i + 1);
  const middle = i + 1 + (from?.length ?? 0);
  const to = from && words.is(middle, "to") ? words.note(middle + 1) : undefined;
  if (!from || !to || from.note.octave === undefined || to.note.octave === undefined) return undefined;
  return {
    length: middle + 1 + to.length - i,
    meaning: { type: "span", reach: { type: "between", from: from.note, to: to.note } },
  };
}

/** Right after an outcome: `5 in a row`, `4 of 5`, `4/5`, `5x`, `3 times`. */
export function triesAt(words: Words, i: number): Found<MeaningOf<"tries">> | undefined {
  const tries = (length: number, got: number, count: number): Found<MeaningOf<"tries">> | undefined =>
    count >= 1 && count <= 1000 && got <= count
      ? { length, meaning: { type: "tries", tries: { got, count } } }
      : undefined;
  const share = /^(\d{1,4})\/(\d{1,4})$/.exec(words.typed(i));
  if (share) return tries(1, Number(share[1]), Number(share[2]));
  const repeated = timesAt(words, i);
  if (repeated) return tries(repeated.length, repeated.meaning.count, repeated.meaning.count);
  const count = words.whole(i);
  if (count === undefined) return undefined;
  if (words.is(i + 1, "in") && words.is(i + 2, "a") && words.is(i + 3, "row")) return tries(4, count, count);
  const of = words.is(i + 1, "of", "out") ? (words.is(i + 1, "out") && words.is(i + 2, "of") ? 2 : 1) : 0;
  const whole = of ? words.whole(i + 1 + of) : undefined;
  return whole === undefined ? undefined : tries(2 + of, count, whole);
}

/** `5x`, `3 times`, `twice`. */
export function timesAt(words: Words, i: number): Found<MeaningOf<"times">> | undefined {
  const compact = /^(?:(\d{1,4})[x×]|[x×](\d{1,4}))$/i.exec(words.typed(i));
  const count = compact
    ? Number(compact[1] ?? compact[2])
    : words.is(i, "once")
      ? 1
      : words.is(i, "twice")
        ? 2
        : undefined;
  if (count !== undefined) return count >= 1 ? { length: 1, meaning: { type: "times", count } } : undefined;
  const spoken = words.whole(i);
  return spoken && words.is(i + 1, "times", "time")
    ? { length: 2, meaning: { type: "times", count: spoken } }
    : undefined;
}

/** `6 sharps`, `1 flat`, `6#`, `2b`, `2♭`. */
export function signatureAt(words: Words, i: number): Found<MeaningOf<"signature">> | undefined {
  const signature = (length: number, count: number, sharp: boolean): Found<MeaningOf<"signature">> | undefined =>
    count <= 14
      ? { length, meaning: { type: "signature", fifths: count === 0 ? 0 : sharp ? count : -count } }
      : undefined;
  const compact = /^(\d{1,2})([#♯b♭])$/.exec(words.typed(i));
  if (compact) return signature(1, Number(compact[1]), "#♯".includes(compact[2]!));
  const count = words.whole(i);
  if (count === undefined || !words.is(i + 1, "sharps", "sharp", "flats", "flat", "#", "♯", "♭")) return undefined;
  return signature(2, count, /^[s#♯]/.test(words.word(i + 1)));
}

/** `96 bars` of a piece; `5 days` of set work. In `Fantasia 1 bars 9-12` the number is the title's. */
export function countAt(words: Words, i: number): Found<MeaningOf<"bars" | "days">> | undefined {
  const count = words.whole(i);
  if (!count) return undefined;
  if (words.is(i + 1, "bars", "bar", "measures"))
    return namesPlace(words, i + 1) ? undefined : { length: 2, meaning: { type: "bars", count } };
  if (words.is(i + 1, "days", "day")) return { length: 2, meaning: { type: "days", count } };
  return undefined;
}

/** `bars 9-12`, `bar 7`; not `bars 60`, which may be a tempo behind a count. */
function namesPlace(words: Words, i: number): boolean {
  const next = words.typed(i + 1);
  return /^\d+[-–]\d+$/.test(next) || (words.is(i, "bar") && /^\d+$/.test(next));
}

/** `19:30`, `9.00` in front of a sitting. */
export function clockAt(words: Words, i: number): Found<MeaningOf<"clock">> | undefined {
  const at = words.is(i, "at") ? 1 : 0;
  const match = /^([01]?\d|2[0-3])[:.h]([0-5]\d)$/.exec(words.typed(i + at));
  return match
    ? { length: at + 1, meaning: { type: "clock", hour: Number(match[1]), minute: Number(match[2]) } }
    : undefined;
}

/** `by 2026-04-30`, `due`, `from`, `on`, `until` before something date-like. Whether the date exists is asked later. */
export function dateAt(words: Words, i: number): Found<MeaningOf<"date">> | undefined {
  const word = words.word(i);
  if (word !== "by" && word !== "due" && word !== "from" && word !== "on" && word !== "until") return undefined;
  const text = words.typed(i + 1);
  return /^\d{1,4}[-./]\d{1,4}[-./]\d{1,4}$/.test(text)
    ? { length: 2, meaning: { type: "date", word, text } }
    : undefined;
}
