/** How the fingers of a recorder player move, and what they close. */
export const fingerTexts = {
  /** From one note to another, by their fingerings; `movement` says what moves. */
  step: (notes: readonly [string, string], fingerings: readonly [string, string], movement: string) =>
    `${notes[0]} to ${notes[1]}, ${fingerings[0]} to ${fingerings[1]}: ${movement}`,
  fingers: (count: number) => `${count} ${count === 1 ? "finger" : "fingers"}`,
  theThumb: "the thumb",
  theBell: "the bell",
  moved: (parts: readonly string[]) => parts.join(" and "),
  contrary: "in contrary motion",
  halfHoles: (count: number) => (count === 1 ? "with a half hole" : `with ${count} half holes`),
  thirdRegister: "over the edge of the third register",
  otherRegister: "into the other register",
  thumbs: { closed: "thumb", half: "thumb pinched", open: "thumb off" },
  halfOf: (hole: number) => `half of ${hole}`,
  otherFingerings: (note: string) => `${note} has other fingerings too`,
  uncertainFingering: (note: string) => `the fingering of ${note} is uncertain and differs by maker`,
  fingeringFor: (fingering: string, note: string) => `${fingering} for ${note}`,
  /** `others` and `charts` in one each. */
  easier: (others: string, movement: string, charts: string) => `easier with ${others}: ${movement} (from ${charts})`,
  noGermanFingering: "not available for German fingering yet",
  hardest: (words: string) => `Hardest finger change: ${words}.`,
};
