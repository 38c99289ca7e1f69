/** Hints within a line. */
export const inlayTexts = {
  /** Behind an exercise of today: the tempo that was reached last. */
  last: (tempo: string) => `last ${tempo}`,
  reachedOn: (date: string) => `Reached on ${date}.`,
  notesAMinute: (notes: string) => `= ${notes} notes a minute`,
  range: (low: string, high: string) => `${low} to ${high}`,
};
