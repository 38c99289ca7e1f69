import type { Standing } from "../../history/start-tempo.ts";
import { figure } from "../../plan/figure.ts";
import { startTexts } from "./start-texts.ts";

/** Where to begin, in beats a minute as the player counts. */
export interface Start {
  readonly tempo: number;
  /** Missing where none is. */
  readonly steady?: number;
}

/** `Start at 72. Steady at 92.` */
export function startInWords({ tempo, steady }: Start): string {
  if (steady === undefined) return startTexts.start(figure(tempo));
  return startTexts.startAndSteady(figure(tempo), figure(steady));
}

/** After a day whose remark asks for ease: one tempo, and no reason to leave it. */
export function easyStartInWords(tempo: number, reason: "tired" | "body"): string {
  return startTexts.easy(figure(tempo), reason);
}

/** As the player counts, of a tempo to begin with and how the strand stands. */
export function startOf(tempo: number, { steady }: Standing, perBeat: number): Start {
  return steady === null ? { tempo } : { tempo, steady: steady / perBeat };
}
