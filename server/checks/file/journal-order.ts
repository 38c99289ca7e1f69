import { type DayNumber, isoDate } from "../../journal/calendar.ts";
import type { Declaration } from "../../journal/declarations/declared.ts";
import { type Finding, finding, quoted, type Stretch } from "../finding.ts";

/** One day of a file, as far as its place among the others goes. */
export interface DatedDay {
  readonly date: DayNumber;
  /** Where its date stands on the day line. */
  readonly place: Stretch;
  /** Everything in it is still planned. */
  readonly planned: boolean;
}

/** What the other files of the journal say of a file's days. */
export interface DaysElsewhere {
  /** Days that a file before it has, with the name of the first such file. */
  readonly earlier: ReadonlyMap<DayNumber, string>;
  /** Days of this file at odds with the order of the files (`strayDays`), with the name of the file beside it. */
  readonly stray: ReadonlyMap<DayNumber, string>;
}

/** Findings on the days of one file, in its order, by the index of the day they stand on. */
export function checkDayOrder(
  days: readonly DatedDay[],
  today: DayNumber,
  { earlier, stray }: DaysElsewhere = NOTHING_ELSEWHERE,
): readonly { readonly day: number; readonly finding: Finding }[] {
  const { newestFirst, regular } = orderOf(days);
  const isAlone = ({ date }: DatedDay): boolean => date <= today && !earlier.has(date) && !stray.has(date);
  // Regular days have their latest at an end.
  const bound = earlier.size + stray.size > 0 ? days : [days[0], days.at(-1)];
  if (regular && bound.every((day) => day === undefined || isAlone(day))) return [];
  const found: { day: number; finding: Finding }[] = [];
  const seen = new Set<DayNumber>();
  for (const [day, { date, place: stretch, planned }] of days.entries()) {
    const before = days[day - 1]?.date;
    const departs = before !== undefined && (newestFirst ? date > before : date < before);
    const beside = stray.get(date);
    if (seen.has(date)) found.push({ day, finding: duplicateDay(stretch, date) });
    else if (earlier.has(date)) found.push({ day, finding: duplicateDay(stretch, date, earlier.get(date)) });
    else if (beside !== undefined) found.push({ day, finding: strayDay(stretch, date, beside) });
    else if (departs) found.push({ day, finding: outOfOrder(stretch, date, before, newestFirst) });
    seen.add(date);
    if (date > today && !planned) found.push({ day, finding: futureDay(stretch, date) });
  }
  return found;
}

export const NOTHING_ELSEWHERE: DaysElsewhere = { earlier: new Map(), stray: new Map() };

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

/** @param file the name of the file that has the day already, where that is another */
function duplicateDay(stretch: Stretch, date: DayNumber, file?: string): Finding {
  const where = file === undefined ? "above already" : `in ${quoted(file)} already`;
  return finding(
    "duplicate-day",
    stretch,
    `${isoDate(date)} stands ${where}. If it was another sitting, \`session\` says so below the first.`,
  );
}

function strayDay(stretch: Stretch, date: DayNumber, file: string): Finding {
  return finding(
    "day-order",
    stretch,
    `${isoDate(date)} reaches into the days of ${quoted(file)}, while most files of this journal follow each other. Is the date right?`,
  );
}

function futureDay(stretch: Stretch, date: DayNumber): Finding {
  return finding(
    "future-day",
    stretch,
    `${isoDate(date)} lies ahead. If it is meant as a plan, \`plan\` belongs on this line; otherwise a digit is wrong.`,
  );
}

function outOfOrder(
  stretch: { readonly start: number; readonly end: number },
  date: DayNumber,
  before: DayNumber,
  newestFirst: boolean,
): Finding {
  const rest = newestFirst ? "the newest first" : "the oldest first";
  return finding(
    "day-order",
    stretch,
    `${isoDate(date)} stands behind ${isoDate(before)}, while most of this file has ${rest}. Is the date right?`,
  );
}

export function duplicateDeclaration({ line }: Declaration, text: string): Finding {
  return finding(
    "duplicate-declaration",
    line,
    `\`${quoted(text.slice(line.start, line.end))}\`: this was declared before; the first one counts.`,
  );
}
