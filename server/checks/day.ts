import { civil, dayNumber, isoDate, parseIsoDate, weekday } from "../journal/calendar.ts";
import type { BlockModel, DayNumber, Sitting } from "../journal/model.ts";
import type { LineOf } from "../syntax/line.ts";
import type { BlockContext, LineFinding } from "./context.ts";
import { onLine } from "./context.ts";
import { type Finding, finding, replacement } from "./finding.ts";

const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];
/** Minutes at a stretch beyond which a pause is worth a word. Common practice, no source. */
const LONGEST_STRETCH = 60;
const PLAYED_WITH_OTHERS = ["together", "lesson"];

/** A day's date is one, its weekday is that date's, and its minutes add up. */
export function checkDay(context: BlockContext): readonly LineFinding[] {
  const { model, texts } = context;
  if (!model.day) return [];
  return [
    ...onLine(0, [...dateFindings(model.day.line), ...weekdayFindings(model, texts[0]!)]),
    ...sums(model),
    ...longStretches(model),
  ];
}

function dateFindings(line: LineOf<"day">): readonly Finding[] {
  if (parseIsoDate(line.date) !== undefined) return [];
  const { offers, certain } = datesMeant(line.date);
  const fixes = offers.map((offer) =>
    replacement(`Change to ${offer}`, { start: line.start, end: line.dateEnd }, offer, certain),
  );
  const exists = /^\d{4}-\d{2}-\d{2}$/.test(line.date) ? "is no day of the calendar" : "is not written year-month-day";
  const instead = offers.length ? ` ${offers.join(" or ")}?` : "";
  return [
    finding(
      "bad-date",
      { start: line.start, end: line.dateEnd },
      `${line.date} ${exists}, so what stands below belongs to no day.${instead}`,
      fixes,
    ),
  ];
}

/** The days that a date in another order or with other signs may mean. One of four digits tells the year. */
export function datesMeant(text: string): { readonly offers: readonly string[]; readonly certain: boolean } {
  const [a, b, c] = text.split(/[-./]/).map(Number) as [number, number, number];
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

function weekdayFindings({ day }: BlockModel, text: string): readonly Finding[] {
  const item = day!.line.items.find(({ meaning }) => meaning.type === "weekday");
  if (item?.meaning.type !== "weekday" || day!.date === undefined) return [];
  const right = weekday(day!.date);
  if (item.meaning.day === right) return [];
  const name = WEEKDAYS[right - 1]!;
  const typed = text.slice(item.start, item.end);
  const offer = typed.length > 4 ? name : name.slice(0, 3);
  const other = nearbyDay(day!.date, item.meaning.day);
  return [
    finding(
      "wrong-weekday",
      item,
      `${isoDate(day!.date)} is a ${name}, not a ${WEEKDAYS[item.meaning.day - 1]}. One of the two is a slip.`,
      [
        replacement(`Change to ${offer}`, item, offer),
        replacement(
          `Change the date to ${isoDate(other)}`,
          { start: day!.line.start, end: day!.line.dateEnd },
          isoDate(other),
        ),
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

/** Stated parts that exceed the stated whole: entries in a phase, phases in a sitting, sittings in a day. */
function sums(model: BlockModel): readonly LineFinding[] {
  const findings: LineFinding[] = [];
  const exceeds = (line: number, whole: number | undefined, parts: readonly number[], what: string): void => {
    const sum = parts.reduce((total, part) => total + part, 0);
    const item = whole === undefined || sum <= whole ? undefined : amountOn(model, line);
    if (item)
      findings.push(
        ...onLine(line, [
          finding("minutes-sum", item, `The ${what} below add up to ${sum} minutes, more than the ${whole} here.`),
        ]),
      );
  };
  const stated = <T extends { readonly minutes?: number }>(parts: readonly T[]): number[] =>
    parts.flatMap(({ minutes }) => minutes ?? []);
  for (const [i, stretch] of model.phases.entries()) {
    if (stretch.phase !== undefined)
      exceeds(
        stretch.line,
        stretch.minutes,
        stated(model.entries.filter((entry) => entry.stretch === i && !entry.planned)),
        "entries",
      );
  }
  for (const [i, sitting] of model.sittings.entries()) {
    const whole = i > 0 || model.sittings.length === 1;
    if (whole) exceeds(sitting.line, sitting.minutes, partsOfSitting(model, i), "parts");
  }
  if (model.sittings.length > 1)
    exceeds(
      0,
      model.sittings[0]!.minutes,
      [...stated(model.sittings.slice(1)), ...partsOfSitting(model, 0)],
      "sittings",
    );
  return findings;
}

/** For each phase its own minutes, or what its entries state. */
function partsOfSitting(model: BlockModel, sitting: number): number[] {
  return model.phases.flatMap((stretch, i) => {
    if (stretch.sitting !== sitting) return [];
    return (
      stretch.minutes ??
      model.entries.filter((entry) => entry.stretch === i && !entry.planned).flatMap(({ minutes }) => minutes ?? [])
    );
  });
}

function amountOn(model: BlockModel, line: number): { readonly start: number; readonly end: number } | undefined {
  const node = model.lines[line]!;
  return "items" in node ? node.items.find(({ meaning }) => meaning.type === "amount") : undefined;
}

function longStretches(model: BlockModel): readonly LineFinding[] {
  return model.sittings.flatMap((sitting, i) => {
    const minutes = minutesAlone(model, sitting, i);
    if (minutes <= LONGEST_STRETCH || sitting.breaks.length > 0 || model.day!.rest !== undefined || model.day!.planned)
      return [];
    const at = amountOn(model, sitting.line) ?? { start: 0, end: model.day!.line.end };
    const message = `About ${minutes} minutes with no break noted. Hands, breath and ears do better with pauses; \`break, 10 min\` notes one. If anything hurts, stop, and ask a teacher or a doctor.`;
    return onLine(sitting.line, [finding("long-stretch", at, message)]);
  });
}

/** Minutes of a sitting without what was played with others, where pauses come by themselves. */
function minutesAlone(model: BlockModel, sitting: Sitting, index: number): number {
  const isTotal = index === 0 && model.sittings.length > 1;
  const parts = partsOfSitting(model, index).reduce((total, part) => total + part, 0);
  const whole = (isTotal ? undefined : sitting.minutes) ?? parts;
  const stretches = model.phases.filter((stretch) => stretch.sitting === index);
  const others = stretches.filter(({ phase }) => PLAYED_WITH_OTHERS.includes(phase ?? ""));
  if (others.length > 0 && others.some(({ minutes }) => minutes === undefined)) return 0;
  return whole - others.reduce((total, { minutes }) => total + (minutes ?? 0), 0);
}
