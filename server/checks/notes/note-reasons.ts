import type { Degree } from "../../music/notes/degree.ts";
import { modulo, type NoteName, sameName, transposed } from "../../music/notes/note.ts";
import type { ChordToPlay, ScaleToPlay } from "../../music/patterns/notes-to-play.ts";
import { kindById } from "../../music/scales/kinds.ts";
import { degreeReason } from "../../music/scales/scale.ts";
import { type ExpectedNote, type Reading, rungsIn } from "./claimed-exercise.ts";
import { intervalTexts } from "./interval-texts.ts";
import { type NoteStyle, shownName } from "./note-style.ts";
import { reasonTexts } from "./reason-texts.ts";

/**
 * A distance upward in semitones: `a semitone`, `a whole tone`, `three semitones`; over two letters, as in pentatonic
 * scales, `a minor third`.
 */
export function distanceInWords(semitones: number, letters?: number): string {
  const third = letters === 2 && semitones > 2 ? intervalTexts.chordInterval(2, semitones) : undefined;
  return third ?? intervalTexts.semitones(semitones);
}

function nameOn(subject: ScaleToPlay | ChordToPlay, degree: Degree): NoteName {
  const from = subject.type === "scale" ? subject.tonic : subject.root;
  return transposed(from, { steps: degree.step, semitones: degree.semitones });
}

/** Whether a name is one of the scale's or chord's, rising or falling. */
export function belongs({ subject }: Reading, name: NoteName): boolean {
  const degrees = [...rungsIn(subject, false), ...rungsIn(subject, true)];
  return degrees.some((degree) => sameName(nameOn(subject, degree), name));
}

function chordReason(subject: ChordToPlay, rung: Degree, style: NoteStyle): string {
  const root = shownName(subject.root, style);
  const interval = intervalTexts.chordInterval(rung.step, rung.semitones);
  return interval ? reasonTexts.chordNote(rung.step + 1, interval, root) : reasonTexts.isRoot(root);
}

function stepReason(subject: ScaleToPlay, expected: ExpectedNote, style: NoteStyle): string {
  const degrees = rungsIn(subject, expected.falling);
  const place = modulo(expected.degree - 1, degrees.length);
  if (place === 0) return reasonTexts.isTonic(shownName(subject.tonic, style));
  const below = degrees[place - 1]!;
  const here = degrees[place]!;
  const distance = distanceInWords(here.semitones - below.semitones, here.step - below.step);
  const lies = degrees.length === 7 ? reasonTexts.degreeLies : reasonTexts.noteLies;
  return lies(place + 1, distance, shownName(nameOn(subject, below), style));
}

/** The name that the degree has on the way in the other direction. */
function otherWay(subject: ScaleToPlay, { degree, falling, note }: ExpectedNote): NoteName | undefined {
  const degrees = rungsIn(subject, !falling);
  const name = nameOn(subject, degrees[modulo(degree - 1, degrees.length)]!);
  return sameName(name, note) ? undefined : name;
}

function directionReason(subject: ScaleToPlay, { falling }: ExpectedNote): string {
  if (subject.kind.id === "melodic minor") {
    return falling ? reasonTexts.fallsAsNatural : reasonTexts.bothRaised;
  }
  return reasonTexts.ofTheWay[falling ? "up" : "down"];
}

/** The degree has the name in natural minor; harmonic minor raises it. */
function isUnraised({ kind, tonic }: ScaleToPlay, { degree }: ExpectedNote, typed: NoteName): boolean {
  if (kind.id !== "harmonic minor" || modulo(degree - 1, 7) !== 6) return false;
  const natural = kindById("natural minor")!.degrees[6]!;
  return sameName(transposed(tonic, { steps: natural.step, semitones: natural.semitones }), typed);
}

/** The way on which a note goes, where the degree differs between the two. */
export function wayOf({ subject }: Reading, expected: ExpectedNote): "up" | "down" | undefined {
  if (subject.type === "chord" || !otherWay(subject, expected)) return undefined;
  return expected.falling ? "down" : "up";
}

/** Why the expected note belongs where another one was typed, as a clause: `its seventh degree takes the letter E`. */
export function reason({ subject }: Reading, expected: ExpectedNote, typed: NoteName, style: NoteStyle): string {
  const { degree, falling, note } = expected;
  const degrees = rungsIn(subject, falling);
  if (subject.type === "chord") return chordReason(subject, degrees[modulo(degree - 1, degrees.length)]!, style);
  const other = otherWay(subject, expected);
  if (other && sameName(other, typed)) return directionReason(subject, expected);
  if (isUnraised(subject, expected, typed)) return reasonTexts.leadingRaised;
  const hasLetters = subject.kind.signature !== null || subject.kind.family === "declared";
  if (typed.letter !== note.letter && hasLetters)
    return degreeReason(subject.tonic, subject.kind, degree, { falling, names: style.names });
  return stepReason(subject, expected, style);
}
