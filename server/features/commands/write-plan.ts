import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { BlockModel } from "../../journal/model.ts";
import { endsPlan } from "../../journal/plan-form.ts";
import { dayPlan } from "../../plan/day-plan.ts";
import type { Plan, PlanSettings } from "../../plan/plan.ts";
import { planLines, planWords } from "../../plan/plan-text.ts";
import type { Position } from "../../syntax/document/document.ts";
import { datedDays, dayOn, lastLineOf, type PlacedDay } from "../explain/dated-days.ts";
import { INDENT } from "../explain/indentation.ts";
import { lastPhases } from "../explain/phases-before.ts";
import { firstPlanned, nextPlanned } from "../explain/planned-today.ts";
import { refusal } from "../explain/refusal.ts";
import type { CommandAnswer } from "./command-answer.ts";
import { commandTexts } from "./command-texts.ts";
import { insertedAfter, type NewLines } from "./lines-in-file.ts";
import { dayBegun } from "./new-day.ts";
import { behindDate } from "./today-line.ts";

export interface PlanWanted {
  readonly today: DayNumber;
  /** Whole minutes; missing: as long as usual. */
  readonly minutes?: number;
  /** Its id; missing: the journal's own. */
  readonly instrument?: string;
  readonly settings: PlanSettings;
  /** Whether the reasons are written too; care is, always. */
  readonly reasons: boolean;
}

/**
 * A plan for today, written into the journal: with today's day line where the journal does not have it, below `plan` at
 * the end of the day where there is something. The cursor goes to the end of the first line to be played. Where
 * planned lines wait already it goes to the next of those below a position, and nothing is written.
 */
export function writePlan(journal: Journal, uri: string, at: Position, wanted: PlanWanted): CommandAnswer {
  const { today, minutes, instrument, settings, reasons } = wanted;
  const waiting = nextPlanned(journal, uri, today, at.line);
  if (waiting) return { ok: true, uri: waiting.uri, edits: [], cursor: waiting.end };
  const plan = dayPlan(journal, { day: today, minutes, instrument, settings });
  if (plan.lines.length === 0) return refusal(plainSentences(plan) || commandTexts.nothingToPlan);
  const indent = lastPhases(journal, today)?.indent ?? INDENT;
  const lines = planLines(plan, { reasons, indent });
  const there = dayOn(journal, uri, today);
  const told = planWords(plan);
  const answer = there
    ? insertedAfter(there, belowDay(journal, there, told, cursorIn(lines, plan, indent)))
    : dayBegun(journal, uri, today, () => cursorIn(lines, plan, indent), told);
  const note = plainSentences(plan);
  return answer.ok && !reasons && note !== "" ? { ...answer, note } : answer;
}

/**
 * How many minutes a plan would be for if nobody said; null where there is none to be written, as on a day of rest, or
 * where one waits already.
 */
export function planMinutes(journal: Journal, uri: string, wanted: PlanWanted): number | null {
  const { today, minutes, instrument, settings } = wanted;
  if (firstPlanned(journal, uri, today)) return null;
  const plan = dayPlan(journal, { day: today, minutes, instrument, settings });
  return plan.lines.length > 0 ? plan.asked : null;
}

/** The lines, and the end of the first that is to be played. */
function cursorIn(lines: readonly string[], { lines: [first] }: Plan, indent: string): Omit<NewLines, "day"> {
  const text = indent + first!.text;
  return { below: lines, cursor: { line: lines.indexOf(text), character: text.length } };
}

/** A day that holds nothing says by its own line that it is planned, where that has no minutes yet. */
function belowDay(
  journal: Journal,
  { uri, document, index, date }: PlacedDay,
  told: readonly string[],
  { below, cursor }: Omit<NewLines, "day">,
): NewLines {
  const block = document.blocks[index]!;
  const model = journal.model(block);
  const { day } = model;
  if (isPlanOpen(model)) return { day: "", below, cursor };
  const items = day?.line.items ?? [];
  const isBare =
    lastLineOf(block) === 0 && !day?.line.remark && items.every(({ meaning: { type } }) => type === "weekday");
  if (isBare) {
    const behind = behindDate(journal, document, datedDays(uri, document), date, told);
    return { day: "", behind, below, cursor };
  }
  return { day: "", below: ["plan", ...below], cursor: { ...cursor, line: cursor.line + 1 } };
}

/** Whether a line at the end of the day would be planned: a plan that was written there has an end. */
function isPlanOpen({ day, lines }: BlockModel): boolean {
  const begins = lines.findLastIndex(({ type }) => type === "plan");
  return (begins >= 0 || day?.planned === true) && !lines.slice(Math.max(begins, 0)).some(endsPlan);
}

/** Why the time is shorter, or why there is no plan, without signs that an editor would read as a link. */
function plainSentences({ notes }: Plan): string {
  return notes.join(" ").replace(/[[\]<>`]/g, "");
}
