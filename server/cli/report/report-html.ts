import { element, escapeXml } from "../../charts/svg.ts";
import { printedPage } from "../../features/sheet/printed-page.ts";
import {
  type ExerciseBlock,
  type Item,
  NOTHING_WRITTEN,
  type Page,
  type Part,
  type PartBlock,
  type Table,
} from "./page.ts";
import { reportStyle } from "./report-style.ts";

/**
 * A report as a page that can be printed and handed on: one file, without scripts, links or fonts, which fetches
 * nothing.
 */
export function reportHtml({ title, name, parts }: Page): string {
  const content = parts.length > 0 ? parts.map(partHtml) : [paragraph(NOTHING_WRITTEN)];
  return printedPage({ title, style: reportStyle(name), content });
}

function partHtml(part: Part, at: number, parts: readonly Part[]): string {
  const isFirst = hasCharts(part) && !parts.slice(0, at).some(hasCharts);
  const heading = [element("h2", {}, escapeXml(part.heading)), ...(isFirst ? [paragraph(CHARTS, "legend")] : [])];
  const all = part.blocks.flatMap(blockHtml);
  const whole = piecesBelowHeading(part.blocks);
  return element(
    "section",
    {},
    element("div", { class: "begin" }, ...heading, ...all.slice(0, whole)),
    ...all.slice(whole),
  );
}

/** How many pieces a heading goes with on paper, all of them uncut: an exercise, a sentence, a table of a few rows. */
function piecesBelowHeading([first, second]: readonly PartBlock[]): number {
  const isShort = (block: PartBlock | undefined) => block?.type === "table" && block.table.rows.length <= SHORT_TABLE;
  if (first?.type === "sentence") return isShort(second) ? 2 : 1;
  return first?.type === "exercises" || isShort(first) ? 1 : 0;
}

const SHORT_TABLE = 12;

function hasCharts({ blocks }: Part): boolean {
  return blocks.some((block) => block.type === "exercises" && block.exercises.some(({ chart }) => chart));
}

const CHARTS =
  "In the charts the line is each week’s best. Filled dots were reached; open ones were not, or nothing was said of them. The band shows the trend, a tick below is a week of slow work.";
const STRIPS =
  "Each strip is a piece from its first bar to its last. The line is the tempo reached last, a line above it the goal; the darker the grey, the later a bar was worked.";

function blockHtml(block: PartBlock): readonly string[] {
  switch (block.type) {
    case "sentence":
      return [paragraph(block.text)];
    case "list":
      return [
        ...(block.name === undefined ? [] : [element("h3", {}, escapeXml(block.name))]),
        element("ul", {}, ...block.items.map(itemHtml)),
      ];
    case "table":
      return [tableHtml(block.table)];
    case "exercises":
      return block.exercises.map(exerciseHtml);
    case "pictures":
      return [
        paragraph(STRIPS, "legend"),
        ...block.pictures.map(({ name, svg }) =>
          element("figure", {}, element("figcaption", {}, escapeXml(name)), room(svg)),
        ),
      ];
    case "lines":
      return [element("pre", {}, block.lines.map((line) => line.split("\t").map(escapeXml).join("\t")).join("\n"))];
  }
}

function paragraph(text: string, kind?: string): string {
  return element("p", { class: kind }, escapeXml(text));
}

function itemHtml({ day, text, below }: Item): string {
  return element(
    "li",
    {},
    ...(day === undefined ? [] : [element("span", { class: "day" }, escapeXml(day)), " "]),
    element("span", {}, escapeXml(text)),
    ...(below === undefined || below === "" ? [] : [element("p", { class: "below" }, escapeXml(below))]),
  );
}

/** A chart, with room for what hangs out at its sides. */
function room(svg: string): string {
  return element("div", { class: "room" }, svg);
}

function exerciseHtml({ name, way, sentences, chart }: ExerciseBlock): string {
  const said = [...(way === "" ? [] : [`${way}.`]), ...sentences].join(" ");
  const { svg, table } = chart ?? {};
  return element(
    "article",
    {},
    element("h3", {}, escapeXml(name)),
    paragraph(said),
    ...(svg && table ? [element("figure", { class: "beside" }, room(svg), tableHtml(table))] : []),
  );
}

/** So many columns have room at the size of the text. */
const MOST_COLUMNS = 7;

function tableHtml({ caption, headings, rows, sums, words }: Table): string {
  const kind = (column: number) => (column < words ? {} : { class: "number" });
  const row = (cells: readonly string[]): string =>
    element(
      "tr",
      {},
      ...cells.map((cell, column) =>
        column === 0 ? element("th", { scope: "row" }, escapeXml(cell)) : element("td", kind(column), escapeXml(cell)),
      ),
    );
  const heading = headings.map((cell, column) => element("th", { scope: "col", ...kind(column) }, escapeXml(cell)));
  const body = sums ? rows.slice(0, -1) : rows;
  return element(
    "table",
    { class: headings.length > MOST_COLUMNS ? "wide" : undefined },
    element("caption", {}, escapeXml(caption)),
    element("thead", {}, element("tr", {}, ...heading)),
    element("tbody", {}, ...body.map(row)),
    ...(sums ? [element("tfoot", {}, row(rows.at(-1)!))] : []),
  );
}
