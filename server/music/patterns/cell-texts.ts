/** Why a declared pattern cannot be read: clauses that follow what is declared. */
export const cellTexts = {
  empty: "a pattern needs at least one degree, as in `1 3 2 4`",
  tooLong: (most: number) => `a pattern can have at most ${most} degrees`,
  step: (most: number) => `the step is a whole number of degrees from 1 to ${most}`,
  noDegree: (word: string) =>
    `${word} is not a degree: degrees are whole numbers, 1 the first note, 8 the octave, 0 the note below the first`,
  outOfReach: (word: string, lowest: number, highest: number) =>
    `${word} is out of reach: degrees go from ${lowest} to ${highest}`,
};
