import { drawing } from "./drawing.ts";
import { element } from "./element.ts";

/** What the marks of the charts mean, each with a sample. */
const MARKS: readonly (readonly [words: string, sample: string])[] = [
  ["reached", path("reached", "M9,5h0")],
  ["not reached, or not said", path("other", "M9,5h0") + path("inside", "M9,5h0")],
  ["week’s best", path("best", "M1,8H9V3H17")],
  ["trend", path("band", "M1,6L17,1V5L1,10Z")],
  ["a week of slow work", path("tick", "M9,3v4")],
];

function path(ink: string, d: string): string {
  return `<path class="chart-${ink}" d="${d}"/>`;
}

export function legend(): HTMLElement {
  return element(
    "p",
    { class: "legend" },
    MARKS.map(([words, sample]) => {
      const box = `<svg xmlns="http://www.w3.org/2000/svg" class="chart sample" width="18" height="10" viewBox="0 0 18 10" aria-hidden="true">`;
      return element("span", { class: "legend-entry" }, [drawing(`${box}${sample}</svg>`)!, words]);
    }),
  );
}
