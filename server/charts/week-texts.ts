/** Minutes of practice by week and phase. */
export const weekTexts = {
  others: "others",
  notDivided: "not divided",
  /** Of all weeks, the weeks with practice and all of them, and the longest with its Monday. */
  minutes: (minutes: number, practised: number, weeks: number, longest: string, most: number) =>
    `${minutes} minutes in ${practised} of ${weeks} weeks, most in the week of ${longest}: ${most}.`,
  nothing:
    "There are no minutes in these weeks. Write them after a date, such as `2026-03-02 Mon, 20 min`, or on the line of an exercise.",
};
