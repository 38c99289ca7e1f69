import type { PreviewPlan, PreviewStretch } from "../../../shared/preview.ts";
import { ceilingOn } from "../../history/ceiling.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import { declaredLines } from "../../journal/declared-lines.ts";
import type { Journal } from "../../journal/journal.ts";
import { phaseTexts } from "../../journal/phase-texts.ts";
import { dayPlan } from "../../plan/day-plan.ts";
import { type Plan, type PlanSettings, USUAL_PLAN } from "../../plan/plan.ts";
import { planStretches } from "../../plan/plan-text.ts";
import { daysOfJournal } from "../explain/dated-days.ts";
import { firstPlanned } from "../explain/planned-today.ts";
import { shownText } from "./text.ts";
import { todayTexts } from "./today-texts.ts";

/** What the settings and the page want of a plan. */
export interface PlanShown {
  /** Whole minutes; missing: as long as usual. */
  readonly minutes?: number;
  /** The day that a button was pressed for, as `PreviewPlan` names it. */
  readonly shownOn?: string;
  readonly settings: PlanSettings;
}

export const USUAL_PLAN_SHOWN: PlanShown = { settings: USUAL_PLAN };

export interface PlanPart {
  readonly plan: PreviewPlan | null;
  /** What a plan that is shown says of the body; then nothing else need say it. */
  readonly care: readonly string[];
  /** What is said in its place. */
  readonly instead: readonly string[];
}

export const NO_PLAN: PlanPart = { plan: null, care: [], instead: [] };

/**
 * The plan of a day. After pain, and where something was played already, it is shown to who asks for it: no plan is
 * worked out while the day is being written down.
 */
export function planPart(journal: Journal, today: DayNumber, instrument: string | null, shown: PlanShown): PlanPart {
  const waiting = firstPlanned(journal, "", today);
  const day = isoDate(today);
  const base = { day, offer: "", place: null, minutes: shown.minutes ?? 0, sentences: [], stretches: [] };
  if (waiting) return { ...NO_PLAN, plan: { ...base, place: { uri: waiting.uri, line: waiting.end.line } } };
  if (hasNothingToGoBy(journal)) return { ...NO_PLAN, instead: [todayTexts.nothingToGoBy] };
  const offer = offerOn(journal, today);
  const over = timeIsUp(journal, today, instrument, shown);
  if (over) return { ...NO_PLAN, care: over.care, instead: over.notes };
  if (offer !== "" && shown.shownOn !== day) return { ...NO_PLAN, plan: { ...base, offer } };
  const plan = planKept(journal, today, instrument, shown);
  return {
    plan: { ...base, minutes: plan.asked, sentences: plan.notes, stretches: planStretches(plan).map(stretchShown) },
    care: plan.care,
    instead: [],
  };
}

/** A plan without lines, where one goes easy and has played for as long as the day allows. */
function timeIsUp(journal: Journal, today: DayNumber, instrument: string | null, shown: PlanShown): Plan | undefined {
  const { share, kind } = ceilingOn(journal, today, instrument ?? undefined);
  if (share === undefined || kind === "without instrument" || !hasBegun(journal, today)) return undefined;
  const plan = planKept(journal, today, instrument, shown);
  return plan.lines.length === 0 ? plan : undefined;
}

/** Whether a plan could only be of what everybody begins with. */
function hasNothingToGoBy(journal: Journal): boolean {
  if (
    journalHistory(journal).exercises.size > 0 ||
    journal.addresses.some((uri) => journal.conventions(uri).instrument)
  )
    return false;
  return !declaredLines(journal).some(({ declared: { type } }) => NAMED.has(type));
}

const NAMED: ReadonlySet<string> = new Set(["piece", "movement", "concert", "aim", "set"]);

/** What the button says that shows a plan; empty where none is needed. */
function offerOn(journal: Journal, today: DayNumber): string {
  if (isAfterPain(journal, today)) return todayTexts.offerShortDay;
  return hasBegun(journal, today) ? todayTexts.offerAnother : "";
}

export function isAfterPain(journal: Journal, today: DayNumber): boolean {
  return ceilingOn(journal, today).said !== undefined;
}

/** Whether something was played on a day. */
export function hasBegun(journal: Journal, day: DayNumber): boolean {
  return daysOfJournal(journal).some(
    ({ document, index, date }) =>
      date === day && journal.model(document.blocks[index]!).entries.some(({ planned }) => !planned),
  );
}

/** It is worked out once for a state of the journal, however often a page asks. */
function planKept(journal: Journal, day: DayNumber, instrument: string | null, { minutes, settings }: PlanShown): Plan {
  const inputs = [day, instrument, minutes, JSON.stringify(settings)];
  return journal.memo.from(journal, "plan shown", inputs, () =>
    dayPlan(journal, { day, minutes, ...(instrument === null ? {} : { instrument }), settings }),
  );
}

function stretchShown({ phase, minutes, lines }: ReturnType<typeof planStretches>[number]): PreviewStretch {
  return {
    phase: phaseTexts.name(phase),
    minutes: todayTexts.minutes(minutes),
    lines: lines.map(({ text, minutes: own, reasons }) => ({
      text: shownText(text.replace(new RegExp(`, ${own} min$`), "")),
      minutes: todayTexts.minutes(own),
      reasons: reasons.map((reason) => shownText(reason)),
    })),
  };
}
