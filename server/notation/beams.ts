import type { StaffValue, Stretch } from "./staff.ts";

/** A figure under one beam has at most so many notes; a longer one is cut. */
const LONGEST_BEAM = 8;

/**
 * The beams of an exercise: notes of an eighth and less, by beats, or by the pattern's figures where those have three
 * notes or more. Tuplets are beamed by themselves whatever the figures. Common practice, no source.
 *
 * @param figures which figure each note belongs to
 */
export function beamsOf(value: StaffValue, figures: readonly number[]): readonly Stretch[] {
  if (value.base < 8) return [];
  const lengths = value.tuplet || !hasLongFigures(figures) ? inBeats(figures.length, value) : figureSizes(figures);
  const cut = lengths.flatMap((length) => (length > LONGEST_BEAM ? inEqualParts(length) : [length]));
  const beams: Stretch[] = [];
  let from = 0;
  for (const length of cut) {
    if (length > 1) beams.push({ from, to: from + length - 1 });
    from += length;
  }
  return beams;
}

function hasLongFigures(figures: readonly number[]): boolean {
  const sizes = figureSizes(figures);
  return sizes.length > 1 && sizes.some((size) => size > 2);
}

/** How many notes stand in each figure. */
export function figureSizes(figures: readonly number[]): readonly number[] {
  const sizes: number[] = [];
  for (const [i, figure] of figures.entries()) {
    if (i > 0 && figure === figures[i - 1]) sizes[sizes.length - 1]!++;
    else sizes.push(1);
  }
  return sizes;
}

function inBeats(count: number, { base, tuplet }: StaffValue): readonly number[] {
  const size = tuplet ?? (base === 32 ? 8 : 4);
  const whole = Array.from({ length: Math.floor(count / size) }, () => size);
  return count % size === 0 ? whole : [...whole, count % size];
}

function inEqualParts(length: number): readonly number[] {
  const parts = Math.ceil(length / LONGEST_BEAM);
  return Array.from(
    { length: parts },
    (_, i) => Math.floor(((i + 1) * length) / parts) - Math.floor((i * length) / parts),
  );
}

/**
 * To which side a beam that a note has alone goes: into the pair of long and short that the note is in. Common
 * practice, no source.
 */
export function hookSide({ from, to }: Stretch, index: number): "left" | "right" {
  if (index === from) return "right";
  return index === to || (index - from) % 2 === 1 ? "left" : "right";
}
