import { element, escapeXml } from "../../charts/svg.ts";
import type { Staff } from "../../notation/staff.ts";
import type { StaffDrawer } from "../../notation/staff-look.ts";
import { pageMargins, printedPage } from "./printed-page.ts";
import type { Sheet, SheetItem, SheetPart } from "./sheet.ts";
import { sheetTexts } from "./sheet-texts.ts";

/** A line of music is as wide as the column: 170 mm at 96 pixels an inch. */
const WIDTH = 642;
/** Staves 8 mm high, to be read from a music stand. */
const SCALE = 0.75;

/**
 * A sheet as a page to print: each exercise with its staff, and room for a pencil. A paper's size is the printer's: the
 * column fits A4 and US Letter.
 *
 * @param drawer undefined where nobody draws: then there are words alone
 */
export function sheetHtml({ title, name, sentences, parts }: Sheet, drawer: StaffDrawer | undefined): string {
  const staves = new StaffNumbers(drawer);
  const said = sentences.map((text) => element("p", { class: "said" }, escapeXml(text)));
  return printedPage({
    title: name === "" ? title : sheetTexts.ofPlayer(name, title),
    style: STYLE + pageMargins(name),
    content: [...said, ...parts.map((part) => partHtml(part, staves))],
  });
}

/** Draws each staff of a page with ids of its own. */
class StaffNumbers {
  #drawn = 0;

  constructor(private readonly drawer: StaffDrawer | undefined) {}

  draw(staff: Staff): string {
    if (!this.drawer) return element("p", {}, escapeXml(staff.text));
    const look = { width: WIDTH, scale: SCALE, id: `staff-${++this.#drawn}` };
    return this.drawer.drawStaves([staff], look).svg;
  }
}

function partHtml({ heading, items }: SheetPart, staves: StaffNumbers): string {
  return element("section", {}, element("h2", {}, escapeXml(heading)), ...items.map((item) => itemHtml(item, staves)));
}

function itemHtml({ name, way, staff, instead }: SheetItem, staves: StaffNumbers): string {
  return element(
    "article",
    {},
    element("h3", {}, escapeXml(name)),
    ...(way === "" ? [] : [element("p", { class: "way" }, escapeXml(way))]),
    ...(staff ? [staves.draw(staff)] : []),
    ...(instead === "" ? [] : [element("p", {}, escapeXml(instead))]),
    PENCIL,
  );
}

/** Room to write in, for which there is nothing to be read aloud. */
const PENCIL = element(
  "div",
  { class: "pencil", "aria-hidden": "true" },
  element("span", {}, sheetTexts.tempo),
  element("span", {}, sheetTexts.howItWent),
);

const STYLE = `
.said { margin-top: 2mm; }
article { margin-top: 4mm; }
.way { font-style: italic; }
.staff-drawing { display: block; max-width: 100%; height: auto; margin-top: 2mm; overflow: visible; }
.pencil { display: grid; grid-template-columns: 1fr 2fr; column-gap: 6mm; margin-top: 1mm; }
.pencil span { min-height: 9mm; border-bottom: 0.25pt solid #888; color: #555; font-size: 8pt; }
`;
