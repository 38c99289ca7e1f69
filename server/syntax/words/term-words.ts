import type { MeaningOf } from "./meaning.ts";
import { amountAt } from "./quantity-words.ts";
import { tempoAt } from "./tempo-words.ts";
import type { Found, Words } from "./words.ts";

const SYLLABLE = /^[tdkgrln](?:[aeiouy]{1,2}[tdkgrln]?)?$/;
const GROUPS = /^[1-9](?:\+[1-9])*$/;

/** Whether a word is lower-case tonguing syllables joined by hyphens: `t-k`, `did-l`. */
export function isSyllables(word: string): boolean {
  const syllables = word.split(/[-‐‑]/);
  return syllables.length >= 2 && syllables.length <= 8 && syllables.every((syllable) => SYLLABLE.test(syllable));
}

/** An articulation, and the half it holds for where `up` or `down` follows at once. */
export function articulationAt(words: Words, i: number): Found<MeaningOf<"articulation">> | undefined {
  const found = slurGroups(words, i) ?? syllables(words, i) ?? words.phrase(i, "articulation");
  if (!found) return undefined;
  const next = words.phrase(i + found.length, "direction");
  const half =
    next?.length === 1 && (next.meaning.id === "up" || next.meaning.id === "down") ? next.meaning.id : undefined;
  return half ? { length: found.length + 1, meaning: { ...found.meaning, half } } : found;
}

/** `slur 2+2`, `slur 2+1+1`: 1 is tongued, and the group repeats. */
function slurGroups(words: Words, i: number): Found<MeaningOf<"articulation">> | undefined {
  const joined = words.is(i, "slurred") ? words.typed(i + 1).includes("+") : words.is(i, "slur", "slurs");
  if (!joined || !GROUPS.test(words.typed(i + 1))) return undefined; // `slurred 2 octaves` is no group
  const groups = words.typed(i + 1).split("+");
  const tonguing = groups.every((size) => size === "1") ? "single" : "mixed";
  return { length: 2, meaning: { type: "articulation", id: `slur ${groups.join("+")}`, tonguing } };
}

/** `tongue d`, `t-k`, `d-g`, `did-l`. */
function syllables(words: Words, i: number): Found<MeaningOf<"articulation">> | undefined {
  const named = words.is(i, "tongue", "tongued") ? 1 : 0;
  const word = words.typed(i + named);
  if (isSyllables(word)) {
    const several = new Set(word.split(/[-‐‑]/)).size > 1;
    return {
      length: named + 1,
      meaning: { type: "articulation", id: word, tonguing: several ? "multiple" : "single" },
    };
  }
  if (!named || !SYLLABLE.test(word)) return undefined;
  return { length: 2, meaning: { type: "articulation", id: `tongue ${word}`, tonguing: "single" } };
}

/** Long-short words: `LSS`, `SLL`. */
export function rhythmAt(words: Words, i: number): Found<MeaningOf<"rhythm">> | undefined {
  const word = words.typed(i);
  const mixed = /^[LS]{2,8}$/.test(word) && word.includes("L") && word.includes("S");
  return mixed ? { length: 1, meaning: { type: "rhythm", id: word, even: false } } : undefined;
}

const PLACE_WORDS: Readonly<Record<string, string>> = {
  bars: "bars",
  bar: "bars",
  measures: "bars",
  measure: "bars",
  mvt: "mvt",
  "mvt.": "mvt",
  movement: "mvt",
  var: "var",
  "var.": "var",
  variation: "var",
  page: "page",
  pages: "page",
  "p.": "page",
  line: "lines",
  lines: "lines",
};
/** The words that a place begins with. */
export const PLACE_OPENERS = ["upbeat", "letter", ...Object.keys(PLACE_WORDS)];
const PLACE_RANGE = /^\d{1,4}[a-z]?(?:[-–]\d{1,4}[a-z]?)?$/;

/** Where in a piece: `bars 17-32`, `upbeat to 17`, `mvt 2`, `var 3`, `letter B`, `page 4`, `lines 3-5`. */
export function placeAt(words: Words, i: number): Found<MeaningOf<"place">> | undefined {
  const place = (length: number, word: string, text: string): Found<MeaningOf<"place">> => ({
    length,
    meaning: { type: "place", word, text: `${word} ${text}` },
  });
  if (words.is(i, "upbeat") && words.is(i + 1, "to") && PLACE_RANGE.test(words.word(i + 2)))
    return place(3, "upbeat to", words.word(i + 2).replace("–", "-"));
  if (words.is(i, "letter") && /^[A-Z]{1,2}\d?$/.test(words.typed(i + 1)))
    return place(2, "letter", words.typed(i + 1));
  const word = PLACE_WORDS[words.word(i)];
  if (!word) return undefined;
  if (word === "mvt" || word === "var") return numberedPlace(words, i, word);
  const ranges = rangesAt(words, i + 1);
  return ranges ? place(1 + ranges.length, word, ranges.text) : undefined;
}

function numberedPlace(words: Words, i: number, word: string): Found<MeaningOf<"place">> | undefined {
  const name =
    words.quoted(i + 1)?.text ??
    (/^(?:\d{1,3}|[ivxl]{1,6})$/i.test(words.typed(i + 1)) ? words.word(i + 1) : undefined);
  return name === undefined ? undefined : { length: 2, meaning: { type: "place", word, text: `${word} ${name}` } };
}

/** `17-32`, `17 to 32`, `1-8 and 17-24`. */
function rangesAt(words: Words, i: number): { readonly text: string; readonly length: number } | undefined {
  const texts: string[] = [];
  let next = i;
  while (PLACE_RANGE.test(words.word(next))) {
    const spoken = words.is(next + 1, "to", "-", "–") && PLACE_RANGE.test(words.word(next + 2));
    texts.push(spoken ? `${words.word(next)}-${words.word(next + 2)}` : words.word(next).replace("–", "-"));
    next += spoken ? 3 : 1;
    if (!(words.is(next, "and", "&") && PLACE_RANGE.test(words.word(next + 1)))) break;
    next++;
  }
  return texts.length ? { text: texts.join(", "), length: next - i } : undefined;
}

/** `focus …`, `with …`, `sore …`: free words, up to a tempo, an outcome or an amount. */
export function freeWordsAt(words: Words, i: number): Found<MeaningOf<"focus" | "with" | "sore">> | undefined {
  const word = words.word(i);
  if (word !== "focus" && word !== "with" && word !== "sore") return undefined;
  if (words.phrase(i, "without click")) return undefined;
  let end = i + 1;
  while (end < words.tokens.length && !endsFreeWords(words, end)) end++;
  return end > i + 1 ? { length: end - i, meaning: { type: word, words: words.text(i + 1, end) } } : undefined;
}

function endsFreeWords(words: Words, i: number): boolean {
  return Boolean(tempoAt(words, i) ?? words.phrase(i, "outcome") ?? amountAt(words, i));
}

/**
 * `on tenor recorder`, `on "my flute"`; a known instrument's name alone is read too. In quotes behind `on` stands
 * nothing else.
 */
export function instrumentAt(words: Words, i: number): Found<MeaningOf<"instrument" | "unknown">> | undefined {
  const on = words.is(i, "on") ? 1 : 0;
  const quoted = on ? words.quoted(i + 1) : undefined;
  const declared = quoted?.quote?.closed ? words.vocabulary.instrument(quoted.text) : undefined;
  if (declared !== undefined) return { length: 2, meaning: { type: "instrument", id: declared, declared: true } };
  if (quoted?.quote?.closed) return { length: 2, meaning: { type: "unknown", words: words.text(i, i + 2) } };
  const found = words.phrase(i + on, "instrument");
  return found && { length: on + found.length, meaning: found.meaning };
}

/** `steps T T S T T T S`, `steps TTSTTTS`, `steps 2 2 1 2 2 2 1`, `steps T T m3 T m3`, `steps cents 150 150 200`. */
export function stepsAt(words: Words, i: number): Found<MeaningOf<"steps">> | undefined {
  if (!words.is(i, "steps", "step")) return undefined;
  let end = i + 1;
  const isOne = isCents(words.typed(end)) ? isCents : isStepWord;
  while (isOne(words.typed(end))) end++;
  return end > i + 1 ? { length: end - i, meaning: { type: "steps", words: words.text(i + 1, end) } } : undefined;
}

/** `cents`, or a number that no count of semitones can be. */
function isCents(word: string): boolean {
  return /^cents?$|^(?=\d{2})\d*[05-9]\d*(?:\.\d{1,4})?$/i.test(word) && word.length < 10;
}

/** Tones and semitones in letters, one or more to the word, a semitone count from 1 to 4, or three by another name. */
export function isStepWord(word: string): boolean {
  return /^(?:3[SHsh]|[mM][23]|A2|\+2|[TSAWHtsawh]*(?:m3[TSAWHtsawh]*)+)$|^(?:[TSAtsa]+|[WHAwha]+|[1-4]+(?:-[1-4])*)(?:-[TSWHA])*$/.test(
    word,
  );
}
