import { listTexts } from "./list-texts.ts";

/** `A`, `A and B`, `A, B and C`. */
export function listed(words: readonly string[], last: "and" | "or" = "and"): string {
  return listTexts[last](words);
}
