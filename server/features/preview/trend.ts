import type { ExerciseRow } from "../../history/exercise-row.ts";
import { WEEKS_FOR_A_TREND } from "../../history/trend.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { exerciseTexts } from "./exercise-texts.ts";
import { type SpanOfDays, spanOfDays, USUAL_SPAN } from "./span.ts";

/**
 * The trend of the weeks that are drawn, in words. Where these are less than half a year, and it was played before
 * as well, it is not too early to say but they are too few: of so many as a trend takes at least, none is ever found
 * to move (Mann and Kendall's test: four that rise one after the other give z = 1.70).
 *
 * @param row of the weeks of these days
 * @param first the first day on which it was played, in them or before
 */
export function trendOfDays({ trend, trendBrief }: ExerciseRow, days: SpanOfDays, first: DayNumber): string {
  const { since, today } = days;
  const isCut = since !== undefined && since > spanOfDays(USUAL_SPAN, today).since! && first < since;
  const isKnown = trend.verdict === "rising" || trend.verdict === "falling" || trend.weeks > WEEKS_FOR_A_TREND;
  return isCut && !isKnown ? exerciseTexts.tooFewWeeks : trendBrief;
}
