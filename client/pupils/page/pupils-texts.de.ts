import type { pupilsTexts as english } from "./pupils-texts.ts";

export const pupilsTexts: typeof english = {
  heading: "Schülerinnen und Schüler",
  none: "Hier liegt kein Tagebuch einer Schülerin oder eines Schülers mehr.",
  last: "zuletzt",
  nothingPlayed: "noch nichts gespielt",
  sinceLesson: "seit dem Unterricht am",
  body: "Körper",
  keys: "Mit den Pfeiltasten geht es von Zeile zu Zeile.",
};
