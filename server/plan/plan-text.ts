import { END_OF_PLAN } from "../journal/plan-form.ts";
import type { Plan, PlanLine, PlanPhase } from "./plan.ts";
import { planTexts } from "./plan-texts.ts";

/** What stands of a plan beside its lines. */
export interface PlanTextAsked {
  /** Why each line is there, and why the time is shorter: remarks that the history passes over. */
  readonly reasons: boolean;
  /** What entries are indented by. */
  readonly indent: string;
}

/**
 * A plan as lines of a journal, below its day line: what is said of the body, what is said of the day, then the phases
 * with their minutes, and a remark that ends it. Care is left out by nothing.
 */
export function planLines(plan: Plan, { reasons, indent }: PlanTextAsked): readonly string[] {
  const { care, notes, setInWords } = plan;
  const text = [
    ...care.map((sentence) => remark("care", sentence)),
    ...(reasons ? notes.map((sentence) => remark("plan", sentence)) : []),
    ...setInWords.map((words) => remark("plan", planTexts.set(words))),
  ];
  for (const { phase, minutes, lines } of planStretches(plan)) {
    text.push(`${phase}, ${minutes} min`);
    for (const line of lines) {
      text.push(indent + line.text);
      if (reasons) for (const sentence of line.reasons) text.push(`${indent}${indent}${remark("plan", sentence)}`);
    }
  }
  return plan.lines.length > 0 ? [...text, remark("plan", END_OF_PLAN)] : text;
}

/** One line of text, whatever the journal's words in it are. */
function remark(of: "plan" | "care", sentence: string): string {
  return `-- ${of}: ${sentence.replace(/\s+/g, " ")}`;
}

/** What is played in one phase without a pause, or a pause, which has no lines. */
export interface PlanStretch {
  readonly phase: PlanPhase | "break";
  readonly minutes: number;
  readonly lines: readonly PlanLine[];
}

/** A plan in the order of the day: neighbours of one phase with no pause between them go together. */
export function planStretches({ lines, breaks }: Plan): readonly PlanStretch[] {
  const pauses = new Map(breaks.map(({ before, minutes }) => [before, minutes]));
  const found: PlanStretch[] = [];
  for (const [i, line] of lines.entries()) {
    const last = found.at(-1);
    const pause = pauses.get(i);
    if (pause !== undefined) found.push({ phase: "break", minutes: pause, lines: [] });
    if (last?.phase === line.phase && pause === undefined)
      found[found.length - 1] = { ...last, minutes: last.minutes + line.minutes, lines: [...last.lines, line] };
    else found.push({ phase: line.phase, minutes: line.minutes, lines: [line] });
  }
  return found;
}

/** What a day line says beside its date: `45 min, plan`; nothing where there is nothing to play. */
export function planOnDayLine(plan: Plan): string {
  return planWords(plan).join(", ");
}

/** The same, word by word: `45 min` and `plan`. */
export function planWords({ minutes, lines }: Plan): readonly string[] {
  return lines.length === 0 ? [] : [`${minutes} min`, "plan"];
}
