import { readFileSync } from "node:fs";
import { join } from "node:path";

/** The lines that one of the invented players wrote (test/reference/README.md), as they stand. */
export interface Hand {
  /** What the head declares of the names of notes; null for the usual ones. */
  readonly names: string | null;
  readonly lines: readonly string[];
}

const TABLES = ["natural-lines", "new-hands", "more-hands"];

/** Every hand of the tables in a folder. */
export function handsIn(folder: string): readonly Hand[] {
  return TABLES.flatMap((table) => {
    const players: Record<string, { readonly names: string | null }> = JSON.parse(
      readFileSync(join(folder, `${table}.json`), "utf8"),
    );
    const rows = readFileSync(join(folder, `${table}.tsv`), "utf8")
      .trimEnd()
      .split("\n")
      .slice(1);
    return Object.entries(players).map(([person, { names }]) => ({
      names,
      lines: rows.map((row) => row.split("\t")).flatMap(([by, , line]) => (by === person && line ? [line] : [])),
    }));
  });
}
