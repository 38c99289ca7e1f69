import { readFileSync } from "node:fs";
import { join } from "node:path";
import { diagnosticsOf } from "../../../server/features/diagnostics/diagnostics.ts";
import { type LineRow, lineRows } from "../../../server/features/explain/line-rows.ts";
import { parseIsoDate } from "../../../server/journal/calendar.ts";
import { Journal } from "../../../server/journal/journal.ts";
import { ENGLISH_NAMES } from "../../../server/music/notes/note-names.ts";
import { createDocument } from "../../../server/syntax/document/document.ts";
import type { Files } from "../../support/temporary-folder.ts";

// The lines of the tables that test/reference/README.md tells about, beside what the product makes of them.

const COLUMNS =
  "person day line kind subject pattern articulation place note_value tempos outcomes minutes comment".split(" ");

/** A line and what it means, by the table's columns. */
export type Meant = Readonly<
  Record<
    | "person"
    | "day"
    | "line"
    | "kind"
    | "subject"
    | "pattern"
    | "articulation"
    | "place"
    | "note_value"
    | "tempos"
    | "outcomes"
    | "minutes"
    | "comment",
    string
  >
>;

/** What somebody meant, and how it was read. */
export interface WrittenLine {
  readonly meant: Meant;
  readonly read: LineRow;
  /** An error or a warning stands below it. */
  readonly underlined: boolean;
}

export const TABLES = [
  "natural-lines",
  "new-hands",
  "more-hands",
  "kept-hands",
  "further-hands",
  "unseen-hands",
  "mixed-hands",
  "ordinary-hands",
  "various-hands",
  "late-hands",
  "later-hands",
  "latest-hands",
] as const;
type Table = (typeof TABLES)[number];

/** The lines of one table, read in a journal for each player. `folder` is that of the tables. */
export function writtenLines(table: Table, folder = REFERENCE): WrittenLine[] {
  return playersOf(table, folder).flatMap(({ meant, names }) => readBy(meant, names));
}

/** The same lines as the files of a journal for each player. */
export function writtenJournals(table: Table): Files[] {
  return playersOf(table, REFERENCE).map(({ meant, names }) => ({
    "a.practice": asWritten(meant).text,
    ...(names && { "journal.practice": `names ${names}` }),
  }));
}

const REFERENCE = join(import.meta.dirname, "../../reference");

interface Player {
  /** The names of notes, where they are not the usual ones. */
  readonly names: string | null;
  readonly meant: readonly Meant[];
}

function playersOf(table: Table, folder: string): Player[] {
  const players = JSON.parse(readFileSync(join(folder, `${table}.json`), "utf8")) as Record<
    string,
    Pick<Player, "names">
  >;
  const meant = meantIn(readFileSync(join(folder, `${table}.tsv`), "utf8"));
  return Object.entries(players).map(([player, { names }]) => ({
    names,
    meant: meant.filter(({ person }) => person === player),
  }));
}

/** One player's lines, each below its day; and at which line of the text each is, from 0. */
function asWritten(meant: readonly Meant[]): { readonly text: string; readonly at: readonly number[] } {
  const lines: string[] = [];
  const at = meant.map((each, i) => {
    if (each.day !== meant[i - 1]?.day) lines.push(each.day);
    return lines.push(`  ${each.line}`) - 1;
  });
  return { text: lines.join("\n"), at };
}

function meantIn(text: string): Meant[] {
  const [header, ...rows] = text.trimEnd().split("\n");
  if (header !== COLUMNS.join("\t")) throw new Error(`other columns than expected: ${header}`);
  return rows.map((row) => {
    const cells = row.split("\t");
    return Object.fromEntries(COLUMNS.map((column, i) => [column, cells[i] ?? ""])) as Meant;
  });
}

const URI = "file:///j/a.practice";
const TODAY = parseIsoDate("2027-01-01")!;

function readBy(meant: readonly Meant[], names: string | null): WrittenLine[] {
  const { text, at } = asWritten(meant);
  const files = new Map([[URI, createDocument(text)]]);
  if (names) files.set("file:///j/journal.practice", createDocument(`names ${names}`));
  const journal = new Journal("file:///j", files);
  const rows = new Map(lineRows(journal, URI, ENGLISH_NAMES).map((row) => [row.line, row]));
  const marked = new Set(
    diagnosticsOf(journal, URI, TODAY)
      .filter(({ severity }) => severity === "error" || severity === "warning")
      .map(({ range }) => range.start.line),
  );
  return meant.map((each, i) => ({ meant: each, read: rows.get(at[i]!)!, underlined: marked.has(at[i]!) }));
}
