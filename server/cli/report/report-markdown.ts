import { escapeMarkdown, markdownTable } from "../../features/explain/markdown.ts";
import { printable } from "../printable.ts";
import { NOTHING_WRITTEN, type Page, type PartBlock, type Table } from "./page.ts";

/** A report as Markdown (CommonMark with the tables of GFM). Texts of the journal come out as they are. */
export function reportMarkdown({ title, parts }: Page): string {
  const own = parts.flatMap(({ heading, blocks }) => [`## ${heading}`, ...blocks.flatMap(blockMarkdown)]);
  return `${[headingMarkdown(title), ...(own.length > 0 ? own : [NOTHING_WRITTEN])].join("\n\n")}\n`;
}

/** Number signs at the end would close a heading, and not be shown. */
function headingMarkdown(text: string): string {
  return `# ${escapeMarkdown(text).replace(/(?<=\s)#+$/, "\\$&")}`;
}

function blockMarkdown(block: PartBlock): readonly string[] {
  switch (block.type) {
    case "sentence":
      return [escapeMarkdown(block.text)];
    case "list": {
      const items = block.items.map(({ day, text, below }) =>
        item(day === undefined ? text : `${day}: ${text}`, below),
      );
      return [...(block.name === undefined ? [] : [`${escapeMarkdown(block.name)}:`]), items.join("\n")];
    }
    case "table":
      return [tableMarkdown(block.table)];
    case "exercises":
      return [
        block.exercises
          .map(({ name, way, sentences }) => item(way === "" ? name : `${name}, ${way}`, sentences.join(" ")))
          .join("\n"),
      ];
    case "lines":
      return [fenced(block.lines)];
    case "pictures":
      return [];
  }
}

function item(text: string, below = ""): string {
  const said = escapeMarkdown(below);
  return [`- ${escapeMarkdown(text)}`, ...(said === "" ? [] : [`  - ${said}`])].join("\n");
}

function tableMarkdown({ headings, rows, words }: Table): string {
  const cells = (row: readonly string[]) => row.map(escapeMarkdown);
  return markdownTable(cells(headings), rows.map(cells), words);
}

/** Lines in a fence that none of them closes. */
function fenced(lines: readonly string[]): string {
  const ticks = lines.flatMap((line) => line.match(/`+/g) ?? []).map(({ length }) => length);
  const fence = "`".repeat(ticks.reduce((most, length) => Math.max(most, length + 1), 3));
  const shown = lines.map((line) => line.split("\t").map(printable).join("\t"));
  return [fence, ...shown, fence].join("\n");
}
