import { type LineRow, lineRows } from "../../features/explain/line-rows.ts";
import type { ReadJournals } from "../journals.ts";
import { jsonText, printable } from "../printable.ts";
import type { ExplainColumn } from "./explain-columns.ts";

type ExplainedLine = Readonly<Record<ExplainColumn, string | number | null | readonly string[]>>;

/** What `check --explain-lines` prints: how each line of the files named was read, one a line, or as JSON. */
export function explainedLines(read: ReadJournals, asJson: boolean): string {
  const lines = read.files.flatMap(({ path, uri, root }) =>
    lineRows(read.journals.get(root)!, uri).map((row) => explained(path, row)),
  );
  return asJson ? jsonText({ lines, skipped: read.skipped }) : lines.map((each) => `${lineText(each)}\n`).join("");
}

function explained(path: string, row: LineRow): ExplainedLine {
  return {
    path,
    line: row.line + 1,
    kind: row.kind,
    subject: row.subject,
    pattern: row.pattern,
    articulation: row.articulation,
    place: row.place,
    note_value: row.noteValue,
    tempos: row.tempos,
    outcomes: row.outcomes,
    minutes: row.minutes,
    words_left: row.wordsLeft,
  };
}

/** `a.practice:2 exercise | D natural minor | thirds | slurred |  | 8ths | 60; 66 | clean; nearly |  | `. */
function lineText({ path, line, ...fields }: ExplainedLine): string {
  return printable(`${path}:${line} ${Object.values(fields).map(cellText).join(" | ")}`);
}

function cellText(cell: ExplainedLine[ExplainColumn]): string {
  return typeof cell === "object" ? (cell?.join("; ") ?? "") : String(cell);
}
