import type { PhaseFrame, Sitting } from "../journal/model.ts";

/** What of a day bears on how its time is shared out. */
export interface TimedDay {
  readonly sittings: readonly Sitting[];
  readonly phases: readonly Omit<PhaseFrame, "entryMinutes">[];
  /** In their order. */
  readonly entries: readonly TimedEntry[];
}

export interface TimedEntry {
  readonly minutes?: number;
  readonly planned: boolean;
  /** The index in `phases`. */
  readonly stretch: number;
}

/** The practice time of one entry. */
export interface Share {
  readonly minutes: number;
  /** Shared out, not written. */
  readonly about: boolean;
}

/**
 * The minutes of each entry of a day, in their order: as written; else an equal share of what is left of its phase, or
 * of its sitting where the phase has no minutes of its own; else none. Planned entries take no share; of planned
 * minutes, of which they would have taken theirs, there is nothing to share either while one of them was not played.
 */
export function sharedMinutes(day: TimedDay): readonly Share[] {
  const stretches = stretchesOf(day);
  const each = new Array<number>(stretches.length).fill(0);
  const totals = openSittings(day);
  const unplayed = new Set(day.entries.flatMap(({ planned, stretch }) => (planned ? [stretch] : [])));
  for (let sitting = 0; sitting < totals.length; sitting++) {
    const own = stretches.filter((stretch) => stretch.sitting === sitting);
    for (const stretch of own)
      if (stretch.minutes !== undefined && !(stretch.planned && unplayed.has(stretch.index)))
        each[stretch.index] = shareOf([stretch], stretch.minutes);
    const total = totals[sitting];
    if (total === undefined) continue;
    if (isPlanned(day.sittings[sitting]!) && own.some(({ index }) => unplayed.has(index))) continue;
    const unstated = own.filter(({ minutes }) => minutes === undefined);
    const share = shareOf(unstated, total - own.reduce((sum, { minutes = 0 }) => sum + minutes, 0));
    for (const { index } of unstated) each[index] = share;
  }
  return day.entries.map(({ minutes, planned, stretch }) =>
    planned || minutes !== undefined || each[stretch] === 0
      ? { minutes: planned ? 0 : (minutes ?? 0), about: false }
      : { minutes: each[stretch]!, about: true },
  );
}

/**
 * A stretch of the day, and what the entries in it take: so many minutes are stated, so many entries wait for a share.
 */
interface Stretch {
  readonly index: number;
  readonly sitting: number;
  readonly minutes?: number;
  readonly planned: boolean;
  stated: number;
  waiting: number;
}

function stretchesOf({ phases, entries }: TimedDay): readonly Stretch[] {
  const stretches = phases.map(
    ({ sitting, minutes, planned }, index): Stretch => ({
      index,
      sitting,
      minutes,
      planned,
      stated: 0,
      waiting: 0,
    }),
  );
  for (const { stretch, minutes, planned } of entries) {
    if (planned) continue;
    if (minutes === undefined) stretches[stretch]!.waiting++;
    else stretches[stretch]!.stated += minutes;
  }
  return stretches;
}

/** Whether the minutes of a sitting are those of a plan; what it came to, as a line below says, is none. */
export function isPlanned({ planned, total }: Sitting): boolean {
  return planned && total === undefined;
}

/** An equal share for each entry that waits for one, of what those that state their minutes leave; 0 for none. */
function shareOf(stretches: readonly Stretch[], total: number): number {
  let left = total;
  let waiting = 0;
  for (const stretch of stretches) {
    left -= stretch.stated;
    waiting += stretch.waiting;
  }
  return waiting > 0 && left > 0 ? left / waiting : 0;
}

/**
 * The minutes of each sitting: its own, or an equal share of what the day's other sittings leave. Where the day line
 * states none, or those of a plan, a total written below counts for its sitting.
 */
export function openSittings({ sittings }: Pick<TimedDay, "sittings">): readonly (number | undefined)[] {
  const [first, ...further] = sittings;
  if (first && (first.minutes === undefined || first.planned) && sittings.some(({ total }) => total !== undefined))
    return [first.total, ...further.map(({ minutes, total }) => minutes ?? total)];
  if (!further.length) return [first?.minutes];
  const without = further.filter(({ minutes }) => minutes === undefined).length;
  const left =
    first?.minutes === undefined
      ? undefined
      : first.minutes - further.reduce((sum, { minutes = 0 }) => sum + minutes, 0);
  const rest = left === undefined || left <= 0 ? undefined : left;
  return [
    without === 0 ? rest : undefined,
    ...further.map(({ minutes }) => minutes ?? (rest === undefined ? undefined : rest / without)),
  ];
}
