import { UNIT } from "../history/thresholds.ts";

/** A line with the time it takes. */
export interface Timed {
  readonly minutes: number;
  /** It counts among the pieces, which keep their part of the time. */
  readonly piece: boolean;
}

/**
 * The indexes of the lines before which a pause goes, so that no stretch is longer than that, but for a single line.
 */
export function pausesBefore(lines: readonly Pick<Timed, "minutes">[], longest: number): number[] {
  const before: number[] = [];
  let played = 0;
  for (const [i, { minutes }] of lines.entries()) {
    if (played > 0 && played + minutes > longest) {
      before.push(i);
      played = 0;
    }
    played += minutes;
  }
  return before;
}

/**
 * The minutes of each line so that they and their pauses come to no more than there is: the longest line gives five
 * minutes, of equals the last, until they do; one that has no more to give is left out (0).
 *
 * @param half whether pieces are to have at least half of the time that is played
 */
export function fitted(lines: readonly Timed[], most: number, longest: number, half: boolean): number[] {
  const minutes = lines.map((line) => line.minutes);
  const isOver = (): boolean => total(minutes, longest) > most;
  const played = (piece: boolean): number =>
    lines.reduce((sum, line, i) => (line.piece === piece ? sum + minutes[i]! : sum), 0);
  const isShort = (): boolean => half && played(true) < played(false);
  while (isOver() || isShort()) {
    const may = lines.flatMap((line, i) => (minutes[i]! > 0 && !(isShort() && line.piece) ? [i] : []));
    const gives = may.reduce((a, i) => (a === undefined || minutes[i]! >= minutes[a]! ? i : a), may[0]);
    if (gives === undefined) break;
    minutes[gives] = Math.max(0, minutes[gives]! - UNIT);
  }
  return minutes;
}

/** Lines and pauses together. */
export function total(minutes: readonly number[], longest: number): number {
  const left = minutes.filter((each) => each > 0).map((each) => ({ minutes: each }));
  return left.reduce((sum, each) => sum + each.minutes, 0) + UNIT * pausesBefore(left, longest).length;
}

/**
 * Units shared out: each line takes one, then a second, in turn from the first, up to its most.
 *
 * @returns the units of each line, and what is left over
 */
export function shared(units: number, most: readonly number[]): { readonly units: number[]; readonly left: number } {
  const given = most.map(() => 0);
  let left = units;
  for (let round = 0; left > 0 && given.some((own, i) => own < most[i]!); round++) {
    for (let i = 0; i < given.length && left > 0; i++) {
      if (given[i]! > round || given[i]! >= most[i]!) continue;
      given[i]!++;
      left--;
    }
  }
  return { units: given, left };
}
