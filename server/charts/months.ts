import { firstDay, type WeekSpan, weekCount } from "../history/week-span.ts";
import { civil, type DayNumber, dayNumber, mondayOf } from "../journal/calendar.ts";
import { shortDate, shortMonth } from "../journal/date-words.ts";
import { type Look, label, mark, paint, share, tenth, textWidth, WIDE } from "./look.ts";
import { type Attributes, element } from "./svg.ts";
import { placeOfWeek, startOfDay, stretchesOf, type TimeAxis } from "./time-axis.ts";

/** The first day of a month, or of a year where months would lie too close. */
interface Month {
  /** In the stretched space. */
  readonly x: number;
  readonly name: string;
}

/** Over more months than these the axis has years. */
const MOST_MONTHS = 18;
const DAYS_OF_WEEK = 7;
/** Between two labels, in pixels. */
const APART = 7;
/** So far a label may reach beyond the axis' end, in pixels: nothing is so close. */
const BEYOND = 4;
/** Every month, every second one and so on; of years likewise. */
const STEPS = [1, 2, 3, 4, 6, 12];

/** A hairline at the first of each month, but where a pause is drawn short. */
export function monthLines(look: Look, axis: TimeAxis, top: number, bottom: number): string {
  const starts = stretchesOf(axis).flatMap((stretch) => monthsIn(stretch, axis));
  const lines = starts.filter(({ x }) => x > 0).map(({ x }) => `M${tenth(x)},${tenth(top)}V${tenth(bottom)}`);
  return mark(look, "month", lines.join(""));
}

/** In pixels: how high one wave of the line through a pause is, and how far it swings. */
const WAVE = 8;
const SWING = 2.5;

/** A jagged line through each pause, as where a drawing is broken off; it keeps its shape in a chart of any width. */
export function pauseMarks(look: Look, axis: TimeAxis, top: number, bottom: number): string {
  const { pauses = [] } = axis;
  const waves = Math.ceil((bottom - top) / WAVE);
  const d = `M0,${tenth(top)}${`l${SWING},${WAVE / 4}l${-2 * SWING},${WAVE / 2}l${SWING},${WAVE / 4}`.repeat(waves)}`;
  return pauses
    .map(({ first, last }) => {
      const x = share((placeOfWeek(first, axis) + placeOfWeek(last + 1, axis)) / 2);
      const path = element("path", { ...paint(look, "pause"), d });
      return element("svg", { class: "chart-plot", x, width: 1, height: 1, overflow: "visible" }, path);
    })
    .join("");
}

/** A name below or above the axis. */
interface Named {
  /** In pixels, of an axis of the least width. */
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly place: Attributes;
}

/**
 * The names of the months below or above an axis that is at least so many pixels wide, each at the first day of its
 * month: the start and the end of the axis first, then between them as many as stand apart.
 */
export function monthLabels(axis: TimeAxis, y: number, leastWidth: number): string {
  const stretches = stretchesOf(axis);
  const [whole] = stretches;
  const shown =
    stretches.length === 1 && monthsIn(whole!, axis).length > 1
      ? overWhole(whole!, axis, leastWidth)
      : overStretches(stretches, axis, leastWidth);
  return shown.map(({ text, place }) => label(text, { ...place, y })).join("");
}

/**
 * The axis' start and its end, and between them as many more as stand evenly apart. The start is the month that the
 * axis begins in; where that would leave more months without a name, the first that begins on the axis.
 */
function overWhole(whole: WeekSpan, axis: TimeAxis, leastWidth: number): readonly Named[] {
  const starts = monthsIn(whole, axis);
  const months = starts.map((month) => named(month, leastWidth));
  const last = months.at(-1)!;
  const ends = [...months.slice(0, -1), last.to > leastWidth + BEYOND ? atEnd(last.text, leastWidth) : last];
  const { year, month } = civil(firstDay(whole));
  const begins = named({ x: 0, name: hasYears(axis) ? String(year) : shortMonth(month) }, leastWidth);
  const fromStart = starts[0]!.x > 0 ? evenly([begins, ...ends]) : [];
  const fromFirst = evenly(ends);
  return fromStart.length >= fromFirst.length ? fromStart : fromFirst;
}

/** The first and the last, and between them as many, in equal steps, as stand apart. */
function evenly(labels: readonly Named[]): readonly Named[] {
  const end = labels.length - 1;
  for (let step = 1; step <= end; step++) {
    const some = labels.filter((_, at) => at % step === 0);
    if (end % step === 0 && areApart(some)) return some;
  }
  return labels.slice(-1);
}

/** A stretch between two pauses with one month or none begins with its date. */
function overStretches(stretches: readonly WeekSpan[], axis: TimeAxis, leastWidth: number): readonly Named[] {
  const months = stretches.map((stretch) => monthsIn(stretch, axis).map((month) => named(month, leastWidth)));
  const step = STEPS.find((each) => months.every((own) => areApart(everyOf(own, each)))) ?? STEPS.at(-1)!;
  const shown: Named[] = [];
  for (const [at, stretch] of stretches.entries()) {
    const own = everyOf(months[at]!, step).filter(({ to }) => to <= leastWidth + BEYOND);
    const start = startsOf(stretch, axis, leastWidth).find((each) =>
      areApart([...shown.slice(-1), each, ...own.slice(0, 1)]),
    );
    for (const each of start && own.length < 2 ? [start, ...own] : own)
      if (areApart([...shown.slice(-1), each])) shown.push(each);
  }
  return shown;
}

function everyOf<T>(values: readonly T[], step: number): T[] {
  return values.filter((_, at) => at % step === 0);
}

function areApart(labels: readonly Named[]): boolean {
  return labels.every(({ from }, at) => at === 0 || labels[at - 1]!.to + APART <= from);
}

function named({ x, name }: Month, leastWidth: number): Named {
  const from = (x * leastWidth) / WIDE;
  return { from, to: from + textWidth(name), text: name, place: { x: x === 0 ? 0 : share(x) } };
}

/** The date that a stretch begins on, at its start or else at the axis' end, or its month there. */
function startsOf(stretch: WeekSpan, axis: TimeAxis, leastWidth: number): Named[] {
  const monday = firstDay(stretch);
  const { year, month } = civil(monday);
  const date = hasYears(axis) ? `${shortMonth(month)} ${year}` : shortDate(monday, monday);
  const own = named({ x: placeOfWeek(stretch.first, axis), name: date }, leastWidth);
  const short = hasYears(axis) ? String(year) : shortMonth(month);
  return own.to <= leastWidth ? [own] : [atEnd(date, leastWidth), atEnd(short, leastWidth)];
}

function atEnd(text: string, leastWidth: number): Named {
  const place = { x: "100%", "text-anchor": "end" };
  return { from: leastWidth - textWidth(text), to: leastWidth, text, place };
}

function hasYears(axis: TimeAxis): boolean {
  return weekCount(axis) * DAYS_OF_WEEK > MOST_MONTHS * 31;
}

/** The months, or years, that begin within a stretch or, at its very start, in the week before. */
function monthsIn(stretch: WeekSpan, axis: TimeAxis): Month[] {
  const start = mondayOf(stretch.first);
  const end = mondayOf(stretch.last + 1);
  const { year, month } = civil(start);
  const months: Month[] = [];
  for (let at = month - 1; ; at++) {
    const next = { year: year + Math.floor(at / 12), month: (at % 12) + 1 };
    const day = dayNumber(next.year, next.month, 1);
    if (day === undefined || day >= end) break;
    if (day <= start - DAYS_OF_WEEK || (hasYears(axis) && next.month !== 1)) continue;
    months.push(monthAt(Math.max(day, start), next, axis));
  }
  return months;
}

function monthAt(day: DayNumber, { year, month }: { year: number; month: number }, axis: TimeAxis): Month {
  return { x: startOfDay(day, axis), name: hasYears(axis) ? String(year) : shortMonth(month) };
}
