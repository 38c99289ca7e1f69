import { careSentence, easingSentence, sparingSentences } from "./care-words.ts";
import type { PlanBasis } from "./plan-basis.ts";

/** What is said at the top of a plan where the body said something lately; left out by no option. */
export function careOnDay({ journal, ceiling, kind: { kind }, day }: PlanBasis): readonly string[] {
  const { said } = ceiling;
  if (!said) return [];
  switch (kind) {
    case "sparing":
      return sparingSentences(journal, said, day);
    case "easing":
      return [easingSentence(said, day)];
    default:
      return [careSentence(journal, said, day)];
  }
}
