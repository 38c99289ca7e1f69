import type { AttemptRecord } from "../../server/history/record.ts";
import { parseIsoDate } from "../../server/journal/calendar.ts";
import { METRONOME_STEPS } from "../../server/music/notes/note-value.ts";
import { attempt } from "./attempt.ts";

/** Numbers spread evenly from 0 to below 1, the same for the same seed: SplitMix with a mixer of 32 bits (from memory). */
export function randomFrom(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x9e3779b9) | 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32;
  };
}

/** A standard normal deviate: Box and Muller (1958). */
export function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}

/**
 * An invented player, one day a week: three attempts on neighbouring metronome steps, of which the last fails. The
 * second, the week's best, lies at `level` (a place among METRONOME_STEPS) plus `gain` a week plus a normal deviation
 * of `deviation` steps.
 */
export function playerAround(
  level: number,
  deviation: number,
  weeks: number,
  random: () => number,
  gain = 0,
): AttemptRecord[] {
  const monday = parseIsoDate("2026-01-05")!;
  return Array.from({ length: weeks }, (_, week) => {
    const at = Math.round(level + gain * week + deviation * normal(random));
    const best = Math.min(Math.max(at, 1), METRONOME_STEPS.length - 2);
    return [-1, 0, 1].map((step, order) =>
      attempt({ day: monday + 7 * week, order, rate: METRONOME_STEPS[best + step]!, reached: step < 1 }),
    );
  }).flat();
}
