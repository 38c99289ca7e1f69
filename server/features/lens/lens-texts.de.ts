import type { lensTexts as english } from "./lens-texts.ts";

export const lensTexts: typeof english = {
  trend: (trend) => `Trend: ${trend}`,
  trendOf: (exercise, trend) => `${exercise}: ${trend}`,
};
