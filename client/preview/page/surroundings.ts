import type { PreviewLink, PreviewPlace } from "../../../shared/preview.ts";
import { button, element, quiet } from "./element.ts";

/** What the sections share with the page around them. */
export interface Surroundings {
  /** Takes the reader to a line of a journal. */
  reveal(place: PreviewPlace): void;
  /** The names of the charts whose tables are open: an update keeps them so. */
  readonly openTables: Set<string>;
}

/** Words that lead to a line. */
export function placeLink(words: string, place: PreviewPlace, { reveal }: Surroundings, label?: string): HTMLElement {
  const attributes = { class: "place", ...(label === undefined ? {} : { "aria-label": label }) };
  return button(attributes, [words], () => reveal(place));
}

/** Links one below the other, each with what stands behind it. */
export function linkList(links: readonly PreviewLink[], surroundings: Surroundings): HTMLElement {
  return element(
    "ul",
    {},
    links.map(({ text, note, place }) =>
      element("li", {}, [placeLink(text, place, surroundings), ...(note === "" ? [] : [" ", quiet(note)])]),
    ),
  );
}
