import { atOnce } from "../journal/at-once.ts";
import type { Conventions } from "../journal/conventions.ts";
import type { Journal } from "../journal/journal.ts";
import { type Block, changedBlocks, type Document } from "../syntax/document/document.ts";
import { attemptsInSteps, recordsOfBlock } from "./attempts.ts";
import { HistoryIndex } from "./history-index.ts";
import type { AttemptRecord } from "./record.ts";
import type { Strand } from "./strands.ts";
import { type Week, weeksOf } from "./weeks.ts";

/** The state of a journal that an index was made for. */
interface Indexed {
  readonly files: ReadonlyMap<string, Document>;
  readonly conventions: ReadonlyMap<string, Conventions>;
  readonly index: HistoryIndex;
  /** The records that the index was made of: a day may have been read anew since. */
  readonly recordsOf: RecordsOf;
}

type RecordsOf = WeakMap<Block, readonly AttemptRecord[]>;

/**
 * The history of a journal as it stands. Of the last state that was asked for, only what changed since is looked at
 * again: the result is that of a fresh look (test/properties/history.test.ts).
 */
export function journalHistory(journal: Journal): HistoryIndex {
  return atOnce(historyInSteps(journal));
}

/** The same, a few days at each step, so that whoever waits meanwhile need not wait long. */
export function* historyInSteps(journal: Journal): Generator<void, HistoryIndex> {
  const before = journal.memo.latest<Indexed>(NAME, "");
  if (before && before.files === journal.files) return before.index;
  const conventions = conventionsOfFiles(journal);
  const { files } = journal;
  if (before && sameConventions(before, conventions)) {
    const index = updated(journal, before);
    journal.memo.setLatest<Indexed>(NAME, "", { ...before, files, index });
    return index;
  }
  // Other conventions make other records of every day.
  const recordsOf: RecordsOf = new WeakMap();
  const take = (uri: string, block: Block): readonly AttemptRecord[] => taken(recordsOf, journal, uri, block);
  const index = yield* HistoryIndex.inSteps(yield* attemptsInSteps(journal, take));
  journal.memo.setLatest<Indexed>(NAME, "", { files, conventions, index, recordsOf });
  return index;
}

const NAME = "history";

/** Whether the history of this very state is at hand, so that asking for it costs nothing. */
export function hasHistory(journal: Journal): boolean {
  return journal.memo.latest<Indexed>(NAME, "")?.files === journal.files;
}

/**
 * The history that was made last, of whatever state, without any work; undefined where none was made. It may lack the
 * latest edits, which is good enough for suggestions.
 */
export function latestHistory(journal: Journal): HistoryIndex | undefined {
  return journal.memo.latest<Indexed>(NAME, "")?.index;
}

function conventionsOfFiles(journal: Journal): Indexed["conventions"] {
  return new Map([...journal.files.keys()].map((uri) => [uri, journal.conventions(uri)]));
}

/** Whether the same files stand there, read by the same conventions. */
function sameConventions({ conventions: before }: Indexed, now: Indexed["conventions"]): boolean {
  return before.size === now.size && [...now].every(([uri, conventions]) => before.get(uri) === conventions);
}

function updated(journal: Journal, { files, recordsOf, index }: Indexed): HistoryIndex {
  const gone: AttemptRecord[] = [];
  const come: AttemptRecord[] = [];
  for (const [uri, now] of journal.files) {
    const old = files.get(uri)!;
    if (old === now) continue;
    const { from, before: end, after } = changedBlocks(old, now);
    for (const block of old.blocks.slice(from, end)) for (const record of recordsOf.get(block) ?? []) gone.push(record);
    for (const block of now.blocks.slice(from, after))
      for (const record of taken(recordsOf, journal, uri, block)) come.push(record);
  }
  return index.changed(gone, come, ({ uri, block }) => journal.files.get(uri)?.blocks.indexOf(block) ?? -1);
}

/** The records of a day, which are noted down as those that the index holds. */
function taken(recordsOf: RecordsOf, journal: Journal, uri: string, block: Block): readonly AttemptRecord[] {
  const records = recordsOfBlock(journal, uri, block);
  recordsOf.set(block, records);
  return records;
}

/** The weekly figures of a strand, worked out once. */
export function weeksOfStrand(journal: Journal, strand: Strand): readonly Week[] {
  return journal.memo.of(strand, "weeks", () => weeksOf(strand.records));
}
