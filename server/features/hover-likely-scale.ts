import type { DeclaredPiece } from "../journal/conventions.ts";
import { likelyScalesOf } from "../journal/likely-key.ts";
import type { LikelyScale } from "../music/likely-scales.ts";
import { printName } from "../music/note.ts";

/**
 * What scale a piece is likely in that is declared by its last note and signature, what else it may be in, and how it lies
 * about its last note, as paragraphs of Markdown; none for a piece with a key.
 */
export function likelyScaleParagraphs(piece: DeclaredPiece): readonly string[] {
  const likely = likelyScalesOf(piece);
  if (!likely) return [];
  const [first, ...others] = likely.readings;
  return [
    `Likely **${nameOf(first)}**. ${first.reason}`,
    ...(others.length > 0 ? [["It may also be:", ...others.map(row)].join("\n")] : []),
    ...(likely.ambitus ? [likely.ambitus.sentence] : []),
  ];
}

function row(reading: LikelyScale): string {
  return `- ${nameOf(reading)}. ${reading.reason}`;
}

function nameOf({ tonic, kind }: LikelyScale): string {
  return `${printName(tonic)} ${kind.names[0]}`;
}
