import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { entrySteps } from "../explain/entry-steps.ts";
import { fingerTexts } from "../explain/finger-texts.ts";
import { doubtsOf, easierInWords, stepInWords } from "../explain/finger-words.ts";

/**
 * The hardest finger change of what an entry plays on a recorder, as one paragraph of Markdown; none for any other
 * instrument.
 *
 * @param day the day that the entry stands on, where there is one
 */
export function hardestStepHover(
  entry: Entry,
  journal: Journal,
  uri: string,
  day: DayNumber | undefined,
): readonly string[] {
  const found = entrySteps(entry, journal, uri, { most: 1, day });
  if (!found) return [];
  if (!found.known) return [fingerTexts.hardest(found.why)];
  return found.steps.map((step) => {
    const inTicks = (fingering: string): string => `\`${fingering}\``;
    const { names } = journal;
    const words = [stepInWords(step, names, inTicks), ...easierInWords(step, names, inTicks), ...doubtsOf(step, names)];
    return fingerTexts.hardest(words.join("; "));
  });
}
