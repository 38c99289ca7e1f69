import type { Palette } from "../../../shared/protocol.ts";
import { HOVER_SIZE } from "../../charts/look.ts";
import { tempoChart } from "../../charts/tempo-chart.ts";
import { axisOf } from "../../history/exercise-row.ts";
import type { Strand } from "../../history/strands.ts";
import { LATELY, type Trend } from "../../history/trend.ts";
import type { Notation } from "../../history/trend-words.ts";
import { holdsDay, type WeekSpan, weeksUpTo } from "../../history/week-span.ts";
import type { Week } from "../../history/weeks.ts";
import { type DayNumber, weekIndex } from "../../journal/calendar.ts";
import { escapeMarkdown, extract } from "../explain/markdown.ts";

/**
 * The latest weeks up to this one, so that a picture shows a rest; for what was not practised in any of them, those up
 * to the week of its latest record.
 *
 * @param last the day of that
 */
export function spanLately(today: DayNumber, last: DayNumber): WeekSpan {
  const span = weeksUpTo(weekIndex(today), LATELY);
  return holdsDay(span, last) ? span : weeksUpTo(weekIndex(last), LATELY);
}

/** A picture of a strand's weeks for a hover, as Markdown; undefined where there is nothing to draw. */
export function chartInMarkdown(
  { records }: Pick<Strand, "records">,
  weeks: readonly Week[],
  { title, palette, ...told }: ChartOptions,
): string | undefined {
  const axis = axisOf(records.at(-1)!, told.notation);
  const drawing = tempoChart(
    { title: extract(title), axis, weeks, attempts: records, ...told },
    { kind: "palette", palette, ...HOVER_SIZE, id: "tempo" },
  );
  return drawing.ok ? `![${escapeMarkdown(drawing.text)}](${dataUri(drawing.svg)})` : undefined;
}

export interface ChartOptions {
  readonly title: string;
  readonly notation: Notation;
  /** Fitted on the weeks of the span. */
  readonly trend: Trend;
  readonly span: WeekSpan;
  readonly palette: Palette;
}

/** Parentheses would end the address in Markdown. */
function dataUri(svg: string): string {
  return `data:image/svg+xml,${encodeURIComponent(svg).replaceAll("(", "%28").replaceAll(")", "%29").replaceAll("'", "%27")}`;
}
