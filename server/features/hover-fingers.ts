import { type Conventions, instrumentOf } from "../journal/conventions.ts";
import type { Journal } from "../journal/journal.ts";
import type { DayNumber, Entry } from "../journal/model.ts";
import { exerciseToPlay } from "../journal/to-play.ts";
import { exercise } from "../music/exercise.ts";
import { hardestSteps } from "../music/finger-change.ts";
import type { Note } from "../music/note.ts";
import { doubtsOf, stepInWords, unknownFingering } from "./finger-words.ts";

/**
 * The hardest step of what an entry plays on a recorder, as one paragraph of Markdown; none for any other instrument.
 *
 * @param day the day that the entry stands on, where there is one
 */
export function hardestStepHover(
  entry: Entry,
  journal: Journal,
  uri: string,
  day: DayNumber | undefined,
): readonly string[] {
  const conventions = journal.conventions(uri);
  const instrument = instrumentOf(entry.instrument ?? conventions.instrument, conventions);
  if (instrument?.family !== "recorder") return [];
  const notes = notesPlayed(entry, conventions, day);
  const unknown = unknownFingering(instrument);
  if (unknown && notes.length > 1) return [`Hardest step: ${unknown}.`];
  return hardestSteps({ notes }, instrument, 1).map((step) => {
    const words = stepInWords(step, conventions.names, (fingering) => `\`${fingering}\``);
    return `Hardest step: ${[words, ...doubtsOf(step, conventions.names)].join("; ")}.`;
  });
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
  return input ? exercise(input).notes : [];
}
