/** Sets of places in a list, 32 to a word: place `i` is bit `i % 32` of word `i / 32`. */
export type Places = Int32Array;

export function noPlaces(length: number): Places {
  return new Int32Array((length + 31) >> 5);
}

/**
 * The fewest differences between two lists, as `align` counts them and without the way through: Levenshtein's distance
 * by bit vectors (Myers 1999; Hyyrö 2003 for whole lists), thirty-two expected things at a time.
 *
 * @param typed for each typed thing, the places of the expected ones that it is right for
 * @param expected the number of things expected, one or more
 * @param mayLeaveOutLast whether the last expected thing may be left out for nothing
 * @param most where there are more, no matter how many
 * @returns the number of differences; any number over `most` where there are more
 */
export function countDifferences(
  typed: readonly Places[],
  expected: number,
  mayLeaveOutLast: boolean,
  most: number,
): number {
  const last = (expected - 1) & 31;
  // Down the table, from one expected thing to the next, the count goes up by one, down by one, or stays.
  const up = noPlaces(expected).fill(-1);
  const down = noPlaces(expected);
  const words = up.length;
  let differences = expected;
  for (let i = 0; i < typed.length; i++) {
    const right = typed[i]!;
    let [grows, shrinks] = [1, 0];
    for (let word = 0; word < words; word++) {
      const [above, below] = [up[word]!, down[word]!];
      const either = right[word]! | below;
      const equal = right[word]! | shrinks;
      const along = (((equal & above) + above) ^ above) | equal;
      const more = below | ~(along | above);
      const fewer = above & along;
      if (word === words - 1) differences += ((more >>> last) & 1) - ((fewer >>> last) & 1);
      const moved = (more << 1) | grows;
      const movedDown = (fewer << 1) | shrinks;
      up[word] = movedDown | ~(either | moved);
      down[word] = moved & either;
      grows = more >>> 31;
      shrinks = fewer >>> 31;
    }
    if (differences - (typed.length - i - 1) - 1 > most) return differences;
  }
  if (!mayLeaveOutLast || expected < 2) return differences;
  const without = differences - ((up[words - 1]! >>> last) & 1) + ((down[words - 1]! >>> last) & 1);
  return Math.min(differences, without);
}
