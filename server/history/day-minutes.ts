import type { BlockModel } from "../journal/model.ts";
import { isPlanned, openSittings, sharedMinutes } from "./minutes.ts";

/** The practice time of one day under one phase. */
export interface PhaseMinutes {
  /** Empty for time under no phase. */
  readonly phase: string;
  readonly minutes: number;
  /** They were shared out among several phases, not written. */
  readonly about: boolean;
}

export interface DayTime {
  /** Each phase once, in the order of the day. */
  readonly phases: readonly PhaseMinutes[];
  /** How long the phases were was shared out, not written. */
  readonly about: boolean;
}

/**
 * The minutes of a day by phase: as the phase says; else what its entries take (`sharedMinutes`). What a sitting says
 * beyond that, with no entry to take it, stands under no phase. What is planned and not done counts for nothing.
 */
export function dayMinutes(model: BlockModel): DayTime {
  const { phases, entries } = model;
  const shares = sharedMinutes(model);
  const taken = phases.map(() => 0);
  for (const [i, { stretch }] of entries.entries()) taken[stretch]! += shares[i]!.minutes;
  const minutes = phases.map((stretch, i) => (stretch.planned ? taken[i]! : (stretch.minutes ?? taken[i]!)));
  const byPhase = new Map<string, number>();
  const add = (phase: string, time: number) => byPhase.set(phase, (byPhase.get(phase) ?? 0) + time);
  for (const [i, stretch] of phases.entries()) if (minutes[i]! > 0) add(stretch.phase ?? "", minutes[i]!);
  for (const [sitting, total] of openSittings(model).entries()) {
    const own = phases.flatMap((stretch, i) => (stretch.sitting === sitting ? [i] : []));
    const left = (total ?? 0) - own.reduce((sum, i) => sum + minutes[i]!, 0);
    if (left > SLIGHT && !isPlanned(model.sittings[sitting]!))
      add(phaseOfLine(model, model.sittings[sitting]!.line), left);
  }
  const shared = sharedPhases(model, shares);
  return {
    phases: [...byPhase].map(([phase, time]) => ({ phase, minutes: time, about: shared.has(phase) })),
    about: shared.size > 0,
  };
}

/** The minutes of a day line that says `lesson` are those of the lesson. */
function phaseOfLine({ phases }: BlockModel, line: number): string {
  return phases.find((each) => each.line === line && each.phase !== undefined)?.phase ?? "";
}

/** In minutes: what is left over by the rounding of shares. */
const SLIGHT = 1e-6;

/** The phases among which minutes were shared out, so that none of them says how long it was; none where it is one. */
function sharedPhases({ phases, entries }: BlockModel, shares: ReturnType<typeof sharedMinutes>): ReadonlySet<string> {
  const waiting = entries.flatMap(({ stretch }, i) =>
    shares[i]!.about && phases[stretch]!.minutes === undefined ? [stretch] : [],
  );
  const names = new Set(waiting.map((stretch) => phases[stretch]!.phase ?? ""));
  return names.size > 1 ? names : new Set();
}
