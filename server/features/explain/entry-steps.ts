import type { DayNumber } from "../../journal/calendar.ts";
import { type Conventions, instrumentOf } from "../../journal/conventions.ts";
import { exerciseToPlay } from "../../journal/entry-exercise.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { notesHidden } from "../../journal/notes-hidden.ts";
import { type HardStep, hardestSteps } from "../../music/fingering/finger-change.ts";
import type { Note } from "../../music/notes/note.ts";
import { notesToPlay } from "../../music/patterns/notes-to-play.ts";
import { unknownFingering } from "./finger-words.ts";

/** The steps of an entry that ask most of the fingers, hardest first; or why nothing is known of them. */
export type EntrySteps =
  | { readonly known: true; readonly steps: readonly HardStep[] }
  | { readonly known: false; readonly why: string };

/** How many steps are told at most, and the day that the entry stands on, where there is one. */
export interface StepsAsked {
  readonly most: number;
  readonly day: DayNumber | undefined;
}

/**
 * The steps of what an entry plays on a recorder; undefined for any other instrument, for no step at all, and where its
 * notes are not to be named.
 */
export function entrySteps(
  entry: Entry,
  journal: Journal,
  uri: string,
  { most, day }: StepsAsked,
): EntrySteps | undefined {
  const conventions = journal.conventions(uri);
  const instrument = instrumentOf(entry.instrument ?? conventions.instrument, conventions);
  if (instrument?.family !== "recorder" || notesHidden(entry, conventions)) return undefined;
  const notes = notesPlayed(entry, conventions, day);
  const why = unknownFingering(instrument);
  if (why) return notes.length > 1 ? { known: false, why } : undefined;
  const steps = hardestSteps({ notes }, instrument, most);
  return steps.length > 0 ? { known: true, steps } : undefined;
}

/** Of a scale or a chord its notes; of a figure those that it names, where all say their octaves. */
function notesPlayed(
  { subject, ...entry }: Entry,
  conventions: Conventions,
  day: DayNumber | undefined,
): readonly Note[] {
  if (subject?.type === "figure") {
    const named = subject.notes.filter((note): note is Note => note.octave !== undefined);
    return subject.figure === "long tones" || named.length < subject.notes.length ? [] : named;
  }
  const input = exerciseToPlay({ subject, ...entry }, entry.attempts[0]?.conditions, conventions, day);
  return input ? notesToPlay(input).notes : [];
}
