import type { PreviewWeeks } from "../../../shared/preview.ts";
import { drawing } from "./drawing.ts";
import { element } from "./element.ts";
import { fold } from "./fold.ts";
import { inksOf, legendEntries } from "./legend.ts";
import { pageTexts } from "./page-texts.ts";
import { part } from "./part.ts";
import type { Surroundings } from "./surroundings.ts";
import { tableBlock } from "./table.ts";

/** The minutes of each week, in tones by phase. */
export function weeksPart({ chart, tones }: PreviewWeeks, around: Surroundings): HTMLElement[] {
  const svg = drawing(chart.svg);
  const meanings = element("span", { class: "small quiet tones" }, [
    element("span", { class: "legend-entry" }, [pageTexts.inMinutes]),
    ...tones.map(({ name, tone }) =>
      element("span", { class: "legend-entry" }, [element("span", { class: `swatch tone-${tone}` }), name]),
    ),
    ...(svg ? legendEntries(inksOf([svg]).filter((ink) => ink === "pause")) : []),
  ]);
  const content = () => tableBlock("weeks", chart.table, around);
  const table = { name: "weeks table", words: pageTexts.asTable, label: pageTexts.minutesAsTable, content };
  return [
    ...part(pageTexts.weeks, meanings),
    element("div", { class: "weeks-chart" }, svg ? [svg] : []),
    ...fold(table, around),
  ];
}
