import { drawing } from "./drawing.ts";
import { element } from "./element.ts";
import { rowTexts } from "./row-texts.ts";

/** What the marks of the charts mean, each with a sample, by the ink that it is drawn in. */
const MARKS: readonly (readonly [ink: string, words: string, sample: string])[] = [
  ["reached", rowTexts.reached, path("reached", "M9,5h0")],
  ["other", rowTexts.notReached, path("other", "M9,5h0") + path("inside", "M9,5h0")],
  ["best", rowTexts.best, path("best", "M1,8H9V3H17")],
  ["band", rowTexts.trend, path("band", "M1,6L17,1V5L1,10Z")],
  ["tick", rowTexts.slowWork, path("tick", "M9,3v4")],
  ["pause", rowTexts.pause, path("pause", "M9,-1l2.5,2l-5,4l5,4l-2.5,2")],
];

function path(ink: string, d: string): string {
  return `<path class="chart-${ink}" d="${d}"/>`;
}

/** The inks that some charts are drawn in, of those that the legend knows. */
export function inksOf(charts: readonly Element[]): string[] {
  return MARKS.map(([ink]) => ink).filter((ink) => charts.some((chart) => chart.querySelector(`.chart-${ink}`)));
}

/** Only what there is to see. */
export function legend(inks: readonly string[]): HTMLElement {
  return element("p", { class: "legend" }, legendEntries(inks));
}

const BOX = `<svg xmlns="http://www.w3.org/2000/svg" class="chart sample" width="18" height="10" viewBox="0 0 18 10" aria-hidden="true">`;

export function legendEntries(inks: readonly string[]): HTMLElement[] {
  return MARKS.filter(([ink]) => inks.includes(ink)).map(([, words, sample]) =>
    element("span", { class: "legend-entry" }, [drawing(`${BOX}${sample}</svg>`)!, words]),
  );
}
