import { closest, distance } from "fastest-levenshtein";

/** The name that was probably meant, where one is near enough. None is sought for words over 40 characters. */
export function nearest(word: string, among: readonly string[]): string | undefined {
  if (word.length > 40 || among.length === 0) return undefined;
  const found = closest(word.toLowerCase(), among as string[]);
  const allowed = found.length <= 3 ? 1 : found.length <= 7 ? 2 : 3;
  return distance(word.toLowerCase(), found) <= allowed ? found : undefined;
}

/** ` Did you mean “check”?`, or nothing. */
export function offer(near: string | undefined): string {
  return near === undefined ? "" : ` Did you mean “${near}”?`;
}
