/** How many days count: older ones say little of what is played now. Our own choice. */
export const LATEST_DAYS = 100;

/** A use counts half as much after so many days. Our own choice. */
const HALF_LIFE = 30;

/** How much a use counts after so many days. */
export function weightAfter(days: number): number {
  return 0.5 ** (days / HALF_LIFE);
}
