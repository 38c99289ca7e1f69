import { atOnce } from "../journal/at-once.ts";
import type { Conventions } from "../journal/conventions.ts";
import type { Journal } from "../journal/journal.ts";
import { titleIndex } from "../journal/titles/journal-titles.ts";
import type { TitleIndex } from "../journal/titles/title-index.ts";
import { type Block, changedBlocks, type Document } from "../syntax/document/document.ts";
import { attemptsInSteps, recordsOfBlock } from "./attempts.ts";
import { HistoryIndex } from "./history-index.ts";
import type { AttemptRecord } from "./record.ts";
import type { Strand } from "./strands.ts";
import { type Week, weeksOf } from "./weeks.ts";

/** The state of a journal that an index was made for. */
interface Indexed {
  readonly files: ReadonlyMap<string, Document>;
  /** While both are the same objects, so are the conventions of each file. */
  readonly addresses: readonly string[];
  readonly declaredIn: ReadonlyMap<string, string>;
  readonly conventions: ReadonlyMap<string, Conventions>;
  /** While it is the same, days that no edit touched are read the same. */
  readonly titles: TitleIndex;
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
  const { files, addresses, declaredIn } = journal;
  const conventions = conventionsOfFiles(journal, before);
  if (before && sameConventions(before, conventions) && isNearTo(before.files, files)) {
    const index = updated(journal, before);
    const titles = titleIndex(journal);
    journal.memo.setLatest<Indexed>(NAME, "", { ...before, files, addresses, declaredIn, conventions, titles, index });
    return index;
  }
  // Other conventions make other records of every day.
  const recordsOf: RecordsOf = new WeakMap();
  const take = (uri: string, block: Block): readonly AttemptRecord[] => taken(recordsOf, journal, uri, block);
  const index = yield* HistoryIndex.inSteps(yield* attemptsInSteps(journal, take));
  yield;
  const titles = titleIndex(journal);
  journal.memo.setLatest<Indexed>(NAME, "", { files, addresses, declaredIn, conventions, titles, index, recordsOf });
  return index;
}

const NAME = "history";

/** Whether the history of this very state is at hand, so that asking for it costs nothing. */
export function hasHistory(journal: Journal): boolean {
  return journal.memo.latest<Indexed>(NAME, "")?.files === journal.files;
}

/**
 * The history as it stands, where it is there or follows from the one before by a few days; undefined where all days
 * would have to be read: for what is shown unasked, and can come later.
 */
export function historyAtHand(journal: Journal): HistoryIndex | undefined {
  const before = journal.memo.latest<Indexed>(NAME, "");
  if (!before) return undefined;
  const isNear = before.files === journal.files || isNearTo(before.files, journal.files);
  return isNear && sameConventions(before, conventionsOfFiles(journal, before)) ? journalHistory(journal) : undefined;
}

/**
 * The history that was made last, of whatever state, without any work; undefined where none was made. It may lack the
 * latest edits, which is good enough for suggestions.
 */
export function latestHistory(journal: Journal): HistoryIndex | undefined {
  return journal.memo.latest<Indexed>(NAME, "")?.index;
}

function conventionsOfFiles(journal: Journal, before: Indexed | undefined): Indexed["conventions"] {
  const { addresses, declaredIn } = journal;
  if (before?.addresses === addresses && before.declaredIn === declaredIn) return before.conventions;
  return new Map(addresses.map((uri) => [uri, journal.conventions(uri)]));
}

/** Whether the files that stand there still are read by the same conventions. */
function sameConventions({ conventions: before }: Indexed, now: Indexed["conventions"]): boolean {
  if (before === now) return true;
  return [...now].every(([uri, conventions]) => (before.get(uri) ?? conventions) === conventions);
}

/** Whether so few days came or went with their files that nobody waits for them. */
function isNearTo(before: ReadonlyMap<string, Document>, now: ReadonlyMap<string, Document>): boolean {
  if (Math.abs(before.size - now.size) > FEW_DAYS) return false;
  let days = 0;
  for (const [uri, { blocks }] of before) if (!now.has(uri)) days += blocks.length;
  for (const [uri, { blocks }] of now) if (!before.has(uri)) days += blocks.length;
  return days <= FEW_DAYS;
}

const FEW_DAYS = 20;

function updated(journal: Journal, { files, titles, recordsOf, index }: Indexed): HistoryIndex {
  const gone: AttemptRecord[] = [];
  const come: AttemptRecord[] = [];
  const takeOut = (block: Block): void => {
    for (const record of recordsOf.get(block) ?? []) gone.push(record);
  };
  for (const [uri, { blocks }] of files) if (!journal.files.has(uri)) blocks.forEach(takeOut);
  for (const [uri, now] of journal.files) {
    const old = files.get(uri);
    if (old === now) continue;
    const { from, before, after } = old ? changedBlocks(old, now) : { from: 0, before: 0, after: now.blocks.length };
    old?.blocks.slice(from, before).forEach(takeOut);
    for (const block of now.blocks.slice(from, after))
      for (const record of taken(recordsOf, journal, uri, block)) come.push(record);
  }
  if (titleIndex(journal) !== titles) readAgain(journal, recordsOf, gone, come);
  return index.changed(gone, come, ({ uri, block }) => journal.files.get(uri)?.blocks.indexOf(block) ?? -1);
}

/** Days whose lines name a title that is known now, or no more. */
function readAgain(journal: Journal, recordsOf: RecordsOf, gone: AttemptRecord[], come: AttemptRecord[]): void {
  for (const [uri, { blocks }] of journal.files) {
    for (const block of blocks) {
      const before = recordsOf.get(block) ?? [];
      const now = taken(recordsOf, journal, uri, block);
      if (now === before) continue;
      for (const record of before) gone.push(record);
      for (const record of now) come.push(record);
    }
  }
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
