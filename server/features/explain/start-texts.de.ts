import type { startTexts as english } from "./start-texts.ts";

export const startTexts: typeof english = {
  nothingReached: "Noch kein Tempo erreicht. Fang da an, wo es sich leicht anfühlt, und schreib es auf: `at 60 clean`.",
  start: (tempo) => `Fang mit ${tempo} an.`,
  startAndSteady: (tempo, steady) => `Fang mit ${tempo} an. Sicher bei ${steady}.`,
  easy: (tempo, reason) =>
    reason === "tired"
      ? `Fang mit ${tempo} an und bleib dabei, wenn du wieder müde wirst.`
      : `Fang mit ${tempo} an und bleib dabei, solange es sich nicht leicht anfühlt.`,
};
