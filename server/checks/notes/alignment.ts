/** How a typed thing and an expected one compare; `renamed` is right too, and not as the expected one is written. */
export type Likeness = "same" | "renamed" | "spelling" | "octave" | "wrong";

type Compare = (typed: number, expected: number) => Likeness;

/** What an alignment does at one place: `typed` and `expected` are indices into the two lists. */
export type AlignmentStep =
  | { readonly type: Exclude<Likeness, "renamed">; readonly typed: number; readonly expected: number }
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
  renamed: 1,
  spelling: DIFFERENCE + 1,
  octave: DIFFERENCE + 2,
  wrong: DIFFERENCE + 5,
};
/** Dearer than a wrong note, so that two wrong notes are not told as one missing and one too many. */
const GAP = DIFFERENCE + 6;
/** A last thing left out: dearer than having it, cheaper than any difference. */
const LEFT_OUT = 4;

/** How far from the straight way through both lists an alignment may stray, in things. */
const STRAY = 48;

/** Bits of a move; a cell may be reached as cheaply by several. */
const SUBSTITUTED = 1;
const EXTRA = 2;
const MISSING = 4;

interface Table {
  /** The cost of all typed things against so many expected ones, by the slots of the last row. */
  readonly last: Float64Array;
  /** The moves that lead to each cell within the band at least cost, row by row. */
  readonly moves: Uint8Array;
  readonly width: number;
  /** The column of expected things at which the band of row `i` begins is `i - before`. */
  readonly before: number;
}

/** The cheapest way through both lists (Wagner and Fischer 1974), kept to a band around the diagonal (Ukkonen 1985). */
function fill(typed: number, expected: number, likeness: Compare, stray: number): Table {
  const before = Math.min(typed, Math.max(0, typed - expected) + stray);
  const width = before + Math.min(expected, Math.max(0, expected - typed) + stray) + 1;
  const moves = new Uint8Array((typed + 1) * width);
  let above = new Float64Array(width + 1).fill(Number.POSITIVE_INFINITY);
  let row = new Float64Array(width + 1);
  for (let i = 0; i <= typed; i++) {
    row.fill(Number.POSITIVE_INFINITY);
    const lastSlot = Math.min(width - 1, expected - i + before);
    for (let slot = Math.max(0, before - i); slot <= lastSlot; slot++) {
      const j = i - before + slot;
      const substituted = i > 0 && j > 0 ? above[slot]! + COST[likeness(i - 1, j - 1)] : Number.POSITIVE_INFINITY;
      const extra = i > 0 ? above[slot + 1]! + GAP : Number.POSITIVE_INFINITY;
      const missing = slot > 0 ? row[slot - 1]! + GAP : Number.POSITIVE_INFINITY;
      const least = i === 0 && j === 0 ? 0 : Math.min(substituted, extra, missing);
      row[slot] = least;
      moves[i * width + slot] =
        (least === substituted ? SUBSTITUTED : 0) | (least === extra ? EXTRA : 0) | (least === missing ? MISSING : 0);
    }
    [above, row] = [row, above];
  }
  return { last: above, moves, width, before };
}

/**
 * Of the moves that cost as little: one that goes on with a run, so that what is missing in one piece is told in one
 * piece. What may be missing at the end as well as before it is missing at the end.
 */
function chosen(moves: number, before: number): number {
  if (before !== SUBSTITUTED && moves & before) return before;
  return [SUBSTITUTED, EXTRA, MISSING].find((move) => moves & move)!;
}

function walkBack(
  { moves, width, before }: Table,
  typed: number,
  expected: number,
  likeness: Compare,
): AlignmentStep[] {
  const steps: AlignmentStep[] = [];
  let [i, j, move] = [typed, expected, MISSING];
  while (i > 0 || j > 0) {
    move = chosen(moves[i * width + (j - i + before)]!, move);
    if (move !== MISSING) i--;
    if (move !== EXTRA) j--;
    const compared = move === SUBSTITUTED ? likeness(i, j) : move === EXTRA ? "extra" : "missing";
    steps.push({ type: compared === "renamed" ? "same" : compared, typed: i, expected: j });
  }
  return steps.reverse();
}

/**
 * Lays two lists side by side with the fewest differences: a wrong thing is one, as is one missing or one too many.
 * Among ways with as many differences a wrong thing goes before a missing one and one too many. The way through keeps
 * near the diagonal: the differences are the fewest only where it strays by no more than `stray`.
 *
 * @param typed the number of things typed
 * @param expected the number of things expected
 * @param mayLeaveOutLast whether the last expected thing may be left out for nothing
 * @param stray as many more missing than extra things, or the reverse, as may come to stand at one place
 */
export function align(
  typed: number,
  expected: number,
  mayLeaveOutLast: boolean,
  likeness: Compare,
  stray = STRAY,
): Alignment {
  const table = fill(typed, expected, likeness, Math.min(stray, STRAY));
  const end = expected - typed + table.before;
  const [whole, short] = [table.last[end]!, table.last[end - 1] ?? Number.POSITIVE_INFINITY];
  const leavesOut = mayLeaveOutLast && expected > 1 && short + LEFT_OUT < whole;
  return {
    differences: Math.floor((leavesOut ? short : whole) / DIFFERENCE),
    steps: walkBack(table, typed, leavesOut ? expected - 1 : expected, likeness),
  };
}
