import type { DayNumber } from "../../server/journal/calendar.ts";
import { isoDate } from "../../server/journal/calendar.ts";
import type { Journal } from "../../server/journal/journal.ts";
import { dayPlan } from "../../server/plan/day-plan.ts";
import { type Plan, type PlanAsked, type PlanLine, USUAL_PLAN } from "../../server/plan/plan.ts";
import { planLines, planOnDayLine } from "../../server/plan/plan-text.ts";

export function planFor(journal: Journal, day: DayNumber, asked: Partial<PlanAsked> = {}): Plan {
  return dayPlan(journal, { day, settings: USUAL_PLAN, ...asked });
}

/** The day as it would stand in the journal, its day line first. */
export function dayOf(plan: Plan, reasons = true): string[] {
  const said = planOnDayLine(plan);
  return [isoDate(plan.date) + (said && `, ${said}`), ...planLines(plan, { reasons, indent: "  " })];
}

/** How a tempo of a line went: words of how it went. */
export type HowItWent = (line: PlanLine, bpm: number) => string;

/** The day as somebody writes it who did all of it: no remarks, each tempo with how it went. */
export function doneDay(plan: Plan, went: HowItWent = () => "clean"): string[] {
  const texts = new Map(plan.lines.map((line) => [line.text, line]));
  const lines = planLines(plan, { reasons: false, indent: "  " }).filter((line) => !line.startsWith("--"));
  return [
    `${isoDate(plan.date)}, ${plan.minutes} min`,
    ...lines.map((line) => {
      const planned = texts.get(line.trim());
      return planned ? `  ${doneLine(planned, went)}` : line;
    }),
  ];
}

/** Tempos: behind `at` or a beat, up to the minutes of the line. */
const TEMPOS = /(?<=\bat |=)\d+(?:, \d+(?! min))*(?=,|$)/;

export function temposOf({ text }: PlanLine): number[] {
  return TEMPOS.exec(text)?.[0].split(", ").map(Number) ?? [];
}

function doneLine(line: PlanLine, went: HowItWent): string {
  if (temposOf(line).length === 0) return line.rule === "away" ? line.text : `${line.text}, ${went(line, 0)}`;
  return line.text.replace(TEMPOS, (all) =>
    all
      .split(", ")
      .map((bpm) => `${bpm} ${went(line, Number(bpm))}`)
      .join(", "),
  );
}
