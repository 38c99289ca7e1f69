import { median } from "simple-statistics";
import { longStretches } from "../checks/day/day-minutes.ts";
import { ceilingOn } from "../history/ceiling.ts";
import { dayMinutes } from "../history/day-minutes.ts";
import {
  CARE_WITHIN,
  LEAST_WEEKS_OF_MINUTES,
  MINUTES_ABOVE,
  WEEK_ABOVE,
  WEEKS_OF_MINUTES,
} from "../history/thresholds.ts";
import { type DayNumber, weekIndex } from "../journal/calendar.ts";
import { dayInWords } from "../journal/date-words.ts";
import { datedBlocks } from "../journal/dated-blocks.ts";
import type { Journal } from "../journal/journal.ts";
import { careTexts } from "./care-texts.ts";
import { careSentence } from "./care-words.ts";

/**
 * What is said of the body on a day, one sentence at most: that something hurt in the last days, that a sitting was
 * long, that a week is much fuller than those before. Numbers are the player's own; none is called a risk.
 */
export function careToday(journal: Journal, today: DayNumber): string | undefined {
  const { said } = ceilingOn(journal, today);
  if (said && said.day > today - CARE_WITHIN) return careSentence(journal, said, today);
  return longSitting(journal, today) ?? fullWeek(journal, today);
}

/** The longest sitting of today and yesterday that has no pause noted. */
function longSitting(journal: Journal, today: DayNumber): string | undefined {
  const stretches = datedBlocks(journal, today - 1, today).flatMap(({ block, day }) =>
    longStretches(journal.dayWalk.go(block, [])).map(({ minutes }) => ({ minutes, day })),
  );
  const [longest] = stretches.sort((a, b) => b.minutes - a.minutes || b.day - a.day);
  if (!longest) return undefined;
  const when = dayInWords(longest.day, today);
  return careTexts.longSitting(Math.round(longest.minutes), when);
}

/** A week that has far more minutes than usual, and more than any of the weeks before it. */
function fullWeek(journal: Journal, today: DayNumber): string | undefined {
  const present = weekIndex(today);
  const byWeek = new Map<number, number>();
  for (const { block, day } of datedBlocks(journal, today - DAYS_LOOKED_AT, today)) {
    const week = weekIndex(day);
    const minutes = dayMinutes(journal.model(block)).phases.reduce((sum, phase) => sum + phase.minutes, 0);
    if (minutes > 0) byWeek.set(week, (byWeek.get(week) ?? 0) + minutes);
  }
  const before = [...byWeek]
    .filter(([week]) => week < present && week >= present - WEEKS_OF_MINUTES)
    .map(([, minutes]) => minutes)
    .sort((a, b) => a - b);
  const own = byWeek.get(present) ?? 0;
  if (before.length < LEAST_WEEKS_OF_MINUTES) return undefined;
  const [least, most] = [before[0]!, before.at(-1)!];
  if (own <= WEEK_ABOVE * median(before) || own < most + MINUTES_ABOVE) return undefined;
  const [few, many] = [Math.round(least), Math.round(most)];
  return careTexts.fullWeek(Math.round(own), few === many ? String(many) : careTexts.range(few, many));
}

const DAYS_LOOKED_AT = (WEEKS_OF_MINUTES + 1) * 7;
