import type { Item } from "./meaning.ts";
import { FASTEST, markAt, SLOWEST } from "./tempo-words.ts";
import type { Words } from "./words.ts";

/** One word of a row: numbers joined without spaces, perhaps with their unit. */
const IN_ROW = /^[1-9]\d{1,2}(?:bpm)?(?:(?:[/–—→-]|->)[1-9]\d{1,2}(?:bpm)?)*(?:bpm)?[.!]*$/i;
const JOINTS = ["/", "-", "–", "—", "→", "->", "to"];

/**
 * Tempos one after another, joined by signs: `60/72/80`, `36 — 40 — 44`, `♩=80 / 88 / 96`. Three or more, or two with a
 * slash between: of two that are joined otherwise the top is meant (`60-72`). The first is a tempo where something
 * marks it; the others go on with it, as numbers do.
 */
export function tempoRowAt(words: Words, i: number): { readonly length: number; readonly items: Item[] } | undefined {
  const mark = markAt(words, i);
  const first = i + mark.length;
  const numbers = mark.isMeasures ? undefined : numbersAt(words, first, mark.isGlued ? 1 : 0);
  if (!numbers) return undefined;
  const hasUnit = words.is(first + numbers.length, "bpm") ? 1 : 0;
  const isMarked = mark.says !== "nothing" || hasUnit > 0 || numbers.hasUnit;
  const length = mark.length + numbers.length + hasUnit;
  const items = numbers.items.map(({ start, end, value }, k): Item => {
    if (k > 0 || !isMarked) return { start, end, meaning: { type: "number", value } };
    const beat = mark.beat ? { beat: mark.beat } : {};
    return { start: words.tokens[i]!.start, end, meaning: { type: "tempo", bpm: value, ...beat } };
  });
  return { length, items };
}

interface RowNumber {
  readonly start: number;
  readonly end: number;
  readonly value: number;
}

/** @param skip columns of the first word before its number */
function numbersAt(
  words: Words,
  i: number,
  skip: number,
): { readonly length: number; readonly items: readonly RowNumber[]; readonly hasUnit: boolean } | undefined {
  if (!IN_ROW.test(words.typed(i).slice(skip))) return undefined;
  const items: RowNumber[] = [];
  let end = i;
  let hasSlash = false;
  for (let next = i; IN_ROW.test(words.typed(next).slice(next === i ? skip : 0)); next += 2) {
    const { start, text } = words.tokens[next]!;
    for (const { 0: digits, index } of text.matchAll(/\d+/g))
      items.push({ start: start + index, end: start + index + digits.length, value: Number(digits) });
    hasSlash ||= text.includes("/") || (next > i && words.typed(next - 1) === "/");
    end = next + 1;
    if (!words.is(end, ...JOINTS)) break;
  }
  if (items.length < 2 || (items.length === 2 && !hasSlash)) return undefined;
  if (items.some(({ value }) => value < SLOWEST || value > FASTEST)) return undefined;
  return { length: end - i, items, hasUnit: /bpm/i.test(words.text(i, end)) };
}
