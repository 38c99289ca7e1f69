import { distance } from "fastest-levenshtein";
import { fold } from "../syntax/words/fold.ts";
import { slipsOf } from "../syntax/words/nearest-name.ts";
import { printable } from "./printable.ts";

/** None is sought for longer words. */
const LONGEST = 40;
/** So many letters of its beginning are enough for a name, if no other begins so. */
const LEAST_BEGINNING = 1;

/**
 * The name that was probably meant: the nearest, where it is near enough, or the only one that begins like this; upper
 * and lower case are the same. Of two as near, one with the same letters, then one that begins alike.
 */
export function nearest(word: string, among: readonly string[]): string | undefined {
  const sought = fold(word.trim());
  if (sought.length > LONGEST) return undefined;
  const near = among
    .map((name) => ({ name, far: distance(sought, fold(name)) }))
    .filter(({ name, far }) => far <= allowedIn(name) && far < sought.length)
    .map(({ name, far }) => ({ name, slips: slipsOf(sought, fold(name), far) }))
    .reduce<{ readonly name: string; readonly slips: number } | undefined>(
      (best, each) => (best && best.slips <= each.slips ? best : each),
      undefined,
    );
  return near?.name ?? begunAs(sought, among);
}

/** How many letters may be wrong in a name. */
function allowedIn({ length }: string): number {
  return length <= 3 ? 1 : length <= 7 ? 2 : 3;
}

function begunAs(beginning: string, among: readonly string[]): string | undefined {
  if (beginning.length < LEAST_BEGINNING) return undefined;
  const found = among.filter((name) => fold(name).startsWith(beginning));
  return found.length === 1 ? found[0] : undefined;
}

/** ` Did you mean “check”?`, or nothing. */
export function offer(near: string | undefined): string {
  return near === undefined ? "" : ` Did you mean “${printable(near)}”?`;
}

/**
 * What is said of a word that is not one of those that are known.
 *
 * @param said with what comes before it, as `--names germn`
 */
export function notOneOf(said: string, word: string, known: readonly string[]): string {
  return `“${printable(said)}”: choose one of ${known.join(", ")}.${offer(nearest(word, known))}`;
}
