import type { Journal } from "../journal/journal.ts";
import type { Entry } from "../journal/model.ts";
import { entrySteps } from "./entry-steps.ts";
import { doubtsOf, stepInWords } from "./finger-words.ts";

/** The hardest step of what an entry plays on a recorder, as one paragraph of Markdown; none for any other instrument. */
export function hardestStepHover(entry: Entry, journal: Journal, uri: string): readonly string[] {
  const found = entrySteps(entry, journal, uri, 1);
  if (!found) return [];
  if (!found.known) return [`Hardest step: ${found.why}.`];
  return found.steps.map((step) => {
    const words = stepInWords(step, (fingering) => `\`${fingering}\``);
    return `Hardest step: ${[words, ...doubtsOf(step)].join("; ")}.`;
  });
}
