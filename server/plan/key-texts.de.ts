import { listTexts } from "../checks/list-texts.ts";
import type { keyTexts as english } from "./key-texts.ts";

export const keyTexts: typeof english = {
  inKey: (pieces, key, likely, when) =>
    `${listTexts.and(pieces)} ${pieces.length > 1 ? "stehen" : "steht"} ${likely ? "wahrscheinlich " : ""}in ${key}: ${when}.`,
  besideKey: (pieces, key, when) => `${key} ist eine Nachbartonart von ${listTexts.and(pieces)}: ${when}.`,
  notPlayed: "noch nicht gespielt",
  lastPlayed: (when) => `zuletzt gespielt ${when}`,
  notWorkedAt: "noch nicht geübt",
  lastWorkedAt: (when) => `zuletzt geübt ${when}`,
  goesFrom: (piece, low, high) => `${piece} reicht von ${low} bis ${high}`,
  goesFar: (piece) => `${piece} reicht weit`,
  scaleWentAsFar: (far, when) => `${far}: Die Tonleiter dazu ging zuletzt ${when} so weit.`,
  scaleNotPlayed: (far, days) => `${far}: Die Tonleiter dazu wurde in den letzten ${days} Tagen nicht gespielt.`,
  fartherThanScale: (piece, days) => `${piece} reicht weiter als die Tonleiter dazu in den letzten ${days} Tagen.`,
  scaleWentFrom: (far, low, high) => `${far}; die Tonleiter dazu ging von ${low} bis ${high}.`,
  goesDown: (piece, low, scaleLow) => `${piece} reicht hinab bis ${low}; die Tonleiter dazu ging bis ${scaleLow}.`,
  goesUp: (piece, high, scaleHigh) => `${piece} reicht hinauf bis ${high}; die Tonleiter dazu ging bis ${scaleHigh}.`,
  hardestChange: (key, piece, change, when) =>
    `Der schwerste Griffwechsel von ${key}, so weit ${piece} reicht, ist ${change}: ${when}.`,
  notInTwelveWeeks: "in den letzten zwölf Wochen nicht gespielt",
  range: (low, high) => `${low} bis ${high}`,
  change: (from, to) => `${from} zu ${to}`,
};
