import type { PreviewChart, PreviewLink, PreviewTable, PreviewWeek } from "../../../shared/preview.ts";
import { dayBars } from "../../charts/day-bars.ts";
import { type DayBars, weekByDay } from "../../charts/day-data.ts";
import { minutesInWords, shownMinutes } from "../../charts/day-words.ts";
import { ROW_SIZE } from "../../charts/look.ts";
import { dayMinutes } from "../../history/day-minutes.ts";
import { type DayNumber, isoDate, isoWeek, SHORT_WEEKDAYS, shortWeekday, weekday } from "../../journal/calendar.ts";
import type { Journal } from "../../journal/journal.ts";
import { daysOfJournal, type PlacedDay } from "../explain/dated-days.ts";
import { placeOf, shownText } from "./text.ts";

const DAYS_OF_WEEK = 7;
const HEIGHT = 150;

/** The minutes of this week, with those of last week on the same weekdays. Only the days of the two are read. */
export function weekSection(journal: Journal, today: DayNumber): PreviewWeek {
  const monday = today - weekday(today) + 1;
  const written = daysOfJournal(journal).filter(({ date }) => date >= monday - DAYS_OF_WEEK && date <= today);
  const days = Array.from({ length: 2 * DAYS_OF_WEEK }, (_, at) =>
    timeOf(
      journal,
      written.filter(({ date }) => date === monday - DAYS_OF_WEEK + at),
    ),
  );
  const title = `Week ${isoWeek(today).week}`;
  const data = dataOf(title, days.slice(DAYS_OF_WEEK), days.slice(0, DAYS_OF_WEEK));
  return {
    title,
    dates: `${isoDate(monday)} to ${isoDate(monday + DAYS_OF_WEEK - 1)}`,
    sentence: isBlank(data) ? `Nothing is written this week so far${lastWeekOf(data)}.` : minutesInWords(data),
    chart: chartOf(data, monday),
    days: written.filter(({ date }) => date >= monday).map((day) => linkTo(journal, day)),
  };
}

/** What stands under one date, in however many places. */
interface TimeOfDate {
  readonly phases: ReadonlyMap<string, number>;
  readonly about: boolean;
  readonly rest: boolean;
}

function timeOf(journal: Journal, days: readonly PlacedDay[]): TimeOfDate {
  const phases = new Map<string, number>();
  let about = false;
  let rest = false;
  for (const { document, index } of days) {
    const model = journal.model(document.blocks[index]!);
    const time = dayMinutes(model);
    for (const { phase, minutes } of time.phases) phases.set(phase, (phases.get(phase) ?? 0) + minutes);
    about ||= time.about;
    rest ||= model.day?.rest !== undefined;
  }
  return { phases, about, rest };
}

function dataOf(title: string, now: readonly TimeOfDate[], before: readonly TimeOfDate[]): DayBars {
  const phases = [...new Set(now.flatMap((day) => [...day.phases.keys()]))];
  return {
    title: `${title}: minutes by day and phase`,
    phases: phases.map((phase) => shownText(phase)),
    days: now.map((day, at) => ({
      label: SHORT_WEEKDAYS[at]!,
      minutes: phases.map((phase) => day.phases.get(phase) ?? 0),
      about: day.about,
      ...(day.rest ? { note: "rest" } : {}),
    })),
    lastWeek: before.map((day) => [...day.phases.values()].reduce((sum, minutes) => sum + minutes, 0)),
  };
}

function isBlank({ days }: DayBars): boolean {
  return days.every(({ minutes }) => minutes.every((each) => each === 0));
}

function lastWeekOf({ lastWeek = [] }: DayBars): string {
  const [total, days] = [lastWeek.reduce((sum, each) => sum + each, 0), lastWeek.filter((each) => each > 0).length];
  return total === 0 ? "" : `; last week ${shownMinutes(total)} minutes on ${days} ${days === 1 ? "day" : "days"}`;
}

function chartOf(data: DayBars, monday: DayNumber): PreviewChart {
  const drawing = dayBars(data, { kind: "classes", width: ROW_SIZE.width, height: HEIGHT, id: "week" });
  return drawing.ok ? { ok: true, svg: drawing.svg, table: tableOf(data, monday) } : drawing;
}

function tableOf(data: DayBars, monday: DayNumber): PreviewTable {
  const { phases, days } = weekByDay(data);
  return {
    caption: "Minutes by day and phase",
    headings: ["Day", ...phases, "All", "Last week"],
    rows: days.map(({ label, minutes, total, about, note, lastWeek }, at) => [
      `${label} ${isoDate(monday + at)}`,
      ...minutes.map(shownMinutes),
      total === 0 && note !== "" ? note : `${about ? "about " : ""}${shownMinutes(total)}`,
      shownMinutes(lastWeek),
    ]),
  };
}

function linkTo(journal: Journal, { uri, document, index, date }: PlacedDay): PreviewLink {
  return { text: shortWeekday(date), note: "", place: placeOf(journal, uri, document.blocks[index]!, 0) };
}
