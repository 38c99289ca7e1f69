import type { numberTexts as english } from "./number-texts.ts";

export const numberTexts: typeof english = {
  ordinal: (place) => `${place}.`,
  decimal: (digits) => String(digits).replace(".", ","),
};
