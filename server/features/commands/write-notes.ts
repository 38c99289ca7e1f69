import type { DayNumber } from "../../journal/calendar.ts";
import { exerciseToPlay, isPlayable } from "../../journal/entry-exercise.ts";
import type { Journal } from "../../journal/journal.ts";
import { fallsOtherwise } from "../../music/patterns/notes-to-play.ts";
import type { Position } from "../../syntax/document/document.ts";
import { cutLine } from "../../syntax/line/cut.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import { LONGEST_LINE } from "../../syntax/line/line-reader.ts";
import { entryUnderCursor } from "../explain/line-under-cursor.ts";
import { noteRow } from "../explain/note-row.ts";
import { refusal } from "../explain/refusal.ts";
import { separatorsOf } from "../explain/separators.ts";
import { type CommandAnswer, UNREADABLE_DECLARATION } from "./command-answer.ts";
import { commandTexts } from "./command-texts.ts";
import { isPast } from "./into-today.ts";

/**
 * The notes of the exercise at a position, written out behind its subject as a claim: over the span, in the pattern and
 * the direction stated; without a direction upward, or up and down where a scale falls otherwise than it rises; of
 * leaps the order of the entry's day. They take the place of notes or letters of steps that stand behind a colon
 * already. The cursor goes behind them. On a day that is over nothing is written, and a sentence has the notes.
 */
export function writeNotes(
  journal: Journal,
  uri: string,
  position: Position,
  { today }: { readonly today: DayNumber },
): CommandAnswer {
  const found = entryUnderCursor(journal, uri, position);
  if (!found.ok) return found;
  const { entry, text, model } = found;
  if (!isPlayable(entry.subject) || entry.source.same) return NOT_PLAYABLE;
  const conventions = journal.conventions(uri);
  const conditions = entry.attempts[0]?.conditions;
  const input = exerciseToPlay(entry, conditions, conventions, model.day?.date);
  if (!input) return UNREADABLE_DECLARATION;
  const direction = conditions?.direction ?? (fallsOtherwise(input.subject) ? "up and down" : "up");
  const subject = entry.source.subject!;
  const row = noteRow({ ...input, direction }, text.slice(subject.start, subject.end), conventions.names);
  if (row === "") return NOTHING_TO_PLAY;
  if (isPast(found, today)) return refusal(commandTexts.notesOf(shortened(row)));
  const { start, end, before, after } = placeOfClaim(text, entry.source);
  const newText = before + row + after;
  if (text.length - (end - start) + newText.length > LONGEST_LINE) return TOO_LONG;
  const { line } = position;
  const same = text.slice(start, end) === newText;
  return {
    ok: true,
    uri,
    edits: same ? [] : [{ range: { start: { line, character: start }, end: { line, character: end } }, newText }],
    cursor: { line, character: start + before.length + row.length },
  };
}

const NOT_PLAYABLE = refusal(commandTexts.noNotesToWrite);
const NOTHING_TO_PLAY = refusal(commandTexts.noNotesInSpan);
const TOO_LONG = refusal(commandTexts.tooLongWithNotes(LONGEST_LINE));

/** More notes are not read in passing; UTF-16 units. */
const LONGEST_ROW = 160;

function shortened(row: string): string {
  return row.length > LONGEST_ROW ? `${row.slice(0, row.lastIndexOf(" ", LONGEST_ROW))} …` : row;
}

/** What of a line the notes take the place of, and what goes before and behind them. */
interface ClaimPlace {
  readonly start: number;
  readonly end: number;
  readonly before: string;
  readonly after: string;
}

function placeOfClaim(text: string, source: EntryLine): ClaimPlace {
  const { cuts } = cutLine(text.slice(0, source.end), source.start);
  const subject = source.subject!;
  // that of a label comes before
  const colon = separatorsOf(text, cuts).find(({ sign, column }) => sign === ":" && column > subject.start)?.column;
  if (colon === undefined) {
    const start = subject.end;
    const rest = text.slice(start, source.end).trim();
    return { start, end: start, before: ": ", after: rest === "" || rest.startsWith(",") ? "" : "," };
  }
  const claim = source.claims.find(
    ({ type, start }) => type !== "signature" && start > colon && !source.items.some((item) => item.start === start),
  );
  if (claim) return { start: colon + 1, end: claim.end, before: " ", after: "" };
  const rest = text.slice(colon + 1, source.end);
  if (rest.trim() === "")
    return { start: colon + 1, end: source.remark ? source.end : text.length, before: " ", after: "" };
  const end = colon + 1 + rest.length - rest.trimStart().length;
  return { start: colon + 1, end, before: " ", after: rest.trimStart().startsWith(",") ? "" : ", " };
}
