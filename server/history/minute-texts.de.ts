import type { minuteTexts as english } from "./minute-texts.ts";

export const minuteTexts: typeof english = {
  about: (minutes) => `etwa ${minutes}`,
  count: (minutes, isOne) => `${minutes} ${isOne ? "Minute" : "Minuten"}`,
};
