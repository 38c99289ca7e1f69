import type { Palette } from "../../../shared/protocol.ts";
import { tempoChart } from "../../charts/tempo-chart.ts";
import { axisWithin } from "../../charts/time-axis.ts";
import type { Strand } from "../../history/strands.ts";
import { LATELY, type Trend } from "../../history/trend.ts";
import type { Notation } from "../../history/trend-words.ts";
import { weeksUpTo } from "../../history/week-span.ts";
import type { Week } from "../../history/weeks.ts";
import { weekIndex } from "../../journal/calendar.ts";
import { extract, pictureInMarkdown } from "../explain/markdown.ts";

/** A picture of a strand's weeks for a hover, as Markdown; undefined where there is nothing to draw. */
export function chartInMarkdown(
  { records }: Pick<Strand, "records">,
  weeks: readonly Week[],
  { title, palette, ...told }: ChartOptions,
): string | undefined {
  const all = weeksUpTo(weekIndex(records.at(-1)!.day), LATELY);
  const span = axisWithin(
    all,
    records.map(({ day }) => weekIndex(day)),
  );
  const drawing = tempoChart(
    { title: extract(title), axis: "", weeks, attempts: records, span, ...told },
    { kind: "picture", palette, id: "tempo" },
  );
  return drawing.ok ? pictureInMarkdown(drawing.text, drawing.svg) : undefined;
}

export interface ChartOptions {
  readonly title: string;
  readonly notation: Notation;
  /** Fitted on the weeks that are drawn: half a year up to the latest record. */
  readonly trend: Trend;
  readonly palette: Palette;
}
