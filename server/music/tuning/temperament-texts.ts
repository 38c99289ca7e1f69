/** A temperament of a journal's own, and why one cannot be read: clauses that follow what is declared. */
export const temperamentTexts = {
  declared: (cents: readonly number[]) => `Declared in this journal, in cents from C to B: ${cents.join(", ")}.`,
  noRatio: (word: string) => `${word} is not a ratio`,
  noSize: (word: string) => `${word} is neither a number of cents nor a ratio`,
  firstIsC: (word: string) => `the first of the twelve is C, \`0\` in cents or \`1\` as a ratio, not ${word}`,
  oneTooMany: (word: string) => `${word} is one too many: there are twelve keys, C to B`,
  notHigher: (word: string, before: string) => `${word} is not higher than ${before} before it: the keys rise`,
  reachesOctave: (word: string) => `${word} reaches the octave, and belongs below it`,
  tooFew: (given: number) =>
    `a temperament needs twelve keys, C to B, in cents or ratios, and ${given || "none"} are given`,
  choose: (names: readonly string[]) => `choose a temperament: ${names.join(", ")}`,
  justOnWhat: "just intonation needs a note: just on C, just on F#, just on Bb",
};
