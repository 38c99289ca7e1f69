import type { PreviewLesson, PreviewLine, PreviewPeriod } from "../../../shared/preview.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { weekdayDate } from "../../journal/date-words.ts";
import type { DeclaredSet } from "../../journal/declared-lines.ts";
import type { Journal } from "../../journal/journal.ts";
import { type BetweenLessons, beforeLastLesson, type Spoken, sinceLastLesson } from "../../plan/lesson.ts";
import { line } from "./lines.ts";
import { sectionTexts } from "./section-texts.ts";
import { setLines } from "./set-work.ts";
import { placeOf, shownText } from "./text.ts";

/** What was set, said and asked since the last lesson, and between that and the one before; null without any. */
export function lessonSection(journal: Journal, sets: readonly DeclaredSet[], today: DayNumber): PreviewLesson | null {
  const since = sinceLastLesson(journal, sets, today);
  const earlier = beforeLastLesson(journal, sets, today);
  const now = periodOf(journal, since, today);
  const before = earlier && periodOf(journal, earlier, today);
  if (isEmpty(now) && (!before || isEmpty(before))) return null;
  return {
    note: since.lesson ? sectionTexts.since(weekdayDate(since.from, today)) : sectionTexts.lastFourWeeks,
    now,
    before:
      before && !isEmpty(before)
        ? { title: sectionTexts.beforeThat(weekdayDate(earlier.from, today)), ...before }
        : null,
  };
}

function periodOf(journal: Journal, { set, said, asked }: BetweenLessons, today: DayNumber): PreviewPeriod {
  return {
    set: setLines(journal, set, today),
    said: spokenLines(journal, said, today),
    ask: spokenLines(journal, asked, today),
  };
}

function isEmpty({ set, said, ask }: PreviewPeriod): boolean {
  return set.length + said.length + ask.length === 0;
}

/** Questions, or the teacher's words. What holds nothing that can be seen is no line. */
export function spokenLines(
  journal: Journal,
  spoken: readonly Spoken[],
  today: DayNumber,
  most?: number,
): readonly PreviewLine[] {
  return spoken.flatMap(({ text, uri, block, line: at, day }) => {
    const shown = shownText(text, most);
    return shown === "" ? [] : [line(shown, placeOf(journal, uri, block, at), weekdayDate(day, today))];
  });
}
