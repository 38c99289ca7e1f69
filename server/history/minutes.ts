import type { BlockModel } from "../journal/model.ts";

/** The practice time of one entry. */
export interface Share {
  readonly minutes: number;
  /** Shared out, not written. */
  readonly about: boolean;
}

/**
 * The minutes of each entry of a day, in their order: as written; else an equal share of what is left of its phase, or of
 * its sitting where the phase has no minutes of its own; else none. Planned entries take no share.
 */
export function sharedMinutes(model: BlockModel): readonly Share[] {
  const shares: Share[] = model.entries.map(({ minutes = 0, planned }) => ({
    minutes: planned ? 0 : minutes,
    about: false,
  }));
  const open = openSittings(model);
  for (const [sitting, total] of open.entries()) {
    const stretches = model.phases.flatMap((stretch, i) =>
      stretch.sitting === sitting ? [{ ...stretch, index: i }] : [],
    );
    const unstated = stretches.filter((stretch) => stretch.minutes === undefined).map(({ index }) => index);
    for (const { index, minutes } of stretches) if (minutes !== undefined) shareOut(model, shares, [index], minutes);
    const stated = stretches.reduce((sum, { minutes = 0 }) => sum + minutes, 0);
    if (total !== undefined) shareOut(model, shares, unstated, total - stated);
  }
  return shares;
}

/** The minutes of each sitting: its own, or an equal share of what the day's other sittings leave. */
function openSittings({ sittings }: BlockModel): readonly (number | undefined)[] {
  const [first, ...further] = sittings;
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

function shareOut(model: BlockModel, shares: Share[], stretches: readonly number[], total: number): void {
  const inside = model.entries.flatMap((entry, i) => (stretches.includes(entry.stretch) && !entry.planned ? [i] : []));
  const waiting = inside.filter((i) => model.entries[i]!.minutes === undefined);
  const left = total - inside.reduce((sum, i) => sum + shares[i]!.minutes, 0);
  if (!waiting.length || left <= 0) return;
  for (const i of waiting) shares[i] = { minutes: left / waiting.length, about: true };
}
