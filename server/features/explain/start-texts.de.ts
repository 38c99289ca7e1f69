import { numberTexts } from "../../music/notes/number-texts.de.ts";
import type { startTexts as english } from "./start-texts.ts";

export const startTexts: typeof english = {
  nothingReached: "Noch kein Tempo erreicht. Fang da an, wo es sich leicht anfühlt, und schreib es auf: `at 60 clean`.",
  start: (tempo) => `Fang mit ${numberTexts.decimal(tempo)} an.`,
  startAndSteady: (tempo, steady) =>
    `Fang mit ${numberTexts.decimal(tempo)} an. Sicher bei ${numberTexts.decimal(steady)}.`,
  easy: (tempo, reason) =>
    reason === "tired"
      ? `Fang mit ${numberTexts.decimal(tempo)} an und bleib dabei, wenn du wieder müde wirst.`
      : `Fang mit ${numberTexts.decimal(tempo)} an und bleib dabei, solange es sich nicht leicht anfühlt.`,
};
