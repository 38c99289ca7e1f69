/** What is said beside work that is set: when it was played, and for how many days it is. */
export const setTexts = {
  played: (days: string) => `played ${days}`,
  done: (days: string) => `done ${days}`,
  /** On many days: how many, as a word, and the last of them. */
  playedOnDays: (count: string, last: string) => `played on ${count} days, last on ${last}`,
  doneOnDays: (count: string, last: string) => `done on ${count} days, last on ${last}`,
  setForOneDay: "set for one day",
  setForDays: (count: string) => `set for ${count} days`,
  noDate: "no date set",
};
