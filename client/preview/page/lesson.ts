import type { PreviewLesson, PreviewPeriod } from "../../../shared/preview.ts";
import { small } from "./element.ts";
import { fold } from "./fold.ts";
import { lineTexts } from "./line-texts.ts";
import { labelledLines } from "./lines.ts";
import { pageTexts } from "./page-texts.ts";
import { part } from "./part.ts";
import type { Surroundings } from "./surroundings.ts";

/** What was set, said and asked since the last lesson; below, folded, since the one before. */
export function lessonPart({ note, now, before }: PreviewLesson, around: Surroundings): HTMLElement[] {
  return [
    ...part(pageTexts.forTheLesson, small(note)),
    ...period(now, around),
    ...(before
      ? fold({ name: "lesson before", words: before.title, content: () => period(before, around) }, around)
      : []),
  ];
}

function period({ set, said, ask }: PreviewPeriod, around: Surroundings): HTMLElement[] {
  return labelledLines(
    [
      { label: lineTexts.set, lines: set },
      { label: lineTexts.said, lines: said },
      { label: lineTexts.ask, lines: ask },
    ],
    around,
  );
}
