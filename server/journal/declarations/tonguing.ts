import { fold } from "../../syntax/words/fold.ts";
import type { MeaningOf } from "../../syntax/words/meaning.ts";

type Tonguing = MeaningOf<"articulation">["tonguing"];

/** The strands that an articulation may belong to; the first is meant where a declaration states none. */
export const TONGUINGS: readonly [Tonguing, ...Tonguing[]] = ["single", "slurred", "mixed", "multiple"];

export function tonguingOf(word: string): Tonguing | undefined {
  return TONGUINGS.find((each) => each === fold(word.trim()));
}
