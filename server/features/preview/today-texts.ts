/** The preview's part on the present day, and the plan in it. Examples stand between backquotes. */
export const todayTexts = {
  rest: "Today is a day of rest.",
  firstLine: "Write a line in the journal, such as `D minor, slurred, 8ths at 60 clean`, and it appears here.",
  firstEvening: "Your first lines are here. After some weeks they can show which way a tempo goes.",
  startAt: (tempo: string) => `start at ${tempo}`,
  nothingToGoBy: "Name a piece, an aim or an instrument, and the plan has something to go by.",
  offerShortDay: "Show a plan for a short day",
  offerAnother: "Show a plan for another session",
  minutes: (minutes: number) => `${minutes} min`,
  weekWithoutMinutes: "This week: no minutes yet.",
  /** With lines of that many days, none of which has minutes. */
  weekOfDays: (days: number) => `This week: ${days} ${days === 1 ? "day" : "days"}, no minutes written.`,
  week: (minutes: number) => `This week: ${minutes} ${minutes === 1 ? "minute" : "minutes"}.`,
};
