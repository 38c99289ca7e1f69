import type { aimTexts as english } from "./aim-texts.ts";

export const aimTexts: typeof english = {
  of: (subject, sentence) => `${subject}: ${sentence}`,
  reached: (when) => `Erreicht ${when}.`,
  lastDone: (when) => `Zuletzt geschafft ${when}.`,
  notDone: "Noch nicht geschafft.",
  notPlayedInThisWay: "So noch nicht gespielt.",
  notPlayed: "Noch nicht gespielt.",
  noTempo: "Noch kein Tempo erreicht.",
  best: (best, week) => `Bisher am schnellsten: ${best}, in ${week}.`,
  notWithAll: (best) => `${best} erreicht, aber noch nicht mit allem, was das Ziel verlangt.`,
  notInTries: (best, got, tries) => `${best} erreicht, aber noch nicht in ${got} von ${tries} Versuchen.`,
  notInARow: (best, asked, most) =>
    `${best} erreicht, aber noch nicht ${asked}-mal in Folge${most > 1 ? `; höchstens ${most}-mal` : ""}.`,
  ifItGoesOn: (testedWeeks, range) =>
    `Wenn es weitergeht wie in den letzten ${testedWeeks} geprüften Wochen, in ${range}; sicher ist das nicht.`,
  orMore: (weeks) => `${weeks} ${weeks === 1 ? "Woche" : "Wochen"} oder mehr`,
  about: (weeks) => `etwa ${weeks} ${weeks === 1 ? "Woche" : "Wochen"}`,
  fromTo: (earliest, latest) => `${earliest} bis ${latest} ${latest === 1 ? "Woche" : "Wochen"}`,
  overAYear: (testedWeeks) => `Wenn es weitergeht wie in den letzten ${testedWeeks} geprüften Wochen, über ein Jahr.`,
  tooEarly: (testedWeeks, wanted) => `Für eine Vorhersage noch zu früh: ${testedWeeks} von ${wanted} geprüften Wochen.`,
  noClearChange: (testedWeeks) => `Keine Vorhersage: keine deutliche Veränderung in ${testedWeeks} geprüften Wochen.`,
  falling: (testedWeeks) => `Keine Vorhersage: langsamer in den letzten ${testedWeeks} geprüften Wochen.`,
  hurt: (when) => `Vorerst keine Vorhersage: ${when} hat etwas wehgetan.`,
  afterBreak: "Keine Vorhersage in den ersten Tagen nach einer Unterbrechung.",
  notTestedSinceThen: "Keine Vorhersage: seitdem nicht geprüft.",
  notTestedSince: (week) => `Keine Vorhersage: nicht geprüft seit ${week}.`,
};
