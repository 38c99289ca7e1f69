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
 * place.
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
  return `${folded(movement ?? "")}\n${folded(where ?? "")}`;
}

/** As typed, apart from case and spacing: `Bars  17-32` is `bars 17-32`. */
function folded(text: string): string {
  return text.normalize("NFC").toLowerCase().replace(/\s+/g, " ").trim();
}
