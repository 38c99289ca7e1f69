/** How things in a row are said. */
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
