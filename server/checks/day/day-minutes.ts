import type { DaySkeleton } from "../../journal/day-skeleton.ts";
import type { Sitting } from "../../journal/model.ts";
import { type Finding, finding, type Stretch } from "../finding.ts";
import { minutesTexts } from "./minutes-texts.ts";

/** Minutes at a stretch beyond which a pause is worth a word. Common practice, no source. */
export const LONGEST_STRETCH = 60;
const PLAYED_WITH_OTHERS = ["together", "lesson"];

/** A finding on the amount of a line; where that stands is looked up when there is one. */
export interface AmountFinding {
  readonly line: number;
  readonly at: (amount: Stretch) => Finding;
}

/** The minutes of a day add up, and leave room for pauses. */
export function checkDayMinutes(skeleton: DaySkeleton): readonly AmountFinding[] {
  const found: AmountFinding[] = [];
  addSums(skeleton, found);
  addLongStretches(skeleton, found);
  return found;
}

/**
 * Stated parts that exceed the stated whole: entries in a phase, phases in a sitting, sittings in a day. What a plan
 * states is no whole: one may play more.
 */
function addSums(skeleton: DaySkeleton, found: AmountFinding[]): void {
  const { phases, sittings } = skeleton;
  for (const stretch of phases) {
    if (stretch.phase !== undefined && !stretch.planned)
      addExcess(found, stretch, stretch.entryMinutes, minutesTexts.entriesExceed);
  }
  for (let i = 0; i < sittings.length; i++) {
    if (!sittings[i]!.planned && (i > 0 || sittings.length === 1))
      addExcess(found, sittings[i]!, partsOfSitting(skeleton, i), minutesTexts.partsExceed);
  }
  if (sittings.length < 2 || sittings[0]!.planned) return;
  let sum = partsOfSitting(skeleton, 0);
  for (let i = 1; i < sittings.length; i++) sum += sittings[i]!.minutes ?? 0;
  addExcess(found, sittings[0]!, sum, minutesTexts.sittingsExceed);
}

function addExcess(
  found: AmountFinding[],
  { line, minutes }: { readonly line: number; readonly minutes?: number },
  sum: number,
  message: (sum: number, whole: number) => string,
): void {
  if (minutes === undefined || sum <= minutes) return;
  found.push({ line, at: (amount) => finding("minutes-sum", amount, message(sum, minutes)) });
}

/** For each phase its own minutes, or what its entries state. What was planned and not played counts for nothing. */
function partsOfSitting({ phases, unplayedPhases }: DaySkeleton, sitting: number): number {
  let sum = 0;
  for (const [i, stretch] of phases.entries())
    if (stretch.sitting === sitting && !unplayedPhases.has(i)) sum += stretch.minutes ?? stretch.entryMinutes;
  return sum;
}

function addLongStretches(skeleton: DaySkeleton, found: AmountFinding[]): void {
  for (const { sitting, minutes } of longStretches(skeleton)) {
    found.push({
      line: sitting.line,
      at: (amount) => finding("long-stretch", amount, minutesTexts.longStretch(minutes)),
    });
  }
}

/** A sitting that was long, with no pause noted; its minutes without what was played with others. */
export interface LongStretch {
  readonly sitting: Sitting;
  readonly minutes: number;
}

/** None on a day of rest, and none in what was only planned. */
export function longStretches(skeleton: DaySkeleton): readonly LongStretch[] {
  if (skeleton.rest || skeleton.allPlanned) return [];
  return skeleton.sittings.flatMap((sitting, i) => {
    const minutes = sitting.breaks.length > 0 ? 0 : minutesAlone(skeleton, sitting, i);
    return minutes > LONGEST_STRETCH ? [{ sitting, minutes }] : [];
  });
}

/** Minutes of a sitting without what was played with others, where pauses come by themselves. */
function minutesAlone(skeleton: DaySkeleton, sitting: Sitting, index: number): number {
  const isTotal = index === 0 && skeleton.sittings.length > 1;
  let whole = (isTotal ? undefined : sitting.minutes) ?? partsOfSitting(skeleton, index);
  for (const [i, { phase, minutes, sitting: own }] of skeleton.phases.entries()) {
    if (own !== index || phase === undefined || !PLAYED_WITH_OTHERS.includes(phase)) continue;
    if (skeleton.unplayedPhases.has(i)) continue;
    if (minutes === undefined) return 0;
    whole -= minutes;
  }
  return whole;
}
