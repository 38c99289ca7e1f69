import type { AttemptRecord } from "../../history/record.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { readEntry } from "../../journal/read-entry.ts";
import { parseLine } from "../../syntax/line/parse-line.ts";

/** The entry that a record comes from, read without its day: what it says by itself. */
export function entryOf(journal: Journal, { block, line }: Pick<AttemptRecord, "block" | "line">): Entry | undefined {
  return entryIn(journal, block.lines[line] ?? "", line);
}

/** A text read as a line of a day; undefined for what is no entry. */
export function entryIn(journal: Journal, text: string, line = 0): Entry | undefined {
  const read = parseLine(text, { ...journal.partContext, head: false });
  return read.type === "entry" ? readEntry(read, line, journal.vocabulary) : undefined;
}
