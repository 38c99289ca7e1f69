import { minutesInWords } from "../../history/minute-words.ts";
import { civil, type DayNumber, mondayOf, shortWeekday, weekIndex } from "../../journal/calendar.ts";
import { shortDate, shortMonth } from "../../journal/date-words.ts";
import { inWords } from "../../plan/day-words.ts";
import type { PartBlock, Table } from "./page.ts";
import { type Minutes, type PracticeTime, sumOf, type TimedDay } from "./practice-time.ts";

/** How long was practised: a sentence, and a table of phases by days; of longer spans by weeks, months or years. */
export function timeBlocks(time: PracticeTime, until: DayNumber): readonly PartBlock[] {
  const timed = time.days.filter(({ minutes }) => minutes !== null && minutes > 0);
  if (timed.length === 0) return [];
  const { most, unit } = UNITS.find((each) => columnsOf(timed, each).length <= each.most)!;
  const columns = columnsOf(timed, { most, unit });
  return [
    { type: "sentence", text: sentenceOf(time.days, timed) },
    { type: "table", table: tableOf(time.phases, columns, { unit, until }) },
  ];
}

/** `185 minutes on five days; on another none are noted.` */
function sentenceOf(days: readonly TimedDay[], timed: readonly TimedDay[]): string {
  const minutes = Math.round(timed.reduce((sum, each) => sum + each.minutes!, 0));
  const without = days.filter((each) => each.minutes === null).length;
  const others = without === 0 ? "" : `; on ${without === 1 ? "another" : `${inWords(without)} more`} none are noted`;
  return `${minutes} ${minutes === 1 ? "minute" : "minutes"} on ${inWords(timed.length)} ${timed.length === 1 ? "day" : "days"}${others}.`;
}

type UnitName = "day" | "week" | "month" | "year";

interface Unit {
  readonly unit: UnitName;
  /** So many columns have room on a page. */
  readonly most: number;
}

const UNITS: readonly Unit[] = [
  { unit: "day", most: 7 },
  { unit: "week", most: 9 },
  { unit: "month", most: 13 },
  { unit: "year", most: Number.POSITIVE_INFINITY },
];

const FIRST_HEADING = { day: "phase", week: "phase, by the week of", month: "phase", year: "phase" } as const;

/** Days that stand in one column: at least one. */
type Column = readonly TimedDay[];

function columnsOf(days: readonly TimedDay[], { unit }: Unit): readonly Column[] {
  const columns = new Map<number, TimedDay[]>();
  for (const each of days) {
    const key = KEYS[unit](each.day);
    columns.set(key, [...(columns.get(key) ?? []), each]);
  }
  return [...columns.values()];
}

const MONTHS_OF_YEAR = 12;

const KEYS: Readonly<Record<UnitName, (day: DayNumber) => number>> = {
  day: (day) => day,
  week: weekIndex,
  month: (day) => civil(day).year * MONTHS_OF_YEAR + civil(day).month,
  year: (day) => civil(day).year,
};

interface Headed {
  readonly unit: UnitName;
  readonly until: DayNumber;
}

function headingOf([{ day }]: Column & { readonly 0: TimedDay }, { unit, until }: Headed): string {
  const { year, month } = civil(day);
  if (unit === "day") return `${shortWeekday(day)} ${civil(day).day}`;
  if (unit === "week") return shortDate(mondayOf(weekIndex(day)), until);
  if (unit === "year") return String(year);
  return `${shortMonth(month)}${year === civil(until).year ? "" : ` ${year}`}`;
}

/** Time under no phase has a row where there are others; the sums of the columns are exact. */
function tableOf(phases: readonly string[], columns: readonly Column[], headed: Headed): Table {
  const isDivided = phases.some((phase) => phase !== "");
  const cell = (column: Column, phase: string) =>
    sumOf(column.flatMap((day) => day.phases.get(phase) ?? ([] as readonly Minutes[])));
  const rows = isDivided
    ? phases.map((phase) => {
        const cells = columns.map((column) => cell(column, phase));
        return [phase === "" ? "not divided" : phase, ...cells.map(shownMinutes), shownMinutes(sumOf(cells))];
      })
    : [];
  const sums = columns.map((column) => column.reduce((sum, { minutes }) => sum + minutes!, 0));
  const whole = sums.reduce((sum, each) => sum + each, 0);
  return {
    caption: `Minutes by phase and ${headed.unit}`,
    headings: [
      FIRST_HEADING[headed.unit],
      ...columns.map((column) => headingOf(column as Column & { readonly 0: TimedDay }, headed)),
      "all",
    ],
    rows: [...rows, ["all", ...[...sums, whole].map((minutes) => shownMinutes({ minutes, about: false }))]],
    sums: isDivided,
    words: 1,
  };
}

function shownMinutes({ minutes, about }: Minutes): string {
  return minutes === 0 ? "" : minutesInWords(minutes, about);
}
