import type { PreviewLine } from "../../../shared/preview.ts";
import { element, quiet, small, withLastNumber } from "./element.ts";
import { rove } from "./rove.ts";
import { placeLink, type Surroundings } from "./surroundings.ts";

/** Lines one below the other: the text, its facts, and at the right edge the day, which leads to the line. */
export function lineList(lines: readonly PreviewLine[], around: Surroundings, kind = ""): HTMLElement {
  const list = element(
    "ul",
    { class: `lines ${kind}`.trim() },
    lines.map((line) => lineItem(line, around)),
  );
  return rove(list, { rows: ".line", items: "button" });
}

function lineItem({ text, behind, facts, below, day, place }: PreviewLine, around: Surroundings): HTMLElement {
  const shown = withLastNumber(text);
  const words = behind === "" ? [shown] : [shown, quiet(behind)];
  return element("li", { class: "line" }, [
    element("span", { class: "line-text", dir: "auto", title: text + behind }, words),
    ...facts.map((fact) => element("span", { class: "fact" }, [fact])),
    element("span", { class: "day" }, [placeLink(day, place, text, around)]),
    ...(below === "" ? [] : [small(below, "below")]),
  ]);
}

/** Lines under a label at their left, as terms and what belongs to them. */
export interface Labelled {
  readonly label: string;
  readonly lines: readonly PreviewLine[];
  /** A class for the lines: `cut` where they have to stay on one line. */
  readonly kind?: string;
}

export function labelledLines(groups: readonly Labelled[], around: Surroundings): HTMLElement[] {
  const filled = groups.filter(({ lines }) => lines.length > 0);
  if (filled.length === 0) return [];
  return [
    element(
      "dl",
      { class: "labelled" },
      filled.flatMap(({ label, lines, kind }) => [
        element("dt", {}, [label]),
        element("dd", {}, [lineList(lines, around, kind)]),
      ]),
    ),
  ];
}
