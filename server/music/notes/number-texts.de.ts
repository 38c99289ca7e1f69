import type { numberTexts as english } from "./number-texts.ts";

export const numberTexts: typeof english = {
  decimal: (digits) => String(digits).replace(".", ","),
};
