import { civil, type DayNumber, dayNumber, isoDate, parseIsoDate, weekday } from "../../journal/calendar.ts";
import { dateTexts } from "../../journal/date-texts.ts";
import { inFigures } from "../../syntax/line/day-line.ts";
import type { LineOf } from "../../syntax/line/line.ts";
import { type Finding, finding, replacement } from "../finding.ts";
import { fixTexts } from "../fix-texts.ts";
import { lineTexts } from "./line-texts.ts";

/** As they are written into a journal. */
const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];
/** A day line's date is one, and its weekday is that date's. */
export function checkDayLine(line: LineOf<"day">, text: string): readonly Finding[] {
  return [...dateFindings(line), ...weekdayFindings(line, text)];
}

function dateFindings(line: LineOf<"day">): readonly Finding[] {
  if (parseIsoDate(line.date) !== undefined) return [];
  const { figures, weekday } = inFigures(line.date);
  const { offers, certain } = datesMeant(figures);
  const behind = weekday === undefined ? "" : ` ${weekday}`;
  const fixes = offers.map((offer) =>
    replacement(fixTexts.changeTo(offer + behind), { start: line.start, end: line.dateEnd }, offer + behind, certain),
  );
  const isWritten = /^\d{4}-\d{2}-\d{2}$/.test(line.date);
  const message = (isWritten ? lineTexts.notInCalendar : lineTexts.notIsoDate)(line.date);
  const instead = offers.length ? fixTexts.didYouMean(offers) : "";
  return [finding("bad-date", { start: line.start, end: line.dateEnd }, message + instead, fixes)];
}

/** The days that a date in another order or with other signs may mean. One of four digits tells the year. */
export function datesMeant(text: string): { readonly offers: readonly string[]; readonly certain: boolean } {
  const [a, b, c] = text.split(/\D/).map(Number) as [number, number, number];
  const yearFirst = /^\d{4}\D/.test(text);
  const dated = (year: number, month: number, day: number): string[] => {
    const found = year <= 9999 ? dayNumber(year, month, day) : undefined;
    return found === undefined ? [] : [isoDate(found)];
  };
  if (yearFirst) {
    const asWritten = dated(a, b, c);
    return asWritten.length
      ? { offers: asWritten, certain: true }
      : { offers: [...dated(a, c, b), ...lastOfMonth(a, b, c)].slice(0, 1), certain: false };
  }
  const dayFirst = dated(c, b, a);
  const monthFirst = a === b ? [] : dated(c, a, b);
  const offers =
    text.includes("/") && monthFirst.length ? [...dayFirst, ...monthFirst] : dayFirst.length ? dayFirst : monthFirst;
  return {
    offers,
    certain: offers.length === 1 && (monthFirst.length === 0 || dayFirst.length === 0 || text.includes(".")),
  };
}

/** The 31st of a month of thirty days was probably its last. */
function lastOfMonth(year: number, month: number, day: number): string[] {
  if (day < 29 || day > 31 || month < 1 || month > 12) return [];
  for (let last = 30; last >= 28; last--) {
    const found = dayNumber(year, month, last);
    if (found !== undefined) return [isoDate(found)];
  }
  return [];
}

function weekdayFindings(line: LineOf<"day">, text: string): readonly Finding[] {
  const date = parseIsoDate(line.date);
  const item = line.items.find(({ meaning }) => meaning.type === "weekday");
  if (item?.meaning.type !== "weekday" || date === undefined) return [];
  const right = weekday(date);
  if (item.meaning.day === right) return [];
  const name = WEEKDAYS[right - 1]!;
  const typed = text.slice(item.start, item.end);
  const offer = typed.length > 4 ? name : name.slice(0, 3);
  const other = nearbyDay(date, item.meaning.day);
  const said = (day: number): string => dateTexts.weekdays[day - 1]!;
  return [
    finding("wrong-weekday", item, lineTexts.otherWeekday(isoDate(date), said(right), said(item.meaning.day)), [
      replacement(fixTexts.changeTo(offer), item, offer),
      replacement(lineTexts.changeDateTo(isoDate(other)), { start: line.start, end: line.dateEnd }, isoDate(other)),
    ]),
  ];
}

/** The nearest date with that weekday, the earlier of two. */
function nearbyDay(date: DayNumber, wanted: number): DayNumber {
  const ahead = (wanted - weekday(date) + 7) % 7;
  const near = ahead > 3 ? date + ahead - 7 : date + ahead;
  return civil(near).year >= 1 ? near : date;
}
