/** How long ago a day was: `today`, `yesterday`, `9 days ago`. */
export function daysAgo(days: number): string {
  return days === 0 ? "today" : days === 1 ? "yesterday" : `${days} days ago`;
}

/** `today`, `tomorrow`, `in 5 days`. */
export function daysAhead(days: number): string {
  return days === 0 ? "today" : days === 1 ? "tomorrow" : `in ${days} days`;
}
