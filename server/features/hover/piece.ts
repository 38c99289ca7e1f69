import type { DayNumber } from "../../journal/calendar.ts";
import type { DeclaredPiece } from "../../journal/conventions.ts";
import type { NoteNames } from "../../music/notes/note-names.ts";
import { pieceFacts } from "../explain/piece-facts.ts";
import { likelyScaleParagraphs } from "./likely-scale.ts";

/** What is declared of a piece or a movement, and what scale it is likely in where no key is declared. */
export function pieceParagraphs(piece: DeclaredPiece, names: NoteNames, today: DayNumber): readonly string[] {
  return [pieceFacts(piece, names, today), ...likelyScaleParagraphs(piece, names)];
}
