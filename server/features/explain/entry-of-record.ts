import type { AttemptRecord } from "../../history/record.ts";
import type { Journal } from "../../journal/journal.ts";
import type { Entry } from "../../journal/model.ts";
import { readEntry } from "../../journal/read-entry.ts";
import { parseLine } from "../../syntax/line/parse-line.ts";

/** The entry that a record comes from: what it says by itself, or with the entry that it goes on with. */
export function entryOf(journal: Journal, { block, line }: Pick<AttemptRecord, "block" | "line">): Entry | undefined {
  const entry = entryIn(journal, block.lines[line] ?? "", line);
  if (!entry?.source.same) return entry;
  return journal.model(block).entries.find(({ place }) => place.line === line);
}

/** A text read as a line of a day; undefined for what is no entry. */
export function entryIn(journal: Journal, text: string, line = 0): Entry | undefined {
  const read = parseLine(text, { ...journal.partContext, head: false });
  return read.type === "entry" ? readEntry(read, line, journal.vocabulary) : undefined;
}
