/** The smaller parts of the preview: the aims, what is between lessons, the weeks, and what is at the cursor. */
export const sectionTexts = {
  noDate: "no date set",
  by: (date: string) => `by ${date}`,
  since: (date: string) => `since ${date}`,
  lastFourWeeks: "in the last four weeks",
  beforeThat: (date: string) => `Before that, from ${date}`,
  minutesByPhase: "Minutes a week, by phase",
  weekOf: "week of",
  all: "all",
  noFingerChanges: (why: string) => `Hardest finger changes: ${why}.`,
  fingerChange: (from: string, to: string) => `${from} to ${to}`,
  hiddenNotes: "Notes: hidden until you have them written out.",
  noDrawer: "This server cannot draw staves.",
};
