import { recordsOfBlock } from "../../server/history/attempts.ts";
import { type AttemptRecord, inTimeOrder } from "../../server/history/record.ts";
import type { Journal } from "../../server/journal/journal.ts";

/** What a history is made of, wherever in the files it is written: two journals with the same have the same history. */
export function playedIn(journal: Journal): readonly unknown[] {
  const records = journal.addresses.flatMap((uri) =>
    journal.files.get(uri)!.blocks.flatMap((block) => recordsOfBlock(journal, uri, block)),
  );
  return records.sort(inTimeOrder).map(facts);
}

function facts(record: AttemptRecord): unknown {
  const { day, exerciseKey, strandKey, rate, reached, count, got, minutes, where, movement } = record;
  return { day, exerciseKey, strandKey, rate, reached, count, got, minutes, where, movement };
}
