/** What pieces and their movements are called. */
export const pieceTexts = {
  movement: (number: string) => `movement ${number}`,
  /** A piece with its movement in brackets. */
  ofPiece: (piece: string, movement: string) => `${piece} (${movement})`,
  bars: (count: number) => `${count} ${count === 1 ? "bar" : "bars"}`,
};
