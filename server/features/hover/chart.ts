import type { Palette } from "../../../shared/protocol.ts";
import { HOVER_SIZE } from "../../charts/look.ts";
import { tempoChart } from "../../charts/tempo-chart.ts";
import { axisOf } from "../../history/exercise-row.ts";
import type { Strand } from "../../history/strands.ts";
import { LATELY, trendOf } from "../../history/trend.ts";
import type { Notation } from "../../history/trend-words.ts";
import { blankWeeks, type Week } from "../../history/weeks.ts";
import { type DayNumber, parseWeekLabel, weekIndex } from "../../journal/calendar.ts";
import { escapeMarkdown, extract } from "../explain/markdown.ts";

/**
 * The latest weeks up to this one, those without a record empty, so that a picture shows a rest; for what was not
 * practised in any of them, the latest that it was practised in.
 *
 * @param weeks those of a strand, as `weeksOf` gives them
 * @param last the day of its latest record
 */
export function weeksUpTo(today: DayNumber, weeks: readonly Week[], last: DayNumber): readonly Week[] {
  const rested = weekIndex(today) - weekIndex(last);
  if (rested <= 0 || rested >= LATELY) return weeks.slice(-LATELY);
  return [...weeks, ...blankWeeks(weekIndex(last) + 1, weekIndex(today))].slice(-LATELY);
}

/** A picture of weeks for a hover, at least one, as Markdown; undefined where there is nothing to draw. */
export function chartInMarkdown(
  { records }: Pick<Strand, "records">,
  weeks: readonly Week[],
  { title, notation, palette }: ChartOptions,
): string | undefined {
  const first = parseWeekLabel(weeks[0]!.week)!;
  const attempts = [];
  for (let i = records.length - 1; i >= 0 && records[i]!.day >= first; i--) {
    const { day, rate, reached } = records[i]!;
    if (rate !== null) attempts.push({ day: day - first, rate, reached });
  }
  const drawing = tempoChart(
    {
      title: extract(title),
      axis: axisOf(records.at(-1)!, notation),
      notation,
      weeks,
      attempts: attempts.reverse(),
      trend: trendOf(weeks),
      span: LATELY,
    },
    { kind: "palette", palette, ...HOVER_SIZE, id: "tempo" },
  );
  return drawing.ok ? `![${escapeMarkdown(drawing.text)}](${dataUri(drawing.svg)})` : undefined;
}

export interface ChartOptions {
  readonly title: string;
  readonly notation: Notation;
  readonly palette: Palette;
}

/** Parentheses would end the address in Markdown. */
function dataUri(svg: string): string {
  return `data:image/svg+xml,${encodeURIComponent(svg).replaceAll("(", "%28").replaceAll(")", "%29").replaceAll("'", "%27")}`;
}
