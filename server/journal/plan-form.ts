import type { Line } from "../syntax/line/line.ts";
import { planFormTexts } from "./plan-form-texts.ts";

/**
 * What a line tells of itself below `plan`: `written` is a line as Daystave writes one into a plan, with its minutes at
 * the end; `played` begins with a word that only what was played begins with; `end` is the remark that a written plan
 * ends with.
 */
export type PlanForm = "written" | "played" | "end";

/** The last line of a plan that is written into a journal: whoever reads it knows where to go on. */
export const END_OF_PLAN = planFormTexts.endsHere;

/** @param text an entry, without its remark */
export function formOfEntry(text: string): PlanForm | undefined {
  const entry = text.trim();
  if (SAYS_PLAYED.test(entry)) return "played";
  return entry.endsWith("min") && AS_WRITTEN.test(entry) ? "written" : undefined;
}

export function endsPlan(line: Line): boolean {
  return line.type === "remark" && formOfRemark(line.remark?.text ?? "") === "end";
}

/** @param text what stands behind the dashes of a remark */
export function formOfRemark(text: string): PlanForm | undefined {
  return OF_END.test(text) ? "end" : undefined;
}

/** As `placed` (`server/plan/day-plan.ts`) ends its lines: a comma, and minutes in units of five. */
const AS_WRITTEN = /, \d*[05] min$/;
/** As `planLines` (`server/plan/plan-text.ts`) writes it, in whichever language. */
const OF_END = /^\s*plan: *(?:ends here|endet hier)(?![\p{L}\p{N}])/iu;
/** In the languages that notes have names in; none of them begins a wish. */
const SAYS_PLAYED =
  /^(?:i |ich )?(?:also|played|did|practi[sc]ed|auch|gespielt|geübt|aussi|joué|anche|suonato|también|tocado|ook|gespeeld)(?![\p{L}\p{N}])/iu;
