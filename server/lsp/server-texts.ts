/** What the server says to whoever uses the editor. */
export const serverTexts = {
  /** What an edit is called, where an editor lists what can be undone. */
  edits: {
    newDay: "New day",
    newDayWithPhases: "New day with phases",
    writePlan: "Write today's plan",
    repeatFaster: "Repeat an entry faster",
    repeatSlower: "Repeat an entry slower",
    writeNotes: "Write the notes out",
    fingerChange: "Practise the hardest finger change",
    keepBothSides: "Keep both sides of a merge",
    declareTitle: "Declare a title",
    respell: "Respell the notes",
    moveYear: "Move a year into its own file",
    changeNames: "Change the names of notes",
    writeTempo: "Write the tempo that was played",
    goToLastTime: "Go to last time",
  },
  unknownFile: "Open this file as a practice journal, or open its folder: Daystave does not know it.",
  makesNoFiles: "This editor cannot make a new file for Daystave, so nothing was moved.",
  changed: "The text has changed in the meantime and was left as it is. Please try again.",
  noTempo: "No tempo was played that could be written.",
  /** From 1. */
  line: (line: number, file: string) => `Line ${line} of ${file}`,
  unknownTimeZone: (name: string) =>
    `“${name}” is not a known time zone; a zone is written like Europe/Oslo. Until then, today is this computer's own day.`,
  days: (count: number) => `${count} ${count === 1 ? "day" : "days"}`,
  languages: {
    english: "English",
    german: "German",
    dutch: "Dutch",
    french: "French",
    italian: "Italian",
    spanish: "Spanish",
  },
};
