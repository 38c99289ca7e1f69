import { instrumentOf } from "../../journal/conventions.ts";
import { exerciseToPlay, isPlayable } from "../../journal/entry-exercise.ts";
import type { Journal } from "../../journal/journal.ts";
import { type HardStep, hardestSteps } from "../../music/fingering/finger-change.ts";
import { whyUnfingered } from "../../music/fingering/fingering.ts";
import { type NoteNames, noteText } from "../../music/notes/note-names.ts";
import { notesToPlay } from "../../music/patterns/notes-to-play.ts";
import type { Position } from "../../syntax/document/document.ts";
import { entryUnderCursor } from "../explain/line-under-cursor.ts";
import { isReadEntry } from "../explain/read-in-full.ts";
import { refusal } from "../explain/refusal.ts";
import { type CommandAnswer, UNREADABLE_DECLARATION } from "./command-answer.ts";
import { belowEntry } from "./entry-below.ts";

/**
 * An entry below the one at a position that practises its hardest step by itself: both notes, back and forth. They are
 * slurred, as the tongue hides where fingers do not move together (common practice, no source). The cursor goes behind
 * it.
 *
 * @param rank which of the hardest steps is meant, from 0
 */
export function isolateStep(journal: Journal, uri: string, position: Position, rank = 0): CommandAnswer {
  const found = entryUnderCursor(journal, uri, position);
  if (!found.ok) return found;
  const { entry, model } = found;
  if (!isPlayable(entry.subject) || !isReadEntry(entry.source)) return NOT_PLAYABLE;
  const conventions = journal.conventions(uri);
  const input = exerciseToPlay(entry, entry.attempts[0]?.conditions, conventions, model.day?.date);
  if (!input) return UNREADABLE_DECLARATION;
  const instrument = instrumentOf(entry.instrument ?? conventions.instrument, conventions);
  if (instrument?.family !== "recorder") return NO_RECORDER;
  if (whyUnfingered(instrument)) return UNKNOWN_FINGERING;
  const step = hardestSteps(notesToPlay(input), instrument, rank + 1)[rank];
  if (!step) return rank === 0 ? NO_STEP : NO_FURTHER_STEP;
  const text = entryOf(step, entry.instrument, conventions.names);
  return belowEntry(uri, found, { text, cursor: text.length });
}

function entryOf({ from, to }: HardStep, instrument: string | undefined, names: NoteNames): string {
  const on = instrument === undefined ? "" : `, on ${instrument}`;
  return `notes ${noteText(from, names)} ${noteText(to, names)}, back and forth, slurred${on}`;
}

const NOT_PLAYABLE = refusal(
  "The hardest step can be taken out of a scale or an arpeggio, and this line is not one that can be read as a whole.",
);
const NO_RECORDER = refusal(
  "Which step is hardest is known for recorders only. Name yours: at the top of the journal as instrument alto recorder, or on this line as on alto recorder.",
);
const UNKNOWN_FINGERING = refusal(
  "Finger changes are not known for German fingering, so that no step can be called the hardest.",
);
const NO_STEP = refusal("Within the range of the instrument this line has no step from one note to another.");
const NO_FURTHER_STEP = refusal(
  "This line has no such step any more: it has changed since its hardest steps were told. Try once more.",
);
