import type { factsTexts as english } from "./facts-texts.ts";

export const factsTexts: typeof english = {
  backSince: (date, days, testedWeeks, wanted) =>
    `Wieder dabei seit dem ${date}, nach ${days} Tagen; ${testedWeeks} von ${wanted} geprüften Wochen.`,
  settled: (tempo, monday, tries) => `Gefestigt bei ${tempo} seit der Woche vom ${monday} (${tries} Versuche).`,
  firstShare: (tempo, reached, tries, days) =>
    `${tempo}: in ${reached} von ${tries} Versuchen erreicht, an ${days} ${days === 1 ? "Tag" : "Tagen"}`,
  furtherShare: (tempo, reached, tries, days) =>
    `${tempo}: in ${reached} von ${tries}, an ${days} ${days === 1 ? "Tag" : "Tagen"}`,
  comparison: (one, another, lower, weeks, percent) =>
    `${one} lag in ${lower} von ${weeks} Wochen unter ${another}, um etwa ${percent} %.`,
};
