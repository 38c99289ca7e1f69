import type { PreviewAim } from "../../../shared/preview.ts";
import { element, withWholeDates } from "./element.ts";
import { placeLink, type Surroundings } from "./surroundings.ts";

/** Aims with where they stand. */
export function aimsSection(aims: readonly PreviewAim[], around: Surroundings): HTMLElement[] {
  const list = element(
    "ul",
    {},
    aims.map(({ text, place, sentences }) =>
      element("li", {}, [placeLink(text, place, around), element("p", {}, withWholeDates(sentences.join(" ")))]),
    ),
  );
  return [element("h2", {}, ["What next"]), ...(aims.length === 0 ? [nothing()] : [element("h3", {}, ["Aims"]), list])];
}

function nothing(): HTMLElement {
  return element("p", { class: "empty" }, [
    "No aim is written. Write one above the first day, such as ",
    element("code", {}, ["aim D minor melodic, thirds, 8ths at 96 by 2026-04-30"]),
    ", and where it stands appears here.",
  ]);
}
