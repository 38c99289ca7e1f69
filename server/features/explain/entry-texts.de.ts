import type { entryTexts as english } from "./entry-texts.ts";

export const entryTexts: typeof english = {
  noEntry:
    "In dieser Zeile ist kein Eintrag. Setz den Cursor auf einen unter einem Tag, etwa D minor, thirds, 8ths at 60 clean, und versuch es noch einmal.",
};
