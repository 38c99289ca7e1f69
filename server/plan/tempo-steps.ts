import { notchAbove, notchAtOrBelow, notchBelow } from "../history/start-tempo.ts";
import { METRONOME_STEPS } from "../music/notes/note-value.ts";

/** How tempos on a way from slow to just beyond what is known are chosen. All in beats a minute of one beat. */
export interface StepsAsked {
  /** Where practice begins (`startTempo`). */
  readonly start: number;
  /** What goes well. */
  readonly known: number;
  /** Nothing above what goes well. */
  readonly unhurried: boolean;
  /** The tempo of an aim or a goal, above which nothing is proposed. */
  readonly most?: number;
}

/**
 * Tempos for one line: slow, on the way, one try a notch beyond, a notch back: `52, 60, 69, 66`. Each only where it
 * moves on from the one before; the slow one alone where nothing lies between.
 */
export function tempoSteps({ start, known, unhurried, most = Number.POSITIVE_INFINITY }: StepsAsked): number[] {
  const at = notchAtOrBelow(known);
  const goal = notchAtOrBelow(Math.min(most, Number.MAX_SAFE_INTEGER));
  const top = Math.min(unhurried ? notchBelow(at) : notchAbove(at), goal);
  if (top <= start) return [start];
  const middle = nearestNotch(Math.sqrt(start * top));
  return [start, middle, top, notchBelow(top)].filter((tempo, i, all) => i === 0 || tempo !== all[i - 1]);
}

/** By ratio; below the lowest setting the nearest whole number. */
function nearestNotch(bpm: number): number {
  const [lowest] = METRONOME_STEPS;
  if (bpm < lowest!) return Math.round(bpm);
  return METRONOME_STEPS.reduce((best, step) => (apart(step, bpm) < apart(best, bpm) ? step : best));
}

function apart(a: number, b: number): number {
  return Math.abs(Math.log(a / b));
}
