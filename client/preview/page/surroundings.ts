import type { PreviewPlace } from "../../../shared/preview.ts";
import { button } from "./element.ts";
import { lineTexts } from "./line-texts.ts";
import { markPlace } from "./places.ts";

/** What the parts share with the page around them. */
export interface Surroundings {
  /** Takes the reader to a line of a journal. */
  reveal(place: PreviewPlace): void;
  /** The names of what is folded out: an update, and a restart, keep it so. */
  readonly unfolded: Set<string>;
  /** What is folded out changed, and is to be remembered. */
  keep(): void;
}

/** A day, or other words, that lead to a line. `what` is named to who hears the link alone. */
export function placeLink(words: string, place: PreviewPlace, what: string, { reveal }: Surroundings): HTMLElement {
  const label = what === "" ? words : lineTexts.ofDay(what, words);
  const attributes = { class: "place", "aria-label": lineTexts.goToLine(label), title: what || words };
  const link = button(attributes, [words], () => reveal(place));
  markPlace(link, place);
  return link;
}
