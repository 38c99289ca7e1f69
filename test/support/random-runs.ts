import fc from "fast-check";

/**
 * How many random cases a property is tried on; its seed stands beside it. DAYSTAVE_RUNS=4 tries four times as many, as
 * `.ci/run` does, and gives each test four times as long (vitest.config.mts, which runs this before every file).
 */
const TIMES = Number(process.env["DAYSTAVE_RUNS"] ?? 1);

/** So many times as many as are wanted at least. */
export const times = (count: number): number => Math.ceil(count * TIMES);

/** A value or a line, in microseconds. */
export const MANY = times(1200);
/** A day of some lines, each read by itself as well. */
export const DAYS = times(400);
/** A text of some lines: what a property has that names no number of its own. */
const SOME = times(80);
/** A journal, a command or a picture. */
export const FEW = times(20);

fc.configureGlobal({ numRuns: SOME });

/** With many more random cases, as `.ci/run` has them, what else has very many is not cut short either. */
export const IN_FULL = TIMES >= 4;

/**
 * The cases that one of several tests goes through which hold the same of all of them: each its share, and together all.
 * In full each goes through all.
 */
export function inTurns<T>(all: readonly T[], turn: number, turns: number): readonly T[] {
  return IN_FULL ? all : all.filter((_, i) => i % turns === turn);
}
