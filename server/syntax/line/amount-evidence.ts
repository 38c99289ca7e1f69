import { behindItem, type Evidence, firstOf, hasPracticeWord, type Signs } from "./evidence.ts";
import type { LineWords } from "./line-words.ts";

/** Words in front of an amount name an activity when they are at most so many. */
const LONGEST_ACTIVITY = 4;

/** In minutes: what is more is a time of day. */
const LONGEST_SITTING = 12 * 60;

/** `40 minutes, so stopped there`, `10 min I waited`: a sentence follows. */
function goesOnBehind(words: LineWords, amount: number): boolean {
  const behind = behindItem(words, amount);
  return /^so$/i.test(words.typed(behind)) || (words.before(behind) === "" && words.is(behind, "sentence-sign"));
}

/** `Rosin everywhere. 45 min`, `dog: 20 min`: what was done is written in one. */
function hasSignWithin(words: LineWords, to: number): boolean {
  for (let i = 1; i <= to; i++) if (/[.!:]/.test(words.before(i))) return true;
  return false;
}

/**
 * Words of lines of another kind. Beside a group the words for a sitting name it: `session at the Anchor`, `Wednesday
 * group`; a lesson is none.
 */
function hasOther(words: LineWords, to: number, isMeeting: boolean): boolean {
  if (words.first(0, to, "negation", "body-part", "body-trouble", "total", "longer-time", "rest") >= 0) return true;
  for (let i = 0; i < to; i++)
    if (words.is(i, "heading") && !(isMeeting && words.meaningOf(i, "heading") === "sitting")) return true;
  return false;
}

/** `room acoustics, 10 min`: whatever was done for so long. */
export function byAmount(words: LineWords, { sign, intends }: Signs): Evidence | undefined {
  const amount = firstOf(words, ["amount"]);
  const isMeeting = words.first(0, amount, "meeting") >= 0;
  if (amount < 1 || amount > LONGEST_ACTIVITY || sign >= 0 || intends) return undefined;
  const { meaning: length } = words.found(amount)!;
  if (length.type === "amount" && length.minutes > LONGEST_SITTING) return undefined; // `bus de 22h14`
  if (words.is(amount - 1, "before-time") || hasSignWithin(words, amount) || goesOnBehind(words, amount))
    return undefined;
  const clock = firstOf(words, ["clock"]); // `Band 7.30, 2 hrs`
  const named = isMeeting && clock > 0 && clock < amount ? clock : amount;
  if (hasOther(words, amount, isMeeting) || hasPracticeWord(words, 0, named, ...NO_PRACTICE)) return undefined;
  const [start, end] = [words.words[0]!.start, words.words[named - 1]!.end];
  const meaning = { type: "activity", name: words.text.slice(start, end) } as const;
  return { subject: { start, end, meaning } };
}

/** What may stand in the name of an activity. */
const NO_PRACTICE = ["activity", "line word", "weekday"] as const;
