/** The preview's table of keys. */
export const keyTableTexts = {
  daysInWeeks: (weeks: number) => `days in ${weeks} weeks`,
  daysOverAll: "days, over all weeks",
  borders: "Double border: the key of a current piece. Single: a key one accidental away.",
  likely: (piece: string) => `${piece} (likely)`,
  keyOf: (pieces: readonly string[]) => `key of ${pieces.join(", ")}`,
  besideKeyOf: (pieces: readonly string[]) => `next to the key of ${pieces.join(", ")}`,
};
