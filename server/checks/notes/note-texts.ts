import { degreeTexts } from "../../music/scales/degree-texts.ts";

/**
 * What is said of lists of notes. An `exercise` is a scale, a chord, or one of these in a pattern; `notes` are several
 * names.
 */
export const noteTexts = {
  broken: "a broken chord in threes",
  thePattern: "the pattern",
  inPattern: (exercise: string, pattern: string) => `${exercise} in ${pattern}`,

  /** Patterns that are called by what each of their figures is, with that. */
  figures: new Map([
    ["thirds", "third"],
    ["fourths", "fourth"],
    ["fifths", "fifth"],
    ["sixths", "sixth"],
    ["sevenths", "seventh"],
    ["octaves", "octave"],
    ["tenths", "tenth"],
    ["triads", "triad"],
  ]) as ReadonlyMap<string, string>,
  figureByName: (place: number, figure: string, way: Way, notes: string) =>
    `The ${degreeTexts.ordinal(place)} ${figure} ${GOING[way]} is ${notes}`,
  figure: (place: number, pattern: string, way: Way, notes: string) =>
    `Figure ${place} of ${pattern}, ${GOING[way]}, is ${notes}`,
  /** Of a figure that is a single note. */
  noteOfPattern: (place: number, pattern: string, way: Way, note: string) =>
    `Note ${place} of ${pattern}, ${GOING[way]}, is ${note}`,
  figureNot: (figure: string, typed: string) => `${figure}, not ${typed}.`,

  notANote: (typed: string) => `${typed} is not a note name`,
  germanB: " (H is German for B: declare `names german` to use it)",
  tooManySigns: " (a note has at most two sharps or flats)",
  hasHere: (notANote: string, exercise: string, right: string) => `${notANote}: ${exercise} has ${right} here.`,
  resolves: (exercise: string, right: string, wrong: string) =>
    `${exercise} resolves on ${right}, its tonic, not on ${wrong}.`,
  begins: (exercise: string, right: string, wrong: string) => `${exercise} begins on ${right} here, not on ${wrong}.`,
  goesAfter: (before: string, exercise: string, right: string, wrong: string) =>
    `After ${before}, ${exercise} goes to ${right}, not to ${wrong}.`,
  has: (exercise: string, right: string, way: Way | undefined, wrong: string, reason: string) =>
    `${exercise} has ${right}${way ? ` ${GOING[way]}` : ""}, not ${wrong}: ${reason}.`,
  wrongOctave: (wrong: string, right: string) => `${wrong} is the right note in the wrong octave: write ${right}.`,
  octavesChange: (last: string, first: string) => ` Octaves change from ${last} to ${first}.`,
  octaveNumbersChange: (last: string, first: string) => ` Octave numbers change from ${last} to ${first}.`,

  missing: (notes: string, count: number, where: string) => `${notes} ${count === 1 ? "is" : "are"} missing ${where}`,
  between: (before: string, after: string) => `between ${before} and ${after}`,
  after: (before: string) => `after ${before}`,
  before: (after: string) => `before ${after}`,
  goes: (missing: string, exercise: string, notes: string) => `${missing}: ${exercise} goes ${notes}.`,
  figureMissing: (figure: string, missing: string) => `${figure}: ${missing}.`,

  figureTooMany: (figure: string, notes: string, count: number) => `${figure}: ${notes} ${tooMany(count)} here.`,
  hasNo: (exercise: string, note: string, goesOn: string) => `${exercise} has no ${note}: ${goesOn}.`,
  tooMany: (notes: string, count: number, goesOn: string) => `${notes} ${tooMany(count)}: ${goesOn}.`,
  /** How an exercise goes on at a place: without it, one that was named just before. */
  goesFrom: (before: string, after: string, exercise = "it") => `here ${exercise} goes from ${before} to ${after}`,
  endsOn: (last: string, exercise = "it") => `here ${exercise} ends on ${last}`,
  beginsOn: (first: string, exercise = "it") => `here ${exercise} begins on ${first}`,

  spells: (other: string, exercise: string, notes: string) => `This spells ${other}: ${exercise} is written ${notes}.`,
  otherNames: (exercise: string, notes: string) =>
    `These are the right keys by other names: ${exercise} is written ${notes}.`,
  notIn: (count: number, all: number, exercise: string, notes: string) =>
    `${count} of these ${all} notes are not in ${exercise}, which has ${notes}.`,
  onlyOctaves: (exercise: string, notes: string) => `Only the octave numbers are wrong: ${exercise} goes ${notes}.`,
  otherLength: (exercise: string, notes: string, right: number, given: number) =>
    `${exercise} goes ${notes}: ${right} notes, and ${given} are given here.`,
  differ: (count: number, all: number, exercise: string, notes: string) =>
    `${count} of these ${all} notes differ from ${exercise}, which goes ${notes}.`,

  putIn: (note: string) => `Put in ${note}`,
  putInAll: (count: number) => `Put in the ${count} missing notes`,
  takeOut: (note: string) => `Take out ${note}`,
  takeOutAll: (count: number) => `Take out ${count} notes`,
  change: (from: string, to: string) => `Change ${from} to ${to}`,
  writeNotes: (exercise: string) => `Write the notes of ${exercise}`,
};

type Way = "up" | "down";

const GOING: Readonly<Record<Way, string>> = { up: "going up", down: "going down" };

function tooMany(count: number): string {
  return count === 1 ? "is one too many" : "are too many";
}
