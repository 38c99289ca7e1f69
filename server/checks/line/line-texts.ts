/** What is said of lines of any type. */
export const lineTexts = {
  nothingPlayed: "Say what you played first: a scale (`D minor`), notes (`notes E5 F5`), or a title in quotes.",
  /** @param because a clause; it names a note that is none where the language of the names is given */
  faultySubject: (because: string, names: string | undefined) =>
    `${capital(because)}${names === undefined ? "" : ` in ${capital(names)} names`}.`,
  englishNotes: " Notes are the letters A to G, with up to two sharps or flats.",
  notesIn: (names: string, examples: string) => ` The journal names notes in ${capital(names)}, as ${examples}.`,
  oneLineEach: "Write one line for each",
  titleNotDeclared: (title: string) => `"${title}" is not declared yet, so its key and goal are not known.`,
  /** @param declaration as it is written */
  declare: (declaration: string) => `Declare ${declaration}`,
  claimsOnNothing: "Notes and steps after a colon can be checked only for a single scale or arpeggio.",

  /** What lines that frame others take, by their type. */
  takes: {
    day: "a day line takes a weekday, minutes, `lesson`, `plan`, or `rest` with a reason",
    session: "a session takes a time of day and minutes",
    phase: "a phase takes minutes, `plan`, or `with` and words",
    break: "a break takes minutes",
    plan: "nothing more goes on this line",
  },
  impossibleTime: (typed: string) =>
    `"${typed}" is not a possible time: 1 to 1,440 minutes a day, 0 to 59 after hours.`,

  conflictMarker:
    "Keep the lines that are right and delete the markers: two versions of this journal were merged, and this marker was left behind.",
  tooLong: (length: number, most: number) =>
    `Break this line into several: it has ${length} characters and was not read. A line can have at most ${most}.`,
  notADeclaration: (word: string) => `"${word}" is not a declaration.`,
  kept: "Kept as written, not counted. A remark begins with `--`.",
  noDay: "There is no date above this line. Write one, in the form year-month-day, as in `2026-03-02`.",

  /** @param because a clause */
  faultyDeclaration: (because: string) => `${capital(because)}.`,
  belowDay: (word: string) => `\`${word}\` applies to the whole journal: move it above the first day.`,
  moveAbove: "Move it above the first day",

  notInCalendar: (date: string) => `${date} is not in the calendar, so the lines below have no date.`,
  notIsoDate: (date: string) => `${date} is not in the form year-month-day, so the lines below have no date.`,
  otherWeekday: (date: string, right: string, written: string) =>
    `${date} is a ${right}, not a ${written}. Either the date or the weekday is wrong.`,
  changeDateTo: (date: string) => `Change the date to ${date}`,
};

function capital(words: string): string {
  return words[0]!.toUpperCase() + words.slice(1);
}
