/** The words above an entry. */
export const lensTexts = {
  trend: (trend: string) => `Trend: ${trend}`,
  /** Of one of several exercises of a line. */
  trendOf: (exercise: string, trend: string) => `${exercise}: ${trend}`,
};
