/** A scale that a journal declares, and why one cannot be read: clauses that follow what is declared. */
export const declaredKindTexts = {
  /** The words of the declaration. */
  sentence: (name: string, words: string) => `${name}: a scale declared in this journal, ${words}.`,
  noDegree: (word: string) => `${word} is not a degree: write 1 to 7, up to two # or b before, as in \`1 b2 3\``,
  passesOctave: (word: string) => `${word} passes the octave: only a closing \`8\` may come there`,
  startsOnOne: (word: string) => `a scale starts on \`1\`, not on ${word}`,
  closingTonic: "the closing tonic is written `8`, or left out",
  oneTooMany: (word: string, most: number) =>
    `${word} is one degree too many: an octave has ${most} keys, and a scale of more is declared in \`cents\``,
  notUpward: (word: string, before: string) => `${word} comes after ${before}: degrees go upward by number`,
  notHigher: (word: string, before: string) => `${word} is not higher than ${before} before it: a scale rises`,
  reachesOctave: (word: string) => `${word} reaches the octave: it belongs below the next tonic`,
  noCents: (word: string) => `${word} is not a number of cents above the tonic, as in \`cents 0 150 300\``,
  centsFromNought: (word: string) => `cents start with \`0\`, the tonic, not with ${word}`,
  centsReachOctave: (word: string) => `${word} reaches the octave: cents stay below 1200`,
  twoNotes: "a scale needs at least two notes, as in `1 b2 3 4 5 b6 7`",
  atMost: (most: number) => `a scale can have at most ${most} notes`,
  unequalWays: (up: number, down: number) => `${up} notes go up and ${down} down: both ways have as many`,
};
