import { fold } from "../../syntax/words/fold.ts";
import type { Verdict } from "../../syntax/words/meaning.ts";

/** What an outcome may be declared to say. */
export const VERDICTS: readonly Verdict[] = ["reached", "nearly", "not"];

/** The verdict that a text names; undefined for anything else. */
export function verdictOf(text: string): Verdict | undefined {
  return VERDICTS.find((verdict) => verdict === fold(text.trim()));
}
