import { DOTTED_BEFORE, DOTTED_BEHIND, SAID_WITHOUT_EQUALS } from "../lexicon/beats.ts";
import { COUNTED_BY_WORD_BEFORE, OF_ANOTHER_DAY } from "../lexicon/beside-numbers.ts";
import { PLACES_BY_ORDINAL } from "../lexicon/places/bars.ts";
import { APPROXIMATELY, AT_WORDS, BEFORE_NO_TEMPO, TEMPO_WORDS, UNITS } from "../lexicon/tempo-marks.ts";
import { fold } from "./fold.ts";
import type { Fraction, MeaningOf } from "./meaning.ts";
import { BEATS } from "./terms.ts";
import type { Found, Words } from "./words.ts";

/** Beats a minute outside which a tempo is hardly meant. */
export const SLOWEST = 20;
export const FASTEST = 400;

const FIGURES = "\\d{1,6}(?:\\.\\d{1,3})?";
const NUMBER = new RegExp(`^${FIGURES}$`);
const RANGE = new RegExp(`^(${FIGURES})[-–](${FIGURES})$`);
/** With what may follow without a space: a unit, `ish`, and signs that end a sentence. */
const RATE = new RegExp(`^~?(${FIGURES})(?:(?:[-–—→]|->)(${FIGURES}))?(bpm|-?ish)?[.!…]*$`, "i");
/** What joins two numbers. */
export const JOINTS = ["to", "-", "–", "—", "→", "->", "bis"];

/**
 * `at 72`, `@72`, `72 bpm`, `at quarter=72`, `♩. = 46`, `crotchet 60`, `MM=60`, `metronome at 50`, `ca. 60`, `80ish`,
 * `112 to the crotchet`, and each with a range: `at 60 to 72`, `60-72bpm`.
 */
export function tempoAt(words: Words, i: number): Found<MeaningOf<"tempo">> | undefined {
  const mark = markAt(words, i);
  if (isBehindNoTempo(words, i, mark.length)) return undefined;
  const first = i + mark.length;
  const rate = rateAt(words, first, mark.isGlued);
  if (!rate) return undefined;
  const behind = first + rate.length;
  const counted = mark.beat || rate.high !== rate.low ? undefined : beatBehind(words, behind);
  const said = counted || rate.said ? "surely" : mark.says;
  if (said === "nothing" || (said === "likely" && !isLikely(rate))) return undefined;
  if (rate.high < LEAST_MEANT && !rate.said && !mark.beat && !mark.isGlued) return undefined; // `uneven at 6`
  if (!rate.said && UNITS.has(words.word(behind)) && !(said === "surely" && !UNITS_OF_NO_TEMPO.has(words.word(behind))))
    return undefined;
  if (mark.isMeasures && rate.low !== rate.high && !isBehindTerm(words, i)) return undefined;
  const beat = mark.beat ?? counted?.value;
  return {
    length: behind - i + (counted?.length ?? 0),
    meaning: { type: "tempo", ...bpmOf(rate), ...(beat && { beat }) },
  };
}

/** `was at 60`, `string 60bpm`; but a place before a mark is nothing to it (`last line at 60`). */
function isBehindNoTempo(words: Words, i: number, marked: number): boolean {
  const before = words.word(i - 1);
  if (words.is(i, "à") && /^\d/.test(before)) return true; // `mes. 1 à 24`
  return BEFORE_NO_TEMPO.has(before) && (marked === 0 || SAID_OF_ANOTHER_DAY.test(before));
}

const SAID_OF_ANOTHER_DAY = new RegExp(`^(?:${OF_ANOTHER_DAY})$`);

/** Of a smaller number behind `at` a tempo is not even meant. */
const LEAST_MEANT = 10;

/** After `at` these alone say that no tempo is meant. */
const UNITS_OF_NO_TEMPO: ReadonlySet<string> = new Set(
  "% percent hz hertz cents degrees degrees. grad degrés graden gradi grados °c °f".split(" "),
);

/** What says that a number behind it is a tempo. */
interface Mark {
  readonly length: number;
  /** `at 1000` is a tempo, if a wrong one; `about 1000` is none. */
  readonly says: "surely" | "likely" | "nothing";
  /** `@60`: its sign is part of the number's word. */
  readonly isGlued: boolean;
  readonly beat?: Fraction;
  /** `mm`, which may be measures as well. */
  readonly isMeasures: boolean;
}

export function markAt(words: Words, i: number): Mark {
  let next = i;
  let says: Mark["says"] = "nothing";
  const isMeasures = words.is(i, "mm") && words.typed(i + 1) !== "=";
  if (words.is(next, ...TEMPO_WORDS)) {
    says = "likely";
    next++;
    if (words.typed(next) === "=" || (words.is(next, "on", "to") && /^\d{2,3}$/.test(words.typed(next + 1)))) next++;
  }
  const isAt = words.is(next, "at", "@");
  if (isAt) says = "surely";
  else if (isAtWord(words, next)) says = "likely";
  if (isAt || isAtWord(words, next)) next++;
  const beat = beatAt(words, next);
  const equals = beat && words.typed(next + beat.length) === "=" ? 1 : 0;
  const isNamed = beat && (equals > 0 || isAt || isSaidAlone(words, next, beat.length));
  if (isNamed) next += beat.length + equals;
  if (isNamed && says !== "surely") says = equals > 0 ? "surely" : "likely";
  const glued = GLUED.exec(words.typed(next))?.[0];
  const glyph = glued === undefined ? undefined : BEATS.get(glued);
  if (glued) says = glued === "@" || glyph ? "surely" : says === "nothing" ? "likely" : says;
  else if (words.is(next, ...APPROXIMATELY) || words.typed(next) === "~") {
    next++;
    if (says === "nothing") says = "likely";
  }
  const isGlued = glued === "@" || glyph !== undefined;
  return { length: next - i, says, isGlued, beat: isNamed ? beat.value : glyph, isMeasures };
}

/** `bei 60`; `a 60` where notes are named by syllables or words, and `a` is none. */
function isAtWord(words: Words, i: number): boolean {
  if (words.is(i, ...AT_WORDS)) return true;
  return (
    words.vocabulary.notes.words !== null &&
    words.typed(i) === "a" &&
    AFTER_A.test(words.typed(i + 1)) &&
    !words.note(i)
  );
}

const AFTER_A = /^\d{2,3}(?:[-–/→]\d{2,3})*[.!,]*$/;

/** Signs that stand before a number without a space. */
const GLUED = /^(?:[@~](?=\d)|[♩♪](?=\d))/;

function isSaidAlone(words: Words, i: number, length: number): boolean {
  for (let k = i; k < i + length; k++)
    if (SAID_WITHOUT_EQUALS.has(fold(words.typed(k)).replace(/^([♩♪])\.$/, "$1"))) return true;
  return false;
}

/** `112 to the crotchet`. */
function beatBehind(words: Words, i: number): { readonly value: Fraction; readonly length: number } | undefined {
  if (!words.is(i, "to") || !words.is(i + 1, "the", "a")) return undefined;
  const beat = beatAt(words, i + 2);
  return beat && { value: beat.value, length: beat.length + 2 };
}

/** `C major, quavers mm 60-80`: what stands before `mm` and a range tells tempos from measures. */
function isBehindTerm(words: Words, i: number): boolean {
  return Boolean(
    words.note(i - 1) ??
      words.phrase(i - 1, "kind", "chord kind", "pattern", "articulation", "rhythm", "note value", "span"),
  );
}

/** `goal quarter=84`, `goal 84`. */
export function goalAt(words: Words, i: number): Found<MeaningOf<"goal">> | undefined {
  if (!words.is(i, "goal")) return undefined;
  const start = i + 1 + (words.is(i + 1, "at") ? 1 : 0);
  const beat = beatAt(words, start);
  const named = beat && words.typed(start + beat.length) === "=" ? beat.length + 1 : 0;
  const rate = rateAt(words, start + named, false);
  if (!rate) return undefined;
  return {
    length: start + named + rate.length - i,
    meaning: { type: "goal", bpm: Math.max(rate.low, rate.high), ...(named ? { beat: beat!.value } : {}) },
  };
}

/** A bare number or range: what it is, the line around it says. */
export function numberAt(words: Words, i: number): Found<MeaningOf<"number" | "range">> | undefined {
  const before = words.word(i - 1);
  const said = before === "at" || before === "@" ? words.word(i - 2) : before;
  if (BEFORE_NO_TEMPO.has(said) && NUMBERED.test(said)) return undefined;
  const word = words.typed(i);
  if (NUMBER.test(word)) {
    const to = words.is(i + 1, ...JOINTS) && NUMBER.test(words.typed(i + 2)) ? Number(words.typed(i + 2)) : undefined;
    const isJoined = to !== undefined && (words.is(i + 1, "to") || isLikely({ low: Number(word), high: to }));
    if (isJoined) return { length: 3, meaning: { type: "range", range: { low: Number(word), high: to } } };
    return { length: 1, meaning: { type: "number", value: Number(word) } };
  }
  const range = RANGE.exec(word);
  if (range) return { length: 1, meaning: { type: "range", range: { low: Number(range[1]), high: Number(range[2]) } } };
  return endingNumber(words, i);
}

/** The words behind which a number counts what it is told to be, and nothing else. */
const NUMBERED = new RegExp(`^(?:${COUNTED_BY_WORD_BEFORE})`);

/** `60.`, `104!!`, `60→72`: with what ends its sentence. A point before the name of a place belongs to an ordinal. */
function endingNumber(words: Words, i: number): Found<MeaningOf<"number" | "range">> | undefined {
  const match = RATE.exec(words.typed(i));
  if (!match || match[3] || words.typed(i).startsWith("~") || ORDINALS_PLACE.test(words.word(i + 1))) return undefined;
  const [low, high] = [Number(match[1]), Number(match[2] ?? match[1])];
  if (!isLikely({ low, high })) return undefined;
  return { length: 1, meaning: match[2] ? { type: "range", range: { low, high } } : { type: "number", value: low } };
}

const ORDINALS_PLACE = new RegExp(`^(?:${PLACES_BY_ORDINAL})`);

/** The value of a beat: `quarter`, `crotchet`, `♩`, `1/4`, each dotted by `.` or `dotted`. */
export function beatAt(words: Words, i: number): { readonly value: Fraction; readonly length: number } | undefined {
  if (words.is(i, ...DOTTED_BEFORE)) {
    const plain = BEATS.get(fold(words.typed(i + 1)));
    return plain && { value: dotted(plain), length: 2 + noteWord(words, i + 2) };
  }
  const word = fold(words.typed(i));
  const plain = BEATS.get(word);
  if (plain) {
    const length = 1 + noteWord(words, i + 1);
    const dot = dotBehind(words, i + length);
    return dot ? { value: dotted(plain), length: length + dot } : { value: plain, length };
  }
  const dot = word.endsWith(".") ? BEATS.get(word.slice(0, -1)) : undefined;
  return dot && { value: dotted(dot), length: 1 };
}

/** `quarter note = 60`. */
function noteWord(words: Words, i: number): number {
  return words.is(i, "note") && words.typed(i + 1) === "=" ? 1 : 0;
}

/** How many words say that the beat before is dotted. */
function dotBehind(words: Words, i: number): number {
  if (words.typed(i) === ".") return 1;
  if (DOTTED_BEHIND.includes(words.word(i))) return 1;
  return DOTTED_BEHIND.includes(`${words.word(i)} ${words.word(i + 1)}`) ? 2 : 0;
}

function dotted({ numerator, denominator }: Fraction): Fraction {
  return { numerator: numerator * 3, denominator: denominator * 2 };
}

/** Beats a minute, as typed. */
interface Rate {
  readonly low: number;
  readonly high: number;
}

function isLikely({ low, high }: Rate): boolean {
  return Math.min(low, high) >= SLOWEST && Math.max(low, high) <= FASTEST;
}

function bpmOf({ low, high }: Rate): { readonly bpm: number; readonly low?: number } {
  return low === high ? { bpm: high } : { bpm: Math.max(low, high), low: Math.min(low, high) };
}

/** `72`, `60-72`, `60 to 72`; `said` where a unit or `ish` says that it is a tempo. */
function rateAt(
  words: Words,
  i: number,
  isGlued: boolean,
): (Rate & { readonly length: number; readonly said: boolean }) | undefined {
  const typed = words.typed(i);
  const match = RATE.exec(isGlued ? typed.slice(1) : typed);
  if (!match) return undefined;
  const low = Number(match[1]);
  const joined =
    match[2] === undefined && !match[3] && words.is(i + 1, ...JOINTS) ? RATE.exec(words.typed(i + 2)) : null;
  const isSpoken = joined !== null && joined[2] === undefined;
  const high = Number(isSpoken ? joined[1] : (match[2] ?? match[1]));
  const length = isSpoken ? 3 : 1;
  const unit = match[3] ?? (isSpoken ? joined[3] : undefined);
  if (unit) return { low, high, length, said: isLikely({ low, high }) || /bpm/i.test(unit) };
  const said = /^(?:bpm|-?ish)[.!]*$/.test(words.word(i + length)) ? 1 : 0;
  return { low, high, length: length + said, said: said > 0 };
}
