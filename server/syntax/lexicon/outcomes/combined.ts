/** Each of some beginnings before each of some words: `almost clean`, `2 slips`. All lists as `"a | b | c"`. */
export function combined(beginnings: string, words: string): string {
  return beginnings
    .split(" | ")
    .flatMap((beginning) => words.split(" | ").map((word) => `${beginning} ${word}`))
    .join(" | ");
}
