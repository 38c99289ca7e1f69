/** What stands beside an offer: why it is made, or what it is. */
export const completionTexts = {
  today: "today",
  tomorrow: "tomorrow",
  todayWithPhases: "today, with the phases of the last session",
  usualLine: "a line as you write it",
  asLastDeclared: "as you declared the last one",
  /** Labels of lists of notes whose names are hidden: they are written all the same. */
  theNotes: "the notes",
  theNotesOf: (way: string) => `the notes, ${way}`,
  signature: "signature",
  readUpward: "read upward",
  set: "set",
  setOn: (date: string) => `set on ${date}`,
  aim: "aim",
  workBy: (work: string, date: string) => `${work}, by ${date}`,
  naturalMinor: (signature: string) => `natural minor, ${signature}`,
  oneBeatASecond: "one beat a second",
  lastReached: (date: string) => `last reached ${date}`,
  lastReachedAt: (tempo: string, date: string) => `last reached ${tempo} on ${date}`,
  notchUp: "a notch up",
  notchDown: "a notch down",
  tempoBefore: "the tempo before",
  /** After where to start; `ago` is when that was. */
  youLastReached: (tempo: string, ago: string) => `You last reached ${tempo}, ${ago}.`,
};
