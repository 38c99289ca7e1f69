import type { PreviewCell, PreviewKeys, PreviewKind } from "../../../shared/preview.ts";
import { button, element, unseen, withExamples } from "./element.ts";
import { linkList, type Surroundings } from "./surroundings.ts";

export interface KeysAround extends Surroundings {
  /** Whether the key signatures without practice are shown too. */
  allKeys: boolean;
  /** The choice above changed, and is to be remembered. */
  keep(): void;
}

/** Where I have been: the line of fifths as a table, one row for each kind of scale or chord. */
export function keysSection(keys: PreviewKeys, around: KeysAround): HTMLElement[] {
  const title = element("h2", { id: "keys" }, ["Where I have been"]);
  const sentence = element("p", { class: keys.rows.length === 0 ? "empty" : "quiet" }, withExamples(keys.sentence));
  const others =
    keys.others.length === 0 ? [] : [element("h3", {}, ["Outside this table"]), linkList(keys.others, around)];
  if (keys.rows.length === 0) return [title, sentence, ...others];
  const table = keysTable(keys, around);
  // It may be wider than the page: then it is scrolled by itself, by keyboard too.
  const room = element("div", { class: "keys-room", tabindex: "0", role: "region", "aria-labelledby": "keys" }, [
    table,
  ]);
  return [title, sentence, room, ...foldButton(keys, table, around), ...others];
}

function keysTable({ columns, rows }: PreviewKeys, around: KeysAround): HTMLTableElement {
  const headings = columns.map(({ label, name, unused }) =>
    element("th", { scope: "col", class: unused ? "unused" : "" }, [
      element("span", { "aria-hidden": "true" }, [label]),
      unseen(name),
    ]),
  );
  const table = element("table", { class: "keys" }, [
    element("caption", { class: "unseen" }, ["Days of practice by kind and key signature"]),
    element("thead", {}, [element("tr", {}, [element("td"), ...headings])]),
    element(
      "tbody",
      {},
      rows.map((row) => kindRow(row, columns, around)),
    ),
  ]);
  fold(table, !around.allKeys);
  return table;
}

function kindRow({ kind, cells }: PreviewKind, columns: PreviewKeys["columns"], around: KeysAround): HTMLElement {
  return element("tr", {}, [
    element("th", { scope: "row" }, [kind]),
    ...cells.map((cell, at) => keyCell(kind, cell, columns[at]?.unused ?? false, around)),
  ]);
}

/** Read out as `Bb major, 11 days, key of Ground`, of which the tonic and the number are seen. */
function keyCell(kind: string, cell: PreviewCell, unused: boolean, around: KeysAround): HTMLElement {
  const { tonic, days, shade, mark, isPieceKey, place } = cell;
  const outline = mark === "" ? "" : isPieceKey ? "piece-key" : "near-key";
  const classes = [`shade-${Math.min(shade, 4)}`, outline, unused ? "unused" : ""].filter(Boolean).join(" ");
  const unit = days === 0 ? "no days" : days === 1 ? " day" : " days";
  const name = [
    element("span", { class: "tonic" }, [tonic]),
    unseen(` ${kind}, `),
    element("span", { class: "count" }, [days === 0 ? "" : String(days)]),
    unseen(`${unit}${mark === "" ? "" : `, ${mark}`}`),
  ];
  if (!place) return element("td", { class: classes }, name);
  return element("td", { class: classes }, [button({ title: mark }, name, () => around.reveal(place))]);
}

function foldButton({ columns }: PreviewKeys, table: HTMLTableElement, around: KeysAround): HTMLElement[] {
  if (columns.every(({ unused }) => !unused)) return [];
  const words = () => (around.allKeys ? "Fold unused keys away" : "Show unused keys");
  const toggle = button({ class: "toggle", "aria-expanded": String(around.allKeys) }, [words()], () => {
    around.allKeys = !around.allKeys;
    fold(table, !around.allKeys);
    toggle.textContent = words();
    toggle.setAttribute("aria-expanded", String(around.allKeys));
    around.keep();
  });
  return [toggle];
}

function fold(table: HTMLTableElement, folded: boolean): void {
  for (const cell of table.querySelectorAll<HTMLElement>(".unused")) cell.hidden = folded;
}
