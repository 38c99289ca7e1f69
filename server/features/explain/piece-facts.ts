import { rateAsWritten } from "../../history/exercise-row.ts";
import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import type { DeclaredPiece } from "../../journal/conventions.ts";
import { scaleText } from "../../journal/subject-text.ts";
import { type NoteNames, noteText } from "../../music/notes/note-names.ts";
import { signatureTexts } from "../../music/scales/signature-texts.ts";
import { daysAgo, daysAhead } from "../../plan/day-words.ts";
import { escapedExtract } from "./markdown.ts";
import { pieceTexts } from "./piece-texts.ts";

/** What is declared of a piece or a movement, in one line of Markdown. */
export function pieceFacts(piece: DeclaredPiece, names: NoteNames, today?: DayNumber): string {
  const { key, lastNote, signature, bars, goal, due } = piece;
  const facts = [
    ...(key ? [escapedExtract(scaleText(key, names))] : []),
    ...(lastNote ? [pieceTexts.lastNote(noteText(lastNote, names))] : []),
    ...(signature === undefined ? [] : [signatureTexts.accidentals(signature)]),
    ...(bars === undefined ? [] : [pieceTexts.bars(bars)]),
    ...(goal ? [pieceTexts.goal(rateAsWritten(goal.bpm, { unit: "beats" }, { beat: goal.beat }))] : []),
    ...(due === undefined ? [] : [dueWords(due, today)]),
  ];
  const name = piece.type === "movement" ? pieceTexts.movement(piece.title, piece.movement, piece.name) : piece.title;
  return [`**${escapedExtract(name)}**`, ...facts].join(", ");
}

function dueWords(due: DayNumber, today: DayNumber | undefined): string {
  if (today === undefined) return pieceTexts.due(isoDate(due));
  return pieceTexts.dueIn(isoDate(due), due < today ? daysAgo(today - due) : daysAhead(due - today));
}
