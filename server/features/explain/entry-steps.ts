import type { DayNumber } from "../../journal/calendar.ts";
import { instrumentOf } from "../../journal/conventions.ts";
import { notesPlayed } from "../../journal/entry-notes.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { notesHidden } from "../../journal/notes-hidden.ts";
import { type HardStep, hardestSteps } from "../../music/fingering/finger-change.ts";
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
