import { dayToAppend } from "../../features/commands/day-to-append.ts";
import { daysOfJournal } from "../../features/explain/dated-days.ts";
import { INDENT } from "../../features/explain/indentation.ts";
import { isoDate } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Plan, PlanBreak, PlanKind, PlanLine } from "../../plan/plan.ts";
import { planLines, planOnDayLine } from "../../plan/plan-text.ts";
import { printable } from "../printable.ts";

/** A plan as JSON has it. Minutes are whole ones, with pauses. */
export interface PlanDocument {
  readonly date: string;
  readonly asked: number;
  readonly minutes: number;
  readonly kind: PlanKind;
  readonly notes: readonly string[];
  readonly lines: readonly PlanLine[];
  readonly breaks: readonly PlanBreak[];
  readonly journalText: string;
}

export function planDocument(journal: Journal, plan: Plan, reasons: boolean): PlanDocument {
  const { date, asked, minutes, kind, lines, breaks } = plan;
  return {
    date: isoDate(date),
    asked,
    minutes,
    kind,
    notes: notesOf(plan),
    lines,
    breaks,
    journalText: planText(journal, plan, reasons),
  };
}

function notesOf({ care, notes, setInWords }: Plan): readonly string[] {
  return [...care, ...notes, ...setInWords.map((words) => `Set: “${words}”.`)];
}

/**
 * The day as it would stand in the journal, which writes its days in its own way; what belongs at its end where it
 * stands there already. Sentences where there is nothing to play.
 */
export function planText(journal: Journal, plan: Plan, reasons: boolean): string {
  if (plan.lines.length === 0)
    return notesOf(plan)
      .map((sentence) => `${printable(sentence)}\n`)
      .join("");
  const isThere = daysOfJournal(journal).some(({ date }) => date === plan.date);
  const opening = isThere ? "plan" : `${dayOf(journal, plan)}, ${planOnDayLine(plan)}`;
  return [opening, ...planLines(plan, { reasons, indent: INDENT })].map((line) => `${printable(line)}\n`).join("");
}

function dayOf(journal: Journal, { date }: Plan): string {
  return dayToAppend(journal, undefined, { today: date, phases: false }).line.trim();
}
