/** What is said across the days of a journal. Dates are as they are written, `2026-03-02`. */
export const fileTexts = {
  /** @param where the day is already, as one of the two below */
  duplicateDay: (date: string, where: string) =>
    `${date} is already ${where}. For a second sitting, write \`session\` under that day.`,
  above: (line: number) => `above, in line ${line}`,
  inFile: (path: string, line: number) => `in ${path}, line ${line}`,
  sameDays: (folders: string) =>
    `The folders ${folders} have the same days, as those of several players do. Put an empty file named \`journal.practice\` into each: then each is a journal of its own.`,
  strayDay: (date: string, file: string) =>
    `${date} falls among the days of ${file}, but most files of this journal do not overlap. Is the date right?`,
  futureDay: (date: string) => `${date} is in the future. Add \`plan\`, or check the date.`,
  outOfOldestFirst: (date: string, before: string) => outOfOrder(date, before, "oldest"),
  outOfNewestFirst: (date: string, before: string) => outOfOrder(date, before, "newest"),
  declaredTwice: (declaration: string) =>
    `\`${declaration}\`: this is declared already, and the first one counts. Delete one of them.`,

  aimPast: "The date of this aim has passed. Set a new one, or delete the line.",
  /** @param subject which it is of several; else what the line says */
  aimFar: (subject: string | undefined, near: number, by: string) =>
    `At the recent pace ${subject ?? "this"} would be near ${near} by ${by}. A later date or a nearer aim leaves room to play with ease.`,

  /** Of a tempo that was marked clean, far above the best before it. */
  overBest: (tempo: string, before: string, when: string) => leap(tempo, "your best before", before, when),
  overFastest: (tempo: string, before: string, when: string) =>
    leap(tempo, "the fastest you tried before", before, when),
  sameDay: "earlier the same day",
  on: (date: string) => `on ${date}`,
};

function outOfOrder(date: string, before: string, first: "oldest" | "newest"): string {
  return `${date} comes after ${before}, but this file runs ${first} first. Is the date right?`;
}

function leap(tempo: string, what: string, before: string, when: string): string {
  return `${tempo} is over one and a half times ${what}, ${before} ${when}. If that is right, leave it. Otherwise check the digits, beat and note value.`;
}
