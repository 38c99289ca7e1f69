import fc from "fast-check";

/**
 * How many random cases a property is tried on; its seed stands beside it. DAYSTAVE_RUNS=10 tries ten times as many, and
 * gives each test ten times as long (vitest.config.mts, which runs this before every file).
 */
const TIMES = Number(process.env["DAYSTAVE_RUNS"] ?? 1);

/** A value or a line, in microseconds. */
export const MANY = Math.ceil(3000 * TIMES);
/** A text of some lines: what a property has that names no number of its own. */
const SOME = Math.ceil(400 * TIMES);
/** A journal, a command or a picture. */
export const FEW = Math.ceil(100 * TIMES);

fc.configureGlobal({ numRuns: SOME });
