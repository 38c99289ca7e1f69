import type { listTexts as english } from "./list-texts.ts";

export const listTexts: typeof english = {
  and: (words) => joined(words, "und"),
  or: (words) => joined(words, "oder"),
  more: (named, count) => `${named} und ${count} ${count === 1 ? "weiterer" : "weitere"}`,
};

function joined(words: readonly string[], last: string): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;
}
