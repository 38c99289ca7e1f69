/** Note values and tempos as words to read; what is written into a journal has the journal's own words. */
export const valueTexts = {
  /** A note value, or a beat, by its first word in the tables: `8ths`, `dotted quarter`. */
  value: (word: string) => word,
  /** `8ths at 72`. */
  at: (value: string, tempo: string) => `${value} at ${tempo}`,
  /** Where no note value is known: `at half=60`. */
  atTempo: (tempo: string) => `at ${tempo}`,
};
