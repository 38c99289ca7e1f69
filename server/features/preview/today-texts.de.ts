import type { todayTexts as english } from "./today-texts.ts";

export const todayTexts: typeof english = {
  rest: "Heute ist ein Ruhetag.",
  firstLine: "Schreib eine Zeile ins Tagebuch, etwa `D minor, slurred, 8ths at 60 clean`, und sie erscheint hier.",
  firstEvening: "Hier sind deine ersten Zeilen. Nach einigen Wochen können sie zeigen, wohin ein Tempo geht.",
  startAt: (tempo) => `Beginn mit ${tempo}`,
  nothingToGoBy: "Nenn ein Stück, ein Ziel oder ein Instrument, dann hat der Plan einen Anhaltspunkt.",
  offerShortDay: "Plan für einen kurzen Tag zeigen",
  offerAnother: "Plan für eine weitere Einheit zeigen",
  minutes: (minutes) => `${minutes} min`,
  weekWithoutMinutes: "Diese Woche: noch keine Minuten.",
  weekOfDays: (days) => `Diese Woche: ${days} ${days === 1 ? "Tag" : "Tage"}, ohne Minutenangabe.`,
  week: (minutes) => `Diese Woche: ${minutes} ${minutes === 1 ? "Minute" : "Minuten"}.`,
};
