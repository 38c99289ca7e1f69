/** Ways of playing as words to read: articulation, rhythm, direction, how far, and the like. */
export const wayTexts = {
  /** A way by its word in the tables (`articulation-words.ts`, `comparisons.ts`); any other word is itself. */
  way: (word: string) => word,
  not: (word: string) => `not ${word}`,
  inRhythms: "in rhythms",
  oneOctave: "one octave",
  twelfth: "a twelfth",
  twoOctaves: "two octaves",
};
