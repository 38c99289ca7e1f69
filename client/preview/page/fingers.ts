import type { PreviewFingering, PreviewFingers, PreviewStep } from "../../../shared/preview.ts";
import { button, element, quiet } from "./element.ts";
import { staffTexts } from "./staff-texts.ts";

export interface FingersAround {
  /** Has a finger change of the line under the cursor put into the journal by itself. */
  isolate(fingers: PreviewFingers, rank: number): void;
}

/** The hardest finger changes of the line under the cursor, or why they are not known. */
export function fingersBlock(fingers: PreviewFingers, around: FingersAround): HTMLElement {
  const { steps, sentence } = fingers;
  if (steps.length === 0) return element("div", { class: "fingers" }, [element("p", {}, [sentence])]);
  const list = element(
    "ol",
    {},
    steps.map((step, rank) => stepItem(step, fingers.canIsolate ? () => around.isolate(fingers, rank) : undefined)),
  );
  return element("div", { class: "fingers" }, [element("p", {}, [staffTexts.hardestChanges]), list]);
}

function stepItem({ name, movement, fingerings, doubts }: PreviewStep, isolate?: () => void): HTMLElement {
  const label = staffTexts.practiseAlone(name);
  const title = isolate ? button({ class: "place", "aria-label": label, title: label }, [name], isolate) : name;
  return element("li", {}, [
    title,
    `: ${movement}.`,
    ...(doubts.length === 0 ? [] : [" ", quiet(doubts.join(" "))]),
    element("ul", { class: "fingerings" }, fingerings.map(fingeringItem)),
  ]);
}

function fingeringItem({ note, chart, words }: PreviewFingering): HTMLElement {
  return element("li", {}, [`${note} `, element("code", {}, [chart]), " ", quiet(words)]);
}
