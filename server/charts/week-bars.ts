import { mondayOf } from "../journal/calendar.ts";
import { shortDate } from "../journal/date-words.ts";
import { inPage, label, mark, stretched, told, WIDE } from "./look.ts";
import { monthLabels, monthLines, pauseMarks } from "./months.ts";
import { type Drawing, element } from "./svg.ts";
import { placeOfWeek, type TimeAxis } from "./time-axis.ts";
import { sum, type TonedWeeks, tonedWeeks, type WeekBars } from "./week-data.ts";
import { weekTexts } from "./week-texts.ts";

/** In pixels. */
const HEIGHT = 72;
const TOP = 8.5;
const FOOT = 48.5;
const MONTHS = 66;
const BESIDE = 8;
const HALF_TEXT = 4;
const LEAST_WIDTH = 250;
/** How wide a bar is, in parts of its week. */
const BAR = 0.76;

/** One bar for each week, in tones by phase. */
export function weekBars(data: WeekBars, id: string): Drawing {
  const toned = tonedWeeks(data);
  if (toned.most === 0) return { ok: false, reason: weekTexts.nothing };
  const { title, span } = data;
  const look = { kind: "page", id } as const;
  const text = describeWeeks(data, toned);
  const { attributes, words } = told(look, { title, text });
  const most = rounded(toned.most);
  const svg = inPage(
    "week-bars",
    HEIGHT,
    attributes,
    words,
    stretched(
      HEIGHT,
      monthLines(look, span, TOP - 4, FOOT + 4),
      ...toned.weeks.flatMap((week, at) => barOf(week, span.first + at, { toned, most, span })),
      mark(look, "grid", `M0,${FOOT}H${WIDE}`),
    ),
    pauseMarks(look, span, TOP - 4, FOOT + 4),
    number(most, TOP),
    number(0, FOOT),
    monthLabels(span, MONTHS, LEAST_WIDTH),
  );
  return { ok: true, svg, text };
}

interface Drawn {
  readonly toned: TonedWeeks;
  readonly most: number;
  readonly span: TimeAxis;
}

function barOf(week: readonly number[], index: number, { toned, most, span }: Drawn): string[] {
  const start = placeOfWeek(index, span);
  const each = placeOfWeek(index + 1, span) - start;
  let below = 0;
  return week.flatMap((minutes, tone) => {
    if (minutes === 0) return [];
    below += minutes;
    const [y, height] = [FOOT - (below / most) * (FOOT - TOP), (minutes / most) * (FOOT - TOP)];
    const place = { x: start + ((1 - BAR) / 2) * each, y, width: each * BAR, height };
    const painted = { class: `chart-tone-${toned.tones[tone]!.tone}`, "vector-effect": "non-scaling-stroke" };
    return [element("rect", { ...painted, ...place })];
  });
}

/** The height of the axis: the next round number of minutes. */
function rounded(most: number): number {
  const step = most <= 60 ? 10 : most <= 300 ? 20 : 100;
  return Math.ceil(most / step) * step;
}

function number(minutes: number, y: number): string {
  return label(String(minutes), { x: -BESIDE, y: y + HALF_TEXT, "text-anchor": "end" });
}

/** What the bars show, in sentences. */
function describeWeeks({ span }: WeekBars, { weeks, tones, most }: TonedWeeks): string {
  const totals = weeks.map(sum);
  const practised = totals.filter((total) => total > 0);
  const longest = mondayOf(span.first + totals.indexOf(most));
  const parts = tones.map(({ name }, tone) => `${name} ${Math.round(sum(weeks.map((week) => week[tone]!)))}`);
  const when = shortDate(longest, mondayOf(span.last));
  const minutes = Math.round(sum(totals));
  return `${weekTexts.minutes(minutes, practised.length, weeks.length, when, Math.round(most))} ${parts.join(", ")}.`;
}
