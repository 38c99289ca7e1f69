/** The plan for today. */
export const planTexts = {
  heading: "A plan for today",
  minutes: "minutes",
  minutesOfPlan: "minutes for the plan",
  wrongMinutes: (least: number, most: number) => `Whole minutes, from ${least} to ${most}.`,
  isInJournal: "Today’s plan is in the journal",
  write: "Write it into the journal",
  why: "Why these lines",
};
