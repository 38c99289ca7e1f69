import { printable } from "../printable.ts";

/** What a cell of a table holds; null is an empty one. */
export type Cell = string | number | boolean | null;

/**
 * A table as RFC 4180 (2005) has it: a header, lines that end in CR LF, the last one too, cells with commas or quotes
 * in quotes, and quotes in those doubled. UTF-8 without a byte order mark.
 *
 * Text that a spreadsheet would run as a formula gets an apostrophe before it, inside quotes, which is what OWASP
 * advises ("CSV Injection"); figures stay figures. Control and bidirectional characters are shown as `\u202E`, so that
 * neither a terminal nor a spreadsheet is steered by them.
 */
export function csvTable<Column extends string>(columns: readonly Column[], rows: Iterable<Row<Column>>): string {
  return [...csvLines(columns, rows)].join("");
}

/** The same line by line. */
export function* csvLines<Column extends string>(
  columns: readonly Column[],
  rows: Iterable<Row<Column>>,
): Generator<string, void> {
  yield `${columns.join(",")}\r\n`;
  for (const row of rows) yield `${columns.map((column) => cellText(row[column] ?? null)).join(",")}\r\n`;
}

type Row<Column extends string> = Readonly<Partial<Record<Column, Cell>>>;

/** The signs that begin a formula, and their full-width forms; a sign alone runs nothing. */
const FORMULA = /^\s*[=+\-@＝＋－＠]./su;
/** A semicolon parts cells where a comma is the decimal sign. */
const NEEDS_QUOTES = /[",;]|^\s|\s$/;

function cellText(cell: Cell): string {
  if (cell === null) return "";
  if (typeof cell === "number") return String(cell);
  if (typeof cell === "boolean") return cell ? "yes" : "no";
  const text = printable(cell);
  if (FORMULA.test(text)) return quoted(`'${text}`);
  return NEEDS_QUOTES.test(text) ? quoted(text) : text;
}

function quoted(text: string): string {
  return `"${text.replaceAll('"', '""')}"`;
}
