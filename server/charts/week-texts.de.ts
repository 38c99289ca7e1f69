import type { weekTexts as english } from "./week-texts.ts";

export const weekTexts: typeof english = {
  others: "andere",
  notDivided: "nicht aufgeteilt",
  minutes: (minutes, practised, weeks, longest, most) =>
    `${minutes} Minuten in ${practised} von ${weeks} Wochen, die meisten in der Woche vom ${longest}: ${most}.`,
  nothing:
    "In diesen Wochen stehen keine Minuten. Schreib sie hinter ein Datum, etwa `2026-03-02 Mon, 20 min`, oder in die Zeile einer Übung.",
};
