import { areInCents } from "../music/notes/degree.ts";
import { fifthsOf, type Note, transposed } from "../music/notes/note.ts";
import type { NoteValue } from "../music/notes/note-value.ts";
import { notesToPlay } from "../music/patterns/notes-to-play.ts";
import { type ExerciseAsked, exerciseStaff, type StaffReading } from "../notation/exercise-staff.ts";

/** Beats a minute, and what the beat is. */
export interface ScoreTempo {
  readonly bpm: number;
  readonly beat: NoteValue;
}

/** An exercise that is to go into a file. */
export interface ScoreAsked extends ExerciseAsked {
  /** How long each note is. */
  readonly value: NoteValue;
  /** Each note is held until the next. */
  readonly slurred: boolean;
  /** Missing where nobody said how fast it goes. */
  readonly tempo?: ScoreTempo;
}

/** An exercise as the writers of files take it: what is on its staff, and what sounds. */
export interface ExerciseScore extends Pick<ScoreAsked, "title" | "way" | "value" | "rhythm" | "tempo" | "instrument"> {
  /** As written for the instrument; a scale in cents has none. */
  readonly staff: StaffReading;
  /** What sounds, note by note, at concert pitch. */
  readonly sounding: readonly Note[];
  /** Of each note whether it is held until the next. */
  readonly held: readonly boolean[];
  /** The signature at concert pitch, sharps or, negative, flats; missing where there is none within seven. */
  readonly concertKey?: { readonly fifths: number; readonly minor: boolean };
}

/** What was made of an exercise for a file, or why nothing was, as a sentence. */
export type ScoreFile<T> = { readonly ok: true; readonly content: T } | { readonly ok: false; readonly reason: string };

/** The notes of an exercise for a file, as the staff and what is heard have them. Empty where none of it fits. */
export function exerciseScore(asked: ScoreAsked): ExerciseScore {
  const { title, way, value, rhythm, tempo, instrument, input, slurred } = asked;
  const staff = exerciseStaff(asked);
  const { sounding, signature, steps } = notesToPlay(input);
  const slurs = staff.ok ? staff.staff.slurs : [];
  const isInSlur = (i: number) => slurs.some(({ from, to }) => from <= i && i < to);
  return {
    title,
    way,
    value,
    rhythm,
    tempo,
    instrument,
    staff,
    sounding,
    held: sounding.map((_, i) => (slurs.length === 0 ? slurred : isInSlur(i))),
    ...concertKey(asked, signature?.fifths, isMinor(steps)),
  };
}

function concertKey(
  { input, instrument }: ScoreAsked,
  written: number | undefined,
  minor: boolean,
): Pick<ExerciseScore, "concertKey"> {
  const inCents = input.subject.type === "scale" && areInCents(input.subject.kind.degrees);
  if (written === undefined || inCents) return {};
  const c = { letter: "C", alter: 0 } as const;
  const fifths = written + (instrument ? fifthsOf(transposed(c, instrument.sounding)) : 0);
  return Math.abs(fifths) > 7 ? {} : { concertKey: { fifths, minor } };
}

/** Whether a third of three semitones is above the tonic, and none of four. */
function isMinor(steps: readonly number[]): boolean {
  const above = steps.map((_, i) => steps.slice(0, i + 1).reduce((sum, step) => sum + step, 0));
  return above.includes(3) && !above.includes(4);
}
