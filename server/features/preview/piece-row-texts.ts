/** The pieces of the preview. */
export const pieceRowTexts = {
  notYet: "not yet",
  byPlace: (piece: string) => `${piece}, by place`,
  headings: ["place", "latest", "fastest", "worked"],
  movement: (piece: string, number: string, name?: string) => `${piece}, movement ${number}${name ? `: ${name}` : ""}`,
  wholePiece: "whole piece",
};
