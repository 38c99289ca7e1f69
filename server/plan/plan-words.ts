import { attemptOfRecord, entryMadeOnce } from "../history/entry-of-record.ts";
import type { AttemptRecord } from "../history/record.ts";
import { DAY_OF_A_PIECE_WITHIN } from "../history/thresholds.ts";
import type { DayNumber } from "../journal/calendar.ts";
import { dateInWords } from "../journal/date-words.ts";
import type { AimCandidate } from "./aims-open.ts";
import { daysAgo, daysAhead, onDay } from "./day-words.ts";
import type { ExerciseState } from "./exercise-states.ts";
import { needInWords } from "./key-words.ts";
import type { KeyCandidate } from "./keys-open.ts";
import type { PlanBasis } from "./plan-basis.ts";
import { planTexts } from "./plan-texts.ts";

// Why a line is on the plan, in sentences. Nothing is named as what it is reckoned with: no interval, no rating.

/** On days on which something is spared no reason names a day ahead or a forecast: nothing presses. */
export function isPressed({ kind: { kind } }: Pick<PlanBasis, "kind">): boolean {
  return kind !== "sparing" && kind !== "easing" && kind !== "return" && kind !== "no instrument";
}

/** `An aim for 30 April: too early to say whether it will be reached.` */
export function aimReason(basis: PlanBasis, { by, last, progress }: AimCandidate): string {
  const { day } = basis;
  if (!isPressed(basis)) return planTexts.oneOfYourAims;
  const aim = by === undefined ? planTexts.aim : planTexts.aimFor(dateInWords(by, day));
  if (last === undefined) return planTexts.aimNotPlayed(aim);
  const { standing } = progress;
  if (standing.type === "under way" && by !== undefined && standing.forecast.type === "too early")
    return planTexts.aimTooEarly(aim);
  return planTexts.aimLastPlayed(aim, onDay(last, day));
}

/** The same sentence as in the list of keys; to warm up in it, or on another instrument, is no work at it. */
export function keyReason({ journal, day }: PlanBasis, { need, last }: KeyCandidate): string {
  if (need.what !== "key" && need.what !== "neighbour") return needInWords(journal, need, day);
  if (need.last === (last ?? null)) return needInWords(journal, need, day);
  return needInWords(journal, { ...need, last: last ?? null }, day, undefined, "worked at");
}

/** `Last played 4 days ago, and clean then.` */
export function leftAloneReason({ journal, day }: PlanBasis, { last, noted }: ExerciseState): string {
  const how = noted && howItWent(journal, noted);
  const ago = daysAgo(day - last);
  return how ? planTexts.lastPlayedAnd(ago, how) : planTexts.lastPlayed(ago);
}

/** The player's own word where it is one of the usual ones, else whether it was reached; undefined for no word. */
function howItWent(journal: PlanBasis["journal"], record: AttemptRecord): string | undefined {
  const entry = entryMadeOnce(journal, record);
  const [outcome] = (entry && attemptOfRecord(entry, record)?.outcomes) ?? [];
  if (outcome === "clean" || outcome === "easy" || outcome === "uneven" || outcome === "tense")
    return planTexts.outcomes[outcome];
  return record.reached ? undefined : planTexts.notThereYet;
}

/** `Ground is for 9 May, in 54 days.`; undefined where it is far ahead or not pressing. */
export function dueReason(basis: PlanBasis, name: string, due: DayNumber | undefined): string | undefined {
  const { day } = basis;
  if (due === undefined || due < day || due - day > DAY_OF_A_PIECE_WITHIN || !isPressed(basis)) return undefined;
  return due - day <= 1
    ? planTexts.dueSoon(name, daysAhead(due - day))
    : planTexts.due(name, dateInWords(due, day), daysAhead(due - day));
}
