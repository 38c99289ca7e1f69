import { entryOfSubject } from "../journal/each-subject.ts";
import type { Journal } from "../journal/journal.ts";
import type { Attempt, Entry } from "../journal/model.ts";
import { readEntry } from "../journal/read-entry.ts";
import { type LineContext, parseLine } from "../syntax/line/parse-line.ts";
import type { AttemptRecord } from "./record.ts";

/**
 * The entry that a record comes from: what it says of the record's subject by itself, or with the entry that it goes on
 * with.
 */
export function entryOf(
  journal: Journal,
  { block, line, subjectKey }: Pick<AttemptRecord, "block" | "line" | "subjectKey">,
): Entry | undefined {
  const alone = read(journal, block.lines[line] ?? "", line, journal.titlesOf(block)?.get(line));
  const entry = alone?.source.same ? journal.model(block).entries.find(({ place }) => place.line === line) : alone;
  return entry && entryOfSubject(entry, subjectKey);
}

/** The same, read once while the day stays the same. */
export function entryMadeOnce(journal: Journal, record: AttemptRecord): Entry | undefined {
  return journal.memo.from(record, "entry", [journal.titlesOf(record.block)], () => entryOf(journal, record));
}

/** What a record's entry says of that one attempt. */
export function attemptOfRecord(entry: Entry, { start }: Pick<AttemptRecord, "start">): Attempt | undefined {
  const { attempts } = entry;
  return attempts.length === 1 ? attempts[0] : attempts.find(({ place }) => place.start === start);
}

/** A text read as a line of a day; undefined for what is no entry. */
export function entryIn(journal: Journal, text: string): Entry | undefined {
  return read(journal, text, 0, undefined);
}

function read(journal: Journal, text: string, line: number, titles: LineContext["titles"]): Entry | undefined {
  const found = parseLine(text, { ...journal.partContext, head: false, titles });
  return found.type === "entry" ? readEntry(found, line, journal.vocabulary) : undefined;
}
