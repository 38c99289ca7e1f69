import type { LineDraft } from "./plan.ts";

/** Something that a rule would have on the day's plan. It is written only where there is room for it. */
export interface Candidate {
  /** What stands once: the key of an exercise, or a text. */
  readonly key: string;
  /** It goes so well that it may be varied. */
  readonly fluent: boolean;
  readonly write: (phase: "groundwork" | "fluency", place: number) => LineDraft | undefined;
}
