import type { sectionTexts as english } from "./section-texts.ts";

export const sectionTexts: typeof english = {
  noDate: "ohne Datum",
  by: (date) => `bis ${date}`,
  since: (date) => `seit ${date}`,
  lastFourWeeks: "in den letzten vier Wochen",
  beforeThat: (date) => `Davor, ab ${date}`,
  minutesByPhase: "Minuten in der Woche, nach Phasen",
  weekOf: "Woche vom",
  all: "alle",
  noFingerChanges: (why) => `Schwerste Griffwechsel: ${why}.`,
  fingerChange: (from, to) => `${from} zu ${to}`,
  hiddenNotes: "Töne: verborgen, bis du sie ausschreiben lässt.",
  noDrawer: "Dieser Server kann keine Noten zeichnen.",
};
