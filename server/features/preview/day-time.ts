import { type DayTime, dayMinutes } from "../../history/day-minutes.ts";
import type { Journal } from "../../journal/journal.ts";
import type { PlacedDay } from "../explain/dated-days.ts";

/** The minutes of a day by phase; the same while the day's block is. */
export function timeOf(journal: Journal, { document, index }: PlacedDay): DayTime {
  const block = document.blocks[index]!;
  const titles = journal.titlesOf(block);
  return journal.memo.from(block, "minutes by phase", [titles], () => dayMinutes(journal.model(block)));
}
