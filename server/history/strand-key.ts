import { isWholePiecePlace, WHOLE_PIECE } from "../syntax/words/whole-piece.ts";
import type { Manner } from "./record.ts";

/** What makes attempts ones at the same exercise: instrument, subject and pattern. */
export function exerciseKeyOf({
  unit,
  instrument,
  subjectKey,
  pattern,
}: Pick<Manner, "unit" | "instrument" | "subjectKey" | "pattern">): string {
  return `${unit}\n${instrument ?? ""}\n${subjectKey}\n${pattern ?? ""}`;
}

/**
 * What makes attempts comparable: the exercise, and its reach, tonguing and evenness; for a title its movement and
 * place. Words for the whole piece are one place, whatever their language.
 */
export function strandKeyOf(manner: Omit<Manner, "exerciseKey" | "strandKey" | "subject">): string {
  return `${exerciseKeyOf(manner)}\n${placeOrWay(manner)}`;
}

function placeOrWay({
  unit,
  reach,
  tonguing,
  evenness,
  movement,
  where,
}: Pick<Manner, "unit" | "reach" | "tonguing" | "evenness" | "movement" | "where">): string {
  if (unit === "notes") return `${reach ?? ""}\n${tonguing}\n${evenness}`;
  return `${folded(movement ?? "")}\n${placeKey(where ?? "")}`;
}

/** What makes two places of a piece, or two parts of it, the same. */
export function placeKey(where: string): string {
  return isWholePiecePlace(where) ? WHOLE_PIECE : folded(where);
}

/** As typed, apart from case and spacing: `Bars  17-32` is `bars 17-32`. */
function folded(text: string): string {
  return text.normalize("NFC").toLowerCase().replace(/\s+/g, " ").trim();
}
