import { careSentence, easingSentence, sparingSentences } from "./care-words.ts";
import type { PlanBasis } from "./plan-basis.ts";

/**
 * What is said at the top of a plan where the body said something lately; left out by no option.
 *
 * @param time how long one plays today at most: `15 minutes instead of 30`
 */
export function careOnDay({ journal, ceiling, kind: { kind }, day }: PlanBasis, time: string): readonly string[] {
  const { said } = ceiling;
  if (!said) return [];
  switch (kind) {
    case "sparing":
      return sparingSentences(journal, said, day, time);
    case "easing":
      return [easingSentence(said, day, time)];
    default:
      return [careSentence(journal, said, day)];
  }
}
