import type { PreviewExerciseContent, PreviewPlace } from "../../../shared/preview.ts";
import { chartBlock } from "./chart.ts";
import { element, withWholeDates } from "./element.ts";
import { placeLink, type Surroundings } from "./surroundings.ts";

/** One exercise: its name, what it is compared under, its chart, its best tempo and its trend. */
export function exercise(
  key: string,
  { name, strand, best, trend, chart }: PreviewExerciseContent,
  place: PreviewPlace,
  around: Surroundings,
): HTMLElement {
  return element("article", { class: "exercise" }, [
    element("h4", {}, [placeLink(name, place, around, `${name}: go to its line`)]),
    element("p", { class: "quiet" }, withWholeDates(strand)),
    // What stands in place of a chart says already that there is no tempo.
    ...(chart.ok ? [element("p", {}, withWholeDates(`${best} ${trend}`))] : []),
    chartBlock({ key: `exercise ${key}`, name, chart, place }, around),
  ]);
}
