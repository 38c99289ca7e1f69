import { FIGURES, type Figure, GROUPS, linesOf, missesOf, personsOf, sharesText } from "./shares.ts";
import { TABLES, type WrittenLine, writtenLines } from "./written-lines.ts";

/** What `misses.mjs` prints. @param folder that of the tables */
export function missesText(asked: string, figures: readonly string[], folder: string): string {
  const all = TABLES.flatMap((table) => writtenLines(table, folder));
  const groups = Object.keys(GROUPS);
  if (asked === "") return `${sharesText([...personsOf(all), ...groups], all)}\n`;
  const unknown = figures.filter((figure) => !FIGURES.includes(figure as Figure));
  const lines = linesOf(asked, all);
  if (lines.length === 0 || unknown.length > 0)
    return `Usage: misses.mjs [PLAYER|${groups.join("|")}] [${FIGURES.join("|")}…]\nPlayers: ${personsOf(all).join(" ")}\n`;
  const parts = (figures.length > 0 ? (figures as Figure[]) : FIGURES).map((figure) => {
    const misses = missesOf(figure, lines).map((each) => `  ${missText(figure, each)}\n`);
    return `${figure}: ${misses.length}\n${misses.join("")}`;
  });
  return `${parts.join("\n")}\n${sharesText([asked], all)}\n`;
}

function missText(figure: Figure, { meant, read }: WrittenLine): string {
  const [expected, found] = CELLS[figure](meant, read);
  return `${meant.person} ${meant.line}\n      meant ${expected}\n      read  ${found}${wordsLeft(read)}`;
}

function wordsLeft({ wordsLeft }: WrittenLine["read"]): string {
  return wordsLeft.length > 0 ? `   left: ${wordsLeft.join("; ")}` : "";
}

type Cells = (meant: WrittenLine["meant"], read: WrittenLine["read"]) => readonly [string, string];

const whole: Cells = (meant, read) => [`${meant.kind}: ${meant.subject}`, `${read.kind}: ${read.subject ?? ""}`];

const CELLS: Readonly<Record<Figure, Cells>> = {
  read: whole,
  false: whole,
  underlined: whole,
  tempos: (meant, read) => [meant.tempos, read.tempos.join(";")],
  outcomes: (meant, read) => [meant.outcomes, read.outcomes.join(";")],
  places: (meant, read) => [meant.place, read.place ?? ""],
  minutes: (meant, read) => [meant.minutes, `${read.minutes ?? ""}`],
};
