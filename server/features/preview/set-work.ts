import type { PreviewLine } from "../../../shared/preview.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { SetWork } from "../../plan/set-work.ts";
import { dayOfSet, setWorkInWords, textOfSet } from "../../plan/set-work-words.ts";
import { line } from "./lines.ts";
import { placeOf, shownText } from "./text.ts";

/** Each piece of work with when it was played, and for how many days it was set, in words below. */
export function setLines(journal: Journal, works: readonly SetWork[], today: DayNumber): readonly PreviewLine[] {
  return works.map((each) => {
    const { work } = each;
    const place = placeOf(journal, work.uri, work.block, work.line);
    return line(shownText(textOfSet(work)), place, dayOfSet(work, today), { below: setWorkInWords(each, today) });
  });
}
