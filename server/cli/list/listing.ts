import stringWidth from "string-width";
import { painter } from "../colour.ts";
import type { Io } from "../io.ts";
import { WIDTH, wrapped } from "../wrapped.ts";

/** What `daystave list` prints of one thing: its cells for people, and all that is known for a script. */
export interface ListedRow {
  readonly cells: readonly string[];
  readonly json: object;
}

export interface Listing {
  readonly headings: readonly string[];
  readonly rows: readonly ListedRow[];
}

const GAP = 2;
/** A terminal that leaves the last column less room than this has it on lines of its own. */
const LEAST_ROOM = 24;
const INDENT = 4;

/**
 * A row a line, in columns of one display width. On a terminal with headings, and the last column wrapped into its
 * width; elsewhere a row is one line, for programs that read lines.
 */
export function listingText({ headings, rows }: Listing, io: Io): string {
  const shown = [...(io.isTerminal ? [headings] : []), ...rows.map(({ cells }) => cells)];
  const widths = headings.map((_, column) => Math.max(...shown.map((cells) => stringWidth(cells[column] ?? ""))));
  const before = widths.slice(0, -1).reduce((sum, width) => sum + width + GAP, 0);
  const columns = io.isTerminal ? io.columns?.() || WIDTH : Number.POSITIVE_INFINITY;
  const paint = painter(io);
  const lines = shown.flatMap((cells, i) => {
    const written = rowLines(cells, widths, before, columns);
    return io.isTerminal && i === 0 ? written.map((line) => paint(line, "dim")) : written;
  });
  return lines.map((line) => `${line}\n`).join("");
}

function rowLines(
  cells: readonly string[],
  widths: readonly number[],
  before: number,
  columns: number,
): readonly string[] {
  const last = cells.at(-1)!;
  const head = cells
    .slice(0, -1)
    .map((cell, column) => cell + " ".repeat(widths[column]! - stringWidth(cell) + GAP))
    .join("");
  const isNarrow = columns - before < LEAST_ROOM;
  const indent = isNarrow ? INDENT : before;
  const [first = "", ...further] = wrapped(last, columns - indent, stringWidth);
  const below = further.map((line) => " ".repeat(indent) + line);
  const opening = isNarrow ? [head, " ".repeat(indent) + first] : [head + first];
  return [...opening, ...below].map((line) => line.trimEnd()).filter((line) => line !== "");
}
