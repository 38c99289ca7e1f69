import type { PreviewRow, PreviewWeek } from "../../../shared/protocol.ts";
import { element } from "./element.ts";

/** Takes the reader to a line of a journal. */
export type Reveal = (uri: string, line: number) => void;

/** One exercise as a section: its name, what it is compared under, its trend, its weeks, the way to its line. */
export function exercise(row: PreviewRow, reveal: Reveal): HTMLElement {
  const name = nameOf(row);
  const link = element("button", { type: "button", "aria-label": `Go to its line: ${name}` }, ["Go to its line"]);
  link.addEventListener("click", () => reveal(row.uri, row.line));
  return element("section", {}, [
    element("h2", {}, [name]),
    element("p", { class: "quiet" }, [`${row.strand}; last practised ${row.lastPractised}`]),
    element("p", {}, [row.trend]),
    weeksTable(row),
    link,
  ]);
}

function nameOf({ subject, pattern, instrument }: PreviewRow): string {
  return `${subject}${pattern === null ? "" : `, ${pattern}`}${instrument === null ? "" : `, on ${instrument}`}`;
}

function weeksTable(row: PreviewRow): HTMLTableElement {
  const headings = ["Week", "Best", "Attempts", "Minutes"].map((text) => element("th", { scope: "col" }, [text]));
  return element("table", {}, [
    element("caption", {}, [`By week, best in ${row.unit}`]),
    element("thead", {}, [element("tr", {}, headings)]),
    element("tbody", {}, row.weeks.map(weekRow)),
  ]);
}

function weekRow(week: PreviewWeek): HTMLTableRowElement {
  return element("tr", {}, [
    element("th", { scope: "row" }, [week.week]),
    element("td", {}, best(week)),
    element("td", {}, [String(week.attempts)]),
    element("td", {}, [String(Math.round(week.minutes))]),
  ]);
}

/** The rate, then how the player wrote it and whether the week stays out of the trend. */
function best({ bestClean, shown, tested }: PreviewWeek): (Node | string)[] {
  if (bestClean === null) return [quiet("none reached")];
  const notes = [shown, tested ? "" : "worked below best"].filter(Boolean);
  const rate = String(Math.round(bestClean * 10) / 10);
  return notes.length === 0 ? [rate] : [`${rate} `, quiet(`(${notes.join(", ")})`)];
}

function quiet(text: string): HTMLElement {
  return element("span", { class: "quiet" }, [text]);
}
