import { datesInWords } from "../../journal/date-words.ts";
import type { Journal } from "../../journal/journal.ts";
import { dayPlan } from "../../plan/day-plan.ts";
import type { PlanAsked } from "../../plan/plan.ts";
import { firstPlanned } from "../explain/planned-today.ts";
import { daysSheet } from "./days-sheet.ts";
import { planSheet } from "./plan-sheet.ts";
import type { Sheet } from "./sheet.ts";

/**
 * What the journal has for a day, where planned lines wait there, which a player may have changed; else a plan. Where a
 * plan has something to say of the body it takes the place of those lines, which may be from before.
 */
export function todaySheet(journal: Journal, asked: PlanAsked, shown: Parameters<typeof planSheet>[2]): Sheet {
  const { day } = asked;
  if (!firstPlanned(journal, "", day) || dayPlan(journal, asked).care.length > 0)
    return planSheet(journal, asked, shown);
  return daysSheet(journal, { since: day, until: day, title: datesInWords(day, day) }, shown);
}
