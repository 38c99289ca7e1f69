import type { PreviewTableRow, PreviewWeeks } from "../../../shared/preview.ts";
import type { TimeAxis } from "../../charts/time-axis.ts";
import { weekBars } from "../../charts/week-bars.ts";
import { sum, tonedWeeks, type WeekBars } from "../../charts/week-data.ts";
import { holdsDay, weekCount } from "../../history/week-span.ts";
import { type DayNumber, mondayOf, weekIndex } from "../../journal/calendar.ts";
import { shortDate } from "../../journal/date-words.ts";
import type { Journal } from "../../journal/journal.ts";
import { phaseTexts } from "../../journal/phase-texts.ts";
import { daysOfJournal, type PlacedDay } from "../explain/dated-days.ts";
import { timeOf } from "./day-time.ts";
import { hasBegun } from "./plan.ts";
import { sectionTexts } from "./section-texts.ts";
import { placeOf, shownText } from "./text.ts";
import { todayTexts } from "./today-texts.ts";

/** `This week: 230 minutes.`; where only lines were written, the days that have some. */
export function weekSentence(journal: Journal, today: DayNumber): string {
  const monday = mondayOf(weekIndex(today));
  const days = daysOfJournal(journal).filter(({ date }) => date >= monday && date <= today);
  const minutes = Math.round(sum(days.map((day) => sum(timeOf(journal, day).phases.map((each) => each.minutes)))));
  if (minutes > 0) return todayTexts.week(minutes);
  const played = new Set(days.map(({ date }) => date).filter((date) => hasBegun(journal, date))).size;
  return played === 0 ? todayTexts.weekWithoutMinutes : todayTexts.weekOfDays(played);
}

/** The minutes of each week of an axis by phase; null where there are none. */
export function weeksSection(journal: Journal, span: TimeAxis, today: DayNumber): PreviewWeeks | null {
  const days = daysOfJournal(journal).filter(({ date }) => date <= today && holdsDay(span, date));
  const weeks = Array.from({ length: weekCount(span) }, () => new Map<string, number>());
  const last: (PlacedDay | undefined)[] = weeks.map(() => undefined);
  for (const day of days) {
    const at = weekIndex(day.date) - span.first;
    const week = weeks[at];
    if (!week) continue;
    if ((last[at]?.date ?? Number.NEGATIVE_INFINITY) <= day.date) last[at] = day;
    for (const { phase, minutes } of timeOf(journal, day).phases) {
      const name = shownText(phaseTexts.name(phase), 40);
      week.set(name, (week.get(name) ?? 0) + minutes);
    }
  }
  const data: WeekBars = { title: sectionTexts.minutesByPhase, span, weeks };
  const drawing = weekBars(data, "weeks");
  if (!drawing.ok) return null;
  const { tones } = tonedWeeks(data);
  const table = {
    caption: sectionTexts.minutesByPhase,
    headings: [sectionTexts.weekOf, ...tones.map(({ name }) => name), sectionTexts.all],
    rows: rowsOf(journal, data, { last, today }),
    foot: "",
  };
  return { tones, chart: { svg: drawing.svg, table } };
}

interface Surrounding {
  /** The last day of each week. */
  readonly last: readonly (PlacedDay | undefined)[];
  readonly today: DayNumber;
}

/** The weeks with minutes, the latest first. */
function rowsOf(journal: Journal, data: WeekBars, { last, today }: Surrounding): PreviewTableRow[] {
  const { weeks } = tonedWeeks(data);
  const rows = weeks.map((minutes, at): PreviewTableRow => {
    const day = last[at];
    return {
      cells: [
        shortDate(mondayOf(data.span.first + at), today),
        ...minutes.map(shownMinutes),
        shownMinutes(sum(minutes)),
      ],
      place: day ? placeOf(journal, day.uri, day.document.blocks[day.index]!, 0) : null,
    };
  });
  return rows.filter((_, at) => sum(weeks[at]!) > 0).reverse();
}

function shownMinutes(minutes: number): string {
  return minutes === 0 ? "" : String(Math.round(minutes));
}
