import type { AlignmentStep } from "../../checks/notes/alignment.ts";
import { bestReading } from "../../checks/notes/best-reading.ts";
import type { ClaimedExercise } from "../../checks/notes/claimed-exercise.ts";
import { type Conventions, instrumentOf } from "../../journal/conventions.ts";
import { exerciseToPlay } from "../../journal/entry-exercise.ts";
import type { Entry } from "../../journal/model.ts";
import { notesHidden } from "../../journal/notes-hidden.ts";
import { subjectText } from "../../journal/subject-text.ts";
import { areInCents } from "../../music/notes/degree.ts";
import { notesToPlay } from "../../music/patterns/notes-to-play.ts";
import { type ClaimStep, claimedStaves } from "../../notation/claimed-staves.ts";
import { drawnFifths } from "../../notation/exercise-staff.ts";
import type { Staff } from "../../notation/staff.ts";
import type { ClaimedNote } from "../../syntax/line/line.ts";
import type { EntryAt } from "./entry.ts";
import { drawnStaves, fitsHover } from "./staff.ts";

/** Two staves with a word beneath each are no higher than this. */
const HIGHEST = 220;

/**
 * A list of notes that is not right, above the notes that it should be, as a picture in Markdown; undefined where it is
 * right, or where nobody draws.
 */
export function claimInMarkdown(at: EntryAt, notes: readonly ClaimedNote[]): string | undefined {
  const { entry, journal, uri, palette, staves: drawer } = at;
  const conventions = journal.conventions(uri);
  if (!drawer || !palette || notesHidden(entry, conventions)) return undefined;
  const staves = stavesOf(entry, conventions, notes);
  if (!staves?.every((staff) => fitsHover(staff, drawer))) return undefined;
  return drawnStaves(staves, drawer, { palette, highest: HIGHEST });
}

function stavesOf(entry: Entry, conventions: Conventions, notes: readonly ClaimedNote[]): readonly Staff[] | undefined {
  const claimed = claimedExercise(entry, conventions);
  const typed = notes.flatMap(({ note }) => note ?? []);
  if (!claimed || typed.length < notes.length || isBetweenKeys(claimed)) return undefined;
  const found = bestReading(notes, claimed);
  if (!found || found.alignment.differences === 0 || found.reading.unordered) return undefined;
  const { reading, alignment, octaves } = found;
  return claimedStaves({
    title: claimed.subjectText,
    names: claimed.names,
    instrument: instrumentOf(entry.instrument ?? conventions.instrument, conventions),
    fifths: drawnFifths(notesToPlay({ subject: reading.subject }).signature?.fifths),
    subject: reading.subject,
    typed: typed.map(({ octave, ...name }) => (octave === undefined ? name : { ...name, octave: octave - octaves })),
    expected: reading.notes,
    steps: alignment.steps.map(stepOf),
  });
}

function isBetweenKeys({ subject }: ClaimedExercise): boolean {
  return subject.type === "scale" && areInCents(subject.kind.degrees);
}

function stepOf({ type, typed, expected }: AlignmentStep): ClaimStep {
  const isOneSided = type === "extra" || type === "missing";
  return { type: isOneSided ? type : type === "same" ? "right" : "wrong", typed, expected };
}

export function claimedExercise(entry: Entry, conventions: Conventions): ClaimedExercise | undefined {
  const toPlay = exerciseToPlay(entry, entry.attempts[0]?.conditions, conventions);
  const { names } = conventions;
  return toPlay && { ...toPlay, names, subjectText: subjectText(entry.subject!, names) };
}
