import { patternById } from "../music/patterns/pattern.ts";
import type { Item, Meaning } from "../syntax/words/meaning.ts";
import { FASTEST, ONCE, ONCE_PER_TEMPO, SLOWEST } from "./line/entry-order.ts";

/** What a part says, as bits. A part that may hold a finding of its own, or is rare, is `LOOK`: its line is read in full. */
export const SAYS = bitsOf([
  ...ONCE,
  ...ONCE_PER_TEMPO,
  "subject",
  "tempo",
  "number",
  "place",
  "phase",
  "other",
  "leading outcome",
  "counted",
]);
export const LOOK = -1;

/** What may stand on a line only once. Again for another tempo is right, too, but rare. */
export const ONLY_ONCE = [...ONCE, ...ONCE_PER_TEMPO].reduce((bits, type) => bits | SAYS[type]!, 0);

const PLAIN_TERMS: readonly Meaning["type"][] = [
  "pattern",
  "amount",
  "focus",
  "instrument",
  "done",
  "times",
  ...ONCE_PER_TEMPO,
];
const FREE_TERMS: readonly Meaning["type"][] = ["manner", "with", "sore"];
const SUBJECTS: readonly Meaning["type"][] = ["scale", "chord", "figure", "title", "activity"];

/** The bits of one part. Whether its subject can stand, `isSound` says. */
export function partSays(items: readonly Item[], isSound: (subject: Item) => boolean): number {
  let says = 0;
  for (const [i, item] of items.entries()) {
    const bit = itemSays(item, items[i - 1]?.meaning, i, isSound);
    if (bit === LOOK || (says & bit & ONLY_ONCE) !== 0) return LOOK;
    if ((bit === SAYS["tempo"] || bit === SAYS["number"]) && (says & SAYS["leading outcome"]!) !== 0) return LOOK;
    says |= bit;
  }
  return says === 0 ? LOOK : says;
}

function itemSays(
  { meaning, start, end }: Item,
  before: Meaning | undefined,
  index: number,
  isSound: (subject: Item) => boolean,
): number {
  const { type } = meaning;
  if (type === "tempo") return inRange(meaning.low ?? meaning.bpm, meaning.bpm) ? SAYS["tempo"]! : LOOK;
  if (type === "number") return inRange(meaning.value, meaning.value) ? SAYS["number"]! : LOOK;
  if (type === "outcome") return SAYS["counted"]! | (answersATempo(before) ? 0 : SAYS["leading outcome"]!);
  if (type === "tries") return before?.type === "outcome" ? SAYS["other"]! : LOOK;
  if (type === "variant") return isVariantOf(meaning.id, before) ? SAYS["variant"]! : LOOK;
  if (type === "place") return SAYS["place"]!;
  if (type === "amount" && !meaning.possible) return LOOK;
  if (type === "done") return SAYS["done"]! | SAYS["counted"]!;
  if (PLAIN_TERMS.includes(type)) return SAYS[type]!;
  if (FREE_TERMS.includes(type)) return SAYS["other"]!;
  if (type === "phase") return index === 0 ? SAYS["phase"]! : LOOK;
  if (SUBJECTS.includes(type)) return index === 0 && isSound({ start, end, meaning }) ? SAYS["subject"]! : LOOK;
  return LOOK;
}

function inRange(low: number, high: number): boolean {
  return low >= SLOWEST && high <= FASTEST;
}

function answersATempo(before: Meaning | undefined): boolean {
  return before?.type === "tempo" || before?.type === "number" || before?.type === "outcome";
}

function isVariantOf(id: string, before: Meaning | undefined): boolean {
  return (
    before?.type === "pattern" &&
    ((patternById(before.id)?.variants as readonly string[] | undefined)?.includes(id) ?? false)
  );
}

function bitsOf(names: readonly string[]): Readonly<Record<string, number>> {
  return Object.fromEntries(names.map((name, i) => [name, 1 << i]));
}
