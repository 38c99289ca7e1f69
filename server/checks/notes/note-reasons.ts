import type { Degree } from "../../music/notes/degree.ts";
import { modulo, type NoteName, sameName, transposed } from "../../music/notes/note.ts";
import type { ChordToPlay, ScaleToPlay } from "../../music/patterns/notes-to-play.ts";
import { kindById } from "../../music/scales/kinds.ts";
import { degreeReason, ordinal } from "../../music/scales/scale.ts";
import { type ExpectedNote, type Reading, rungsIn } from "./claimed-exercise.ts";
import { type NoteStyle, shownName } from "./note-style.ts";

/** Of the intervals that chords are built of, by letters and semitones above the root. */
const CHORD_INTERVALS: Readonly<Record<string, string>> = {
  "2 3": "a minor third",
  "2 4": "a major third",
  "4 6": "a diminished fifth",
  "4 7": "a perfect fifth",
  "4 8": "an augmented fifth",
  "6 9": "a diminished seventh",
  "6 10": "a minor seventh",
  "6 11": "a major seventh",
};

/**
 * A distance upward in semitones: `a semitone`, `a whole tone`, `three semitones`; over two letters, as in pentatonic
 * scales, `a minor third`.
 */
export function distanceInWords(semitones: number, letters?: number): string {
  if (letters === 2 && semitones > 2) return CHORD_INTERVALS[`2 ${semitones}`] ?? `${semitones} semitones`;
  return ["", "a semitone", "a whole tone", "three semitones"][semitones] ?? `${semitones} semitones`;
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
  const interval = CHORD_INTERVALS[`${rung.step} ${rung.semitones}`];
  if (!interval) return `${root} is its root`;
  return `its ${ordinal(rung.step + 1)} is ${interval} above ${root}`;
}

function stepReason(subject: ScaleToPlay, expected: ExpectedNote, style: NoteStyle): string {
  const degrees = rungsIn(subject, expected.falling);
  const place = modulo(expected.degree - 1, degrees.length);
  if (place === 0) return `${shownName(subject.tonic, style)} is its tonic`;
  const below = degrees[place - 1]!;
  const here = degrees[place]!;
  const distance = distanceInWords(here.semitones - below.semitones, here.step - below.step);
  const what = degrees.length === 7 ? "degree" : "note";
  return `its ${ordinal(place + 1)} ${what} lies ${distance} above ${shownName(nameOn(subject, below), style)}`;
}

/** The name that the degree has on the way in the other direction. */
function otherWay(subject: ScaleToPlay, { degree, falling, note }: ExpectedNote): NoteName | undefined {
  const degrees = rungsIn(subject, !falling);
  const name = nameOn(subject, degrees[modulo(degree - 1, degrees.length)]!);
  return sameName(name, note) ? undefined : name;
}

function directionReason(subject: ScaleToPlay, { falling }: ExpectedNote): string {
  if (subject.kind.id === "melodic minor") {
    return falling ? "it falls as the natural minor does" : "its sixth and seventh degrees are raised on the way up";
  }
  return `that note belongs to the way ${falling ? "up" : "down"}`;
}

/** The degree has the name in natural minor; harmonic minor raises it. */
function isUnraised({ kind, tonic }: ScaleToPlay, { degree }: ExpectedNote, typed: NoteName): boolean {
  if (kind.id !== "harmonic minor" || modulo(degree - 1, 7) !== 6) return false;
  const natural = kindById("natural minor")!.degrees[6]!;
  return sameName(transposed(tonic, { steps: natural.step, semitones: natural.semitones }), typed);
}

/** `, going down` where the degree differs between the two ways. */
export function wayOf({ subject }: Reading, expected: ExpectedNote): string {
  if (subject.type === "chord" || !otherWay(subject, expected)) return "";
  return expected.falling ? " going down" : " going up";
}

/** Why the expected note belongs where another one was typed, as a clause: `its seventh degree takes the letter E`. */
export function reason({ subject }: Reading, expected: ExpectedNote, typed: NoteName, style: NoteStyle): string {
  const { degree, falling, note } = expected;
  const degrees = rungsIn(subject, falling);
  if (subject.type === "chord") return chordReason(subject, degrees[modulo(degree - 1, degrees.length)]!, style);
  const other = otherWay(subject, expected);
  if (other && sameName(other, typed)) return directionReason(subject, expected);
  if (isUnraised(subject, expected, typed)) return "its seventh degree is raised";
  const hasLetters = subject.kind.signature !== null || subject.kind.family === "declared";
  if (typed.letter !== note.letter && hasLetters)
    return degreeReason(subject.tonic, subject.kind, degree, { falling, names: style.names });
  return stepReason(subject, expected, style);
}
