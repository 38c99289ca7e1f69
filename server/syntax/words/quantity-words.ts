import { wholeNumberOf } from "./fold.ts";
import type { MeaningOf } from "./meaning.ts";
import type { Found, Words } from "./words.ts";

const MINUTE_WORDS = ["min", "min.", "mins", "mins.", "minute", "minutes", "m", "'", "′", "’"];
const HOUR_WORDS = ["h", "h.", "hr", "hrs", "hour", "hours"];
const MINUTES_IN_A_DAY = 1440;
const COMPACT_AMOUNT = /^(?:(\d{1,6}(?:\.\d{1,2})?)h(?:r|rs)?)?(?:(\d{1,6})(?:m|min|mins|['′’])?)?$/i;

/** `10 min`, `45 minutes`, `10m`, `10'`, `1 h 20`, `1h20`, `2 hours`. */
export function amountAt(words: Words, i: number): Found<MeaningOf<"amount">> | undefined {
  const compact = compactAmount(words.typed(i));
  if (compact) {
    const onward =
      compact.hours !== undefined && compact.minutes === undefined ? minutesAfterHours(words, i + 1) : undefined;
    return amount(1 + (onward?.length ?? 0), compact.hours, onward?.minutes ?? compact.minutes);
  }
  const typed = words.typed(i);
  const number = /^\d{1,6}\.\d{1,2}$/.test(typed) ? Number(typed) : wholeNumberOf(typed);
  if (number === undefined) return undefined;
  if (words.is(i + 1, ...MINUTE_WORDS)) return amount(2, undefined, number);
  if (!words.is(i + 1, ...HOUR_WORDS)) return undefined;
  const onward = minutesAfterHours(words, i + 2);
  return amount(2 + (onward?.length ?? 0), number, onward?.minutes);
}

function minutesAfterHours(words: Words, i: number): { readonly minutes: number; readonly length: number } | undefined {
  const joined = words.is(i, "and") ? 1 : 0;
  const compact = /^(\d{1,4})(?:m|min|mins|['′’])$/i.exec(words.typed(i + joined));
  if (compact) return { minutes: Number(compact[1]), length: joined + 1 };
  if (!/^\d{1,4}$/.test(words.typed(i + joined))) return undefined;
  const unit = words.is(i + joined + 1, ...MINUTE_WORDS) ? 1 : 0;
  return { minutes: Number(words.typed(i + joined)), length: joined + 1 + unit };
}

function compactAmount(word: string): { readonly hours?: number; readonly minutes?: number } | undefined {
  const match = /[a-z'′’]/i.test(word) ? COMPACT_AMOUNT.exec(word) : null;
  if (!match) return undefined;
  return { ...(match[1] ? { hours: Number(match[1]) } : {}), ...(match[2] ? { minutes: Number(match[2]) } : {}) };
}

function amount(length: number, hours: number | undefined, minutes: number | undefined): Found<MeaningOf<"amount">> {
  const total = Math.round((hours ?? 0) * 60 + (minutes ?? 0));
  const possible = total > 0 && total <= MINUTES_IN_A_DAY && (hours === undefined || (minutes ?? 0) < 60);
  return { length, meaning: { type: "amount", minutes: total, possible } };
}

/** `five notes`, `9 notes`, `2 octaves`, `from F4 to G6`, `range G4 to F6`. */
export function spanAt(words: Words, i: number): Found<MeaningOf<"span">> | undefined {
  if (words.is(i, "from", "range")) return spanBetween(words, i);
  const joined = JOINED_SPAN.exec(words.word(i));
  const count = joined ? wholeNumberOf(joined[1]!) : words.whole(i);
  const unit = joined ? joined[2]! : words.word(i + 1);
  if (count === undefined || count < 1) return undefined;
  const length = joined ? 1 : 2;
  if (/^(?:notes?|degrees)$/.test(unit) && count <= 60)
    return { length, meaning: { type: "span", reach: { type: "degrees", count } } };
  if (/^octaves?$/.test(unit) && count <= 8)
    return { length, meaning: { type: "span", reach: { type: "octaves", count } } };
  return undefined;
}

/** `five-notes`, `2-octave`: as within a phrase, a hyphen is as good as a space. */
const JOINED_SPAN = /^([a-z]+|\d{1,2})[-‐‑](notes?|degrees|octaves?)$/;

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

/** `96 bars` of a piece; `5 days` of set work. */
export function countAt(words: Words, i: number): Found<MeaningOf<"bars" | "days">> | undefined {
  const count = words.whole(i);
  if (!count) return undefined;
  if (words.is(i + 1, "bars", "bar", "measures")) return { length: 2, meaning: { type: "bars", count } };
  if (words.is(i + 1, "days", "day")) return { length: 2, meaning: { type: "days", count } };
  return undefined;
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
