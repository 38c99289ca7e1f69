import { MARKS_OF_ONE } from "../lexicon/outcomes/marks.ts";
import { TICKS } from "../lexicon/outcomes/signs.ts";
import { BACK_TO_TEMPO } from "../lexicon/tempo-marks.ts";
import { fold } from "../words/fold.ts";
import type { Item, Meaning, MeaningOf } from "../words/meaning.ts";
import { verdictOfMark } from "../words/outcome-words.ts";
import type { Vocabulary } from "../words/vocabulary.ts";

type TempoItem = Item<MeaningOf<"tempo">>;

/**
 * What was said of several tempos, at the tempo that it was said of: `100 120 140 good good ok` and `66 / 72 - clean /
 * one flub` are dealt out where there are as many of both; a mark stands right behind its tempo (`84 v, 92 x`); a tempo
 * that is named again is the one of before (`88, 96, 104 - 96 sticky`).
 */
export function withOutcomesDealt(items: readonly Item[], text: string, vocabulary: Vocabulary): readonly Item[] {
  if (!items.some(isTempo)) return items;
  const dealt: Item[] = [];
  for (let i = 0; i < items.length; ) {
    const tempos = temposFrom(items, i);
    dealt.push(...items.slice(i, i + Math.max(1, tempos)));
    i += Math.max(1, tempos);
    if (tempos === 0) continue;
    const said = saidFrom(items, i);
    const row = said > 0 ? rowIn(items.slice(i - tempos, i + said), tempos, text, vocabulary) : undefined;
    const mark = row || said !== 1 ? undefined : markOf(items[i]!);
    if (!row && !mark) continue;
    dealt.push(...(row ?? [mark!]));
    i += said;
  }
  return namedAgain(dealt, text);
}

function isTempo(item: Item | undefined): item is TempoItem {
  return item?.meaning.type === "tempo";
}

/** How many tempos stand in a row. */
function temposFrom(items: readonly Item[], from: number): number {
  let to = from;
  while (isTempo(items[to])) to++;
  return to - from;
}

/** How many items that may tell how it went. */
function saidFrom(items: readonly Item[], from: number): number {
  let to = from;
  while (isSaying(items[to])) to++;
  return to - from;
}

const SAYING: readonly Meaning["type"][] = ["outcome", "unknown"];

/** Words of a row, and where they stand in the text. */
interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** As many outcomes as tempos, behind them; undefined where what stands there is none. */
function rowIn(items: readonly Item[], count: number, text: string, vocabulary: Vocabulary): Item[] | undefined {
  if (count < 2) return undefined;
  const [from, to] = [items[count]!.start, items.at(-1)!.end];
  const body = { start: from + LEAD.exec(text.slice(from, to))![0].length, end: to };
  const lead = text.slice(items[count - 1]!.end, body.start);
  const typed = text.slice(body.start, body.end);
  const separator = SEPARATORS.find((each) => each.test(typed)) ?? (MARKS_TOGETHER.test(typed) ? /(?:)/ : /\s+/);
  const words = stretches(text, body, separator);
  if (words.length !== count || (items.length === count + 1 && vocabulary.outcomes.of(typed))) return undefined;
  const row = words.map((each) => outcomeOf(each, text, vocabulary));
  const known = row.filter(({ meaning }) => meaning.type === "outcome").length;
  const isSlashed = separator === SLASH && known > 0 && words.every(({ start, end }) => end - start <= LONGEST_WORDS);
  const isSet = isSlashed || (known === count && (count > 2 || isApart(lead, separator) || areShort(words)));
  return isSet ? row : undefined;
}

/** What may stand between the tempos and the row. */
const LEAD = /^[\s,:;/|=>→–—-]*\(?\s*/;
const SLASH = /\s*\/\s*/;
const LIST = /\s*[;,]\s*/;
/** `✓✓x`, `yyn`. */
const MARKS_TOGETHER = new RegExp(`^[${TICKS}ynvx~–-]{2,}$`, "iu");
const SEPARATORS: readonly RegExp[] = [SLASH, LIST];
/** In UTF-16 units: what is said of one tempo in a few words. */
const LONGEST_WORDS = 30;

/** Two words behind two tempos may be said of the second alone, unless something sets them apart. */
function isApart(lead: string, separator: RegExp): boolean {
  return separator === LIST ? /[:/|=>→(–—-]/.test(lead) : /[^\s]|\s{3}/.test(lead);
}

/** `ok ok`, `y n`. */
function areShort(words: readonly Stretch[]): boolean {
  return words.every(({ start, end }) => end - start <= 2);
}

function stretches(text: string, { start, end }: Stretch, separator: RegExp): Stretch[] {
  let at = start;
  return text
    .slice(start, end)
    .split(new RegExp(`(${separator.source})`))
    .flatMap((part, i) => {
      const own = { start: at, end: at + part.length };
      at = own.end;
      return i % 2 === 0 && part !== "" ? [own] : [];
    });
}

function outcomeOf({ start, end }: Stretch, text: string, vocabulary: Vocabulary): Item {
  const words = text.slice(start, end);
  const known = vocabulary.outcomes.of(words);
  const says = known ? undefined : verdictOfMark(words.replace(/[).!]+$/, ""));
  if (known) return { start, end, meaning: { ...known, inRow: true } };
  return {
    start,
    end,
    meaning: says ? { type: "outcome", id: words, says, inRow: true } : { type: "unknown", words, inRow: true },
  };
}

/** A mark alone behind its tempo. */
function markOf(item: Item): Item | undefined {
  if (item.meaning.type !== "unknown") return undefined;
  const { words } = item.meaning;
  const says = MARKS_OF_ONE.includes(fold(words)) ? verdictOfMark(words) : undefined;
  return says && { ...item, meaning: { type: "outcome", id: words, says } };
}

/**
 * `88, 96, 104 - 96 sticky`, `84/92/100 -> 100 tense`, `72, 80, nope at 80`: behind several tempos of which nothing was
 * said one of them, set apart and with what is said of it; and more of them in a row.
 */
function namedAgain(items: readonly Item[], text: string): readonly Item[] {
  const again = new Set<number>();
  for (const [i, item] of items.entries()) if (isTempo(item) && isNamedAgain(items, i, again, text)) again.add(i);
  return again.size === 0
    ? items
    : items.map((item, i) =>
        again.has(i) ? { ...item, meaning: { ...(item as TempoItem).meaning, again: true } } : item,
      );
}

function isNamedAgain(items: readonly Item[], i: number, again: ReadonlySet<number>, text: string): boolean {
  if (!isSaying(items[i - 1]) && !isSaying(items[i + 1])) return false;
  const { bpm } = (items[i] as TempoItem).meaning;
  const before = items.slice(0, i);
  const own = before.flatMap((item, k) => (isTempo(item) && !again.has(k) ? [k] : []));
  const first = own.find((k) => (items[k] as TempoItem).meaning.bpm === bpm);
  if (own.length < 2 || first === undefined) return false;
  const isSwapped = isSaying(items[i - 1]) && first === i - 2 && isLedBack(items[i]!, text);
  if (!isSwapped && (!isTempo(items[first + 1]) || !isSaying(items[i + 1]))) return false;
  if (again.has(i - 2) && isSaying(items[i - 1])) return true;
  const isFirst = !before.slice(0, isSwapped ? -1 : undefined).some(isSaying);
  return isFirst && (isSwapped || isSetApart(before, items[i]!, text));
}

function isSaying(item: Item | undefined): boolean {
  return item !== undefined && SAYING.includes(item.meaning.type);
}

function isSetApart(before: readonly Item[], item: Item, text: string): boolean {
  const isOnlyLed = !before.slice(1).some((each) => isTempo(each) && isLedBack(each, text));
  return SET_APART.test(text.slice(before.at(-1)!.end, item.start)) || (isOnlyLed && isLedBack(item, text));
}

const SET_APART = /[(:>→]|\s[–—-]+\s/;

/** `at 80`, `bei 100`. */
function isLedBack({ start, end }: Item, text: string): boolean {
  return BACK_TO_TEMPO.has(fold(/^\p{L}*/u.exec(text.slice(start, end))![0]));
}
