import type { pieceStripTexts as english } from "./piece-strip-texts.ts";

export const pieceStripTexts: typeof english = {
  tooManyBars: (bars, most) =>
    `Takt ${bars} liegt weiter, als der Streifen reicht: Er endet bei Takt ${most}. Ist eine Ziffer zu viel?`,
  barsUnknown:
    "Wie viele Takte es sind, ist nicht bekannt. Schreib ihre Zahl dazu, wo das Stück festgelegt ist, etwa `96 bars`.",
  bars: (count) => `${count} ${count === 1 ? "Takt" : "Takte"}.`,
  barsWanted: (count, tempo) => `${count} ${count === 1 ? "Takt" : "Takte"}, angestrebt ${tempo}.`,
  noneWorked: "Noch keiner geübt.",
  bar: (bar) => `Takt ${bar}`,
  fromTo: (from, to) => `Takte ${from}–${to}`,
  recencies: ["in den letzten 7 Tagen", "in den letzten 4 Wochen", "in den letzten 12 Wochen", "vor längerer Zeit"],
  worked: (where, tempo, recency) => `${where}: ${tempo}, ${recency} geübt`,
  workedWithoutTempo: (where, recency) => `${where}: kein Tempo erreicht, ${recency} geübt`,
  andMore: (stretches, more) => `${stretches}; und ${more} weitere`,
};
