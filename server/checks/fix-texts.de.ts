import type { fixTexts as english } from "./fix-texts.ts";

export const fixTexts: typeof english = {
  changeTo: (text) => `In ${text} ändern`,
  write: (words) => `„${words}“ schreiben`,
  takeOut: (words) => `„${words}“ streichen`,
  quoted: (words) => `„${words}“`,
};
