import { type Conventions, instrumentOf } from "../../journal/conventions.ts";
import { exerciseToPlay } from "../../journal/entry-exercise.ts";
import type { Entry } from "../../journal/model.ts";
import { fallsOtherwise } from "../../music/patterns/notes-to-play.ts";
import { type ExerciseAsked, exerciseStaff, type StaffReading } from "../../notation/exercise-staff.ts";
import type { Staff } from "../../notation/staff.ts";

/** An entry and how its staff is to be. */
export interface EntryStaffAsked {
  readonly entry: Entry;
  /** Its line. */
  readonly text: string;
  /** Its name: `D melodic minor, thirds`. */
  readonly title: string;
  readonly conventions: Conventions;
  readonly day: number | undefined;
  readonly fingerings?: boolean;
}

/** What the entry's exercise is on a staff, as its line says; undefined for what is no scale and no chord. */
export function entryStaff(asked: EntryStaffAsked): StaffReading | undefined {
  const exercise = exerciseAsked(asked);
  return exercise && exerciseStaff(exercise);
}

/**
 * The same in the shortest way that leaves nothing out that a list of its notes would have: as the line says, only
 * rising, and without the pattern; the latter two where it falls as it rises.
 */
export function entryStaves(asked: EntryStaffAsked): readonly Staff[] {
  const exercise = exerciseAsked(asked);
  if (!exercise) return [];
  const { input } = exercise;
  const rising = { ...input, direction: "up" as const };
  const inputs = fallsOtherwise(input.subject)
    ? [input, { ...input, pattern: "straight", variant: undefined }]
    : [input, rising, { ...rising, pattern: "straight", variant: undefined }];
  return inputs.flatMap((each) => {
    const reading = exerciseStaff({ ...exercise, input: each });
    return reading.ok ? [reading.staff] : [];
  });
}

/** The exercise of an entry, in the player's words; undefined for what is no scale and no chord. */
export function exerciseAsked({
  entry,
  text,
  title,
  conventions,
  day,
  fingerings,
}: EntryStaffAsked): ExerciseAsked | undefined {
  const conditions = entry.attempts[0]?.conditions;
  const input = exerciseToPlay(entry, conditions, conventions, day);
  if (!input) return undefined;
  const way = entry.source.items.flatMap(({ start, end, meaning }) =>
    PLAYED.includes(meaning.type) ? [text.slice(start, end)] : [],
  );
  return {
    title,
    way: way.join(", "),
    input,
    instrument: instrumentOf(entry.instrument ?? conventions.instrument, conventions),
    names: conventions.names,
    noteValue: conditions?.noteValue ?? conventions.noteValue,
    articulation: conditions?.articulation?.text,
    rhythm: conditions?.rhythm?.text,
    fingerings,
  };
}

/** What of a line says how it is played, as far as it bears on a staff. */
const PLAYED: readonly string[] = ["note value", "articulation", "rhythm"];
