import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import type { Declaration } from "../../journal/declarations/declared.ts";
import { plainText } from "../../syntax/words/plain-text.ts";
import { type Finding, finding, quoted, type Stretch } from "../finding.ts";
import { fileTexts } from "./file-texts.ts";

/** One day of a file, as far as its place among the others goes. */
export interface DatedDay {
  readonly date: DayNumber;
  /** Where its date stands on the day line. */
  readonly place: Stretch;
  /** Everything in it is still planned. */
  readonly planned: boolean;
}

/** The same with its line in the file, from 0. */
export interface DayInFile extends DatedDay {
  readonly line: number;
}

/** What the other files of the journal say of a file's days. */
export interface DaysElsewhere {
  /** Days that a file before it has, in words with the first such file, and the line. */
  readonly earlier: ReadonlyMap<DayNumber, string>;
  /** Days of this file at odds with the order of the files (`strayDays`), with the name of the file beside it. */
  readonly stray: ReadonlyMap<DayNumber, string>;
  /** Folders that repeat each other's days, in words, by the day of this file on which that is said. */
  readonly siblings: ReadonlyMap<DayNumber, string>;
}

/** Findings on the days of one file, in its order, by the index of the day they stand on. */
export function checkDayOrder(
  days: readonly DayInFile[],
  today: DayNumber,
  { earlier, stray, siblings }: DaysElsewhere = NOTHING_ELSEWHERE,
): readonly { readonly day: number; readonly finding: Finding }[] {
  const { newestFirst, regular } = orderOf(days);
  const isAlone = ({ date }: DatedDay): boolean =>
    date <= today && !earlier.has(date) && !stray.has(date) && !siblings.has(date);
  // Regular days have their latest at an end.
  const bound = earlier.size + stray.size + siblings.size > 0 ? days : [days[0], days.at(-1)];
  if (regular && bound.every((day) => day === undefined || isAlone(day))) return [];
  const found: { day: number; finding: Finding }[] = [];
  const seen = new Map<DayNumber, number>();
  for (const [day, { date, place: stretch, planned, line }] of days.entries()) {
    const before = days[day - 1]?.date;
    const departs = before !== undefined && (newestFirst ? date > before : date < before);
    const beside = stray.get(date);
    const above = seen.get(date);
    const folders = siblings.get(date);
    if (above !== undefined) found.push({ day, finding: duplicateDay(stretch, date, fileTexts.above(above + 1)) });
    else if (earlier.has(date)) found.push({ day, finding: duplicateDay(stretch, date, earlier.get(date)!) });
    else if (folders !== undefined) found.push({ day, finding: sameDays(stretch, folders) });
    else if (beside !== undefined) found.push({ day, finding: strayDay(stretch, date, beside) });
    else if (departs) found.push({ day, finding: outOfOrder(stretch, date, before, newestFirst) });
    if (above === undefined) seen.set(date, line);
    if (date > today && !planned) found.push({ day, finding: futureDay(stretch, date) });
  }
  return found;
}

export const NOTHING_ELSEWHERE: DaysElsewhere = { earlier: new Map(), stray: new Map(), siblings: new Map() };

/** The fewest pairs of files in order from which an order of the files is taken. */
const PAIRS_IN_ORDER = 2;

/**
 * Where most files of a journal follow each other without overlapping, as those of months do, the one day that reaches
 * into the file beside its own: by the index of its file. Where more than one day does, the files overlap on purpose.
 * `files` hold the dates of each in order, each once, none empty.
 */
export function strayDays(
  files: readonly (readonly DayNumber[])[],
): ReadonlyMap<number, ReadonlyMap<DayNumber, number>> {
  const found = new Map<number, Map<DayNumber, number>>();
  const pairs = files.slice(1).map((after, i) => ({ before: files[i]!, after, index: i }));
  const overlapping = pairs.filter(({ before, after }) => after[0]! < before.at(-1)!);
  const inOrder = pairs.length - overlapping.length;
  if (inOrder < PAIRS_IN_ORDER || inOrder <= overlapping.length) return found;
  for (const { before, after, index } of overlapping) {
    const stray = strayOf(before, after);
    if (!stray) continue;
    const [file, beside] = stray === "after" ? [index + 1, index] : [index, index + 1];
    const days = found.get(file) ?? new Map<DayNumber, number>();
    found.set(file, days.set(stray === "after" ? after[0]! : before.at(-1)!, beside));
  }
  return found;
}

/**
 * Whose end is at odds: the first day of the file after, or the last of the one before; the one further from its own.
 */
function strayOf(before: readonly DayNumber[], after: readonly DayNumber[]): "before" | "after" | undefined {
  const [last, first] = [before.at(-1)!, after[0]!];
  const [lastButOne, second] = [before.at(-2), after[1]];
  const isLate = lastButOne !== undefined && lastButOne <= first;
  const isEarly = second !== undefined && second >= last;
  if (isLate && isEarly) return last - lastButOne > second - first ? "before" : "after";
  return isLate ? "before" : isEarly ? "after" : undefined;
}

/** Which way most days of a file follow each other, and whether all do. */
export function orderOf(days: readonly Pick<DatedDay, "date">[]): {
  readonly newestFirst: boolean;
  readonly regular: boolean;
} {
  let rising = 0;
  let falling = 0;
  for (let i = 1; i < days.length; i++) {
    if (days[i]!.date > days[i - 1]!.date) rising++;
    else if (days[i]!.date < days[i - 1]!.date) falling++;
  }
  return { newestFirst: falling > rising, regular: Math.max(rising, falling) === Math.max(0, days.length - 1) };
}

/** @param where the day is already */
function duplicateDay(stretch: Stretch, date: DayNumber, where: string): Finding {
  return finding("duplicate-day", stretch, fileTexts.duplicateDay(isoDate(date), plainText(where, " ")));
}

function sameDays(stretch: Stretch, folders: string): Finding {
  return finding("duplicate-day", stretch, fileTexts.sameDays(plainText(folders, " ")));
}

function strayDay(stretch: Stretch, date: DayNumber, file: string): Finding {
  return finding("day-order", stretch, fileTexts.strayDay(isoDate(date), quoted(file)));
}

function futureDay(stretch: Stretch, date: DayNumber): Finding {
  return finding("future-day", stretch, fileTexts.futureDay(isoDate(date)));
}

function outOfOrder(stretch: Stretch, date: DayNumber, before: DayNumber, newestFirst: boolean): Finding {
  const message = newestFirst ? fileTexts.outOfNewestFirst : fileTexts.outOfOldestFirst;
  return finding("day-order", stretch, message(isoDate(date), isoDate(before)));
}

export function duplicateDeclaration({ line }: Declaration, text: string): Finding {
  return finding("duplicate-declaration", line, fileTexts.declaredTwice(quoted(text.slice(line.start, line.end))));
}
