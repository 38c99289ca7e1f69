import type { lineTexts as english } from "./line-texts.ts";

export const lineTexts: typeof english = {
  set: "aufgegeben",
  said: "gesagt",
  ask: "fragen",
  workedLast: "zuletzt geübt",
  goToLine: (what) => `${what}: zur Zeile gehen`,
  ofDay: (what, day) => `${what}, ${day}`,
  goToLastLine: "Zur letzten Zeile gehen",
  goToLastLineOf: (name) => `Zur letzten Zeile gehen: ${name}`,
  allRows: (count, head) => `Alle ${count} ${head.split(" ")[0]}n`,
};
