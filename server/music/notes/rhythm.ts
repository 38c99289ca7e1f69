/**
 * Uneven pairs, in the note value that is written: they last as long as two even notes. A dotted note is three times as
 * long as the one that makes it up, a swung one twice (common practice, no source). How unequal notes inégales are is
 * for the player to say; three to two is one way (from memory).
 */
const PAIRS: Readonly<Record<string, readonly number[]>> = {
  dotted: [3 / 2, 1 / 2],
  "reverse dotted": [1 / 2, 3 / 2],
  swung: [4 / 3, 2 / 3],
  inégal: [6 / 5, 4 / 5],
};

/** A long note of `LSS` in short ones, which have the note value that is written. Common practice, no source. */
const LONG = 2;

const EVEN: readonly number[] = [1];

/**
 * How long the notes of a rhythm are, one after the other and then again from the first, in the note value that is
 * written: `3/2, 1/2` of `dotted`, `2, 1, 1` of `LSS`.
 *
 * @param rhythm as an attempt's conditions have it; what is none is even
 */
export function rhythmLengths(rhythm: string | undefined): readonly number[] {
  if (rhythm === undefined) return EVEN;
  if (/^[LS]+$/.test(rhythm)) return Array.from(rhythm, (letter) => (letter === "L" ? LONG : 1));
  return PAIRS[rhythm] ?? EVEN;
}

/** When each of so many notes begins, in that note value, and at the end when the last one is over. */
export function noteStarts(lengths: readonly number[], count: number): readonly number[] {
  const starts = [0];
  for (let i = 0; i < count; i++) starts.push(starts[i]! + lengths[i % lengths.length]!);
  return starts;
}
