import { attemptsInSteps, recordsOfBlock } from "../history/attempts.ts";
import type { Journal } from "../journal/journal.ts";
import type { Io } from "./io.ts";

/**
 * Has journals read for their attempts where somebody watches, who is to see how far that is: of a long journal it is
 * most of the work. Whoever asks for the attempts then has them at once.
 */
export function readAttempts(journals: Iterable<Journal>, { progress }: Pick<Io, "progress">): void {
  if (!progress) return;
  for (const journal of new Set(journals)) {
    let days = 0;
    for (const { blocks } of journal.files.values()) days += blocks.length;
    let read = 0;
    let taken = 0;
    const steps = attemptsInSteps(journal, (uri, block) => {
      taken++;
      return recordsOfBlock(journal, uri, block);
    });
    while (!steps.next().done) {
      if (taken === 0) read++;
      if (taken === 0) progress("Reading days", read, days);
      else progress("Looking for titles", taken, days);
    }
  }
}
