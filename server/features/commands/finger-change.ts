import { ceilingOn } from "../../history/ceiling.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { instrumentOf } from "../../journal/conventions.ts";
import { exerciseToPlay, isPlayable } from "../../journal/entry-exercise.ts";
import type { Journal } from "../../journal/journal.ts";
import { type HardStep, hardestSteps } from "../../music/fingering/finger-change.ts";
import { whyUnfingered } from "../../music/fingering/fingering.ts";
import { type NoteNames, noteText } from "../../music/notes/note-names.ts";
import { notesToPlay } from "../../music/patterns/notes-to-play.ts";
import { careSentence } from "../../plan/care-words.ts";
import type { Position } from "../../syntax/document/document.ts";
import type { EntryLine } from "../../syntax/line/line.ts";
import { entryUnderCursor } from "../explain/line-under-cursor.ts";
import { isReadEntry } from "../explain/read-in-full.ts";
import { refusal } from "../explain/refusal.ts";
import { type CommandAnswer, UNREADABLE_DECLARATION } from "./command-answer.ts";
import { commandTexts } from "./command-texts.ts";
import { goesOnToday } from "./into-today.ts";

export interface FingerChangeOptions {
  readonly today: DayNumber;
  /** Which of the hardest finger changes is meant, from 0. */
  readonly rank?: number;
}

/**
 * An entry below the one at a position that practises its hardest finger change by itself: both notes, back and forth;
 * where that one's day is over, today. They are slurred, as the tongue hides where fingers do not move together (common
 * practice, no source). The cursor goes behind it. It
 * is slow after a pain or a break, and nothing where one is to rest.
 */
export function fingerChange(
  journal: Journal,
  uri: string,
  position: Position,
  { today, rank = 0 }: FingerChangeOptions,
): CommandAnswer {
  const found = entryUnderCursor(journal, uri, position);
  if (!found.ok) return found;
  const ceiling = ceilingOn(journal, today);
  if (ceiling.kind === "without instrument" && ceiling.said) return refusal(careSentence(journal, ceiling.said, today));
  const { entry, model } = found;
  if (!isPlayable(entry.subject) || !isReadEntry(beforeTempo(entry.source))) return NOT_PLAYABLE;
  const conventions = journal.conventions(uri);
  const input = exerciseToPlay(entry, entry.attempts[0]?.conditions, conventions, model.day?.date);
  if (!input) return UNREADABLE_DECLARATION;
  const instrument = instrumentOf(entry.instrument ?? conventions.instrument, conventions);
  if (instrument?.family !== "recorder") return NO_RECORDER;
  if (whyUnfingered(instrument)) return UNKNOWN_FINGERING;
  const change = hardestSteps(notesToPlay(input), instrument, rank + 1)[rank];
  if (!change) return rank === 0 ? NO_CHANGE : NO_FURTHER_CHANGE;
  const slowly = ceiling.kind === "usual" ? "" : ", slow";
  const text = entryOf(change, entry.instrument, conventions.names) + slowly;
  return goesOnToday(journal, uri, found, { text, cursor: text.length }, today);
}

/** What says what is played. Behind the tempo anything may be said of how it went. */
function beforeTempo({ subject, items }: EntryLine): Pick<EntryLine, "subject" | "items"> {
  const tempo = items.findIndex(({ meaning }) => meaning.type === "tempo");
  return { subject, items: tempo < 0 ? items : items.slice(0, tempo) };
}

function entryOf({ from, to }: HardStep, instrument: string | undefined, names: NoteNames): string {
  const on = instrument === undefined ? "" : `, on ${instrument}`;
  return `notes ${noteText(from, names)} ${noteText(to, names)}, back and forth, slurred${on}`;
}

const NOT_PLAYABLE = refusal(commandTexts.noExerciseOfChanges);
const NO_RECORDER = refusal(commandTexts.noRecorder);
const UNKNOWN_FINGERING = refusal(commandTexts.germanFingering);
const NO_CHANGE = refusal(commandTexts.noChange);
const NO_FURTHER_CHANGE = refusal(commandTexts.noFurtherChange);
