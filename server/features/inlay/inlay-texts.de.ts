import type { inlayTexts as english } from "./inlay-texts.ts";

export const inlayTexts: typeof english = {
  last: (tempo) => `zuletzt ${tempo}`,
  reachedOn: (date) => `Erreicht am ${date}.`,
  notesAMinute: (notes) => `= ${notes} Töne in der Minute`,
  range: (low, high) => `${low} bis ${high}`,
};
