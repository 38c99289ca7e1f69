import type { Note } from "../music/notes/note.ts";
import { notesToPlay } from "../music/patterns/notes-to-play.ts";
import type { DayNumber } from "./calendar.ts";
import type { Conventions } from "./conventions.ts";
import { exerciseToPlay } from "./entry-exercise.ts";
import type { Entry } from "./model.ts";

/**
 * What an entry plays, note by note: a scale or a chord, in the way of its first attempt; of a figure the notes that it
 * names, where all say their octaves. None for anything else.
 *
 * @param day the one that it is played on: `leaps` go by it
 */
export function notesPlayed(
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
