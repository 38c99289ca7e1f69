import { midi, modulo, type NoteName, pitchClass, sameName } from "../../music/notes/note.ts";
import type { ScaleKind } from "../../music/scales/kind.ts";
import { acceptsName } from "../../music/scales/scale.ts";
import type { ClaimedNote } from "../../syntax/line/line.ts";
import { type Alignment, align, type Likeness } from "./alignment.ts";
import { type ClaimedExercise, type ExpectedNote, type Reading, readings, rungsIn } from "./claimed-exercise.ts";
import { isInLeaps, leapsReadings } from "./leaps-reading.ts";

/** The way in which a list fits best, and where it differs. */
export interface BestReading {
  readonly reading: Reading;
  readonly alignment: Alignment;
  /** What to add to the octave of an expected note to get the list's; 0 where the list has no octave numbers. */
  readonly octaves: number;
}

/** A scale that is declared in cents is spelled by the nearest key; the other one beside it is as near as may be. */
function acceptsBesideCents(kind: ScaleKind, tonic: NoteName, degree: number, name: NoteName): boolean {
  const cents = kind.degrees[modulo(degree - 1, kind.degrees.length)]?.cents;
  return (
    cents !== undefined &&
    Math.abs(modulo(100 * (pitchClass(name) - pitchClass(tonic)) - cents + 600, 1200) - 600) < 100
  );
}

function compareName({ subject }: Reading, { note, degree, falling }: ExpectedNote, name: NoteName): Likeness {
  if (sameName(note, name)) return "same";
  const isSameKey = pitchClass(note) === pitchClass(name);
  // Three sharps or flats cannot be typed: the key is right by any name.
  if (isSameKey && Math.abs(note.alter) > 2) return "renamed";
  if (subject.type === "chord") return isSameKey ? "spelling" : "wrong";
  const { kind, tonic } = subject;
  if (acceptsBesideCents(kind, tonic, degree, name)) return "renamed";
  if (!isSameKey) return "wrong";
  return acceptsName(kind, tonic, degree, falling, name) ? "renamed" : "spelling";
}

/** How every note name that occurs compares with every degree that occurs: long lists ask for few of them often. */
function nameLikeness(reading: Reading): (expected: ExpectedNote, name: NoteName) => Likeness {
  const known = new Map<number, Likeness>();
  const size = rungsIn(reading.subject, false).length;
  return (expected, name) => {
    const rung = modulo(expected.degree - 1, size) * 2 + (expected.falling ? 1 : 0);
    const key = (rung * 8 + "CDEFGAB".indexOf(name.letter)) * 16 + name.alter + 8;
    let likeness = known.get(key);
    if (likeness === undefined) {
      likeness = compareName(reading, expected, name);
      known.set(key, likeness);
    }
    return likeness;
  };
}

type Compare = (typed: number, expected: number) => Likeness;

function compareNames(notes: readonly ClaimedNote[], reading: Reading): Compare {
  const likeness = nameLikeness(reading);
  return (typed, expected) => {
    const { note } = notes[typed]!;
    return note ? likeness(reading.notes[expected]!, note) : "wrong";
  };
}

function compareWithOctaves(notes: readonly ClaimedNote[], reading: Reading, names: Compare, octaves: number): Compare {
  return (typed, expected) => {
    const likeness = names(typed, expected);
    const octave = notes[typed]!.note?.octave;
    if ((likeness !== "same" && likeness !== "renamed") || octave === undefined) return likeness;
    const distance = midi({ ...notes[typed]!.note!, octave }) - midi(reading.notes[expected]!.note) - 12 * octaves;
    // A note of a scale in cents may lie a key beside.
    return Math.abs(distance) < 6 ? likeness : "octave";
  };
}

/** By how many octaves most of the matching notes differ from the expected ones. */
function usualOctaves(notes: readonly ClaimedNote[], reading: Reading, alignment: Alignment): number {
  const counts = new Map<number, number>();
  for (const { type, typed, expected } of alignment.steps) {
    if (type === "missing" || type === "extra" || type === "wrong") continue;
    const { note } = notes[typed]!;
    if (note?.octave === undefined) continue;
    const distance = midi({ ...note, octave: note.octave }) - midi(reading.notes[expected]!.note);
    const octaves = Math.round(distance / 12);
    counts.set(octaves, (counts.get(octaves) ?? 0) + 1);
  }
  const most = Math.max(0, ...counts.values());
  return [...counts].find(([, count]) => count === most)?.[0] ?? 0;
}

/** How a list fits one reading by its names alone, and then with its octave numbers. */
interface Fit extends BestReading {
  readonly byNames: number;
}

/** @param most the most differences by name that matter */
function fitOf(notes: readonly ClaimedNote[], reading: Reading, most: number): Fit {
  const names = compareNames(notes, reading);
  const alignment = align(notes.length, reading.notes.length, reading.closes, names, most + 1);
  const byNames = alignment.differences;
  if (notes.every(({ note }) => note?.octave === undefined)) return { reading, alignment, octaves: 0, byNames };
  const octaves = reading.placed ? 0 : usualOctaves(notes, reading, alignment);
  const compare = compareWithOctaves(notes, reading, names, octaves);
  return { reading, alignment: align(notes.length, reading.notes.length, reading.closes, compare), octaves, byNames };
}

/** How a list fits one reading. */
export function fitReading(notes: readonly ClaimedNote[], reading: Reading): BestReading {
  return fitOf(notes, reading, Number.POSITIVE_INFINITY);
}

/** A fit with no look at the notes, for a reading that is far too long or short: everything differs. */
function misfit(length: number, reading: Reading): Fit {
  const differences = Math.max(length, reading.notes.length);
  return { reading, alignment: { differences, steps: [] }, octaves: 0, byNames: differences };
}

/** Over so many notes too many or too few nobody asks which they are. */
const HOPELESS = 200;

/** Beside a pattern, a list that is nearly the scale itself is meant as the scale; any other as the pattern. */
const MOST_OFF_BESIDE_PATTERN = 0.25;

interface Ranked {
  readonly reading: Reading;
  /** In the order of format.md. */
  readonly rank: number;
  /** No fewer differences than this. */
  readonly least: number;
}

/** Those of about the list's length first: they leave the others little to look at. */
function byLength(all: readonly Reading[], length: number): Ranked[] {
  const ranked = all.map((reading, rank) => {
    const short = reading.notes.length - (reading.closes ? 1 : 0);
    return { reading, rank, least: Math.max(0, length - reading.notes.length, short - length) };
  });
  return ranked.sort((one, other) => one.least - other.least || one.rank - other.rank);
}

/** Fewer differences by name; then fewer with octave numbers; then the order of format.md. */
function isBetter(one: Fit, oneRank: number, other: Fit, otherRank: number): boolean {
  if (one.byNames !== other.byNames) return one.byNames < other.byNames;
  const [ones, others] = [one.alignment.differences, other.alignment.differences];
  return ones === others ? oneRank < otherRank : ones < others;
}

/**
 * The reading with the fewest differences; of those with as many, the one whose octaves fit better, and then the first.
 * None where nothing can be expected.
 */
export function bestReading(notes: readonly ClaimedNote[], claimed: ClaimedExercise): BestReading | undefined {
  const all = isInLeaps(claimed) ? leapsReadings(notes, claimed) : readings(claimed, notes.length);
  const besidePattern = all.some(({ patterned }) => patterned);
  let best: { readonly fit: Fit; readonly rank: number } | undefined;
  for (const { reading, rank, least } of byLength(all, notes.length)) {
    const most = best?.fit.byNames ?? Number.POSITIVE_INFINITY;
    if (least > most) break;
    const fit = least > HOPELESS ? misfit(notes.length, reading) : fitOf(notes, reading, most);
    if (besidePattern && !reading.patterned && fit.byNames > MOST_OFF_BESIDE_PATTERN * notes.length) continue;
    if (!best || isBetter(fit, rank, best.fit, best.rank)) best = { fit, rank };
  }
  return best?.fit;
}
