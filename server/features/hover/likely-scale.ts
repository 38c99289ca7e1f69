import type { DeclaredPiece } from "../../journal/conventions.ts";
import { likelyScalesOf } from "../../journal/likely-key.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import type { LikelyScale } from "../../music/scales/likely-scales.ts";
import { hoverTexts } from "./hover-texts.ts";

/**
 * What scale a piece is likely in that is declared by its last note and signature, what else it may be in, and how it
 * lies about its last note, as paragraphs of Markdown; none for a piece with a key.
 */
export function likelyScaleParagraphs(piece: DeclaredPiece, names: NoteNames): readonly string[] {
  const likely = likelyScalesOf(piece, names);
  if (!likely) return [];
  const [first, ...others] = likely.readings;
  return [
    hoverTexts.likely(nameOf(first, names), first.reason),
    ...(others.length > 0 ? [[hoverTexts.mayAlsoBe, ...others.map((each) => row(each, names))].join("\n")] : []),
    ...(likely.ambitus ? [likely.ambitus.sentence] : []),
  ];
}

function row(reading: LikelyScale, names: NoteNames): string {
  return `- ${nameOf(reading, names)}. ${reading.reason}`;
}

function nameOf({ tonic, kind }: LikelyScale, names: NoteNames): string {
  return names.key(tonic, kind.names[0]!);
}
