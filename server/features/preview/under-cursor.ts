import type { PreviewPlace } from "../../../shared/preview.ts";
import { journalHistory } from "../../history/journal-history.ts";
import { playedEntry } from "../../history/played.ts";
import { inTimeOrder, type Manner } from "../../history/record.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import { entryUnderCursor } from "../explain/line-under-cursor.ts";
import { placeOfRecord } from "./lines.ts";

/** The key of the exercise that a line practises, or would practise; null where it is none. */
export function exerciseUnderCursor(journal: Journal, uri: string, line: number): string | null {
  return mannerOn(journal, uri, line)?.exerciseKey ?? null;
}

/**
 * By which line the page shows what stands on another one: it has one row for an exercise or a piece (or a movement),
 * which leads to where that was last played, up to today; all else that it shows leads to its own line.
 */
export function shownBy(journal: Journal, uri: string, line: number, today: DayNumber): PreviewPlace {
  const manner = mannerOn(journal, uri, line);
  const { strands = [] } = (manner && journalHistory(journal).exercises.get(manner.exerciseKey)) ?? {};
  const records = strands.flatMap(({ records }) => records);
  const played = records.filter(({ day, movement }) => day <= today && movement === manner?.movement);
  const last = played.sort(inTimeOrder).at(-1);
  return last ? placeOfRecord(journal, last) : { uri, line };
}

function mannerOn(journal: Journal, uri: string, line: number): Manner | undefined {
  const found = entryUnderCursor(journal, uri, { line, character: 0 });
  return found.ok ? playedEntry(found.entry, journal.conventions(uri)).attempts[0]?.manner : undefined;
}
