/** Which way a tempo goes, and by how much: parts of sentences. Numbers of notches come as they are shown, `1½`. */
export const trendTexts = {
  tooEarly: "too early to say",
  noClearChange: "no clear change",
  up: "up",
  down: "down",
  /** `count` is half, one or more notches, `numeral` the same as it is shown. */
  notches: (count: number, numeral: string) =>
    count === 0.5 ? "half a notch" : count === 1 ? "a notch" : `${numeral} notches`,
  little: "less than half a notch",
  inFourWeeks: (way: string, by: string) => `${way} ${by} in four weeks`,
  atMost: (way: string, by: string) => `${way} by at most about ${by} in four weeks`,
  about: (way: string, by: string) => `${way} about ${by} in four weeks`,
  aboutBetween: (way: string, by: string, least: string, most: string) =>
    `${way} about ${by} in four weeks (${least} to ${most})`,
  /** Where it is said elsewhere that it is in four weeks. */
  by: (way: string, by: string) => `${way} ${by}`,
  lessThanATenth: "less than 0.1",
  sinceReturn: (trend: string, date: string) => `${trend}, since the return on ${date}`,
  since: (trend: string, date: string) => `${trend} since ${date}`,
  /** Of a week: in how many of its tries the tempo was reached. */
  reachedOf: (reached: number, tries: number) => `${reached} of ${tries}`,
  tested: "tested",
  slowWork: "slow work",
  withNote: (best: string, note: string) => `${best} (${note})`,
};
