import { rhythmLengths } from "../music/notes/rhythm.ts";
import { beamsOf } from "./beams.ts";
import type { StaffValue, Stretch } from "./staff.ts";

/** The values of an exercise's notes, and how they are beamed. */
export interface WrittenRhythm {
  readonly values: readonly StaffValue[];
  readonly beams: readonly Stretch[];
}

/**
 * How notes are written in a rhythm: dotted ones with their dots, those of `LSS` as long and short. Swung and unequal
 * notes are written even, as musicians do (common practice, no source); so is what would need dotted triplets.
 *
 * @param value   what the line calls the notes
 * @param rhythm  as an attempt's conditions have it
 * @param figures which figure each note belongs to
 */
export function writtenRhythm(
  value: StaffValue,
  rhythm: string | undefined,
  figures: readonly number[],
): WrittenRhythm {
  const lengths = rhythmLengths(rhythm);
  const cycle = lengths.map((length) => timesAsLong(value, length));
  if (cycle.some((each) => each === undefined))
    return { values: figures.map(() => value), beams: beamsOf(value, figures) };
  const values = figures.map((_, i) => cycle[i % cycle.length]!);
  if (cycle.length === 1) return { values, beams: beamsOf(value, figures) };
  const keepsTime = lengths.reduce((sum, length) => sum + length, 0) === lengths.length;
  const inBeats = figures.map(() => 0); // a pair of long and short is not parted
  return { values, beams: keepsTime ? beamsOf(value, inBeats) : beamsOfGroups(values, cycle.length) };
}

/** A value so many times as long; undefined where one note cannot show it. */
function timesAsLong({ base, dots, tuplet }: StaffValue, times: number): StaffValue | undefined {
  if (times === 1) return { base, dots, ...(tuplet ? { tuplet } : {}) };
  if (dots || tuplet) return undefined;
  const found = TIMES.find((each) => each.times === times);
  const written = found && BASES.find((each) => each * found.base === base);
  return written ? { base: written, dots: found!.dots } : undefined;
}

const BASES: readonly StaffValue["base"][] = [1, 2, 4, 8, 16, 32];

/** By what a base is multiplied in length, and its dots: a dotted note is its base and a half. */
const TIMES: readonly { readonly times: number; readonly base: number; readonly dots: 0 | 1 }[] = [
  { times: 3 / 2, base: 1, dots: 1 },
  { times: 1 / 2, base: 1 / 2, dots: 0 },
  { times: 2, base: 2, dots: 0 },
];

/** Under one beam what stands side by side in one group and has flags. */
function beamsOfGroups(values: readonly StaffValue[], size: number): readonly Stretch[] {
  const beams: Stretch[] = [];
  for (let from = 0; from < values.length; from += size) {
    let first: number | undefined;
    const end = Math.min(from + size, values.length);
    for (let i = from; i <= end; i++) {
      const isBeamed = i < end && values[i]!.base >= 8;
      if (isBeamed) first ??= i;
      else if (first !== undefined) {
        if (i - first > 1) beams.push({ from: first, to: i - 1 });
        first = undefined;
      }
    }
  }
  return beams;
}
