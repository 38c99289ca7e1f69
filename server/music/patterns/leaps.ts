import { fnv1a, shuffled, xorshift32 } from "./draw.ts";

/**
 * The order of `leaps`: it begins and ends on `home`, each other degree comes once between, and neighbours follow each
 * other as seldom as can be: never from five degrees on, twice in two or three, once in four. What can be told
 * beforehand is only that; the same text always draws the same order. A convention of this project.
 *
 * @param T the degrees are 1 to T
 * @param home from 1 to T
 * @param drawnFor what the order is drawn for: the day and the exercise
 */
export function leapOrder(T: number, home: number, drawnFor: string): number[] {
  if (T <= 1) return T === 1 ? [1] : [];
  const draw = xorshift32(fnv1a(drawnFor));
  const others = Array.from({ length: T }, (_, index) => index + 1).filter((degree) => degree !== home);
  for (let steps = 0; ; steps++) {
    const way = wayThrough(others, home, { home, steps, draw });
    if (way) return [home, ...way];
  }
}

interface Search {
  readonly home: number;
  /** How many steps from a degree to its neighbour are left. */
  readonly steps: number;
  readonly draw: () => number;
}

/** From one degree through all that are left and home; undefined where that takes more steps than there may be. */
function wayThrough(left: readonly number[], from: number, { home, steps, draw }: Search): number[] | undefined {
  if (left.length === 0) return stepsTo(from, home) <= steps ? [home] : undefined;
  for (const degree of shuffled(left, draw)) {
    const remaining = steps - stepsTo(from, degree);
    if (remaining < 0) continue;
    const rest = left.filter((each) => each !== degree);
    const way = wayThrough(rest, degree, { home, steps: remaining, draw });
    if (way) return [degree, ...way];
  }
  return undefined;
}

function stepsTo(from: number, to: number): number {
  return Math.abs(from - to) === 1 ? 1 : 0;
}
