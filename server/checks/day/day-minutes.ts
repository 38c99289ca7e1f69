import type { DaySkeleton } from "../../journal/day-skeleton.ts";
import type { Sitting } from "../../journal/model.ts";
import { type Finding, finding, type Stretch } from "../finding.ts";

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
  if (!skeleton.rest && !skeleton.allPlanned) addLongStretches(skeleton, found);
  return found;
}

/** Stated parts that exceed the stated whole: entries in a phase, phases in a sitting, sittings in a day. */
function addSums(skeleton: DaySkeleton, found: AmountFinding[]): void {
  const { phases, sittings } = skeleton;
  for (const stretch of phases) {
    if (stretch.phase !== undefined) addExcess(found, stretch, stretch.entryMinutes, "entries");
  }
  for (let i = 0; i < sittings.length; i++) {
    if (i > 0 || sittings.length === 1) addExcess(found, sittings[i]!, partsOfSitting(skeleton, i), "parts");
  }
  if (sittings.length < 2) return;
  let sum = partsOfSitting(skeleton, 0);
  for (let i = 1; i < sittings.length; i++) sum += sittings[i]!.minutes ?? 0;
  addExcess(found, sittings[0]!, sum, "sittings");
}

function addExcess(
  found: AmountFinding[],
  { line, minutes }: { readonly line: number; readonly minutes?: number },
  sum: number,
  what: string,
): void {
  if (minutes === undefined || sum <= minutes) return;
  const message = `The ${what} below add up to ${sum} minutes, more than the ${minutes} here.`;
  found.push({ line, at: (amount) => finding("minutes-sum", amount, message) });
}

/** For each phase its own minutes, or what its entries state. */
function partsOfSitting({ phases }: DaySkeleton, sitting: number): number {
  let sum = 0;
  for (const stretch of phases) if (stretch.sitting === sitting) sum += stretch.minutes ?? stretch.entryMinutes;
  return sum;
}

function addLongStretches(skeleton: DaySkeleton, found: AmountFinding[]): void {
  for (let i = 0; i < skeleton.sittings.length; i++) {
    const sitting = skeleton.sittings[i]!;
    const minutes = sitting.breaks.length > 0 ? 0 : minutesAlone(skeleton, sitting, i);
    if (minutes <= LONGEST_STRETCH) continue;
    const message = `About ${minutes} minutes with no break noted. Hands, breath and ears do better with pauses; \`break, 10 min\` notes one. If anything hurts, stop, and ask a teacher or a doctor.`;
    found.push({ line: sitting.line, at: (amount) => finding("long-stretch", amount, message) });
  }
}

/** Minutes of a sitting without what was played with others, where pauses come by themselves. */
function minutesAlone(skeleton: DaySkeleton, sitting: Sitting, index: number): number {
  const isTotal = index === 0 && skeleton.sittings.length > 1;
  let whole = (isTotal ? undefined : sitting.minutes) ?? partsOfSitting(skeleton, index);
  for (const { phase, minutes, sitting: own } of skeleton.phases) {
    if (own !== index || phase === undefined || !PLAYED_WITH_OTHERS.includes(phase)) continue;
    if (minutes === undefined) return 0;
    whole -= minutes;
  }
  return whole;
}
