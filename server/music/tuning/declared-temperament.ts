import { centsOf, type Temperament } from "./temperament.ts";
import { temperamentTexts } from "./temperament-texts.ts";

export type DeclaredTemperament =
  | { readonly ok: true; readonly temperament: Temperament }
  /** `at` is the word of the declaration's text that is to blame, from 0. */
  | { readonly ok: false; readonly reason: string; readonly at: number };

const KEYS = 12;
const OCTAVE = 1200;

function refusal(reason: string, at: number): Extract<DeclaredTemperament, { ok: false }> {
  return { ok: false, reason, at };
}

function quoted(word: string): string {
  return `\`${word.slice(0, 40)}\``;
}

/** Cents of `701.955`, `3/2`, or `2` where the list began with a ratio; undefined for other words. */
function centsIn(word: string, ratios: boolean): number | undefined {
  const [, over, under] = /^([1-9]\d{0,8})\/([1-9]\d{0,8})$/.exec(word) ?? [];
  if (over !== undefined) return centsOf(Number(over) / Number(under));
  if (ratios) return /^[12]$/.test(word) ? centsOf(Number(word)) : undefined;
  return /^\d{1,4}(?:\.\d{1,6})?$/.test(word) ? Number(word) : undefined;
}

/**
 * A temperament that a journal declares: twelve keys from C to B, each in cents above C (`0 76.0 193.2 …`) or as a
 * ratio with it (`1 16/15 9/8 …`). Spaces or commas part the words; `cents` or `ratios` may stand first, and a closing
 * `1200` or `2/1` adds nothing.
 */
export function declaredTemperament(name: string, text: string): DeclaredTemperament {
  const words = text.split(/[\s,]+/u).filter((word) => word !== "");
  const first = /^(?:cents|ratios)$/i.test(words[0] ?? "") ? 1 : 0;
  const ratios = /^1(?:\/1)?$/.test(words[first] ?? "");
  const cents: number[] = [];
  for (const [at, word] of words.entries()) {
    if (at < first) continue;
    const value = centsIn(word, ratios);
    if (value === undefined)
      return refusal((ratios ? temperamentTexts.noRatio : temperamentTexts.noSize)(quoted(word)), at);
    if (cents.length === 0 && value !== 0) return refusal(temperamentTexts.firstIsC(quoted(word)), at);
    const closes = Math.abs(value - OCTAVE) < 1e-6 && at === words.length - 1 && cents.length === KEYS;
    if (closes) continue;
    if (cents.length === KEYS) return refusal(temperamentTexts.oneTooMany(quoted(word)), at);
    if (cents.length > 0 && value <= cents.at(-1)!)
      return refusal(temperamentTexts.notHigher(quoted(word), quoted(words[at - 1]!)), at);
    if (value >= OCTAVE) return refusal(temperamentTexts.reachesOctave(quoted(word)), at);
    cents.push(value);
  }
  if (cents.length < KEYS) return refusal(temperamentTexts.tooFew(cents.length), words.length);
  return { ok: true, temperament: { id: "declared", name, cents } };
}
