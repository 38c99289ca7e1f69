/** How a typed thing and an expected one compare; the higher, the worse. */
export type Likeness = "same" | "spelling" | "octave" | "wrong";

/** What an alignment does at one place: `typed` and `expected` are indices into the two lists. */
export type AlignmentStep =
  | { readonly type: Likeness; readonly typed: number; readonly expected: number }
  /** A typed thing too many; `expected` is what it stands before. */
  | { readonly type: "extra"; readonly typed: number; readonly expected: number }
  /** An expected thing that is not there; `typed` is what it should stand before. */
  | { readonly type: "missing"; readonly typed: number; readonly expected: number };

export interface Alignment {
  /** The number of differences; what may be left out and is, is none. */
  readonly differences: number;
  /** In order; a last thing that may be left out has no step where it is left out. */
  readonly steps: readonly AlignmentStep[];
}

/** One difference. Below it stand the preferences among alignments with as many differences. */
const DIFFERENCE = 1 << 16;
const COST: Readonly<Record<Likeness, number>> = {
  same: 0,
  spelling: DIFFERENCE + 1,
  octave: DIFFERENCE + 2,
  wrong: DIFFERENCE + 5,
};
/** Dearer than a wrong note, so that two wrong notes are not told as one missing and one too many. */
const GAP = DIFFERENCE + 6;
/** A last thing left out: dearer than having it, cheaper than any difference. */
const LEFT_OUT = 4;

/** How far from the straight way through both lists an alignment of long lists may stray, in things. */
const STRAY = 48;
/** Lists up to this long are aligned without such a limit. */
const SHORT = 128;

const SUBSTITUTED = 0;
const EXTRA = 1;
const MISSING = 2;

interface Table {
  /** The cost of all typed things against so many expected ones, by the slots of the last row. */
  readonly last: Float64Array;
  /** The move that led to each cell within the band, row by row. */
  readonly moves: Uint8Array;
  readonly width: number;
  /** The column of expected things at which the band of row `i` begins is `i - before`. */
  readonly before: number;
}

/** The cheapest way through both lists (Wagner and Fischer 1974), kept to a band around the diagonal (Ukkonen 1985). */
function fill(typed: number, expected: number, likeness: (typed: number, expected: number) => Likeness): Table {
  const stray = Math.max(typed, expected) <= SHORT ? SHORT : STRAY;
  const before = Math.max(0, typed - expected) + stray;
  const width = before + Math.max(0, expected - typed) + stray + 1;
  const moves = new Uint8Array((typed + 1) * width);
  let above = new Float64Array(width + 1).fill(Number.POSITIVE_INFINITY);
  for (let i = 0; i <= typed; i++) {
    const row = new Float64Array(width + 1).fill(Number.POSITIVE_INFINITY);
    for (let slot = 0; slot < width; slot++) {
      const j = i - before + slot;
      if (j < 0 || j > expected) continue;
      if (i === 0 && j === 0) {
        row[slot] = 0;
        continue;
      }
      const substituted = i > 0 && j > 0 ? above[slot]! + COST[likeness(i - 1, j - 1)] : Number.POSITIVE_INFINITY;
      const extra = i > 0 ? above[slot + 1]! + GAP : Number.POSITIVE_INFINITY;
      const missing = slot > 0 ? row[slot - 1]! + GAP : Number.POSITIVE_INFINITY;
      const least = Math.min(substituted, extra, missing);
      row[slot] = least;
      moves[i * width + slot] = least === substituted ? SUBSTITUTED : least === extra ? EXTRA : MISSING;
    }
    above = row;
  }
  return { last: above, moves, width, before };
}

function walkBack(
  { moves, width, before }: Table,
  typed: number,
  expected: number,
  likeness: (typed: number, expected: number) => Likeness,
): AlignmentStep[] {
  const steps: AlignmentStep[] = [];
  let [i, j] = [typed, expected];
  while (i > 0 || j > 0) {
    const move = moves[i * width + (j - i + before)];
    if (move !== MISSING) i--;
    if (move !== EXTRA) j--;
    const type = move === MISSING ? "missing" : move === EXTRA ? "extra" : likeness(i, j);
    steps.push({ type, typed: i, expected: j });
  }
  return steps.reverse();
}

/**
 * Lays two lists side by side with the fewest differences: a wrong thing is one, as is one missing or one too many. Among
 * ways with as many differences a wrong thing goes before a missing one and one too many. The way through lists of over
 * 128 things keeps near the diagonal, so that theirs is the fewest only where it does not stray by more than 48.
 *
 * @param typed the number of things typed
 * @param expected the number of things expected
 * @param mayLeaveOutLast whether the last expected thing may be left out for nothing
 */
export function align(
  typed: number,
  expected: number,
  mayLeaveOutLast: boolean,
  likeness: (typed: number, expected: number) => Likeness,
): Alignment {
  const table = fill(typed, expected, likeness);
  const end = expected - typed + table.before;
  const [whole, short] = [table.last[end]!, table.last[end - 1] ?? Number.POSITIVE_INFINITY];
  const leavesOut = mayLeaveOutLast && expected > 1 && short + LEFT_OUT < whole;
  return {
    differences: Math.floor((leavesOut ? short : whole) / DIFFERENCE),
    steps: walkBack(table, typed, leavesOut ? expected - 1 : expected, likeness),
  };
}
