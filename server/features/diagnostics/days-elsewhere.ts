import { type DaysElsewhere, NOTHING_ELSEWHERE, strayDays } from "../../checks/file/journal-order.ts";
import type { DayNumber } from "../../journal/calendar.ts";
import { dayOfBlock } from "../../journal/day-of-block.ts";
import { type Journal, sameItems } from "../../journal/journal.ts";
import { changedBlocks, type Document } from "../../syntax/document/document.ts";

/** The date of each block of a file; undefined for the head, and where there is no such date. */
type Dates = readonly (DayNumber | undefined)[];

interface Latest {
  readonly inputs: readonly Dates[];
  readonly uris: readonly string[];
  readonly elsewhere: DaysElsewhere;
}

/** Fewer files show no order among them. */
const FILES_IN_ORDER = 4;

/** What the other files say of a file's days. The same object while none of their dates changes. */
export function daysElsewhere(journal: Journal, uri: string): DaysElsewhere {
  if (journal.files.size < 2) return NOTHING_ELSEWHERE;
  const uris = journal.addresses;
  const own = uris.indexOf(uri);
  const bearsOnOrder = uris.length >= FILES_IN_ORDER;
  const bearing = bearsOnOrder ? uris : uris.slice(0, own);
  const inputs = bearing.map((each) => datesOf(journal, each));
  const before = journal.memo.latest<Latest>("days elsewhere", uri);
  if (before && sameItems(before.inputs, inputs) && sameItems(before.uris, bearing)) return before.elsewhere;
  const stray = bearsOnOrder ? strayIn(bearing, inputs).get(uri) : undefined;
  const earlier = earlierDays(bearing.slice(0, own), inputs);
  const elsewhere = earlier.size > 0 || stray ? { earlier, stray: stray ?? new Map() } : NOTHING_ELSEWHERE;
  journal.memo.setLatest<Latest>("days elsewhere", uri, { inputs, uris: bearing, elsewhere });
  return elsewhere;
}

function earlierDays(uris: readonly string[], dates: readonly Dates[]): ReadonlyMap<DayNumber, string> {
  const days = new Map<DayNumber, string>();
  for (const [i, uri] of uris.entries())
    for (const date of dates[i]!) if (date !== undefined && !days.has(date)) days.set(date, nameOf(uri));
  return days;
}

/** By file: its days at odds with the order of the files, each with the name of the file beside. */
function strayIn(
  uris: readonly string[],
  dates: readonly Dates[],
): ReadonlyMap<string, ReadonlyMap<DayNumber, string>> {
  const dated = uris.flatMap((uri, i) => {
    const own = [...new Set(dates[i]!.filter((date) => date !== undefined))].sort((a, b) => a - b);
    return own.length > 0 ? [{ uri, own }] : [];
  });
  const found = strayDays(dated.map(({ own }) => own));
  return new Map(
    [...found].map(([file, days]) => [
      dated[file]!.uri,
      new Map([...days].map(([day, beside]) => [day, nameOf(dated[beside]!.uri)])),
    ]),
  );
}

/** A file's name as a player sees it. */
function nameOf(uri: string): string {
  const name = uri.slice(uri.lastIndexOf("/") + 1);
  try {
    return decodeURIComponent(name);
  } catch {
    return name;
  }
}

/** The same array while no day of the file has another date. */
function datesOf(journal: Journal, uri: string): Dates {
  const document = journal.files.get(uri)!;
  const before = journal.memo.latest<{ document: Document; dates: Dates }>("dates", uri);
  if (before?.document === document) return before.dates;
  const dates = before ? datesAfter(before.document, before.dates, document) : document.blocks.map(dayOfBlock);
  journal.memo.setLatest("dates", uri, { document, dates });
  return dates;
}

function datesAfter(old: Document, dates: Dates, now: Document): Dates {
  const { from, before, after } = changedBlocks(old, now);
  const changed = now.blocks.slice(from, after).map(dayOfBlock);
  if (sameItems(changed, dates.slice(from, before))) return dates;
  return [...dates.slice(0, from), ...changed, ...dates.slice(before)];
}
