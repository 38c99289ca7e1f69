/** What is known of an exercise beside its trend, as sentences. */
export const factsTexts = {
  backSince: (date: string, days: number, testedWeeks: number, wanted: number) =>
    `Back since ${date} after ${days} days; ${testedWeeks} of ${wanted} tested weeks.`,
  settled: (tempo: string, monday: string, tries: number) =>
    `Settled at ${tempo} since the week of ${monday} (${tries} tries).`,
  /** Of one tempo, and of a further one in the same sentence: in how many tries it was reached, on how many days. */
  firstShare: (tempo: string, reached: number, tries: number, days: number) =>
    `${tempo}: ${reached} of ${tries} tries reached, on ${days} days`,
  furtherShare: (tempo: string, reached: number, tries: number, days: number) =>
    `${tempo}: ${reached} of ${tries}, on ${days} days`,
  /** Two ways of playing; the sentence begins with the first of them. */
  comparison: (one: string, another: string, lower: number, weeks: number, percent: number) =>
    `${one} was below ${another} in ${lower} of ${weeks} weeks, by about ${percent} %.`,
};
