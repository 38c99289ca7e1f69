import { midi, modulo, type Note, type NoteName, pitchClass, sameName, transposed } from "../../music/notes/note.ts";
import type { ScaleToPlay } from "../../music/patterns/notes-to-play.ts";
import { isDrawn } from "../../music/patterns/pattern.ts";
import type { ClaimedNote } from "../../syntax/line/line.ts";
import { type ClaimedExercise, type ExpectedNote, kindsMeant, type Reading, rungsIn } from "./claimed-exercise.ts";

/** Whether a list stands beside `leaps`, whose order a day draws. */
export function isInLeaps({ pattern }: ClaimedExercise): boolean {
  return isDrawn(pattern);
}

/**
 * How notes in leaps may be meant: each is held against the note of the scale or chord that is nearest to it, rising or
 * falling, in its own octave. What order they stand in, and how many there are, is not asked: nobody knows the day's
 * order who writes them down.
 */
export function leapsReadings(notes: readonly ClaimedNote[], claimed: ClaimedExercise): Reading[] {
  return kindsMeant(claimed).map(({ subject }) => {
    const own = namesOf(subject);
    return {
      subject,
      notes: notes.map(({ note }) => nearest(own, note)),
      patterned: false,
      closes: false,
      placed: true,
      unordered: true,
    };
  });
}

/** The notes of one octave, rising: what leaps may be made of. */
export function ownNotes({ subject }: Reading): ExpectedNote[] {
  return namesOf(subject)
    .filter(({ falling }) => !falling)
    .map(({ name, ...place }) => ({ ...place, note: { ...name, octave: 4 } }));
}

interface Own extends Omit<ExpectedNote, "note"> {
  readonly name: NoteName;
}

function namesOf(subject: ClaimedExercise["subject"]): readonly Own[] {
  const from = subject.type === "scale" ? subject.tonic : subject.root;
  const name = { letter: from.letter, alter: from.alter };
  return (differs(subject) ? [false, true] : [false]).flatMap((falling) =>
    rungsIn(subject, falling).map(({ step, semitones }, place) => ({
      name: transposed(name, { steps: step, semitones }),
      degree: place + 1,
      falling,
      figure: place,
    })),
  );
}

function differs(subject: ClaimedExercise["subject"]): subject is ScaleToPlay {
  return subject.type === "scale" && subject.kind.falling !== undefined;
}

/** The one of the same name, else of the same key, else of the same letter, else the nearest key; then the first. */
function nearest(own: readonly Own[], note: ClaimedNote["note"]): ExpectedNote {
  const [best] = note ? [...own].sort((one, other) => distance(one.name, note) - distance(other.name, note)) : own;
  const { name, ...place } = best!;
  return { ...place, note: inOctaveOf(note, name) };
}

function distance(name: NoteName, note: NoteName): number {
  if (sameName(name, note)) return 0;
  const keys = Math.abs(modulo(pitchClass(name) - pitchClass(note) + 6, 12) - 6);
  return keys === 0 ? 1 : name.letter === note.letter ? 2 + keys : 20 + keys;
}

/** In the octave in which it lies nearest to the typed note. */
function inOctaveOf(note: ClaimedNote["note"], name: NoteName): Note {
  const octave = note?.octave ?? 4;
  const short = note ? midi({ ...note, octave }) - midi({ ...name, octave }) : 0;
  return { ...name, octave: octave + Math.round(short / 12) };
}
