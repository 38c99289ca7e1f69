/** What a chart of tempos shows, in parts of sentences: each becomes a sentence of its own. */
export const tempoTexts = {
  noTempo: "no tempo was reached",
  /** A tempo with the Monday of its week. */
  inWeek: (tempo: string, monday: string) => `${tempo} (week of ${monday})`,
  best: (best: string) => `best reached ${best}`,
  bests: (first: string, last: string) => `weekly best from ${first} to ${last}`,
  highest: (bests: string, highest: string) => `${bests}, highest ${highest}`,
  slowWeeks: (weeks: number) => `${weeks} ${weeks === 1 ? "week" : "weeks"} of slow work`,
  weeksWithout: (weeks: number) => `${weeks} ${weeks === 1 ? "week" : "weeks"} without a tempo reached`,
  /** How many of some attempts were reached. */
  attempts: (count: number, reached: number) =>
    `${count} ${count === 1 ? "attempt" : "attempts"}, ${reached < count ? `${reached === 0 ? "none" : reached} reached` : count === 1 ? "reached" : "all reached"}`,
  withoutDot: (attempts: string, left: number) => `${attempts}, ${left} without a dot, as a higher one is close by`,
  trend: (trend: string) => `trend: ${trend}`,
  aim: (tempo: string) => `aim: ${tempo}`,
  aimBy: (tempo: string, date: string) => `aim: ${tempo} by ${date}`,
  /** Beside the mark of an aim. */
  aimMark: "aim",
  /** Why there is no chart. */
  nothing: (weeks: number) =>
    `There is no tempo ${weeks === 1 ? "this week" : `in these ${weeks} weeks`}. Write one and how it went on the exercise's line, such as \`at 60 clean\`, and its chart begins.`,
};
