import type { PreviewPiece, PreviewPieces } from "../../../shared/preview.ts";
import { chartBlock } from "./chart.ts";
import { element, withWholeDates } from "./element.ts";
import { linkList, placeLink, type Surroundings } from "./surroundings.ts";

/** The pieces in hand, each with a strip of its bars. */
export function piecesSection({ inHand, latest }: PreviewPieces, around: Surroundings): HTMLElement[] {
  const title = element("h2", {}, ["The pieces"]);
  if (inHand.length > 0) return [title, ...inHand.map((each) => piece(each, around))];
  if (latest === null) return [title, nothing()];
  const resting = "No piece was worked on in the last twelve weeks. The latest before that:";
  return [title, element("p", { class: "empty" }, [resting]), linkList([latest], around)];
}

function nothing(): HTMLElement {
  return element("p", { class: "empty" }, [
    "No piece is in hand. Declare one above the first day, such as ",
    element("code", {}, ['piece "Ground in G minor" as Ground: G minor, 96 bars, goal quarter=84']),
    ".",
  ]);
}

function piece({ name, place, sentences, chart }: PreviewPiece, around: Surroundings): HTMLElement {
  return element("article", {}, [
    element("h3", {}, [placeLink(name, place, around, `${name}: go to its line`)]),
    element("p", {}, withWholeDates(sentences.join(" "))),
    chartBlock({ key: `piece ${name}`, name, chart, place }, around),
  ]);
}
