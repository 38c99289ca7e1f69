import { midi } from "../../music/notes/note.ts";
import type { ClaimedNote } from "../../syntax/line/line.ts";
import { type Alignment, align, type Likeness } from "./alignment.ts";
import type { ClaimedExercise, Reading } from "./claimed-exercise.ts";
import { countDifferences } from "./count-differences.ts";
import { isInLeaps, leapsReadings } from "./leaps-reading.ts";
import { NameLikeness } from "./name-likeness.ts";
import { type PossibleReading, readings } from "./readings.ts";

/** The way in which a list fits best, and where it differs. */
export interface BestReading {
  readonly reading: Reading;
  readonly alignment: Alignment;
  /** What to add to the octave of an expected note to get the list's; 0 where the list has no octave numbers. */
  readonly octaves: number;
}

type Compare = (typed: number, expected: number) => Likeness;

function compareNames(notes: readonly ClaimedNote[], reading: Reading, names: NameLikeness): Compare {
  return (typed, expected) => names.of(reading.notes[expected]!, notes[typed]!.note);
}

function compareWithOctaves(notes: readonly ClaimedNote[], reading: Reading, names: Compare, octaves: number): Compare {
  return (typed, expected) => {
    const likeness = names(typed, expected);
    const octave = notes[typed]!.note?.octave;
    if ((likeness !== "same" && likeness !== "renamed") || octave === undefined) return likeness;
    if (reading.notes[expected]!.resolves) return likeness;
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

/**
 * How a list fits a reading by its names, and then with its octave numbers.
 *
 * @param differences as many as there are by name
 */
function fitOf(
  notes: readonly ClaimedNote[],
  reading: Reading,
  likeness: NameLikeness,
  differences: number,
): BestReading {
  const names = compareNames(notes, reading, likeness);
  const aligned = (compare: Compare, stray: number): Alignment =>
    align(notes.length, reading.notes.length, reading.closes, compare, reading.unordered ? 0 : stray);
  const alignment = aligned(names, differences);
  if (!haveOctaves(notes)) return { reading, alignment, octaves: 0 };
  const octaves = reading.placed ? 0 : usualOctaves(notes, reading, alignment);
  const compare = compareWithOctaves(notes, reading, names, octaves);
  return { reading, alignment: aligned(compare, Number.POSITIVE_INFINITY), octaves };
}

function haveOctaves(notes: readonly ClaimedNote[]): boolean {
  return notes.some(({ note }) => note?.octave !== undefined);
}

/** How a list fits one reading. */
export function fitReading(notes: readonly ClaimedNote[], reading: Reading): BestReading {
  return fitOf(notes, reading, new NameLikeness(reading.subject), Number.POSITIVE_INFINITY);
}

/** A fit with no look at the notes, for a reading that is far too long or short: everything differs. */
function misfit(length: number, reading: Reading): BestReading {
  const differences = Math.max(length, reading.notes.length);
  return { reading, alignment: { differences, steps: [] }, octaves: 0 };
}

/** Over so many notes too many or too few nobody asks which they are. */
const HOPELESS = 200;

function isHopeless({ length }: readonly ClaimedNote[], { notes, closes }: Reading): boolean {
  return length - notes.length > HOPELESS || notes.length - (closes ? 1 : 0) - length > HOPELESS;
}

/** Beside a pattern, a list that is nearly the scale itself is meant as the scale; any other as the pattern. */
const MOST_OFF_BESIDE_PATTERN = 0.25;

interface Ranked {
  readonly reading: PossibleReading;
  /** In the order of format.md. */
  readonly rank: number;
  /** As many notes as are too many or missing, its last one left aside: there are no fewer differences. */
  readonly least: number;
}

/** Those of about the list's length first: they leave the others little to look at. */
function byLength(all: readonly PossibleReading[], length: number): Ranked[] {
  const ranked = all.map((reading, rank) => {
    return { reading, rank, least: Math.max(0, length - reading.length, reading.length - 1 - length) };
  });
  return ranked.sort((one, other) => one.least - other.least || one.rank - other.rank);
}

interface Candidate {
  readonly reading: Reading;
  readonly rank: number;
}

/** The readings with the fewest differences by name, in the order of format.md, and how many those are. */
function nearestByName(
  notes: readonly ClaimedNote[],
  all: readonly PossibleReading[],
  likeness: LikenessOf,
): { readonly nearest: readonly Reading[]; readonly differences: number } {
  const besidePattern = all.some(({ patterned }) => patterned);
  let nearest: Candidate[] = [];
  let fewest = Number.POSITIVE_INFINITY;
  for (const { reading: possible, rank, least } of byLength(all, notes.length)) {
    if (least > fewest) break;
    const reading = possible.read();
    const differences = differencesByName(notes, reading, likeness(reading), fewest);
    if (besidePattern && !reading.patterned && differences > MOST_OFF_BESIDE_PATTERN * notes.length) continue;
    if (differences < fewest) nearest = [];
    if (differences <= fewest) nearest.push({ reading, rank });
    fewest = Math.min(fewest, differences);
  }
  return {
    nearest: nearest.sort((one, other) => one.rank - other.rank).map(({ reading }) => reading),
    differences: fewest,
  };
}

/** No matter how many where there are more than `most`. */
function differencesByName(
  notes: readonly ClaimedNote[],
  reading: Reading,
  likeness: NameLikeness,
  most: number,
): number {
  if (isHopeless(notes, reading)) return misfit(notes.length, reading).alignment.differences;
  const places = likeness.rightPlaces(notes, reading.notes);
  return countDifferences(places, reading.notes.length, reading.closes, most);
}

type LikenessOf = (reading: Reading) => NameLikeness;

/** Ways of playing one scale share it. */
function likenessOfSubjects(): LikenessOf {
  const known = new Map<Reading["subject"], NameLikeness>();
  return ({ subject }) => {
    const likeness = known.get(subject) ?? new NameLikeness(subject);
    known.set(subject, likeness);
    return likeness;
  };
}

function asPossible(reading: Reading): PossibleReading {
  return { length: reading.notes.length, patterned: reading.patterned, read: () => reading };
}

/**
 * The reading with the fewest differences by name; of those with as many, the one whose octaves fit better, and then
 * the first. None where nothing can be expected.
 */
export function bestReading(notes: readonly ClaimedNote[], claimed: ClaimedExercise): BestReading | undefined {
  const all = isInLeaps(claimed) ? leapsReadings(notes, claimed).map(asPossible) : readings(claimed, notes.length);
  const likeness = likenessOfSubjects();
  const { nearest, differences } = nearestByName(notes, all, likeness);
  const fits = (haveOctaves(notes) ? nearest : nearest.slice(0, 1)).map((reading) =>
    isHopeless(notes, reading) ? misfit(notes.length, reading) : fitOf(notes, reading, likeness(reading), differences),
  );
  return fits.reduce<BestReading | undefined>(
    (best, fit) => (best && best.alignment.differences <= fit.alignment.differences ? best : fit),
    undefined,
  );
}
