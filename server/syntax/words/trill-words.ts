import { AND, NEIGHBOURS, ON_NOTE } from "../lexicon/note-leads.ts";
import type { MeaningOf, WrittenNote } from "./meaning.ts";
import { joinedLetters, noteIn, rangeAt, withRegister } from "./note-rows.ts";
import type { Found, Words } from "./words.ts";

type Figure = MeaningOf<"figure">;

/** The two notes of each of several trills. */
interface Pairs {
  readonly pairs: readonly (readonly WrittenNote[])[];
  readonly length: number;
}

/**
 * `trill E6 with F6`, `trills h-c und c-d`, `trill high A`; of fingers (`trills 3-4`) or by itself it is a technique.
 *
 * @param named where the words behind its name begin
 */
export function trillAt(
  words: Words,
  i: number,
  named: number,
): Found<Figure | MeaningOf<"several" | "technique">> | undefined {
  const told = named + wayOf(words, named);
  const start = told + (words.is(told, ...ON_NOTE) ? 1 : 0);
  const { pairs, length } = pairsAt(words, start);
  const figures = pairs.map((notes) => ({ type: "figure", figure: "trill", notes }) as const);
  if (figures.length > 1) return { length: start - i + length, meaning: { type: "several", subjects: figures } };
  if (figures[0]) return { length: start - i + length, meaning: figures[0] };
  const main = noteIn(words, start);
  return main ? onNote(words, i, { start, main }) : byItself(words, i, told);
}

/** `from above`, `a due mani`: how many words stand between the name and the notes, and say how it is played. */
function wayOf(words: Words, i: number): number {
  if (words.is(i, ...ON_NOTE) && words.is(i + 1, ...NEIGHBOURS)) return 2;
  const way = words.phrase(i, "manner")?.length ?? 0;
  return way > 0 && (words.is(i + way, ...ON_NOTE) || joinedPairAt(words, i + way)) ? way : 0;
}

/** `trill E6`, `trill E6 F6`. */
function onNote(
  words: Words,
  i: number,
  { start, main }: { readonly start: number; readonly main: NonNullable<ReturnType<typeof noteIn>> },
): Found<Figure> {
  const upper = words.note(start + main.length);
  const notes = upper ? [main.note, upper.note] : [main.note];
  const length = start - i + main.length + (upper?.length ?? 0);
  return { length, meaning: { type: "figure", figure: "trill", notes } };
}

/**
 * Two notes each, one pair behind the other: `e-g f-a`, `c''-d'' und h'-c''`.
 *
 * @param pairAt where two notes are one pair: `G to G` may be how far something goes
 */
export function pairsAt(words: Words, i: number, pairAt: typeof rangeAt = eitherPairAt): Pairs {
  const pairs: (readonly WrittenNote[])[] = [];
  let end = i;
  for (;;) {
    const next = end + (pairs.length > 0 && words.is(end, ...AND) ? 1 : 0);
    const pair = pairAt(words, next);
    if (!pair) return { pairs, length: end - i };
    pairs.push(pair.notes);
    end = next + pair.length;
  }
}

function eitherPairAt(words: Words, i: number): ReturnType<typeof rangeAt> {
  return rangeAt(words, i) ?? joinedPairAt(words, i);
}

/** In one word. */
export function joinedPairAt(words: Words, i: number): ReturnType<typeof rangeAt> {
  const notes = joinedLetters(words, i);
  return notes?.notes.length === 2 ? withRegister(words, i, notes) : undefined;
}

/** With fingers behind it, or nothing that would make it part of something else. */
function byItself(words: Words, i: number, named: number): Found<MeaningOf<"technique">> | undefined {
  const fingers = fingersAt(words, named);
  const ends = named >= words.tokens.length || /^[\d@]/.test(words.typed(named)) || isTerm(words, named);
  if (fingers === 0 && !ends) return undefined;
  return { length: named - i + fingers, meaning: { type: "technique", name: "trill" } };
}

function isTerm(words: Words, i: number): boolean {
  return words.phrase(i, "without click", "manner", "note value", "articulation", "direction", "outcome") !== undefined;
}

const FINGERS = /^[0-5]-[0-5]$/;

/** How many words tell which fingers play: `1-2 2-3`, `2-3 et 3-4`. */
export function fingersAt(words: Words, i: number): number {
  let end = i;
  for (;;) {
    const next = end + (end > i && words.is(end, ...AND) ? 1 : 0);
    if (!FINGERS.test(words.typed(next))) return end - i;
    end = next + 1;
  }
}
