/** What the history says of an exercise below its name; dates, tempos and numbers are printed. */
export const historyTexts = {
  startAndStay: (tempo: string, why: string) => `Start at ${tempo}, and stay there today: ${why}.`,
  backAfterPause: "you are back after some time away",
  hurtOn: (date: string) => `something hurt on ${date}`,
  /** Of what has no tempo: days, and minutes where any are noted (`minutes` in words), perhaps in so many weeks. */
  days: (days: number, minutes: string | undefined, weeks: number | undefined) => {
    const counted = `${days} ${days === 1 ? "day" : "days"}`;
    if (minutes === undefined) return `${counted}.`;
    return `${counted}, ${minutes}${weeks === undefined ? "" : ` in ${weeks} weeks`}.`;
  },
  columns: { week: "Week of", best: "Best", usual: "Usual", reached: "Reached", minutes: "Minutes" },
  slope: (middle: string, least: string, most: string) => `Slope ${middle} a week (${least} to ${most}).`,
  notPractisedYet: "Not practised yet.",
  ahead: "Not practised like this before today; days in the future are not counted yet.",
  anotherWay: "Another way",
  notThisWay: (another: string, played: string) => `Not played this way before. ${another}, ${played}`,
  lastPlayed: (date: string) => `Last played ${date}.`,
  lastTime: (date: string, played: string) => `${date}: ${played}`,
};
