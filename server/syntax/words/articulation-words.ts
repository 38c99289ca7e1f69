import { COUNTED_BY_WORD_BEHIND } from "../lexicon/beside-numbers.ts";
import { wholeNumberOf } from "./fold.ts";
import type { MeaningOf } from "./meaning.ts";
import type { Found, Words } from "./words.ts";

type Articulation = MeaningOf<"articulation">;

const SYLLABLE = /^[tdkgrln](?:[aeiouy]{1,2}[tdkgrln]?)?$/;
/** Strokes in turn written as one word: `tktk`, `dgdg`, `ttk`. */
const STROKES = /^(?:(?:tk|dg|kt|gd){1,4}|(?:ttk|tkt|ddg|dgd){1,3})$/i;
const GROUPS = /^[1-9](?:\+[1-9])*$/;
/** Groups by themselves: at least two, and one of them slurred. */
const BARE_GROUPS = /^[1-9](?:\+[1-9]){1,5}$/;
const MOST_IN_A_SLUR = 16;

/** Whether a word is lower-case tonguing syllables joined by hyphens: `t-k`, `did-l`. */
export function isSyllables(word: string): boolean {
  const syllables = word.split(/[-‐‑]/);
  return syllables.length >= 2 && syllables.length <= 8 && syllables.every((syllable) => SYLLABLE.test(syllable));
}

/** `SL` in capitals is short and long. */
const LONG_SHORT = /^[LS]{2,8}$/;

/** Whether a word is strokes in turn, or groups of slurred notes. */
export function looksLikeArticulation(word: string): boolean {
  return STROKES.test(word) || BARE_GROUPS.test(word);
}

/** An articulation, and the half it holds for where `up` or `down` follows at once. */
export function articulationAt(words: Words, i: number): Found<Articulation> | undefined {
  if (LONG_SHORT.test(words.typed(i))) return undefined;
  const groups = slurGroups(words, i) ?? toTheBow(words, i) ?? slurredAndTongued(words, i) ?? syllables(words, i);
  const named = words.phrase(i, "articulation");
  const found = groups && (!named || groups.length >= named.length) ? groups : named;
  if (!found) return undefined;
  const next = words.phrase(i + found.length, "direction");
  const half =
    next?.length === 1 && (next.meaning.id === "up" || next.meaning.id === "down") ? next.meaning.id : undefined;
  return half ? { length: found.length + 1, meaning: { ...found.meaning, half } } : found;
}

/** `slur 2+2`, `slurred 2+1+1` (1 is tongued, and the group repeats); `2+2` by itself, but not behind `on`. */
function slurGroups(words: Words, i: number): Found<Articulation> | undefined {
  if (BARE_GROUPS.test(words.typed(i)))
    return words.is(i - 1, "on", "strings", "string", "fingers", "finger") || !/[2-9]/.test(words.typed(i))
      ? undefined
      : { length: 1, meaning: grouped(words.typed(i).split("+").map(Number)) };
  const named = slurWord(words, i);
  if (named === 0) return undefined;
  const at = i + named;
  const spaced = spacedGroups(words, at);
  if (spaced.length > 1) return { length: named + 2 * spaced.length - 1, meaning: grouped(spaced) };
  if (words.typed(at).includes("+") && GROUPS.test(words.typed(at)))
    return { length: named + 1, meaning: grouped(words.typed(at).split("+").map(Number)) };
  return slursOf(words, i, named);
}

/** `2 + 2`. */
function spacedGroups(words: Words, i: number): readonly number[] {
  const sizes: number[] = [];
  for (let next = i; /^[1-9]$/.test(words.typed(next)); next += 2) {
    sizes.push(Number(words.typed(next)));
    if (words.typed(next + 1) !== "+") break;
  }
  return sizes;
}

/** How many tokens `slur`, `sl.`, `slurred`, or the like are. */
function slurWord(words: Words, i: number): number {
  return words.is(i, "slur", "slurs", "slurred", "slurring", "sl", "sl.", "slr", "geb", "geb.", "gebunden") ? 1 : 0;
}

/** `sl 2`, `slurred in twos`, `slurred in 4s`, `slurred pairs`, `slurs of 3`; not `slurred 2 octaves`. */
function slursOf(words: Words, i: number, named: number): Found<Articulation> | undefined {
  const joined = words.is(i + named, "in", "of", "by", "per", "every", "zu", "à") ? 1 : 0;
  const inGroups = joined && words.is(i + named + 1, "groups") && words.is(i + named + 2, "of") ? 2 : 0;
  const at = i + named + joined + inGroups;
  const size = groupSize(words.word(at)) ?? sizeIn(words, at);
  if (size === undefined || size < 2 || size > MOST_IN_A_SLUR || isCounted(words, at + 1)) return undefined;
  const notes = words.is(at + 1, "notes") && joined ? 1 : 0;
  return { length: at + 1 + notes - i, meaning: grouped([size]) };
}

function sizeIn(words: Words, i: number): number | undefined {
  const size = wholeNumberOf(words.typed(i));
  return size !== undefined && size > 1 ? size : undefined;
}

/** `4s`, `twos`, `pairs`. */
function groupSize(word: string): number | undefined {
  const figures = /^(\d{1,2})'?s$/.exec(word);
  if (figures) return Number(figures[1]);
  if (word === "pairs" || word === "pair") return 2;
  return word.endsWith("s") ? GROUP_WORDS.get(word) : undefined;
}

const GROUP_WORDS: ReadonlyMap<string, number> = new Map([
  ["twos", 2],
  ["threes", 3],
  ["fours", 4],
  ["fives", 5],
  ["sixes", 6],
  ["eights", 8],
]);

const COUNTED = new RegExp(`^(?:${COUNTED_BY_WORD_BEHIND})`);

/** The number counts something else, or is the first of slurred and tongued groups. */
function isCounted(words: Words, i: number): boolean {
  const next = words.word(i);
  return COUNTED.test(next) || words.is(i, "tongued", "tongue", "tongues", "tng", "slurred", "slur");
}

/** `4 to a bow`, `two notes per bow`. */
function toTheBow(words: Words, i: number): Found<Articulation> | undefined {
  const size = wholeNumberOf(words.typed(i));
  if (size === undefined || size < 1 || size > MOST_IN_A_SLUR) return undefined;
  const notes = words.is(i + 1, "notes", "note") ? 1 : 0;
  const at = i + 1 + notes;
  const length =
    words.is(at, "to", "in") && words.is(at + 1, "a", "the", "one", "each") ? 2 : words.is(at, "per") ? 1 : 0;
  if (length === 0 || !words.is(at + length, "bow", "slur")) return undefined;
  return { length: at + length + 1 - i, meaning: grouped([size]) };
}

/** `two slurred two tongued`, `slur two tongue one`: at least two groups, one of them slurred. */
function slurredAndTongued(words: Words, i: number): Found<Articulation> | undefined {
  const sizes: number[] = [];
  let groups = 0;
  let next = i;
  for (;;) {
    const group = groupAt(words, next);
    if (!group) break;
    groups++;
    if (group.slurred) sizes.push(group.size);
    else for (let n = 0; n < group.size; n++) sizes.push(1);
    next += group.length;
    if (words.is(next, "and", "&", "+", "then") && groupAt(words, next + 1)) next++;
  }
  return groups >= 2 && sizes.some((size) => size > 1) ? { length: next - i, meaning: grouped(sizes) } : undefined;
}

function groupAt(
  words: Words,
  i: number,
): { readonly size: number; readonly slurred: boolean; readonly length: number } | undefined {
  const countFirst = wholeNumberOf(words.typed(i)) !== undefined;
  const size = wholeNumberOf(words.typed(countFirst ? i : i + 1));
  const way = countFirst ? i + 1 : i;
  const slurred = words.is(way, "slurred", "slur", "slurs", "sl", "sl.");
  const tongued = words.is(way, "tongued", "tongue", "tng", "tngd", "detached", "separate", "staccato", "stacc");
  return size !== undefined && size >= 1 && size <= MOST_IN_A_SLUR && (slurred || tongued)
    ? { size, slurred, length: 2 }
    : undefined;
}

/** Groups of slurred notes, 1 for a tongued one. */
function grouped(sizes: readonly number[]): Articulation {
  const tonguing = sizes.every((size) => size === 1) ? "single" : "mixed";
  return { type: "articulation", id: `slur ${sizes.join("+")}`, tonguing };
}

/** `tongue d`, `t-k`, `d-g`, `did-l`, `T-K`, `tktk`. */
function syllables(words: Words, i: number): Found<Articulation> | undefined {
  const named = words.is(i, "tongue", "tongued") ? 1 : 0;
  const typed = words.typed(i + named);
  const word = /^[A-Z]-[A-Z](?:-[A-Z])*$/.test(typed) ? typed.toLowerCase() : typed;
  if (STROKES.test(word))
    return { length: named + 1, meaning: { type: "articulation", id: word.toLowerCase(), tonguing: "multiple" } };
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
