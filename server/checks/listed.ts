/** `A`, `A and B`, `A, B and C`. */
export function listed(words: readonly string[], last: "and" | "or" = "and"): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;
}
