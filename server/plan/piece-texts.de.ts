import type { pieceTexts as english } from "./piece-texts.ts";

export const pieceTexts: typeof english = {
  movement: (number) => `${number}. Satz`,
  ofPiece: (piece, movement) => `${piece} (${movement})`,
  bars: (count) => `${count} ${count === 1 ? "Takt" : "Takte"}`,
};
