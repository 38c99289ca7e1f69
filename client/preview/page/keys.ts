import type { PreviewCell, PreviewKeys, PreviewKind } from "../../../shared/preview.ts";
import { button, element, small, unseen } from "./element.ts";
import { keysTexts } from "./keys-texts.ts";
import { pageTexts } from "./page-texts.ts";
import { part } from "./part.ts";
import { rove } from "./rove.ts";
import { placeLink, type Surroundings } from "./surroundings.ts";

const ALL = "all keys";

/** The line of fifths as a table, one row for each kind of scale or chord. */
export function keysPart(keys: PreviewKeys, around: Surroundings): HTMLElement[] {
  const heading = part(pageTexts.keys, small(keys.note));
  const below = [...sentence(keys, around), ...wanted(keys)];
  if (keys.rows.length === 0) return [...heading, ...below];
  const table = keysTable(keys, around);
  // It may be wider than the page: then it is scrolled by itself, by keyboard too.
  const room = element("div", { class: "keys-room", tabindex: "0", role: "region", "aria-label": pageTexts.keys }, [
    table,
  ]);
  const hint = element("p", { class: "small quiet keys-hint", "aria-hidden": "true" });
  const frame = element("div", {}, [room, hint]);
  const fit = new ResizeObserver(() => {
    wholeColumns(room, table, frame.clientWidth);
    hint.textContent = hiddenColumns(room, table);
  });
  fit.observe(frame);
  fit.observe(table);
  room.addEventListener("scroll", () => {
    hint.textContent = hiddenColumns(room, table);
  });
  return [...heading, frame, ...below, ...foldButton(keys, table, around)];
}

/** Where the columns of keys begin that are not folded away, from the frame's left edge, and how far apart they are. */
function columnsOf(table: HTMLTableElement): { readonly start: number; readonly step: number; readonly count: number } {
  const heads = [...table.querySelectorAll<HTMLElement>("thead th:not([hidden])")];
  const [first = 0, second = table.offsetWidth] = heads.map((each) => each.offsetLeft);
  return { start: table.offsetLeft + first, step: Math.max(1, second - first), count: heads.length };
}

/** Makes the frame so wide that no column is cut through. */
function wholeColumns(room: HTMLElement, table: HTMLTableElement, width: number): void {
  const { start, step } = columnsOf(table);
  const isCut = table.offsetWidth > width + 1;
  room.classList.toggle("is-cut", isCut);
  const whole = start + Math.max(1, Math.floor((width - start) / step)) * step;
  room.style.setProperty("--whole", isCut ? `${whole}px` : "none");
  room.style.setProperty("--kinds", `${start}px`);
}

/** `3 more keys at the right →`; empty where all are seen. */
function hiddenColumns(room: HTMLElement, table: HTMLTableElement): string {
  const { step } = columnsOf(table);
  const left = Math.round(room.scrollLeft / step);
  const right = Math.round((table.offsetWidth - room.clientWidth - room.scrollLeft) / step);
  if (right > 0 && left > 0) return keysTexts.hiddenOnBothSides(left, right);
  if (right > 0) return keysTexts.hiddenRight(right);
  return left > 0 ? keysTexts.hiddenLeft(left) : "";
}

/** What the borders mean, and what is outside the table. */
function sentence({ sentence, others }: PreviewKeys, around: Surroundings): HTMLElement[] {
  if (sentence === "" && others.length === 0) return [];
  const links = others.flatMap(({ text, note, place }, at) => [
    at === 0 ? "" : ", ",
    placeLink(text, place, "", around),
    ` (${note})`,
  ]);
  const also = others.length === 0 ? [] : [`${sentence === "" ? "" : " "}${keysTexts.also} `, ...links, "."];
  return [element("p", { class: "small quiet note" }, [sentence, ...also])];
}

function wanted({ wanted: sentences }: PreviewKeys): HTMLElement[] {
  return sentences.map((each) => element("p", { class: "small quiet note" }, [each]));
}

function keysTable({ columns, rows }: PreviewKeys, around: Surroundings): HTMLTableElement {
  const headings = columns.map(({ label, name, unused }) =>
    element("th", { scope: "col", class: unused ? "unused" : "" }, [
      element("span", { "aria-hidden": "true" }, [label]),
      unseen(name),
    ]),
  );
  const table = element("table", { class: "keys" }, [
    element("caption", { class: "unseen" }, [keysTexts.caption]),
    element("thead", {}, [element("tr", {}, [element("td"), ...headings])]),
    element(
      "tbody",
      {},
      rows.map((row) => kindRow(row, columns, around)),
    ),
  ]);
  hideUnused(table, !around.unfolded.has(ALL));
  return rove(table, { rows: "tbody tr", items: "button" });
}

function kindRow({ kind, cells }: PreviewKind, columns: PreviewKeys["columns"], around: Surroundings): HTMLElement {
  return element("tr", {}, [
    element("th", { scope: "row" }, [kind]),
    ...cells.map((cell, at) => keyCell(kind, cell, columns[at]?.unused ?? false, around)),
  ]);
}

/** Read out as `B♭ major, 11 days, key of Ground`, of which the tonic and the number are seen. */
function keyCell(kind: string, cell: PreviewCell, unused: boolean, around: Surroundings): HTMLElement {
  const { tonic, days, shade, mark, isPieceKey, place } = cell;
  const border = mark === "" ? "" : isPieceKey ? "piece-key" : "near-key";
  const classes = [`shade-${Math.min(shade, 4)}`, border, unused ? "unused" : ""].filter(Boolean).join(" ");
  const name = [
    element("span", { class: "tonic" }, [tonic]),
    unseen(`${keysTexts.ofKind(kind)}, `),
    ...(days === 0 ? [] : [element("b", { class: "count" }, [String(days)])]),
    unseen(`${keysTexts.days(days)}${mark === "" ? "" : `, ${mark}`}`),
  ];
  if (!place) return element("td", { class: classes, title: mark }, [element("span", { class: "key" }, name)]);
  return element("td", { class: classes }, [
    button({ class: "key", title: mark || `${tonic}${keysTexts.ofKind(kind)}` }, name, () => around.reveal(place)),
  ]);
}

function foldButton({ columns }: PreviewKeys, table: HTMLTableElement, around: Surroundings): HTMLElement[] {
  if (columns.every(({ unused }) => !unused)) return [];
  const isShown = () => around.unfolded.has(ALL);
  const words = () => (isShown() ? keysTexts.foldOthers : keysTexts.showOthers);
  const toggle = button({ class: "fold", "aria-expanded": String(isShown()) }, [words()], () => {
    if (!around.unfolded.delete(ALL)) around.unfolded.add(ALL);
    hideUnused(table, !isShown());
    toggle.textContent = words();
    toggle.setAttribute("aria-expanded", String(isShown()));
    around.keep();
  });
  return [toggle];
}

function hideUnused(table: HTMLTableElement, hidden: boolean): void {
  for (const cell of table.querySelectorAll<HTMLElement>(".unused")) cell.hidden = hidden;
}
