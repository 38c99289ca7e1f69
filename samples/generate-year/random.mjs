/**
 * Chance that is the same at every run: mulberry32, a generator with a state of 32 bits (from memory).
 * Gives a function that returns the next number from 0 up to, but not including, 1.
 */
export function mulberry32(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 0x1_0000_0000;
  };
}

/** One of the list. */
export function oneOf(list, random) {
  return list[Math.floor(random() * list.length)];
}
