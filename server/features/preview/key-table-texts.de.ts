import type { keyTableTexts as english } from "./key-table-texts.ts";

export const keyTableTexts: typeof english = {
  daysInWeeks: (weeks) => `Tage in ${weeks} Wochen`,
  daysOverAll: "Tage, über alle Wochen",
  borders:
    "Doppelter Rand: die Tonart eines Stücks, an dem du gerade übst. Einfacher: eine Tonart mit einem Vorzeichen mehr oder weniger.",
  likely: (piece) => `${piece} (wahrscheinlich)`,
  keyOf: (pieces) => `Tonart von ${pieces.join(", ")}`,
  besideKeyOf: (pieces) => `Nachbartonart von ${pieces.join(", ")}`,
};
