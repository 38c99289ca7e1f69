import { isWholePiecePlace } from "../syntax/words/whole-piece.ts";

/** A stretch of bars, both ends included. */
export interface Bars {
  readonly from: number;
  readonly to: number;
}

/** Whether a place in a piece, as a record has it, is all of it: none is named, or words such as `from the top`. */
export function isWholePiece(where: string | null): boolean {
  return where === null || isWholePiecePlace(where);
}

/**
 * The bars that a place in a piece names, as it is kept in a record: `bars 5-8, 17-20`, `upbeat to 17`. No place, and
 * words for all of it, are the whole piece: `bars` of them where that is known. Letters, pages and lines name no bars.
 */
export function barsOfPlace(where: string | null, bars: number | undefined): readonly Bars[] {
  if (where === null || isWholePiece(where)) return bars === undefined ? [] : [{ from: 1, to: bars }];
  const found: Bars[] = [];
  let word = "";
  for (const part of where.split(", ")) {
    const [, named = "", from, to] = /^([a-z ]*?) ?(\d+)[a-z]?(?:[-–](\d+)[a-z]?)?$/i.exec(part) ?? [];
    word = named || (from === undefined ? "" : word);
    const stretch = { from: Number(from), to: Number(to ?? from) };
    if (word === "bars" && stretch.from <= stretch.to) found.push(stretch);
    // The upbeat stands in the bar before.
    if (word === "upbeat to") found.push({ from: Math.max(1, stretch.from - 1), to: stretch.from });
  }
  return found;
}
