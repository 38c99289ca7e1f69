import type { pieceRowTexts as english } from "./piece-row-texts.ts";

export const pieceRowTexts: typeof english = {
  notYet: "noch nicht",
  byPlace: (piece) => `${piece}, nach Stellen`,
  headings: ["Stelle", "zuletzt", "am schnellsten", "geübt"],
  movement: (piece, number, name) => `${piece}, ${number}. Satz${name ? `: ${name}` : ""}`,
  wholePiece: "ganzes Stück",
};
