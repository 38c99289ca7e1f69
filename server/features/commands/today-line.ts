import { type DayNumber, isoDate, weekday } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Document } from "../../syntax/document/document.ts";
import type { PlacedDay } from "../explain/dated-days.ts";
import { WEEKDAY_NAMES } from "../explain/explain.ts";
import { indentOf } from "../explain/phases-before.ts";

/** A day line as the latest one before has it: indented or not, the weekday in its words or left out. */
export function dayLine(journal: Journal, { blocks }: Document, days: readonly PlacedDay[], today: DayNumber): string {
  const date = isoDate(today);
  const name = WEEKDAY_NAMES[weekday(today) - 1]!;
  const latest = days.filter((day) => day.date < today).reduce<PlacedDay | undefined>(later, undefined) ?? days[0];
  if (!latest) return `${date} ${name.slice(0, 3)}`;
  const block = blocks[latest.index]!;
  const text = block.lines[0]!;
  const { line } = journal.ownModel(block).day!;
  const lead = text.slice(0, line.start).replace("\uFEFF", "");
  const written = line.items.find(({ meaning }) => meaning.type === "weekday");
  if (!written) return lead + date;
  return (
    lead + date + text.slice(line.dateEnd, written.start) + writtenLike(text.slice(written.start, written.end), name)
  );
}

/**
 * What a day line says behind its date: `, 45 min, plan`, or without commas where the file's last line with an amount
 * of time has none.
 */
export function behindDate(
  journal: Journal,
  { blocks }: Document,
  days: readonly PlacedDay[],
  today: DayNumber,
  told: readonly string[],
): string {
  const before = days.filter(({ date }) => date <= today).sort((a, b) => b.date - a.date);
  for (const { index } of before.slice(0, DAYS_BACK)) {
    const text = blocks[index]!.lines[0]!;
    const { line } = journal.ownModel(blocks[index]!).day!;
    const amount = line.items.findIndex(({ meaning }) => meaning.type === "amount");
    if (amount < 0) continue;
    const gap = text.slice(line.items[amount - 1]?.end ?? line.dateEnd, line.items[amount]!.start);
    return told.map((words) => (/^\s+$/.test(gap) ? " " : ", ") + words).join("");
  }
  return told.map((words) => `, ${words}`).join("");
}

/** A weekday in full or in three letters, in lower case or with a full stop, as another one is written. */
function writtenLike(word: string, name: string): string {
  const letters = /day$/i.test(word) ? name : name.slice(0, 3) + (word.endsWith(".") ? "." : "");
  return word === word.toLowerCase() ? letters.toLowerCase() : letters;
}

/** So many days back it is looked how entries are indented. */
const DAYS_BACK = 8;

/** What a day's first entry is indented by, as the last days of the file have theirs that stand below no phase. */
export function indentBelowDay(
  journal: Journal,
  { blocks }: Document,
  days: readonly PlacedDay[],
  today: DayNumber,
): string {
  const before = days.filter(({ date }) => date < today).sort((a, b) => b.date - a.date);
  for (const { index } of before.slice(0, DAYS_BACK)) {
    const block = blocks[index]!;
    const entry = journal.ownModel(block).entries.find(({ phase }) => phase === undefined);
    if (entry) return indentOf(block.lines[entry.place.line]!);
  }
  return "";
}

function later(a: PlacedDay | undefined, b: PlacedDay): PlacedDay {
  return a && a.date > b.date ? a : b;
}
