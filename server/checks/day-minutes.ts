import type { DaySkeleton } from "../journal/day-skeleton.ts";
import type { Sitting } from "../journal/model.ts";
import { type Finding, finding, type Stretch } from "./finding.ts";

/** Minutes at a stretch beyond which a pause is worth a word. Common practice, no source. */
const LONGEST_STRETCH = 60;
const PLAYED_WITH_OTHERS = ["together", "lesson"];

/** A finding on the amount of a line; where that stands is looked up when there is one. */
interface AmountFinding {
  readonly line: number;
  readonly at: (amount: Stretch) => Finding;
}

/** The minutes of a day add up, and leave room for pauses. `amountOn` gives the place of a line's amount, or its whole. */
export function checkDayMinutes(
  skeleton: DaySkeleton,
  amountOn: (line: number) => Stretch,
): readonly { readonly line: number; readonly finding: Finding }[] {
  const found = [...sums(skeleton), ...longStretches(skeleton)];
  return found.map(({ line, at }) => ({ line, finding: at(amountOn(line)) }));
}

/** Stated parts that exceed the stated whole: entries in a phase, phases in a sitting, sittings in a day. */
function sums(skeleton: DaySkeleton): readonly AmountFinding[] {
  const { phases, sittings } = skeleton;
  const found: AmountFinding[] = [];
  const exceeds = (line: number, whole: number | undefined, sum: number, what: string): void => {
    if (whole === undefined || sum <= whole) return;
    found.push({
      line,
      at: (amount) =>
        finding("minutes-sum", amount, `The ${what} below add up to ${sum} minutes, more than the ${whole} here.`),
    });
  };
  for (const { phase, line, minutes, entryMinutes } of phases)
    if (phase !== undefined) exceeds(line, minutes, entryMinutes, "entries");
  for (const [i, { line, minutes }] of sittings.entries()) {
    if (i > 0 || sittings.length === 1) exceeds(line, minutes, partsOfSitting(skeleton, i), "parts");
  }
  const [first, ...further] = sittings;
  if (first && further.length) {
    const sum = further.reduce((total, { minutes = 0 }) => total + minutes, partsOfSitting(skeleton, 0));
    exceeds(first.line, first.minutes, sum, "sittings");
  }
  return found;
}

/** For each phase its own minutes, or what its entries state. */
function partsOfSitting({ phases }: DaySkeleton, sitting: number): number {
  let sum = 0;
  for (const stretch of phases) if (stretch.sitting === sitting) sum += stretch.minutes ?? stretch.entryMinutes;
  return sum;
}

function longStretches(skeleton: DaySkeleton): readonly AmountFinding[] {
  if (skeleton.rest || skeleton.allPlanned) return [];
  return skeleton.sittings.flatMap((sitting, i): AmountFinding[] => {
    const minutes = sitting.breaks.length > 0 ? 0 : minutesAlone(skeleton, sitting, i);
    if (minutes <= LONGEST_STRETCH) return [];
    const message = `About ${minutes} minutes with no break noted. Hands, breath and ears do better with pauses; \`break, 10 min\` notes one. If anything hurts, stop, and ask a teacher or a doctor.`;
    return [{ line: sitting.line, at: (amount) => finding("long-stretch", amount, message) }];
  });
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
