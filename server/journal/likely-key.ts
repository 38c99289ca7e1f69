import type { Note } from "../music/notes/note.ts";
import { ENGLISH_NAMES } from "../music/notes/note-names.ts";
import type { CompassOf } from "../music/scales/ambitus.ts";
import { type LikelyScales, likelyScales } from "../music/scales/likely-scales.ts";
import type { ScaleMeaning, WrittenNote } from "../syntax/words/meaning.ts";
import type { PieceFacts } from "./declarations/declared.ts";

/**
 * What a piece in no certain key is likely in: of one declared by its last note and signature in place of a key.
 * `names` are those of the reasons.
 */
export function likelyScalesOf(
  { key, lastNote, signature, range }: PieceFacts,
  names = ENGLISH_NAMES,
): LikelyScales | undefined {
  if (key || !lastNote || signature === undefined) return undefined;
  return likelyScales(lastNote, signature, range && compassOf(range), names);
}

/** The key of a piece: as declared, or else the likeliest. */
export function keyOfPiece(piece: PieceFacts): { readonly key: ScaleMeaning; readonly likely: boolean } | undefined {
  if (piece.key) return { key: piece.key, likely: false };
  const likeliest = likelyScalesOf(piece)?.readings[0];
  if (!likeliest) return undefined;
  const { tonic, kind } = likeliest;
  return { key: { type: "scale", tonic, kind: kind.id, declared: false }, likely: true };
}

/** Undefined where one of the notes has no octave. */
function compassOf({ from, to }: { readonly from: WrittenNote; readonly to: WrittenNote }): CompassOf | undefined {
  if (from.octave === undefined || to.octave === undefined) return undefined;
  return { from: from as Note, to: to as Note };
}
