import type { tempoTexts as english } from "./tempo-texts.ts";

export const tempoTexts: typeof english = {
  noTempo: "kein Tempo erreicht",
  inWeek: (tempo, monday) => `${tempo} (Woche vom ${monday})`,
  best: (best) => `am schnellsten erreicht: ${best}`,
  bests: (first, last) => `Bestes jeder Woche von ${first} bis ${last}`,
  highest: (bests, highest) => `${bests}, am höchsten ${highest}`,
  slowWeeks: (weeks) => `${weeks} ${weeks === 1 ? "Woche" : "Wochen"} mit langsamem Üben`,
  weeksWithout: (weeks) => `${weeks} ${weeks === 1 ? "Woche" : "Wochen"} ohne erreichtes Tempo`,
  attempts: (count, reached) =>
    `${count} ${count === 1 ? "Versuch" : "Versuche"}, ${reached < count ? `${reached === 0 ? "keiner" : reached} erreicht` : count === 1 ? "erreicht" : "alle erreicht"}`,
  withoutDot: (attempts, left) => `${attempts}, ${left} ohne Punkt, weil ein höherer dicht daneben liegt`,
  trend: (trend) => `Trend: ${trend}`,
  aim: (tempo) => `Ziel: ${tempo}`,
  aimBy: (tempo, date) => `Ziel: ${tempo} bis ${date}`,
  aimMark: "Ziel",
  nothing: (weeks) =>
    `${weeks === 1 ? "Diese Woche" : `In diesen ${weeks} Wochen`} gibt es kein Tempo. Schreib eines und wie es ging in die Zeile der Übung, etwa \`at 60 clean\`, dann beginnt ihr Diagramm.`,
};
