import { civil, type DayNumber, dayNumber, isoDate, parseIsoDate, weekday } from "../../journal/calendar.ts";
import { inFigures } from "../../syntax/line/day-line.ts";
import type { LineOf } from "../../syntax/line/line.ts";
import { type Finding, finding, replacement } from "../finding.ts";

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
    replacement(`Change to ${offer}${behind}`, { start: line.start, end: line.dateEnd }, offer + behind, certain),
  );
  const fault = /^\d{4}-\d{2}-\d{2}$/.test(line.date) ? "is not in the calendar" : "is not in the form year-month-day";
  const instead = offers.length ? ` Did you mean ${offers.join(" or ")}?` : "";
  return [
    finding(
      "bad-date",
      { start: line.start, end: line.dateEnd },
      `${line.date} ${fault}, so the lines below have no date.${instead}`,
      fixes,
    ),
  ];
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
  return [
    finding(
      "wrong-weekday",
      item,
      `${isoDate(date)} is a ${name}, not a ${WEEKDAYS[item.meaning.day - 1]}. Either the date or the weekday is wrong.`,
      [
        replacement(`Change to ${offer}`, item, offer),
        replacement(`Change the date to ${isoDate(other)}`, { start: line.start, end: line.dateEnd }, isoDate(other)),
      ],
    ),
  ];
}

/** The nearest date with that weekday, the earlier of two. */
function nearbyDay(date: DayNumber, wanted: number): DayNumber {
  const ahead = (wanted - weekday(date) + 7) % 7;
  const near = ahead > 3 ? date + ahead - 7 : date + ahead;
  return civil(near).year >= 1 ? near : date;
}
