import type { PreviewPlace } from "../../../shared/preview.ts";
import { drawing } from "./drawing.ts";
import { button, element, unseen } from "./element.ts";
import { rove } from "./rove.ts";
import { rowTexts } from "./row-texts.ts";
import { placeLink, type Surroundings } from "./surroundings.ts";

/** One row of a table of exercises or pieces. */
export interface ShownRow {
  readonly name: string;
  /** Behind the name in small type: the way of playing, or what a piece is. */
  readonly way: string;
  /** Below: the trend, or a piece's date. */
  readonly trend: string;
  /** SVG text. */
  readonly chart: string;
  /** The two numbers. */
  readonly numbers: readonly [string, string];
  readonly day: string;
}

/** Where a row leads: to its line, and to what it unfolds. */
export interface RowAround extends Surroundings {
  toggle(): void;
}

/** A row that unfolds by Enter or a click; its day leads to its line. */
export function tableRow(
  { name, way, trend, chart, numbers, day }: ShownRow,
  place: () => PreviewPlace,
  around: RowAround,
): HTMLElement {
  const words = [name, way].filter((each) => each !== "").join(", ");
  const svg = drawing(chart);
  const cell = (kind: string, children: readonly (Node | string)[]) =>
    element("div", { class: kind, role: "cell" }, children);
  const toggle = button(
    { class: "row-toggle", "aria-expanded": "false", title: words },
    // With the space it is read out as two words.
    [element("b", { class: "row-name", dir: "auto" }, [name]), " ", element("span", { class: "row-way" }, [way])],
    around.toggle,
  );
  const link = placeLink(day, place(), name, { ...around, reveal: () => around.reveal(place()) });
  const row = element("div", { class: "row", role: "row" }, [
    cell("row-head", [toggle, element("span", { class: "row-trend", title: trend }, trendParts(trend))]),
    cell("row-chart", svg ? [svg] : []),
    ...numbers.map((number) => cell("row-number", [number])),
    cell("row-day", [link]),
  ]);
  // For who points the whole row; nothing that the keyboard lacks.
  row.addEventListener("click", ({ target }) => {
    if (!(target as Element).closest("button") && document.getSelection()?.isCollapsed !== false) around.toggle();
  });
  return row;
}

function trendParts(trend: string): HTMLElement[] {
  const parts = rowTexts.trendParts(trend);
  return parts.filter((each) => each !== "").map((each) => element("span", {}, [each]));
}

/** What stands above the columns. */
export interface RowHead {
  readonly label: string;
  /** What the first column has, for who hears it. */
  readonly first: string;
  /** Above the charts: SVG text, or words. */
  readonly chart: Node | string;
  readonly numbers: readonly [string, string];
  /** A class of the table. */
  readonly kind?: string;
}

const ROWS = { rows: ":scope > .row:not(.head-row)", items: "button" };

/** The table around rows. */
export function rowTable({ label, first, chart, numbers, kind = "" }: RowHead): {
  table: HTMLElement;
  head: HTMLElement;
} {
  const cell = (kind: string, children: readonly (Node | string)[]) =>
    element("div", { class: kind, role: "columnheader" }, children);
  const head = element("div", { class: "row head-row", role: "row" }, [
    cell("row-head", [unseen(first)]),
    cell("row-chart", typeof chart === "string" ? [chart] : [unseen(rowTexts.temposByMonth), chart]),
    ...numbers.map((text) => cell("row-number", [text])),
    cell("row-day", [rowTexts.lastDay]),
  ]);
  const table = element("div", { class: `rows ${kind}`.trim(), role: "table", "aria-label": label }, [head]);
  return { table: rove(table, ROWS), head };
}

/** What a row has unfolded, as a row of its own below it. */
export function openedRow(children: readonly (Node | string)[]): HTMLElement {
  return element("div", { class: "opened", role: "row" }, [
    element("div", { role: "cell", "aria-colspan": "5" }, children),
  ]);
}
