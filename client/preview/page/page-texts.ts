/** What the page says of itself: its parts, the choices in its head, its days. */
export const pageTexts = {
  practice: "Practice",
  parts: "Parts",
  today: "Today",
  exercises: "Exercises",
  pieces: "Pieces",
  keys: "Keys",
  lesson: "Lesson",
  forTheLesson: "For the lesson",
  weeks: "Weeks",
  aims: "Aims",

  weeksShown: "Weeks shown",
  weeksShownFrom: (dates: string) => `Weeks shown: ${dates}`,
  allWeeks: "all weeks",
  weeksLong: (weeks: number) => `${weeks} weeks`,
  instrument: "Instrument",
  allInstruments: "all instruments",

  reading: "Files are still being read: what is here may be a part, so no trend is shown yet.",
  showCare: "Show what you noted of the body",
  putCareAway: "Put away for today",
  inMinutes: "minutes",
  asTable: "As a table",
  minutesAsTable: "Minutes a week as a table",
};
