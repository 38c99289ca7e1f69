import type { historyTexts as english } from "./history-texts.ts";

export const historyTexts: typeof english = {
  startAndStay: (tempo, why) => `Fang mit ${tempo} an und bleib heute dabei: ${why}.`,
  backAfterPause: "Du hast eine Weile nicht gespielt",
  hurtOn: (date) => `Am ${date} hat etwas wehgetan`,
  days: (days, minutes, weeks) => {
    const counted = `${days} ${days === 1 ? "Tag" : "Tage"}`;
    if (minutes === undefined) return `${counted}.`;
    return `${counted}, ${minutes}${weeks === undefined ? "" : ` in ${weeks} Wochen`}.`;
  },
  columns: { week: "Woche vom", best: "Bestes", usual: "Üblich", reached: "Erreicht", minutes: "Minuten" },
  slope: (middle, least, most) => `Steigung ${middle} pro Woche (${least} bis ${most}).`,
  notPractisedYet: "Noch nicht geübt.",
  ahead: "So vor heute noch nicht geübt; Tage in der Zukunft zählen noch nicht.",
  anotherWay: "Auf andere Art",
  notThisWay: (another, played) => `So noch nicht gespielt. ${another}, ${played}`,
  lastPlayed: (date) => `Zuletzt gespielt: ${date}.`.replace(/\.\.$/, "."),
  lastTime: (date, played) => `${date}: ${played}`,
};
