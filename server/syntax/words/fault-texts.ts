/** Why words cannot be what is practised, as clauses. What is `typed` is as it stands in the line. */
export const faultTexts = {
  noSuchNote: (typed: string) => `there is no note ${typed}`,
  halfKind: (typed: string) => `"${typed}" alone does not name a kind of scale`,
  noKind: (typed: string) => `"${typed}" is not a kind of scale`,
  noSuchScale: (name: string) => `there is no scale "${name}" yet: declare it first`,
  singleNote: (typed: string) => `${typed} is a single note`,
  majorOrMinor: (typed: string) => `a small ${typed} could be major or minor`,
};
