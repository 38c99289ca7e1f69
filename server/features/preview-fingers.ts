import type { PreviewFingers, PreviewStep } from "../../shared/preview.ts";
import type { Journal } from "../journal/journal.ts";
import { isPlayable } from "../journal/to-play.ts";
import type { HardStep } from "../music/finger-change.ts";
import { printFingering } from "../music/fingering.ts";
import { printNote } from "../music/note.ts";
import { entrySteps } from "./entry-steps.ts";
import { doubtsOf, fingeringInWords, movementInWords } from "./finger-words.ts";
import { entryUnderCursor } from "./line-under-cursor.ts";
import { sentence } from "./preview-text.ts";

/** How many of the hardest steps are told. */
const TOLD = 3;

/** The hardest steps of the entry on a line, for a recorder; null where there is nothing to say of them. */
export function fingersUnderCursor(journal: Journal, uri: string, line: number): PreviewFingers | null {
  const found = entryUnderCursor(journal, uri, { line, character: 0 });
  const told = found.ok ? entrySteps(found.entry, journal, uri, TOLD) : undefined;
  if (!found.ok || !told) return null;
  return {
    place: { uri, line },
    steps: told.known ? told.steps.map(shownStep) : [],
    sentence: told.known ? "" : `Hardest steps: ${told.why}.`,
    canIsolate: told.known && isPlayable(found.entry.subject),
  };
}

function shownStep(step: HardStep): PreviewStep {
  return {
    name: `${printNote(step.from)} to ${printNote(step.to)}`,
    movement: movementInWords(step),
    fingerings: [step.from, step.to].map((note, i) => ({
      note: printNote(note),
      chart: printFingering(step.fingerings[i]!),
      words: fingeringInWords(step.fingerings[i]!),
    })),
    doubts: doubtsOf(step).map(sentence),
  };
}
