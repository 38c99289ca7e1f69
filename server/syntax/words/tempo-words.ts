import { fold } from "./fold.ts";
import type { Fraction, MeaningOf } from "./meaning.ts";
import { BEATS } from "./terms.ts";
import type { Found, Words } from "./words.ts";

/** Beats a minute outside which a tempo is hardly meant. */
export const SLOWEST = 20;
export const FASTEST = 400;

const NUMBER = /^\d{1,6}(?:\.\d{1,3})?$/;
const RANGE = /^(\d{1,6}(?:\.\d{1,3})?)[-–](\d{1,6}(?:\.\d{1,3})?)$/;

/** `at 72`, `at 72 bpm`, `at quarter=72`, `♩. = 46`, `72 bpm`, `at 60 to 72`, `at 60-72`. */
export function tempoAt(words: Words, i: number): Found<MeaningOf<"tempo">> | undefined {
  const at = words.is(i, "at", "@") ? 1 : 0;
  const beat = beatAt(words, i + at);
  const equals = beat && words.typed(i + at + beat.length) === "=" ? 1 : 0;
  const named = beat && (equals || at) ? beat.length + equals : 0;
  const rate = rateAt(words, i + at + named);
  if (!rate || !(at || equals || rate.bpm.said)) return undefined;
  const { low, high } = rate.bpm;
  const meaning = {
    type: "tempo",
    bpm: high,
    ...(low === high ? {} : { low }),
    ...(named ? { beat: beat!.value } : {}),
  } as const;
  return { length: at + named + rate.length, meaning };
}

/** `goal quarter=84`, `goal 84`. */
export function goalAt(words: Words, i: number): Found<MeaningOf<"goal">> | undefined {
  if (!words.is(i, "goal")) return undefined;
  const start = i + 1 + (words.is(i + 1, "at") ? 1 : 0);
  const beat = beatAt(words, start);
  const named = beat && words.typed(start + beat.length) === "=" ? beat.length + 1 : 0;
  const rate = rateAt(words, start + named);
  if (!rate) return undefined;
  return {
    length: start + named + rate.length - i,
    meaning: { type: "goal", bpm: rate.bpm.high, ...(named ? { beat: beat!.value } : {}) },
  };
}

/** A bare number or range: what it is, the line around it says. */
export function numberAt(words: Words, i: number): Found<MeaningOf<"number" | "range">> | undefined {
  const word = words.typed(i);
  if (NUMBER.test(word)) {
    const to = words.is(i + 1, "to") && NUMBER.test(words.typed(i + 2)) ? Number(words.typed(i + 2)) : undefined;
    if (to !== undefined) return { length: 3, meaning: { type: "range", range: { low: Number(word), high: to } } };
    return { length: 1, meaning: { type: "number", value: Number(word) } };
  }
  const range = RANGE.exec(word);
  return range
    ? { length: 1, meaning: { type: "range", range: { low: Number(range[1]), high: Number(range[2]) } } }
    : undefined;
}

/** The value of a beat: `quarter`, `crotchet`, `♩`, `1/4`, each dotted by `.` or `dotted`. */
export function beatAt(words: Words, i: number): { readonly value: Fraction; readonly length: number } | undefined {
  if (words.is(i, "dotted")) {
    const plain = BEATS.get(fold(words.typed(i + 1)));
    return plain ? { value: dotted(plain), length: 2 } : undefined;
  }
  const word = fold(words.typed(i));
  const plain = BEATS.get(word);
  if (plain) return words.typed(i + 1) === "." ? { value: dotted(plain), length: 2 } : { value: plain, length: 1 };
  const dot = word.endsWith(".") ? BEATS.get(word.slice(0, -1)) : undefined;
  return dot ? { value: dotted(dot), length: 1 } : undefined;
}

function dotted({ numerator, denominator }: Fraction): Fraction {
  return { numerator: numerator * 3, denominator: denominator * 2 };
}

interface Rate {
  readonly length: number;
  readonly bpm: { readonly low: number; readonly high: number; readonly said: boolean };
}

function rateAt(words: Words, i: number): Rate | undefined {
  const compact = /^(\d{1,6}(?:\.\d{1,3})?)bpm$/.exec(words.word(i));
  if (compact) return { length: 1, bpm: { low: Number(compact[1]), high: Number(compact[1]), said: true } };
  const number = words.typed(i) === "" ? undefined : intervalAt(words, i);
  if (!number) return undefined;
  const said = words.is(i + number.length, "bpm");
  return {
    length: number.length + (said ? 1 : 0),
    bpm: { low: Math.min(number.low, number.high), high: Math.max(number.low, number.high), said },
  };
}

function intervalAt(words: Words, i: number): { low: number; high: number; length: number } | undefined {
  const range = RANGE.exec(words.typed(i));
  if (range) return { low: Number(range[1]), high: Number(range[2]), length: 1 };
  if (!NUMBER.test(words.typed(i))) return undefined;
  const low = Number(words.typed(i));
  const joined = words.is(i + 1, "to", "-", "–") && NUMBER.test(words.typed(i + 2));
  return joined ? { low, high: Number(words.typed(i + 2)), length: 3 } : { low, high: low, length: 1 };
}
