import { isoDate } from "../journal/calendar.ts";
import type { Declaration } from "../journal/declared.ts";
import type { DayNumber } from "../journal/model.ts";
import { type Finding, finding, quoted, type Stretch } from "./finding.ts";

/** One day of a file, as far as its place among the others goes. */
export interface DatedDay {
  readonly date: DayNumber;
  /** Where its date stands on the day line. */
  readonly place: Stretch;
  /** Everything in it is still planned. */
  readonly planned: boolean;
}

/** Findings on the days of one file, in its order, by the index of the day they stand on. */
export function checkDayOrder(
  days: readonly DatedDay[],
  today: DayNumber,
): readonly { readonly day: number; readonly finding: Finding }[] {
  const { newestFirst, regular } = orderOf(days);
  if (regular && days.every(({ date }) => date <= today)) return [];
  const found: { day: number; finding: Finding }[] = [];
  const seen = new Set<DayNumber>();
  for (const [day, { date, place: stretch, planned }] of days.entries()) {
    const before = days[day - 1]?.date;
    const departs = before !== undefined && (newestFirst ? date > before : date < before);
    if (seen.has(date)) found.push({ day, finding: duplicateDay(stretch, date) });
    else if (departs) found.push({ day, finding: outOfOrder(stretch, date, before, newestFirst) });
    seen.add(date);
    if (date > today && !planned) found.push({ day, finding: futureDay(stretch, date) });
  }
  return found;
}

/** Which way most days of a file follow each other, and whether all do. */
function orderOf(days: readonly DatedDay[]): { readonly newestFirst: boolean; readonly regular: boolean } {
  let rising = 0;
  let falling = 0;
  for (let i = 1; i < days.length; i++) {
    if (days[i]!.date > days[i - 1]!.date) rising++;
    else if (days[i]!.date < days[i - 1]!.date) falling++;
  }
  return { newestFirst: falling > rising, regular: Math.max(rising, falling) === Math.max(0, days.length - 1) };
}

function duplicateDay(stretch: Stretch, date: DayNumber): Finding {
  return finding(
    "duplicate-day",
    stretch,
    `${isoDate(date)} stands above already. If it was another sitting, \`session\` says so below the first.`,
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

/** An aim whose day has passed. */
export function pastAim({ declared, line }: Declaration, today: DayNumber): Finding | undefined {
  if (declared?.type !== "aim" || declared.by === undefined || declared.by >= today) return undefined;
  return finding(
    "aim-past",
    line,
    `The day of this aim, ${isoDate(declared.by)}, has passed. Another day, or taking the line out, keeps the list of aims short.`,
  );
}
