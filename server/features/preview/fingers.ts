import type { PreviewFingers, PreviewStep } from "../../../shared/preview.ts";
import { isPlayable } from "../../journal/entry-exercise.ts";
import type { Journal } from "../../journal/journal.ts";
import type { HardStep } from "../../music/fingering/finger-change.ts";
import { printFingering } from "../../music/fingering/fingering.ts";
import { type NoteNames, noteText } from "../../music/notes/note-names.ts";
import { entrySteps } from "../explain/entry-steps.ts";
import { doubtsOf, easierInWords, fingeringInWords, movementInWords } from "../explain/finger-words.ts";
import { entryUnderCursor } from "../explain/line-under-cursor.ts";
import { sectionTexts } from "./section-texts.ts";
import { sentence } from "./text.ts";

/** How many of the hardest are shown. */
const TOLD = 3;

/** The hardest finger changes of the entry on a line, for a recorder; null where there is nothing to say of them. */
export function fingersUnderCursor(journal: Journal, uri: string, line: number): PreviewFingers | null {
  const found = entryUnderCursor(journal, uri, { line, character: 0 });
  const told = found.ok ? entrySteps(found.entry, journal, uri, { most: TOLD, day: found.model.day?.date }) : undefined;
  if (!found.ok || !told) return null;
  return {
    place: { uri, line },
    steps: told.known ? told.steps.map((step) => shownStep(step, journal.names)) : [],
    sentence: told.known ? "" : sectionTexts.noFingerChanges(told.why),
    canIsolate: told.known && isPlayable(found.entry.subject),
  };
}

function shownStep(step: HardStep, names: NoteNames): PreviewStep {
  return {
    name: sectionTexts.fingerChange(noteText(step.from, names), noteText(step.to, names)),
    movement: movementInWords(step),
    fingerings: [step.from, step.to].map((note, i) => ({
      note: noteText(note, names),
      chart: printFingering(step.fingerings[i]!),
      words: fingeringInWords(step.fingerings[i]!),
    })),
    doubts: [...easierInWords(step, names), ...doubtsOf(step, names)].map(sentence),
  };
}
