import type { PreviewTable } from "../../../shared/preview.ts";
import { button, element, small } from "./element.ts";
import { lineTexts } from "./line-texts.ts";
import { rove } from "./rove.ts";
import { placeLink, type Surroundings } from "./surroundings.ts";

/** So many rows are shown before the others are asked for. */
const FIRST_ROWS = 4;

/** A table with its first rows, and a button for the others: they stay out while `name` is among what is unfolded. */
export function tableBlock(name: string, table: PreviewTable, around: Surroundings): HTMLElement[] {
  const { rows, foot } = table;
  const all = around.unfolded.has(name) || rows.length <= FIRST_ROWS + 1;
  const made = tableOf(table, all ? rows.length : FIRST_ROWS, around);
  const below = foot === "" ? [] : [small(foot, "foot")];
  if (all) return [made, ...below];
  const more = button({ class: "action" }, [lineTexts.allRows(rows.length, table.headings[0] ?? "")], () => {
    around.unfolded.add(name);
    around.keep();
    const whole = tableOf(table, rows.length, around);
    const [next] = [...whole.querySelectorAll("button")].slice(FIRST_ROWS);
    more.replaceWith();
    made.replaceWith(whole);
    next?.focus({ preventScroll: true });
  });
  return [made, ...below, more];
}

function tableOf({ caption, headings, rows }: PreviewTable, count: number, around: Surroundings): HTMLTableElement {
  const made = element("table", {}, [
    element("caption", { class: "unseen" }, [caption]),
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
      rows
        .slice(0, count)
        .map(({ cells: [first = "", ...cells], place }) =>
          element("tr", {}, [
            element("th", { scope: "row" }, [place ? placeLink(first, place, "", around) : first]),
            ...cells.map((text) => element("td", {}, [text])),
          ]),
        ),
    ),
  ]);
  return rove(made, { rows: "tbody tr", items: "button" });
}
