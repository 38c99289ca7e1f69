import type { trendTexts as english } from "./trend-texts.ts";

export const trendTexts: typeof english = {
  tooEarly: "noch zu früh für eine Aussage",
  noClearChange: "keine deutliche Veränderung",
  up: "schneller",
  down: "langsamer",
  notches: (count, numeral) =>
    count === 0.5 ? "eine halbe Metronomstufe" : count === 1 ? "eine Metronomstufe" : `${numeral} Metronomstufen`,
  little: "weniger als eine halbe Metronomstufe",
  inFourWeeks: (way, by) => `in vier Wochen ${by} ${way}`,
  atMost: (way, by) => `in vier Wochen höchstens etwa ${by} ${way}`,
  about: (way, by) => `in vier Wochen etwa ${by} ${way}`,
  aboutBetween: (way, by, least, most) => `in vier Wochen etwa ${by} ${way} (${least} bis ${most})`,
  by: (way, by) => `${by} ${way}`,
  lessThanATenth: "weniger als 0,1",
  sinceReturn: (trend, date) => `${trend}, seit dem Wiederbeginn am ${date}`,
  since: (trend, date) => `${trend} seit ${date}`,
  reachedOf: (reached, tries) => `${reached} von ${tries}`,
  tested: "geprüft",
  slowWork: "langsam geübt",
  withNote: (best, note) => `${best} (${note})`,
};
