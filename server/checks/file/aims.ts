import type { AttemptRecord } from "../../history/record.ts";
import { LATELY, trendOf, weeksWithin } from "../../history/trend.ts";
import { latestTestedBest, metronomeOf, shown } from "../../history/trend-words.ts";
import type { Week } from "../../history/weeks.ts";
import { type DayNumber, isoDate, parseWeekLabel, weekIndex } from "../../journal/calendar.ts";
import type { Declaration } from "../../journal/declarations/declared.ts";
import { type Finding, finding } from "../finding.ts";

/** An aim whose day has passed. */
export function pastAim({ declared, line }: Declaration, today: DayNumber): Finding | undefined {
  if (declared?.type !== "aim" || declared.by === undefined || declared.by >= today) return undefined;
  return finding(
    "aim-past",
    line,
    `The day of this aim, ${isoDate(declared.by)}, has passed. Another day, or taking the line out, keeps the list of aims short.`,
  );
}

/** An aim at a tempo by a day, and how its strand went so far. */
export interface AimedAt {
  /** What is aimed at, in the strand's unit. */
  readonly rate: number;
  readonly by: DayNumber;
  /** In which the aim is written. */
  readonly notation: Pick<AttemptRecord, "noteValue" | "beat">;
  readonly weeks: readonly Week[];
  /** Which it is of several that are aimed at. */
  readonly subject?: string;
}

/**
 * An aim that even the upper end of the trend's interval would not reach by its day. Nothing is said while it is too
 * early for a trend, or once the aim was reached.
 */
export function farAim({ line }: Declaration, aim: AimedAt, today: DayNumber): Finding | undefined {
  const { rate, by, notation, weeks, subject = "this" } = aim;
  if (by < today || weeks.some(({ bestClean }) => bestClean !== null && bestClean >= rate)) return undefined;
  const latest = weeksWithin(weeks, { lastWeeks: LATELY });
  const { verdict, slope, high } = trendOf(latest);
  const best = latestTestedBest(latest);
  if (verdict === "too early" || slope === null || high === null || best === null) return undefined;
  const bestWeek = latest.findLast((week) => week.tested && week.bestClean !== null)!.week;
  const ahead = weekIndex(by) - weekIndex(parseWeekLabel(bestWeek)!);
  const atBest = best + Math.max(high, 0) * ahead;
  if (atBest >= rate) return undefined;
  const tempo = (each: number): string => shown(each, notation.noteValue, notation.beat);
  const likely = Math.round(metronomeOf(best + Math.max(slope, 0) * ahead, notation));
  return finding(
    "aim-far",
    line,
    `At the pace of the last weeks ${subject} would stand near ${likely} on ${isoDate(by)}, and not above ${tempo(Math.floor(atBest))}. A later day, or a nearer aim on the way to ${tempo(rate)}, leaves room to play with ease.`,
  );
}
