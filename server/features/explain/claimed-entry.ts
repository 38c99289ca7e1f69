import type { AlignmentStep } from "../../checks/notes/alignment.ts";
import { bestReading } from "../../checks/notes/best-reading.ts";
import type { ClaimedExercise } from "../../checks/notes/claimed-exercise.ts";
import { type Conventions, instrumentOf } from "../../journal/conventions.ts";
import { exerciseToPlay } from "../../journal/entry-exercise.ts";
import type { Entry } from "../../journal/model.ts";
import { subjectText } from "../../journal/subject-text.ts";
import { areInCents } from "../../music/notes/degree.ts";
import { notesToPlay } from "../../music/patterns/notes-to-play.ts";
import { type ClaimStep, claimedStaves } from "../../notation/claimed-staves.ts";
import { drawnFifths } from "../../notation/exercise-staff.ts";
import type { Staff } from "../../notation/staff.ts";
import type { ClaimedNote } from "../../syntax/line/line.ts";

/** What an entry's note lists are held against; undefined where nothing is known of it. */
export function claimedExercise(entry: Entry, conventions: Conventions): ClaimedExercise | undefined {
  const toPlay = exerciseToPlay(entry, entry.attempts[0]?.conditions, conventions);
  const { names } = conventions;
  return toPlay && { ...toPlay, names, subjectText: subjectText(entry.subject!, names) };
}

/** A list of notes as it is written, and as it should be; undefined where it is right, or cannot be held on a staff. */
export function stavesOfClaim(
  entry: Entry,
  conventions: Conventions,
  notes: readonly ClaimedNote[],
  fingerings = false,
): readonly [written: Staff, right: Staff] | undefined {
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
    fingerings,
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
