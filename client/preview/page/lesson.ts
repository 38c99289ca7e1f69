import type { PreviewLesson, PreviewPeriod } from "../../../shared/preview.ts";
import { small } from "./element.ts";
import { fold } from "./fold.ts";
import { labelledLines } from "./lines.ts";
import { part } from "./part.ts";
import type { Surroundings } from "./surroundings.ts";

/** What was set, said and asked since the last lesson; below, folded, since the one before. */
export function lessonPart({ note, now, before }: PreviewLesson, around: Surroundings): HTMLElement[] {
  return [
    ...part("For the lesson", small(note)),
    ...period(now, around),
    ...(before
      ? fold({ name: "lesson before", words: before.title, content: () => period(before, around) }, around)
      : []),
  ];
}

function period({ set, said, ask }: PreviewPeriod, around: Surroundings): HTMLElement[] {
  return labelledLines(
    [
      { label: "set", lines: set },
      { label: "said", lines: said },
      { label: "ask", lines: ask },
    ],
    around,
  );
}
