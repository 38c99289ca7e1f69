/** How far an aim has come, and when it may be reached: sentences. `best` is a tempo as it is written. */
export const aimTexts = {
  /** Of an aim that has several subjects, before its first sentence. */
  of: (subject: string, sentence: string) => `${subject}: ${sentence}`,
  reached: (when: string) => `Reached ${when}.`,
  lastDone: (when: string) => `Last done ${when}.`,
  notDone: "Not done yet.",
  notPlayedInThisWay: "Not played in this way yet.",
  notPlayed: "Not played yet.",
  noTempo: "No tempo reached yet.",
  best: (best: string, week: string) => `Best yet: ${best}, in ${week}.`,
  notWithAll: (best: string) => `${best} reached, but not yet with all that the aim asks.`,
  notInTries: (best: string, got: number, tries: number) => `${best} reached, but not in ${got} of ${tries} tries yet.`,
  notInARow: (best: string, asked: number, most: number) =>
    `${best} reached, but not ${asked} in a row yet${most > 1 ? `; ${most} at most` : ""}.`,
  ifItGoesOn: (testedWeeks: number, range: string) =>
    `If it goes on as in the last ${testedWeeks} tested weeks, in ${range}; it need not.`,
  orMore: (weeks: number) => `${weeks} ${weeks === 1 ? "week" : "weeks"} or more`,
  about: (weeks: number) => `about ${weeks} ${weeks === 1 ? "week" : "weeks"}`,
  fromTo: (earliest: number, latest: number) => `${earliest} to ${latest} ${latest === 1 ? "week" : "weeks"}`,
  overAYear: (testedWeeks: number) => `At the pace of the last ${testedWeeks} tested weeks, over a year.`,
  tooEarly: (testedWeeks: number, wanted: number) =>
    `Too early for a forecast: ${testedWeeks} of ${wanted} tested weeks.`,
  noClearChange: (testedWeeks: number) => `No forecast: no clear change over ${testedWeeks} tested weeks.`,
  falling: (testedWeeks: number) => `No forecast: slower over the last ${testedWeeks} tested weeks.`,
  hurt: (when: string) => `No forecast for now: something hurt ${when}.`,
  afterBreak: "No forecast in the first days after a break.",
  notTestedSinceThen: "No forecast: not tested since then.",
  notTestedSince: (week: string) => `No forecast: not tested since ${week}.`,
};
