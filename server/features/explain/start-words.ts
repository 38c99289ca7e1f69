import type { Standing } from "../../history/start-tempo.ts";
import { figure } from "../../plan/figure.ts";

/** What is said in place of a tempo to begin with. */
export const NOTHING_REACHED = "No tempo reached yet. Start where it feels easy and note it: `at 60 clean`.";

/** Where to begin, in beats a minute as the player counts. */
export interface Start {
  readonly tempo: number;
  /** Missing where none is. */
  readonly steady?: number;
}

/** `Start at 72. Steady at 92.` */
export function startInWords({ tempo, steady }: Start): string {
  return `Start at ${figure(tempo)}.${steady === undefined ? "" : ` Steady at ${figure(steady)}.`}`;
}

/** After a day whose remark asks for ease: one tempo, and no reason to leave it. */
export function easyStartInWords(tempo: number, reason: "tired" | "body"): string {
  const until = reason === "tired" ? "if you tire again" : "unless it feels easy";
  return `Start at ${figure(tempo)}, and stay there ${until}.`;
}

/** As the player counts, of a tempo to begin with and how the strand stands. */
export function startOf(tempo: number, { steady }: Standing, perBeat: number): Start {
  return steady === null ? { tempo } : { tempo, steady: steady / perBeat };
}
