import type { PreviewChart, PreviewPlace, PreviewTable } from "../../../shared/preview.ts";
import { drawing } from "./drawing.ts";
import { button, element, withExamples } from "./element.ts";
import type { Surroundings } from "./surroundings.ts";

/** What a chart shows and where a click on it leads. */
export interface ShownChart {
  /** Different for each chart of the page, and the same for the same one. */
  readonly key: string;
  /** For its button, where one hears that alone: `Table of D minor`. */
  readonly name: string;
  readonly chart: PreviewChart;
  readonly place?: PreviewPlace;
}

/** A chart, its button and its table; where there is no chart, what to write. */
export function chartBlock({ key, name, chart, place }: ShownChart, surroundings: Surroundings): HTMLElement {
  if (!chart.ok) return element("p", { class: "empty" }, withExamples(chart.reason));
  const picture = element("div", { class: place ? "picture leads" : "picture" });
  const svg = drawing(chart.svg);
  if (svg) picture.append(svg);
  // The same place as the name's: for who points, nothing that the keyboard lacks.
  if (place) picture.addEventListener("click", () => surroundings.reveal(place));
  return element("div", { class: "chart-block" }, [
    picture,
    ...tableParts({ key, name, table: chart.table }, surroundings),
  ]);
}

interface ShownTable {
  readonly key: string;
  readonly name: string;
  readonly table: PreviewTable;
}

function tableParts({ key, name, table }: ShownTable, { openTables }: Surroundings): HTMLElement[] {
  const room = element("div", { class: "table-room" });
  const show = (open: boolean) => {
    room.replaceChildren(...(open ? [tableOf(table)] : []));
    toggle.setAttribute("aria-expanded", String(open));
    if (open) openTables.add(key);
    else openTables.delete(key);
  };
  const toggle = button({ class: "toggle", "aria-label": `Table: ${name}` }, ["Table"], () =>
    show(!openTables.has(key)),
  );
  show(openTables.has(key));
  return [toggle, room];
}

function tableOf({ caption, headings, rows }: PreviewTable): HTMLTableElement {
  return element("table", {}, [
    element("caption", {}, [caption]),
    element("thead", {}, [
      element(
        "tr",
        {},
        headings.map((text) => element("th", { scope: "col" }, [text])),
      ),
    ]),
    element(
      "tbody",
      {},
      rows.map(([first = "", ...cells]) =>
        element("tr", {}, [
          element("th", { scope: "row" }, [first]),
          ...cells.map((text) => element("td", {}, [text])),
        ]),
      ),
    ),
  ]);
}
