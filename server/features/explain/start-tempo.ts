import { nearestSteps } from "../../music/notes/note-value.ts";

/** After so many days without it, an exercise is begun again one and two metronome steps lower. Our own choice. */
const DAYS_FOR_A_STEP = [14, 28] as const;

/**
 * The metronome step to begin from today, in beats a minute: the one at or below the tempo that was last reached, lower
 * after a gap. A tempo below the metronome's lowest step stays as it is.
 *
 * @param reached the last reached tempo, in beats a minute
 * @param gap days since then
 */
export function startTempo(reached: number, gap: number): number {
  const { at, below } = nearestSteps(reached);
  let tempo = at ?? below ?? reached;
  for (const days of DAYS_FOR_A_STEP) if (gap >= days) tempo = nearestSteps(tempo).below ?? tempo;
  return tempo;
}

/** What is said in place of a tempo to begin from. */
export const NOTHING_REACHED = "No tempo was reached yet. Begin where it is easy, and write it down: at 60 clean.";
