import { wrapped } from "./wrapped.ts";

/** Fewer columns than this do not make lines that read well. */
const LEAST_BESIDE = 20;
const BEFORE = "  ";
const BELOW = " ".repeat(6);

export type Row = readonly [term: string, said: string];

export interface Columns {
  /** At which what is said begins; the terms are indented by two. */
  readonly column: number;
  /** Of all, in columns of a terminal. */
  readonly width: number;
  /** Where there may be more in the text than plain letters: how wide it is shown. */
  readonly widthOf?: (text: string) => number;
}

/**
 * Terms, and what is said of each beside them; below them where a term is too long for its column, or where the column
 * would leave too little room.
 */
export function twoColumns(rows: readonly Row[], columns: Columns): string[] {
  const { column, width } = columns;
  return width - column < LEAST_BESIDE
    ? rows.flatMap(([term, said]) => [BEFORE + term, ...lines(said, BELOW, columns)])
    : rows.flatMap((row) => beside(row, columns));
}

function beside([term, said]: Row, columns: Columns): string[] {
  const { column, widthOf = lengthOf } = columns;
  const room = column - BEFORE.length - widthOf(term);
  const all = lines(said, " ".repeat(column), columns);
  if (room < 1) return [BEFORE + term, ...all];
  const [first, ...rest] = all;
  return [BEFORE + term + " ".repeat(room) + first!.slice(column), ...rest];
}

function lines(said: string, indent: string, { width, widthOf = lengthOf }: Columns): string[] {
  return wrapped(said, width - indent.length, widthOf).map((line) => indent + line);
}

function lengthOf(text: string): number {
  return text.length;
}
