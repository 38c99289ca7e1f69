import { listTexts } from "../checks/list-texts.ts";

/** What the current pieces want of keys, as sentences. Pieces, keys and notes come as the journal has them. */
export const keyTexts = {
  /** Several pieces in one key share a sentence. */
  inKey: (pieces: readonly string[], key: string, likely: boolean, when: string) =>
    `${listTexts.and(pieces)} ${pieces.length > 1 ? "are" : "is"} ${likely ? "probably " : ""}in ${key}: ${when}.`,
  besideKey: (pieces: readonly string[], key: string, when: string) =>
    `${key} is next to the key of ${listTexts.and(pieces)}: ${when}.`,
  notPlayed: "not played yet",
  lastPlayed: (when: string) => `last played ${when}`,
  notWorkedAt: "not worked at yet",
  lastWorkedAt: (when: string) => `last worked at ${when}`,
  /** How far a piece goes: where names of notes may be shown, and where not. */
  goesFrom: (piece: string, low: string, high: string) => `${piece} goes from ${low} to ${high}`,
  goesFar: (piece: string) => `${piece} goes far`,
  scaleWentAsFar: (far: string, when: string) => `${far}: its scale last went as far ${when}.`,
  scaleNotPlayed: (far: string, days: number) => `${far}: its scale was not played in the last ${days} days.`,
  fartherThanScale: (piece: string, days: number) =>
    `${piece} goes farther than its scale went in the last ${days} days.`,
  scaleWentFrom: (far: string, low: string, high: string) => `${far}; its scale went from ${low} to ${high}.`,
  goesDown: (piece: string, low: string, scaleLow: string) =>
    `${piece} goes down to ${low}; its scale went down to ${scaleLow}.`,
  goesUp: (piece: string, high: string, scaleHigh: string) =>
    `${piece} goes up to ${high}; its scale went up to ${scaleHigh}.`,
  hardestChange: (key: string, piece: string, change: string, when: string) =>
    `The hardest finger change of ${key}, as far as ${piece} goes, is ${change}: ${when}.`,
  notInTwelveWeeks: "not played in the last twelve weeks",
  /** Two notes: a range, and a finger change. */
  range: (low: string, high: string) => `${low} to ${high}`,
  change: (from: string, to: string) => `${from} to ${to}`,
};
